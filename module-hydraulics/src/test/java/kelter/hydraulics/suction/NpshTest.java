package kelter.hydraulics.suction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import kelter.core.module.Computation;
import kelter.hydraulics.pipe.Hose;
import kelter.hydraulics.water.Water;
import kelter.testkit.ledger.OutsideCheck;
import kelter.testkit.ledger.Worth;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NpshTest {

  private static final double FOOT = 0.3048; // m
  private static final double PSI = 6894.757; // Pa

  /**
   * Crane TP-410, problem 7.32: 5 psi on the water, 60 °F, 25 ft of lift, 6 ft of loss, air at 14.7
   * psi: 13.89 ft, printed 4.233 m.
   */
  @OutsideCheck(of = "npsh-available", against = "Crane TP-410, problem 7.32")
  @Test
  void suctionOfAHandbook() {
    Water water = Water.at((60 + 459.67) / 1.8);
    double npsh = NpshAvailable.of(water, (5 + 14.7) * PSI, -25 * FOOT, 6 * FOOT);
    assertEquals(4.233, npsh, 0.02);
    // The same handbook takes 0.256 psi for the vapour.
    assertEquals(0.256, water.vapourPressure() / PSI, 0.001);
  }

  /**
   * Arithmetic on IAPWS figures: an open sump of water at 80 °C (971.79 kg/m3, 47.41 kPa) with the
   * water 50 mm above the pump and no loss offers (101.325 - 47.415) kPa / (971.79 * 9.80665) +
   * 0.05 = 5.707 m.
   */
  @Test
  void hotSump() {
    Computation computation =
        Computation.of(
            NpshAvailable.calculation(), Map.of("level", "0.05 m", "temperature", "80 Cel"));
    assertEquals(5.707, computation.results().get(0).quantity().value(), 0.001);
  }

  /** At 100 °C an open sump offers nothing but the height of the water (definition of boiling). */
  @Test
  void boilingSump() {
    assertEquals(0.1, NpshAvailable.of(Water.at(373.124), Water.STANDARD_ATMOSPHERE, 0.1, 0), 0.01);
  }

  @Test
  void cavitationSetsInSoonerWhenItIsHot() {
    Hose filter = new Hose(0.1, 0.026, 0, 40);
    double cold =
        NpshAvailable.onsetOfCavitation(
            Water.at(293.15), Water.STANDARD_ATMOSPHERE, 0.05, filter, 1);
    double hot =
        NpshAvailable.onsetOfCavitation(
            Water.at(353.15), Water.STANDARD_ATMOSPHERE, 0.05, filter, 1);
    assertTrue(hot < cold && hot > 0);
    assertEquals(
        0,
        NpshAvailable.onsetOfCavitation(
            Water.at(372.15), Water.STANDARD_ATMOSPHERE, 0.05, filter, 1));
  }

  /**
   * Crane TP-410, problem 7.32, read backwards: what is left of 13.89 ft after 6 ft of loss is the
   * pump's need, so cavitation begins where the loss is 6 ft. With a single loss coefficient of 1
   * that is a velocity of sqrt(2 g 6 ft) = 5.99 m/s, 47.0 L/s through 100 mm (arithmetic).
   */
  @OutsideCheck(of = "cavitation-onset", against = "Crane TP-410, problem 7.32, read backwards")
  @Test
  void onsetOfAHandbook() {
    double flow =
        NpshAvailable.onsetOfCavitation(
            Water.at((60 + 459.67) / 1.8),
            (5 + 14.7) * PSI,
            -25 * FOOT,
            new Hose(0, 0.1, 0, 1),
            13.89 * FOOT);
    assertEquals(0.0470, flow, 0.0003);
  }

  /**
   * By name, an open sump: 5.707 m at 80 °C and 50 mm (arithmetic above) with a need of 4.707 m
   * leave 1 m for a single loss coefficient of 1: sqrt(2 g) is 4.4287 m/s (free fall, any table),
   * 1.391 L/s through 20 mm.
   */
  @Test
  void onsetByName() {
    Computation computation =
        Computation.of(
            NpshAvailable.onsetCalculation(),
            Map.of(
                "npsh-required", "4.707 m",
                "level", "0.05 m",
                "temperature", "80 Cel",
                "length", "0 m",
                "bore", "20 mm",
                "loss-coefficient", "1"));
    assertEquals(1.391e-3, computation.results().get(0).quantity().si(), 0.002e-3);
  }

  /**
   * ANSI/HI 9.8-1998 gives the submergence in US units as S = D + 0.574 Q / D^1.5 (inches, US
   * gallons in a minute), from memory: 10 in and 2000 gpm need 46.3 in.
   */
  @OutsideCheck(
      of = "critical-submergence",
      against = "ANSI/HI 9.8-1998",
      worth = Worth.FROM_MEMORY)
  @Test
  void submergenceInUsUnits() {
    double inch = 0.0254;
    assertEquals(46.3, CriticalSubmergence.of(2000 * 6.30902e-5, 10 * inch) / inch, 0.1);
  }

  /** At a Froude number of 1 the standard asks for 3.3 diameters, without flow for one. */
  @Test
  void submergenceByFroude() {
    double flow = Math.sqrt(9.80665 * 0.02) * Math.PI / 4 * 0.02 * 0.02;
    assertEquals(3.3 * 0.02, CriticalSubmergence.of(flow, 0.02), 1e-9);
    assertEquals(0.02, CriticalSubmergence.of(0, 0.02));
  }

  /**
   * Bachus and Custodio, Know and Understand Centrifugal Pumps, chapter 2, figures 2-1 and 2-2
   * (civilengineeringhandbook.tk): an open tank at sea level, 6 ft above the pump, 70 °F, losses of
   * 2 and 2 ft: 33.9 + 6 - 0.839 - 4 = 35.061 ft; a lift of 8 ft at 7000 ft, where the air is 26.2
   * ft of water, 50 °F, losses of 1 and 2 ft, the vapour 0.411 ft: 14.79 ft.
   */
  @OutsideCheck(
      of = "npsh-available",
      against =
          "Bachus and Custodio, Know and Understand Centrifugal Pumps, figures 2-1 and" + " 2-2")
  @Test
  void tanksOfATextbook() {
    Water warm = Water.at((70 + 459.67) / 1.8);
    assertEquals(
        35.061 * FOOT,
        NpshAvailable.of(warm, warm.pressure(33.9 * FOOT), 6 * FOOT, 4 * FOOT),
        0.01);
    Water cold = Water.at((50 + 459.67) / 1.8);
    assertEquals(
        14.79 * FOOT,
        NpshAvailable.of(cold, cold.pressure(26.2 * FOOT), -8 * FOOT, 3 * FOOT),
        0.01);
  }

  /**
   * Worked figures by the American standard for pump intakes (eng-tips.com, thread 222509), to
   * three digits: 3200 US gallons in a minute through 16 in need 44.7 in, 1000 need 25 in.
   */
  @OutsideCheck(
      of = "critical-submergence",
      against = "worked figures, eng-tips.com, thread 222509")
  @ParameterizedTest
  @CsvSource({"3200, 44.7, 0.06", "1000, 25, 0.06"})
  void submergenceOfWorkedFigures(double gallons, double inches, double tolerance) {
    double flow = gallons * 6.30902e-5;
    assertEquals(inches, CriticalSubmergence.of(flow, 16 * 0.0254) / 0.0254, tolerance);
  }
}
