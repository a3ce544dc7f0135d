package kelter.cli.bench;

import kelter.cli.trial.CallReport;

/** Prints how technicians fare who are led by a session, and who go in another order. */
public final class VisitTrial {

  private static final int CALLS = 300;
  private static final int WORLDS = 10;

  private VisitTrial() {}

  /**
   * Prints the table.
   *
   * @param arguments the number of calls, 300 where none is given, and the seed, 1 where none is
   *     given
   */
  public static void main(String[] arguments) {
    int calls = arguments.length > 0 ? Integer.parseInt(arguments[0]) : CALLS;
    long seed = arguments.length > 1 ? Long.parseLong(arguments[1]) : 1;
    CallReport.printLed(calls, seed, WORLDS, System.out);
  }
}
