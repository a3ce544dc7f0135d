package kelter.hydraulics.level;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import kelter.core.module.Computation;
import kelter.core.problem.InputException;
import kelter.hydraulics.water.Water;
import kelter.testkit.ledger.OutsideCheck;
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

  /**
   * Worked example (byjus.com, an inverted bell in a lake): 47.6 m deep, air at 70 cm of mercury of
   * 13.6 g/cm3, the air has a sixth of the volume that it has at the surface. 47.6 m are from the
   * surface of the lake to that in the bell, whose water has risen by five sixths of it.
   */
  @OutsideCheck(
      of = "air-trap-pressure",
      against = "worked example, byjus.com: how far water rises in a bell")
  @OutsideCheck(of = "air-trap-height", against = "worked example, byjus.com: a bell in a lake")
  @Test
  void bellInALake() {
    double airHead = 0.70 * 13.6;
    double length = 0.3;
    assertEquals(5.0 / 6 * length, AirTrap.rise(47.6 + 5.0 / 6 * length, length, airHead), 1e-9);
    Water cold = Water.at(277.13); // 4 °C, 1000 kg/m3 within 3e-5
    double air = cold.pressure(airHead);
    assertEquals(
        47.6 + 5.0 / 6 * length, AirTrap.height(cold.pressure(47.6), length, cold, air), 1e-9);
  }

  /**
   * A problem of school physics (xiaoyuandeng.com): air of 0.50 m3 and one atmosphere in a cylinder
   * that is open below has 0.40 m3 when it floats lower; the water stands 2.5 m lower inside than
   * outside, with 10 m of water for the atmosphere.
   */
  @OutsideCheck(of = "air-trap-pressure", against = "school problem, xiaoyuandeng.com")
  @Test
  void floatingCylinder() {
    double length = 1.2;
    assertEquals(0.2 * length, AirTrap.rise(2.5 + 0.2 * length, length, 10), 1e-9);
  }

  /**
   * California's leak test of fuel stations, TP-201.3 (1996), equation 9-1: of 2 in of water in a
   * space of V gallons 2 exp(-500.887/V) must be left after five minutes. With 500.887 gallons that
   * is a time constant of five minutes, and exp(-1/5), 81.87 %, are kept after one.
   */
  @OutsideCheck(of = "pressure-decay", against = "California TP-201.3 (1996), equation 9-1")
  @Test
  void leakTestOfARegulation() {
    double inch = 249.089; // Pa, conventional inch of water
    double[] out =
        PressureDecay.calculation()
            .law()
            .apply(new double[] {2 * inch, 2 * inch * 0.36788, 300, 1e-2});
    assertEquals(300, out[0], 0.01);
    assertEquals(0.8187, out[2], 0.5e-4);
  }
}
