package kelter.cli;

import kelter.cli.command.Kelter;
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
    System.exit(new Kelter(Terminal.ofProcess(), new Opening()).run(arguments));
  }
}
