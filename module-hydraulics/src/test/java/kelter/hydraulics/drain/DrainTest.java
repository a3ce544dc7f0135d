package kelter.hydraulics.drain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.Map;
import kelter.core.module.Computation;
import kelter.core.problem.InputException;
import kelter.core.quantity.Unit;
import kelter.hydraulics.pipe.Hose;
import kelter.hydraulics.pipe.TorricelliJet;
import kelter.hydraulics.water.Water;
import kelter.testkit.ledger.OutsideCheck;
import kelter.testkit.ledger.Worth;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DrainTest {

  private static final double FOOT = 0.3048; // m

  /**
   * Çengel and Cimbala, Fluid Mechanics, Example 5-2, from memory: a tank of 3 ft diameter through
   * a hole of 0.5 in without loss, from 4 ft to 2 ft: 757 s.
   */
  @OutsideCheck(
      of = "drain-time",
      against = "Çengel and Cimbala, Fluid Mechanics, example 5-2, a tank with a hole",
      worth = Worth.FROM_MEMORY)
  @Test
  void tankOfATextbook() {
    double hole = Math.PI / 4 * Math.pow(0.5 / 12 * FOOT, 2);
    double tank = Math.PI / 4 * Math.pow(3 * FOOT, 2);
    double time = EmptyingTime.of(h -> TorricelliJet.flow(hole, h), tank, 4 * FOOT, 2 * FOOT);
    assertEquals(757, time, 1);
  }

  /**
   * Torricelli's time to empty wholly, t = (A / a) sqrt(2 h / g): 1 m2 through 1 cm2 from 1 m takes
   * 4516.0 s (arithmetic on g = 9.80665 m/s2). The flow dies away at the end; the quadrature holds.
   */
  @Test
  void emptiesToTheLastDrop() {
    assertEquals(4516.0, EmptyingTime.of(h -> TorricelliJet.flow(1e-4, h), 1, 1, 0), 0.05);
  }

  /** At constant flow the time is volume by flow: 10 L at 20 L/min take 30 s. */
  @Test
  void constantFlow() {
    assertEquals(30, EmptyingTime.of(h -> 20.0 / 60_000, 0.1, 0.15, 0.05), 1e-9);
  }

  /**
   * A pump of H = 2 m - a Q² against 1 m and K = 2 only: with Q = sqrt((H0 - z + h) / (a + b)) the
   * time has the closed form 2 A sqrt(a + b) (sqrt(H0 - z + h0) - sqrt(H0 - z + h1)), as for a tank
   * with a hole. Figures: run-out 40 L/min, bore 20 mm (b = 2 / (2 g A²) = 1 033 300), a = 2 / (40
   * L/min)² = 4 500 000.
   */
  @Test
  void closedFormOfAParabola() {
    Computation computation =
        Computation.of(
            DrainTime.calculation(),
            Map.ofEntries(
                Map.entry("shut-off-head", "2 m"),
                Map.entry("flow-1", "20 L/min"),
                Map.entry("head-1", "1.5 m"),
                Map.entry("flow-2", "40 L/min"),
                Map.entry("head-2", "0 m"),
                Map.entry("outlet-height", "1 m"),
                Map.entry("length", "0 m"),
                Map.entry("bore", "20 mm"),
                Map.entry("loss-coefficient", "2"),
                Map.entry("water-area", "0.1 m2"),
                Map.entry("start-level", "0.2 m")));
    // 0.2 * sqrt(5 533 300) * (sqrt(1.2) - 1) = 44.905 s
    assertEquals(44.905, computation.results().get(0).quantity().value(), 0.01);
    assertEquals(20, computation.results().get(2).quantity().in(Unit.of("L")).value(), 1e-6);
  }

  @Test
  void leavesWhatThePumpCannotLift() {
    Map<String, String> high =
        Map.ofEntries(
            Map.entry("shut-off-head", "1 m"),
            Map.entry("flow-1", "10 L/min"),
            Map.entry("head-1", "0.8 m"),
            Map.entry("flow-2", "20 L/min"),
            Map.entry("head-2", "0.2 m"),
            Map.entry("outlet-height", "1.1 m"),
            Map.entry("length", "1.5 m"),
            Map.entry("bore", "19 mm"),
            Map.entry("water-area", "0.1 m2"),
            Map.entry("start-level", "0.2 m"));
    Computation computation = Computation.of(DrainTime.calculation(), high);
    assertEquals(0.101, computation.results().get(1).quantity().in(Unit.of("m")).value(), 1e-6);
    Map<String, String> tooHigh = new HashMap<>(high);
    tooHigh.put("outlet-height", "1.5 m");
    InputException refused =
        assertThrows(InputException.class, () -> Computation.of(DrainTime.calculation(), tooHigh));
    assertTrue(refused.getMessage().contains("1 m at most"), refused.getMessage());
    tooHigh.put("outlet-height", "0.1 m");
    InputException siphons =
        assertThrows(InputException.class, () -> Computation.of(DrainTime.calculation(), tooHigh));
    assertTrue(siphons.getMessage().contains("by itself"), siphons.getMessage());
  }

  /**
   * Arithmetic on IAPWS properties and Colebrook's equation, done elsewhere: a smooth 20 mm hose
   * takes 0.04426 m for each metre at 15 L/min and 20 °C; so a drop of 0.08852 m drives 15 L/min
   * through 2 m.
   */
  @Test
  void siphon() {
    double flow =
        SiphonFlow.flow(0.08852, new Hose(2, 0.02, 0, 0), Water.at(293.15).kinematicViscosity());
    assertEquals(15, flow * 60_000, 0.002);
  }

  /**
   * Hagen-Poiseuille, Q = pi g h d⁴ / (128 nu L): 10 mm of drop, 2 m of 4 mm bore at 1.0034 mm2/s
   * give 3.07e-7 m3/s (arithmetic), far below Re 2000.
   */
  @Test
  void laminarSiphon() {
    double expected = Math.PI * 9.80665 * 0.01 * Math.pow(0.004, 4) / (128 * 1.0034e-6 * 2);
    assertEquals(3.07e-7, expected, 0.006e-7);
    assertEquals(expected, SiphonFlow.flow(0.01, new Hose(2, 0.004, 0, 0), 1.0034e-6), 1e-12);
  }

  @Test
  void siphonThroughNothingIsRefused() {
    assertThrows(
        IllegalArgumentException.class, () -> SiphonFlow.flow(0.1, new Hose(0, 0.02, 0, 0), 1e-6));
  }

  /** A metre of 20 mm bore holds 0.314 L, of 25.4 mm (1 in) 0.507 L: tables of pipe contents. */
  @Test
  void contentOfAHose() {
    assertEquals(0.314e-3, HoseBackflow.volume(0.02, 1), 0.6e-6);
    assertEquals(0.507e-3, HoseBackflow.volume(0.0254, 1), 0.6e-6);
  }

  /**
   * A fitting of K = 1 alone under a brim of 0.20394 m lets the water run at 2 m/s (velocity head
   * of 2 m/s, any table): through 40 mm 150.8 L/min (arithmetic on the circle).
   */
  @Test
  void standpipe() {
    double[] out =
        StandpipeOverflow.calculation()
            .law()
            .apply(new double[] {100 / 60_000.0, 0.20394, 0, 0.04, 1, 293.15});
    assertEquals(150.8, out[0] * 60_000, 0.06);
    assertEquals(50.8, out[1] * 60_000, 0.06);
  }

  /**
   * Contents of hoses as fire services take them (nwcg.gov, Table 3.1, water handling unit
   * estimations), US gallons to a tenth: 1.5 in by 100 ft 9.2, 1 in by 100 ft 4.1, 3/4 in by 50 ft
   * 1.2, 5/8 in by 50 ft 0.8; the level rises by the content over the plan area.
   */
  @OutsideCheck(
      of = "hose-backflow",
      against = "nwcg.gov, water handling unit estimations, Table 3.1")
  @ParameterizedTest
  @CsvSource({"1.5, 100, 9.2", "1, 100, 4.1", "0.75, 50, 1.2", "0.625, 50, 0.8"})
  void contentOfFireHoses(double inches, double feet, double gallons) {
    double litres = 1000 * HoseBackflow.volume(inches * 0.0254, feet * FOOT);
    assertEquals(gallons, litres / 3.785412, 0.06);
  }
}
