package kelter.cli.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import kelter.cli.terminal.Terminal;
import kelter.core.safety.Caution;
import kelter.core.safety.Caution.Signal;
import org.junit.jupiter.api.Test;

class CautionsTest {
  private final Terminal terminal =
      new Terminal(
          new PrintStream(OutputStream.nullOutputStream()),
          new PrintStream(OutputStream.nullOutputStream()),
          StandardCharsets.UTF_8,
          false,
          false,
          Terminal.WIDTH);
  private final Layout layout = new Layout(terminal);
  private final CautionLines cautions = new CautionLines(layout);

  private static Caution shock(String what) {
    return new Caution("shock", Signal.DANGER, "Electric shock. " + what);
  }

  @Test
  void aCautionThatWasToldIsNamedByItsFirstSentence() {
    cautions.write("", List.of(shock("Pull the plug."), shock("Pull the plug.")));

    assertEquals(
        "! DANGER: Electric shock. Pull the plug.\n! DANGER: Electric shock (as above)\n",
        layout.toString());
  }

  @Test
  void moreOfItIsToldWhereAnotherStartsAlike() {
    Caution first = shock("Pull the plug and prove dead before you touch anything in it.");
    cautions.write("", List.of(first, shock("Keep the meter dry."), first));

    assertEquals(
        "! DANGER: Electric shock. Pull the plug and prove dead before … (as above)",
        layout.toString().replaceAll("\\n +", " ").split("\\n")[2]);
  }

  @Test
  void aCautionOfOneSentenceIsToldAgainAsItIs() {
    Caution one = new Caution("thermal-link", Signal.WARNING, "Never bridge a thermal link.");
    cautions.write("", List.of(one, one));

    assertEquals(
        "! WARNING: Never bridge a thermal link.\n! WARNING: Never bridge a thermal link.\n",
        layout.toString());
  }
}
