package coffee.grinder;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import kelter.core.module.Calculation;
import kelter.core.module.Computation;
import org.junit.jupiter.api.Test;

class GrindTest {

  private static double result(Calculation calculation, int output, Map<String, String> values) {
    return Computation.of(calculation, values).results().get(output).quantity().si();
  }

  /** Arithmetic: 18 g at 2 g/s are 9 s; where a quarter of the rate is lost, 12 s. */
  @Test
  void timeOfADose() {
    assertEquals(
        9, result(GrindTime.calculation(), 0, Map.of("dose", "18 g", "rate", "2 g/s")), 1e-9);
    assertEquals(
        12,
        result(GrindTime.calculation(), 0, Map.of("dose", "18 g", "rate", "2 g/s", "lost", "25 %")),
        1e-9);
  }

  /** Arithmetic: 17.8, 18.0 and 18.2 g have the mean 18.0 g and the deviation sqrt(0.08 / 2). */
  @Test
  void scatterOfDoses() {
    Map<String, String> doses = Map.of("first", "17.8 g", "second", "18 g", "third", "18.2 g");
    assertEquals(0.018, result(DoseScatter.calculation(), 0, doses), 1e-12);
    assertEquals(2e-4, result(DoseScatter.calculation(), 1, doses), 1e-12);
  }

  /** Arithmetic: 150 of 600 kg are a quarter; 900 kg are more than all. */
  @Test
  void lifeOfBurrs() {
    assertEquals(
        0.25,
        result(BurrLife.calculation(), 0, Map.of("throughput", "150 kg", "rated", "600 kg")),
        1e-12);
    assertEquals(
        1,
        result(BurrLife.calculation(), 0, Map.of("throughput", "900 kg", "rated", "600 kg")),
        1e-12);
  }
}
