package kelter.cli.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The diagnosis over all kinds of machines, on few calls, so that the build stays quick. */
class CallsTest {

  static final int CALLS = 230;

  static final List<Calls.Call> TOLD = Calls.asTold(1).run(CALLS);

  @Test
  void causesAreFoundWhereTheFilesAreRight() {
    CallTable table = new CallTable(TOLD);

    assertTrue(table.first(0) >= 0.3, "first " + table.first(0));
    assertTrue(table.amongThree(0) >= 0.55, "among three " + table.amongThree(0));
    assertTrue(table.amongThree(3) >= table.amongThree(0) - 0.02, "readings help");
    assertTrue(table.logLoss(3) <= table.logLoss(0) + 0.05, "readings help");
  }

  @Test
  void causesAreFoundWhereEveryShareAndChanceIsAnother() {
    CallTable table = new CallTable(Calls.moved(1, 1).run(CALLS / 2));

    assertTrue(table.first(0) >= 0.2, "first " + table.first(0));
    assertTrue(table.amongThree(0) >= 0.45, "among three " + table.amongThree(0));
  }

  @Test
  void sameSeedSameCalls() {
    assertEquals(TOLD.subList(0, 5), Calls.asTold(1).run(5));
  }
}
