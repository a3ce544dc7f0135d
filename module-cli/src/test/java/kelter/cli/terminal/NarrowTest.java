package kelter.cli.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import kelter.cli.text.Layout;
import org.junit.jupiter.api.Test;

/** On a narrow terminal what somebody copies stays in one piece. */
class NarrowTest {

  private static final String KEY = "\"does-not-drain\":";

  @Test
  void whatHangsTogetherIsPartedAtItsSpaces() {
    assertEquals(
        List.of("--why", "drain-pump.passages-blocked"),
        Words.lines(List.of("--why\u00a0drain-pump.passages-blocked"), 30, 30));
    assertEquals(
        List.of("drain-pump.passages-", "blocked"),
        Words.lines(List.of("drain-pump.passages-blocked"), 20, 20));
  }

  @Test
  void aWordWithoutRoomBesideItsLabelStandsBelowIt() {
    Terminal terminal =
        new Terminal(System.out, System.err, StandardCharsets.UTF_8, false, false, 40);
    String text =
        new Layout(terminal)
            .hanging(
                "  Put the answer into the job: ",
                "\"symptoms\":\u00a0{\u00a0" + KEY + "\u00a0\"yes\"\u00a0}")
            .toString();

    assertTrue(text.lines().allMatch(line -> line.length() <= 40), text);
    assertTrue(text.contains(KEY), text);
    assertTrue(text.startsWith("  Put the answer into the job:\n    \"symptoms\":"), text);
  }
}
