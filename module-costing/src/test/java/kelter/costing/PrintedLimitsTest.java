package kelter.costing;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import kelter.core.module.Calculation;
import kelter.testkit.PrintedLimits;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every limit that a calculation prints is one that it takes. */
class PrintedLimitsTest {

  /**
   * Figures that go together, where nothing is usual. The energy of one calculation is that of a
   * cycle, of the others that of a year.
   */
  private static final Map<String, String> ORDINARY =
      Map.ofEntries(
          Map.entry("mean", "12 a"),
          Map.entry("shape", "2"),
          Map.entry("age", "5 a"),
          Map.entry("amount", "100"),
          Map.entry("time", "10 a"),
          Map.entry("outlay", "800"),
          Map.entry("life", "12 a"),
          Map.entry("repair", "200"),
          Map.entry("left", "5 a"),
          Map.entry("price", "800"),
          Map.entry("nominal", "5 %"),
          Map.entry("inflation", "2 %"),
          Map.entry("saving", "120"),
          Map.entry("cycles", "4"),
          Map.entry("energy", "200 kWh/a"),
          Map.entry("energy-new", "200 kWh/a"),
          Map.entry("running-cost energy", "1 kWh"),
          Map.entry("energy-price", "0.30"),
          Map.entry("per-kwh", "0.4 kg"),
          Map.entry("making", "300 kg"),
          Map.entry("work", "1 h"),
          Map.entry("hour", "40"),
          Map.entry("demand", "12"),
          Map.entry("delivery", "10 d"));

  /** What the least saving and the highest rate still pay back, and what pays back any outlay. */
  private static final List<Map<String, String>> PAYS_BACK =
      List.of(Map.of("outlay", "0.001"), Map.of("saving", "5e11"));

  static List<Calculation> calculations() {
    return new CostingModule().calculations();
  }

  @ParameterizedTest
  @MethodSource("calculations")
  void everyLimitIsTaken(Calculation calculation) {
    List<String> refused = new PrintedLimits(ORDINARY, PAYS_BACK).refused(calculation);
    assertTrue(refused.isEmpty(), String.join("\n", refused));
  }
}
