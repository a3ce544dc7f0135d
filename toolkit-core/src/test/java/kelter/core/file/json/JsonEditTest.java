package kelter.core.file.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What is expected is written out by hand, or follows from what was put in. */
class JsonEditTest {

  private static Json.Obj read(String text) {
    return (Json.Obj) JsonText.read(text.getBytes(StandardCharsets.UTF_8), "test", "");
  }

  private static Json.Obj reading(String of, String figure) {
    Map<String, Json> members = new LinkedHashMap<>();
    members.put("of", new Json.Str(of));
    members.put("reading", new Json.Str(figure));
    return new Json.Obj(members);
  }

  /** A text with one more item in its array {@code list}. */
  private static String plus(String text, Json item) {
    Json.Obj content = read(text);
    Json.Arr list =
        content.members().get("list") instanceof Json.Arr found ? found : new Json.Arr(List.of());
    Json.Obj wanted = content.with("list", list.plus(item));
    String edited = JsonEdit.edited(text, wanted);
    assertEquals(wanted, read(edited));
    return edited;
  }

  @Test
  void anItemStandsLikeTheLastOneOnALineOfItsOwn() {
    assertEquals(
        """
        { "format"  : "x",

          "list": [
            { "of": "a",   "reading": "1 m" },
            { "of": "b", "reading": "2 m" },
            { "of": "c", "reading": "3 m" }
          ],
              "note" :"odd"   }
        """
            .replace(
                "\"of\": \"c\", \"reading\": \"3 m\"", "\"of\"  : \"c\", \"reading\"  : \"3 m\""),
        plus(
            """
            { "format"  : "x",

              "list": [
                { "of": "a",   "reading": "1 m" },
                { "of": "b", "reading": "2 m" }
              ],
                  "note" :"odd"   }
            """,
            reading("c", "3 m")));
  }

  @Test
  void anItemStandsLikeTheLastOneInLines() {
    String text = "{\r\n\t\"list\": [\r\n\t\t{\r\n\t\t\t\"of\": \"a\"\r\n\t\t}\r\n\t]\r\n}";

    assertEquals(
        "{\r\n\t\"list\": [\r\n\t\t{\r\n\t\t\t\"of\": \"a\"\r\n\t\t},"
            + "\r\n\t\t{\r\n\t\t\t\"of\": \"b\",\r\n\t\t\t\"reading\": \"1 m\"\r\n\t\t}\r\n\t]\r\n}",
        plus(text, reading("b", "1 m")));
  }

  @Test
  void aTextWithoutLinesStaysWithoutLines() {
    assertEquals(
        "{\"list\":[{\"of\":\"a\"},{\"of\":\"b\",\"reading\":\"1 m\"}],\"n\":1.50e2}",
        plus("{\"list\":[{\"of\":\"a\"}],\"n\":1.50e2}", reading("b", "1 m")));
    assertEquals(
        "{ \"list\": [{ \"of\": \"a\" }, { \"of\": \"b\", \"reading\": \"1 m\" }] }\n",
        plus("{ \"list\": [{ \"of\": \"a\" }] }\n", reading("b", "1 m")));
    assertEquals(
        "{\"list\":[{\"of\":\"b\",\"reading\":\"1 m\"}]}",
        plus("{\"list\":[ ]}", reading("b", "1 m")));
  }

  @Test
  void anEmptyArrayAndAMissingOneAreLaidOutLikeTheFile() {
    String wanted =
        """
        {
           "n": 1,
           "list": [
              {
                 "of": "b",
                 "reading": "1 m"
              }
           ]
        }
        """;

    assertEquals(wanted, plus("{\n   \"n\": 1,\n   \"list\": []\n}\n", reading("b", "1 m")));
    assertEquals(wanted, plus("{\n   \"n\": 1\n}\n", reading("b", "1 m")));
  }

