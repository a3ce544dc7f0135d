package kelter.costing;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kelter.core.module.Calculation;
import kelter.core.module.Computation;
import kelter.core.module.Parameter;
import kelter.core.problem.InputException;
import kelter.testkit.CalculationRules;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every limit that a calculation prints is one that it takes, the other figures being ordinary. */
class PrintedLimitsTest {

  /** Figures that go together, by parameter, where nothing is usual. */
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
          Map.entry("energy-price", "0.30"),
          Map.entry("per-kwh", "0.4 kg"),
          Map.entry("making", "300 kg"),
          Map.entry("work", "1 h"),
          Map.entry("hour", "40"),
          Map.entry("demand", "12"),
          Map.entry("delivery", "10 d"));

  static List<Calculation> calculations() {
    return new CostingModule().calculations();
  }

  @ParameterizedTest
  @MethodSource("calculations")
  void everyLimitIsTaken(Calculation calculation) {
    List<String> refused = new ArrayList<>();
    for (Parameter parameter : calculation.parameters()) {
      for (String printed : CalculationRules.printedLimits(parameter)) {
        tryOut(calculation, parameter.id(), printed, refused);
      }
    }
    assertTrue(refused.isEmpty(), String.join("\n", refused));
  }

  private static void tryOut(
      Calculation calculation, String id, String limit, List<String> refused) {
    Map<String, String> given = new HashMap<>();
    for (Parameter parameter : calculation.parameters()) {
      if (parameter.usual().isEmpty()) {
        given.put(parameter.id(), ordinary(calculation, parameter));
      }
    }
    if (calculation.id().equals("pay-back") && !id.equals("outlay")) {
      given.put("outlay", "0.001"); // what the least saving and the highest rate still pay back
    } else if (calculation.id().equals("pay-back")) {
      given.put("saving", "5e11");
    }
    given.put(id, limit);
    try {
      Computation.of(calculation, given);
    } catch (InputException no) {
      refused.add("%s with %s = %s: %s".formatted(calculation.id(), id, limit, no.getMessage()));
    }
  }

  /** The energy of one is that of a cycle, of the other that of a year. */
  private static String ordinary(Calculation calculation, Parameter parameter) {
    if (parameter.id().startsWith("energy") && !parameter.kind().isMoney()) {
      return calculation.id().equals("running-cost") ? "1 kWh" : "200 kWh/a";
    }
    return ORDINARY.get(parameter.id());
  }
}
