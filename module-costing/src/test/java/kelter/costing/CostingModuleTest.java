package kelter.costing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.util.Map;
import kelter.core.module.Calculation;
import kelter.core.module.CalculationModule;
import kelter.core.module.Computation;
import kelter.core.problem.InputException;
import org.junit.jupiter.api.Test;

class CostingModuleTest {

  private static final CalculationModule MODULE = new CostingModule();

  private static Computation compute(String id, Map<String, String> given) {
    Calculation calculation =
        MODULE.calculations().stream().filter(c -> c.id().equals(id)).findFirst().orElseThrow();
    return Computation.of(calculation, given);
  }

  private static double result(Computation computation, int place) {
    return computation.results().get(place).quantity().value();
  }

  @Test
  void isAProvider() {
    assumeTrue(CostingModule.class.getModule().isNamed(), "a class path has no descriptors");
    assertTrue(
        CostingModule.class.getModule().getDescriptor().provides().stream()
            .anyMatch(p -> p.providers().contains(CostingModule.class.getName())));
    assertTrue(MODULE.weigher().isPresent());
  }

  /** NIST/SEMATECH e-Handbook 8.4.1.3, hours; what is left by integration outside the project. */
  @Test
  void remainingLifeByName() {
    Computation computation =
        compute(
            "remaining-life",
            Map.of("mean", "540.7370 h", "shape", "1.7208", "age", "500 h", "within", "100 h"));
    assertEquals(303.117, result(computation, 0), 0.02);
    assertEquals(23.2274, result(computation, 2), 0.001);
  }

  /** Worked exercise at 15 % (wizedu.com, question 1097152): printed 15 820. */
  @Test
  void annualCostByName() {
    Computation computation =
        compute(
            "annual-cost",
            Map.of(
                "outlay", "20000",
                "running", "8500",
                "salvage", "5000",
                "life", "3 a",
                "rate", "15 %"));
    assertEquals(15_820, result(computation, 0), 0.5);
  }

  /** NIST Handbook 135 at 3 %: SPV of 10 years 0.7441, UPV of 10 years 8.5302. */
  @Test
  void presentValuesByName() {
    Map<String, String> ten = Map.of("amount", "1000", "time", "10 a");
    assertEquals(744.1, result(compute("present-value", ten), 0), 0.05);
    assertEquals(8530.2, result(compute("annuity", ten), 0), 0.05);
    assertEquals(0.11723, result(compute("annuity", ten), 1), 0.5e-5);
  }

  @Test
  void repairOrReplaceByName() {
    Computation computation =
        compute(
            "repair-or-replace",
            Map.of("repair", "200", "left", "3 a", "price", "600", "life", "10 a", "rate", "5 %"));
    assertEquals(77.7027, result(computation, 1), 0.5e-4);
    assertEquals(211.604, result(computation, 2), 0.5e-3);
    assertTrue(result(computation, 0) < result(computation, 1));
  }

  @Test
  void applianceLifeByName() {
    Computation young = compute("appliance-life", Map.of("kind", "dishwasher", "age", "2 a"));
    assertTrue(result(young, 1) < result(young, 0) && result(young, 0) < result(young, 2));
    compute("appliance-life", Map.of("age", "200 a"));
    compute("appliance-life", Map.of("age", "0 a ± 0.5"));
  }

  @Test
  void whatIsOutOfRangeIsRefused() {
    assertThrows(InputException.class, () -> compute("appliance-life", Map.of("age", "-1 a")));
    assertThrows(
        InputException.class,
        () -> compute("remaining-life", Map.of("mean", "0 a", "shape", "2", "age", "1 a")));
    assertThrows(
        InputException.class, () -> compute("annual-cost", Map.of("outlay", "100", "life", "0 a")));
  }
}
