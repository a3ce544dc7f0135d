package kelter.core.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import java.io.IOException;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class HarmlessTextTest {

  /** Property Bidi_Control: Unicode Standard Annex 9, table 2 (explicit and implicit marks). */
  private static final List<Integer> BIDI_CONTROL =
      List.of(
          0x61c, 0x200e, 0x200f, 0x202a, 0x202b, 0x202c, 0x202d, 0x202e, 0x2066, 0x2067, 0x2068,
          0x2069);

  /** What may move the cursor, end the line or start a sequence: ECMA-48, 5.2 and 5.3 (C0, C1). */
  @Test
  void noControlCharacterPasses() {
    for (int sign = 0; sign <= 0x9f; sign++) {
      if (sign < ' ' || sign > '~') {
        assertTrue(HarmlessText.isHarmful(sign), HarmlessText.number(sign));
      }
    }
    assertEquals(
        "a<U+001B>[31mb<U+009B>2J<U+000A>c<U+0009><U+007F>",
        HarmlessText.of("a\u001b[31mb\u009b2J\nc\t\u007f"));
  }

  @Test
  void noMarkOfDirectionPasses() {
    for (int sign : BIDI_CONTROL) {
      assertEquals("a" + HarmlessText.number(sign) + "b", HarmlessText.of("a" + (char) sign + "b"));
    }
  }

  @Test
  void whatIsInvisibleOrNoCharacterIsShown() {
    assertEquals("<U+2028><U+2029>", HarmlessText.of("\u2028\u2029"));
    assertEquals("<U+FEFF><U+00AD><U+2060>", HarmlessText.of("\ufeff\u00ad\u2060"));
    assertEquals("<U+E0041>", HarmlessText.of("\udb40\udc41"), "a tag letter");
    assertEquals("<U+FFFE><U+FDD0><U+1FFFF>", HarmlessText.of("\ufffe\ufdd0\ud83f\udfff"));
    assertEquals("a<U+D83D>b<U+DE00>", HarmlessText.of("a\ud83db\ude00"), "halves of a pair");
  }

  /**
   * Words for washing machine, with marks that combine, joiners, and a number sign that is seen.
   */
  @Test
  void lettersOfEveryScriptStay() {
    for (String word :
        List.of(
            "Müller & Söhne <3 \"x\" ~",
            "洗濯機 세탁기",
            "غسالة ملابس",
            "كتاب‌ها",
            "वॉशिंग मशीन",
            "e\u0301 z\u0335\u0321\u034a",
            "\ud83d\udc68\u200d\ud83d\udd27",
            "\u0600\u06f1\u06f2",
            "\u00a0\u3000",
            "")) {
      assertSame(word, HarmlessText.of(word));
    }
  }

  @Test
  void doingItTwiceChangesNothing() {
    Random random = new Random(14);
    for (int i = 0; i < 20_000; i++) {
      StringBuilder text = new StringBuilder();
      for (int length = random.nextInt(12); length > 0; length--) {
        text.append(
            (char) (random.nextBoolean() ? random.nextInt(0x300) : random.nextInt(0x10000)));
      }
      String once = HarmlessText.of(text.toString());
      assertFalse(once.codePoints().anyMatch(HarmlessText::isHarmful), once);
      assertEquals(once, HarmlessText.of(once));
    }
  }

  /** RFC 8259, section 7: any character may be escaped; the value stays the same. */
  @Test
  void jsonSaysTheSame() throws IOException {
    String value = "a\u009b2J\u202eb\u007f\udb40\udc41 洗 \u2028";
    String json = "{\n  \"" + value + "\" : \"" + value + "\"\n}\n";

    String shown = HarmlessText.inJson(json);

    assertFalse(shown.replace("\n", "").codePoints().anyMatch(HarmlessText::isHarmful), shown);
    assertTrue(shown.contains("\\u009B2J\\u202Eb"), shown);
    try (JsonParser parser = new JsonFactory().createParser(shown)) {
      parser.nextToken();
      assertEquals(value, parser.nextFieldName());
      assertEquals(value, parser.nextTextValue());
    }
    assertSame("{\"a\" : \"ü\"}", HarmlessText.inJson("{\"a\" : \"ü\"}"));
  }
}
