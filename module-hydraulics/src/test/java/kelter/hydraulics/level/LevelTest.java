package kelter.hydraulics.level;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import kelter.core.module.Computation;
import kelter.core.problem.InputException;
import kelter.hydraulics.water.Water;
import org.junit.jupiter.api.Test;

class LevelTest {

  /** Arithmetic on the density of IAPWS R6-95: 100 mm of water at 20 °C are 978.9 Pa. */
  @Test
  void withoutAirTheTrapShowsTheWater() {
    double[] out =
        AirTrap.pressureByHeightCalculation().law().apply(new double[] {0.1, 0, 293.15, 101_325});
    assertEquals(978.9, out[0], 0.05);
    assertEquals(0, out[1]);
  }

  /**
   * Boyle's law by the diver's rule: where the pressure has doubled, the air has half its volume.
   * With air as heavy as 10 m of water and a column of 1 m that is at 10.5 m.
   */
  @Test
  void divingBell() {
    assertEquals(0.5, AirTrap.rise(10.5, 1, 10), 1e-12);
  }

  /** At three times the pressure a third is left. */
  @Test
  void deeperDivingBell() {
    assertEquals(2.0 / 3, AirTrap.rise(20 + 2.0 / 3, 1, 10), 1e-12);
  }

  @Test
  void heightAndPressureAreInverse() {
    Water water = Water.at(313.15);
    double rise = AirTrap.rise(0.12, 0.3, water.head(98_000));
    double pressure = water.pressure(0.12 - rise);
    assertEquals(0.12, AirTrap.height(pressure, 0.3, water, 98_000), 1e-12);
  }

  /**
   * 1 millibar litre in a second is 0.1 Pa m3/s (definition, vacuum handbooks): 1 L falling by 100
   * Pa.
   */
  @Test
  void leakRate() {
    double[] out = PressureDecay.calculation().law().apply(new double[] {1000, 900, 1, 1e-3});
    assertEquals(0.1, out[1], 1e-12);
  }

  /** A half-life of 69.3 s is a time constant of 100 s (ln 2 = 0.693, any table). */
  @Test
  void halfLife() {
    assertEquals(100, PressureDecay.timeConstant(1000, 500, 69.3), 0.05);
  }

  @Test
  void risingPressureIsNoLeak() {
    InputException refused =
        assertThrows(
            InputException.class,
            () ->
                Computation.of(
                    PressureDecay.calculation(),
                    Map.of("start", "900 Pa", "end", "1 kPa", "time", "60 s")));
    assertTrue(refused.getMessage().contains("no leak"), refused.getMessage());
  }
}
