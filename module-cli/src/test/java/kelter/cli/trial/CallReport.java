package kelter.cli.trial;

import java.io.PrintStream;
import kelter.cli.trial.Technician.Order;

/** The long trial. */
public final class CallReport {

  private CallReport() {}

  /**
   * Prints what came out where the files are right, then where every share and chance is another.
   *
   * @param calls the number of calls of each, 1 or more
   * @param seed the same seed gives the same calls
   * @param worlds over how many sets of shares and chances the second are spread, 1 or more
   * @param out takes the tables
   */
  public static void print(int calls, long seed, int worlds, PrintStream out) {
    new CallTable(Calls.asTold(seed).run(calls)).print("As the files tell", out);
    new CallTable(Calls.moved(seed, worlds).run(calls)).print("Moved by a factor of two", out);
  }

  /**
   * Prints how technicians fare who are led, and who go in another order, where every share and
   * chance is another than the files tell.
   *
   * @param calls the number of calls, 1 or more
   * @param seed the same seed gives the same calls
   * @param worlds over how many sets of shares and chances they are spread, 1 or more
   * @param out takes the tables
   */
  public static void printLed(int calls, long seed, int worlds, PrintStream out) {
    new VisitTable(Technician.visits(Calls.moved(seed, worlds), calls, Order.FIXED, Order.RANDOM))
        .print(out);
  }
}
