package kelter.cli.command;

/** What a command does once its arguments are read. */
interface Action {

  /**
   * Does it.
   *
   * @param shared the options that every command has
   * @throws kelter.core.problem.InputException if the input cannot be used
   */
  void run(Shared shared);

  /**
   * The options that every command has.
   *
   * @return the options
   */
  Shared shared();
}
