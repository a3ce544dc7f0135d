package kelter.cli.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import kelter.cli.text.Layout;
import org.junit.jupiter.api.Test;

/** Colour begins where it should and ends, over however many lines the words run. */
class ColourTest {

  private static String printed(int width) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PrintStream to = new PrintStream(out, false, StandardCharsets.UTF_8);
    Terminal terminal = new Terminal(to, to, StandardCharsets.UTF_8, true, false, width);
    String words = "Water runs out, perhaps hot and with lye or broken glass in it.";
    Layout layout = new Layout(terminal).hanging("! ", terminal.attention(words)).line("next");
    terminal.print(layout.toString());
    return out.toString(StandardCharsets.UTF_8);
  }

  @Test
  void aColourThatEndsLinesLaterLeavesNoSign() {
    for (int width : new int[] {40, 80}) {
      String text = printed(width);

      assertTrue(text.chars().allMatch(sign -> sign < 0x80), text);
      assertTrue(!text.contains("U+"), text);
      assertEquals(1, Arrays.stream(text.split("\u001b\\[33m", -1)).count() - 1);
      assertTrue(text.contains("in it.\u001b[0m\n"), text);
    }
    assertEquals(3, printed(40).lines().count());
  }
}
