package kelter.hydraulics.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import kelter.core.module.Computation;
import kelter.core.problem.InputException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WaterTest {

  @ParameterizedTest
  @ValueSource(doubles = {140, -40, Double.NaN, Double.POSITIVE_INFINITY})
  void refusesWhatIsNotWater(double celsius) {
    IllegalArgumentException refused =
        assertThrows(IllegalArgumentException.class, () -> Water.at(celsius + 273.15));
    assertTrue(refused.getMessage().contains("outside 0"), refused.getMessage());
  }

  @Test
  void tellsAPersonThatTheTemperatureIsTooHigh() {
    InputException refused =
        assertThrows(
            InputException.class,
            () -> Computation.of(Water.calculation(), Map.of("temperature", "140 Cel")));
    assertTrue(refused.getMessage().contains("140"), refused.getMessage());
  }

  /** Uncertain by 1 K at the very end of the range. */
  @Test
  void carriesAnUncertaintyOverTheEndOfItsRange() {
    Computation at100 = Computation.of(Water.calculation(), Map.of("temperature", "100 Cel ± 2"));
    assertTrue(at100.results().get(0).quantity().standardUncertainty() > 0.1);
  }

  /** One metre of water at 20 °C, arithmetic on 998.2065 kg/m3 (IAPWS R6-95): 9.7891 kPa. */
  @Test
  void turnsHeadIntoPressureAndBack() {
    Water water = Water.at(293.15);
    assertEquals(9789.06, water.pressure(1), 0.05);
    assertEquals(1, water.head(water.pressure(1)), 1e-12);
  }

  /** 100 mm at 20 °C: 978.9 Pa, arithmetic on the density. */
  @Test
  void hundredMillimetres() {
    assertEquals(978.9, Water.at(293.15).pressure(0.1), 0.05);
  }
}
