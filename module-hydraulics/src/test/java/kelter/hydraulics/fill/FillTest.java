package kelter.hydraulics.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.Map;
import kelter.core.module.Computation;
import kelter.core.problem.InputException;
import kelter.core.quantity.Unit;
import kelter.hydraulics.pipe.Hose;
import kelter.hydraulics.water.Water;
import kelter.testkit.ledger.OutsideCheck;
import kelter.testkit.ledger.Worth;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FillTest {

  private static final double PSI = 6894.757; // Pa
  private static final double FOOT = 0.3048; // m

  /**
   * IEC 60534-2-1, definition: a valve of Kv 1 m3/h passes 1 m3/h of water at 1 bar, 2 at 4 bar.
   */
  @OutsideCheck(of = "valve-flow", against = "IEC 60534-2-1, definition of Kv")
  @Test
  void definitionOfTheFlowCoefficient() {
    assertEquals(1 / 3600.0, FlowCoefficient.flow(1 / 3600.0, 1e5, 1000), 1e-15);
    assertEquals(2 / 3600.0, FlowCoefficient.flow(1 / 3600.0, 4e5, 1000), 1e-15);
    assertEquals(4e5, FlowCoefficient.drop(1 / 3600.0, 2 / 3600.0, 1000), 1e-6);
  }

  /** Valve handbooks: Kv = 0.865 Cv, Cv being US gallons in a minute at 1 psi. */
  @OutsideCheck(of = "valve-flow", against = "valve handbooks, Kv = 0.865 Cv")
  @Test
  void americanCoefficient() {
    double flow = FlowCoefficient.flow(0.865 / 3600, PSI, 999);
    assertEquals(1, flow / 6.30902e-5, 0.001);
  }

  /**
   * Series of square laws, arithmetic: a tap of 20 L/min at 300 kPa alone, and a valve of 12 L/min
   * at 1 bar, give sqrt(3) / sqrt(3 / 400 + 1 / 144) = 14.41 L/min (1000 kg/m3, no hose).
   */
  @Test
  void tapAndValveInSeries() {
    FillPath path =
        new FillPath(
            300_000,
            20 / 60_000.0,
            new Hose(0, 0.01, 0, 0),
            12 / 60_000.0,
            Double.POSITIVE_INFINITY);
    assertEquals(14.41, path.flow(Water.at(288.15)) * 60_000, 0.02);
  }

  /** A regulator washer of 8 L/min: 16 L take 120 s. */
  @Test
  void regulatorHolds() {
    Computation computation =
        Computation.of(
            FillPath.calculation(),
            Map.of(
                "volume", "16 L",
                "static-pressure", "3 bar",
                "tap-flow", "20 L/min",
                "regulated-flow", "8 L/min"));
    assertEquals(120, computation.results().get(1).quantity().value(), 1e-6);
  }

  /** The pressure before the valve closes the balance: nothing is lost between tap and tub. */
  @Test
  void weakSupplyFillsSlowly() {
    FillPath path =
        new FillPath(40_000, 6 / 60_000.0, new Hose(1.5, 0.01, 0, 4), 12 / 60_000.0, 8 / 60_000.0);
    Water cold = Water.at(288.15);
    double flow = path.flow(cold);
    assertTrue(flow < 6 / 60_000.0);
    assertEquals(
        path.valvePressure(flow, cold),
        FlowCoefficient.drop(12 / 60_000.0, flow, cold.density()),
        0.1);
  }

  @Test
  void noPressureNoWater() {
    InputException refused =
        assertThrows(
            InputException.class,
            () ->
                Computation.of(
                    FillPath.calculation(),
                    Map.of(
                        "volume", "16 L",
                        "static-pressure", "0 bar",
                        "tap-flow", "20 L/min")));
    assertTrue(refused.getMessage().contains("0 bar is outside 1 kPa"), refused.getMessage());
  }

  /**
   * AWWA C900 and M23, from memory: surge of 1 ft/s in PVC pipe by its ratio of diameter to wall:
   * 19.8 psi (14), 17.4 (18), 14.7 (25), with 400 000 psi for the wall and 300 000 psi for the
   * water, 6 % less than White's figure, which makes the surge up to 2 % less.
   */
  @OutsideCheck(
      of = "pressure-surge",
      against = "AWWA C900 and M23, within 2 %",
      worth = Worth.FROM_MEMORY)
  @ParameterizedTest
  @CsvSource({"14, 19.8", "18, 17.4", "25, 14.7"})
  void surgeInPlasticPipe(double ratio, double psi) {
    double wave = JoukowskySurge.waveSpeed(999, ratio - 2, 1, 400_000 * PSI);
    assertEquals(psi, JoukowskySurge.surge(999, wave, FOOT) / PSI, 0.02 * psi);
  }

  /** Sound in water at 20 °C: 1482 m/s (any handbook); the wave in a rigid pipe is that fast. */
  @Test
  void rigidPipe() {
    assertEquals(1482, JoukowskySurge.waveSpeed(998.2, 0.01, 1e-3, Double.POSITIVE_INFINITY), 5);
  }

  /** A valve that takes ten times the time of the wave raises a tenth (Michaud). */
  @Test
  void slowClosing() {
    Map<String, String> given =
        Map.of("flow", "10 L/min", "bore", "13 mm", "length", "10 m", "closing-time", "1 ms");
    Computation sudden = Computation.of(JoukowskySurge.calculation(), given);
    double full = sudden.results().get(0).quantity().in(Unit.of("Pa")).value();
    double within = sudden.results().get(2).quantity().in(Unit.of("s")).value();
    Map<String, String> slow = new HashMap<>(given);
    slow.put("closing-time", 10 * within + " s");
    assertEquals(
        full / 10,
        Computation.of(JoukowskySurge.calculation(), slow)
            .results()
            .get(0)
            .quantity()
            .in(Unit.of("Pa"))
            .value(),
        1e-6 * full);
  }

  /**
   * Worked example of a course (New Mexico State University, Soils 456, chapter 8): PVC pipe of
   * 1.66 in with a wall of 0.14 in and 400 000 psi, 1 ft/s stopped: 20.3 psi. It takes 294 000 psi
   * for the water, 7 % less than White's figure.
   */
  @OutsideCheck(
      of = "pressure-surge",
      against = "New Mexico State University, Soils 456, chapter 8")
  @Test
  void surgeOfAWorkedExample() {
    double wave = JoukowskySurge.waveSpeed(999, 1.66, 0.14, 400_000 * PSI);
    assertEquals(20.3, JoukowskySurge.surge(999, wave, FOOT) / PSI, 0.01 * 20.3);
  }
}
