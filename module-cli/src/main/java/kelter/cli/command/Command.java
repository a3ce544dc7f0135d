package kelter.cli.command;

import picocli.CommandLine.Model.CommandSpec;

/**
 * A command. Its arguments are declared by code and not by annotations, which would be read by
 * reflection at every start.
 */
interface Command {

  /**
   * What it takes.
   *
   * @return a new specification, with the options that every command has
   */
  CommandSpec spec();

  /**
   * Does it.
   *
   * @param invocation what was given on the command line
   * @throws kelter.core.problem.InputException if the input cannot be used
   */
  void run(Invocation invocation);
}