  @Test
  void itemsAreTakenOutAndTheOthersStay() {
    String text = "{ \"list\": [ 1.0,  2,\n 3 , 4 ], \"n\": [] }";
    Json.Obj content = read(text);
    List<Json> items = ((Json.Arr) content.members().get("list")).items();

    for (int mask = 0; mask < 16; mask++) {
      List<Json> kept = new ArrayList<>();
      for (int i = 0; i < 4; i++) {
        if ((mask & 1 << i) > 0) {
          kept.add(items.get(i));
        }
      }
      kept.add(new Json.Str("new"));
      Json.Obj wanted = content.with("list", new Json.Arr(kept));
      assertEquals(wanted, read(JsonEdit.edited(text, wanted)), text);
    }
    Json.Obj wanted =
        content.with("list", new Json.Arr(List.of(items.get(0), items.get(2), items.get(3))));
    assertEquals("{ \"list\": [ 1.0,\n 3 , 4 ], \"n\": [] }", JsonEdit.edited(text, wanted));
  }

  @Test
  void signsBesideTheBasicPlaneAndEscapesMoveNothing() {
    String text =
        "{\"a\\\"\\\\\": \"\uD83D\uDD27 \\ud83d\\uDD27 ü\\n\", \"list\": [\"\uD83D\uDD27\"]}";

    assertEquals(
        text.replace("\"]", "\", \"\uD83D\uDD27 \\\"\"]"),
        plus(text, new Json.Str("\uD83D\uDD27 \"")));
  }

  /** Longer than the buffers of the parser. */
  @Test
  void aLongTextGrowsByWhatIsAddedOnly() {
    StringBuilder text = new StringBuilder("{\"list\":[");
    for (int i = 0; i < 40_000; i++) {
      text.append("{\"of\":\"p\uD83D\uDD27\",\"reading\":\"").append(i).append(" m\"},");
    }
    text.setLength(text.length() - 1);
    text.append("],\"last\":true}");

    String edited = plus(text.toString(), reading("q", "1 m"));

    String added = ",{\"of\":\"q\",\"reading\":\"1 m\"}";
    assertEquals(text.length() + added.length(), edited.length());
    assertTrue(edited.endsWith(added + "],\"last\":true}"), edited.substring(edited.length() - 90));
  }

  private static String blanks(Random random) {
    String[] some = {"", "", " ", "\n", "\r\n  ", "\t", "\n\n    "};
    return some[random.nextInt(some.length)];
  }

  private static String text(Random random, int depth) {
    String b = blanks(random);
    switch (random.nextInt(depth > 3 ? 4 : 6)) {
      case 0:
        return b + "-1.50e+2" + blanks(random);
      case 1:
        return b + "\"x, ] } \\\" \u00fc\uD83D\uDD27" + random.nextInt(3) + "\"" + blanks(random);
      case 2:
        return b + "null" + blanks(random);
      case 3:
        return b + "true" + blanks(random);
      case 4:
        StringBuilder items = new StringBuilder();
        for (int i = random.nextInt(4); i > 0; i--) {
          items.append(items.isEmpty() ? "" : ",").append(text(random, depth + 1));
        }
        return b + "[" + items + (items.isEmpty() ? blanks(random) : "") + "]" + blanks(random);
      default:
        StringBuilder members = new StringBuilder();
        for (int i = random.nextInt(4); i > 0; i--) {
          members.append(members.isEmpty() ? "" : ",").append(blanks(random));
          members.append('"').append("m\\\"").append(i).append('"').append(blanks(random));
          members.append(':').append(text(random, depth + 1));
        }
        return b + "{" + members + (members.isEmpty() ? blanks(random) : "") + "}" + blanks(random);
    }
  }

  /** Texts laid out by chance: they say what is wanted, and what was there stands as it stood. */
  @Test
  void nothingElseChangesInTextsLaidOutByChance() {
    Random random = new Random(14);
    for (int run = 0; run < 3000; run++) {
      String before = blanks(random) + "{" + blanks(random) + "\"a\"" + blanks(random) + ":";
      String items = text(random, 1) + "," + text(random, 1);
      String array = blanks(random) + "[" + items;
      String after = "]" + blanks(random) + ",\"z\":" + text(random, 1) + "}" + blanks(random);
      String text = before + text(random, 1) + ",\"list\":" + array + after;

      String edited = plus(text, reading("c\t", "1 m"));

      String kept = text.substring(0, text.length() - after.length()).stripTrailing();
      assertTrue(edited.startsWith(kept), text);
      assertTrue(edited.endsWith(after), text);
    }
  }
}
