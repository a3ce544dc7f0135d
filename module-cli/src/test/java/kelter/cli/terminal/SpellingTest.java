package kelter.cli.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class SpellingTest {

  private static final Spelling ASCII = new Spelling(StandardCharsets.US_ASCII);

  @Test
  void signsOfMeasuringAreSpeltOut() {
    assertEquals("3 +/- 1 Mohm", ASCII.of("3 ± 1 MΩ"));
    assertEquals("(as above ...)", ASCII.of("(as above …)"));
    assertEquals("10 um2 <= 3 m3 x 2 - 1", ASCII.of("10 µm² ≤ 3 m³ × 2 – 1"));
    assertEquals("40 C -> 50 C, 5 EUR", ASCII.of("40 °C → 50 °C, 5 €"));
  }

  @Test
  void lettersLoseTheirMarksAndOthersAreNumbered() {
    assertEquals("Muller, Oresund, Grosse", ASCII.of("Müller, Øresund, Größe"));
    assertEquals("<U+6D17><U+1F600>", ASCII.of("洗\ud83d\ude00"));
  }

  @Test
  void everyCharacterHasASpelling() {
    for (int sign = 0x80; sign <= Character.MAX_CODE_POINT; sign++) {
      if (sign != 0xa0 && (sign < Character.MIN_SURROGATE || sign > Character.MAX_SURROGATE)) {
        String spelt = ASCII.of(Character.toString(sign));
        assertTrue(
            StandardCharsets.US_ASCII.newEncoder().canEncode(spelt), Integer.toHexString(sign));
      }
    }
  }

  @Test
  void whatTheCharacterSetHasStays() {
    Spelling western = new Spelling(StandardCharsets.ISO_8859_1);
    assertEquals("Müller 3 ± 1 ° µ ²", western.of("Müller 3 ± 1 ° µ ²"));
    assertEquals("3 ohm ...", western.of("3 Ω …"));
    assertEquals("洗 Ω …", new Spelling(StandardCharsets.UTF_8).of("洗 Ω …"));
  }
}
