package kelter.cli;

import java.time.Clock;
import java.util.Locale;
import kelter.cli.program.Kelter;
import kelter.cli.terminal.Terminal;
import kelter.cli.wiring.Opening;

/** The program. */
public final class Main {

  private Main() {}

  /**
   * Runs a command and ends the process with its exit code.
   *
   * @param arguments the words of the command line
   */
  public static void main(String[] arguments) {
    // Figures are told in the digits 0 to 9, whatever the language of the machine.
    Locale.setDefault(Locale.Category.FORMAT, Locale.ROOT);
    Terminal terminal = Terminal.ofProcess();
    Opening opening = new Opening(terminal, Clock.systemDefaultZone());
    System.exit(new Kelter(terminal, opening, System.getenv()).run(arguments));
  }
}
