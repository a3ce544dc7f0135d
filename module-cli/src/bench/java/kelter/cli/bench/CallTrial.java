package kelter.cli.bench;

import kelter.cli.trial.CallReport;

/** Prints how good the diagnosis is on calls to machines of all kinds. */
public final class CallTrial {

  private static final int CALLS = 10_000;
  private static final int WORLDS = 10;

  private CallTrial() {}

  /**
   * Prints the tables, first where the files are right, then where every share and chance is
   * another.
   *
   * @param arguments the number of calls of each, 10,000 where none is given, and the seed, 1 where
   *     none is given
   */
  public static void main(String[] arguments) {
    int calls = arguments.length > 0 ? Integer.parseInt(arguments[0]) : CALLS;
    long seed = arguments.length > 1 ? Long.parseLong(arguments[1]) : 1;
    CallReport.print(calls, seed, WORLDS, System.out);
  }
}
