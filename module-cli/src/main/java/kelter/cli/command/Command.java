package kelter.cli.command;

import kelter.cli.usage.CommandUsage;

/**
 * A command. What it takes is declared by code and not by annotations, which would be read by
 * reflection at every start.
 */
interface Command {

  /**
   * What it takes.
   *
   * @return its usage
   */
  CommandUsage usage();

  /**
   * Whether it diagnoses, so that the workshop is worth wiring ahead.
   *
   * @return true if it does
   */
  default boolean diagnoses() {
    return false;
  }

  /**
   * Does it.
   *
   * @param invocation what was given on the command line
   * @throws kelter.core.problem.InputException if the input cannot be used
   */
  void run(Invocation invocation);
}
