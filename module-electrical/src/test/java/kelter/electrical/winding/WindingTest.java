package kelter.electrical.winding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WindingTest {

  /**
   * Worked examples of the measure of NEMA MG-1, 12.45: a standard's text and motor notes. Those
   * printed with one decimal were rounded, or cut, on the way: 0.06 points.
   */
  @ParameterizedTest
  @CsvSource({
    "460, 467, 450, 1.96, 0.005",
    "203, 210, 212, 2.5, 0.065",
    "462, 463, 455, 1.1, 0.05",
    "480, 476, 472, 0.84, 0.005"
  })
  void unbalanceOfVoltages(double a, double b, double c, double percent, double tolerance) {
    assertEquals(percent, 100 * PhaseUnbalance.unbalance(a, b, c), tolerance);
  }

  /**
   * NEMA MG-1, figure 14-1, read off by two works (2 % and 3 %); 4 % and 5 % from memory. Read off
   * a curve: 0.02.
   */
  @ParameterizedTest
  @CsvSource({"0.5, 1.00", "1, 1.00", "2, 0.95", "3, 0.90", "4, 0.82", "5, 0.75"})
  void derating(double percent, double factor) {
    assertEquals(factor, PhaseUnbalance.derating(percent / 100), 0.02);
  }

  @Test
  void aboveFivePercentThereIsNoFactor() {
    assertThrows(IllegalArgumentException.class, () -> PhaseUnbalance.derating(0.051));
    assertThrows(IllegalArgumentException.class, () -> PhaseUnbalance.derating(Double.NaN));
    assertThrows(
        IllegalArgumentException.class, () -> PhaseUnbalance.unbalance(400, 400, Double.NaN));
  }

  /** Arithmetic on the star-delta formula: 10, 20 and 30 ohm in delta. */
  @Test
  void starOfADelta() {
    StarDelta star = StarDelta.ofDelta(10, 20, 30);
    assertEquals(5, star.a(), 1e-9);
    assertEquals(3.333, star.b(), 0.0005);
    assertEquals(10, star.c(), 1e-9);
    assertEquals(8.333, star.a() + star.b(), 0.0005);
  }

  /** The reading from a to b is also 10 ohm beside 20 and 30 ohm in series (parallel circuit). */
  @Test
  void bothWaysRoundTheDeltaAgree() {
    StarDelta star = StarDelta.ofDelta(10, 20, 30);
    assertEquals(1 / (1.0 / 10 + 1.0 / 50), star.a() + star.b(), 1e-9);
    StarDelta balanced = StarDelta.ofDelta(30, 30, 30);
    assertEquals(20, balanced.a() + balanced.b(), 1e-9);
  }

  /**
   * The textbook motor of four poles on 60 Hz: 1800 rpm synchronous, 1725 rpm at load, slip 4.17 %
   * (from memory, arithmetic on the definition); on 50 Hz 1500 rpm.
   */
  @Test
  void slipOfAFourPoleMotor() {
    assertEquals(1800, 60 * Slip.synchronousSpeed(60, 4), 1e-9);
    assertEquals(1500, 60 * Slip.synchronousSpeed(50, 4), 1e-9);
    assertEquals(4.17, 100 * Slip.slip(1725 / 60.0, 30), 0.005);
    assertThrows(IllegalArgumentException.class, () -> Slip.synchronousSpeed(50, 3));
  }

  /**
   * JCGM 100:2008, H.2, Tables H.2 and H.3: 4.9990 V, 19.6610 mA, R 127.732 ohm, X 219.847 ohm, Z
   * 254.260 ohm. The printed digits of V and I leave 0.005 ohm.
   */
  @Test
  void impedanceOfTheGuideToUncertainty() {
    double impedance = CoilImpedance.impedance(4.9990, 19.6610e-3);
    assertEquals(254.260, impedance, 0.005);
    assertEquals(219.847, CoilImpedance.reactance(impedance, 127.732), 0.005);
  }

  /** A right triangle of 3, 4 and 5: arithmetic on Pythagoras. */
  @Test
  void reactanceIsTheOtherSide() {
    assertEquals(400, CoilImpedance.reactance(500, 300), 1e-9);
    assertThrows(IllegalArgumentException.class, () -> CoilImpedance.reactance(300, 500));
  }

  /**
   * Handbook constants of half-wave rectification: mean 0.450 U, effective 0.707 U (from memory).
   */
  @Test
  void halfWave() {
    assertEquals(0.450, HalfWave.mean(1), 0.0005);
    assertEquals(103.5, HalfWave.mean(230), 0.12);
    assertEquals(0.707, HalfWave.CALCULATION.law().apply(new double[] {1})[1], 0.0005);
  }

  /**
   * JCGM 100:2008, H.2, Table H.2: the phase angle is 1.04446 rad, so that the power factor is
   * cos(1.04446); the power is the current squared times R of Table H.3. Printed digits: 2e-5.
   */
  @Test
  void powerFactorOfTheGuideToUncertainty() {
    double power = 19.6610e-3 * 19.6610e-3 * 127.732;
    assertEquals(Math.cos(1.04446), PowerFactor.factor(power, 4.9990, 19.6610e-3), 3e-5);
    assertThrows(IllegalArgumentException.class, () -> PowerFactor.factor(500, 230, 2));
  }

  /** Arithmetic on the definition: a motor of 2.2 kW at 230 V and 13 A. */
  @Test
  void powerFactorOfAMotor() {
    assertEquals(0.736, PowerFactor.factor(2200, 230, 13), 0.0005);
  }

  /**
   * Arithmetic on the definition: 9 of 12 ohm leave a quarter missing. IEC 60228 annex: a reading
   * at 60 °C times 0.862 is the one at 20 °C, within 0.5 %.
   */
  @Test
  void shareOfTurnsMissing() {
    assertEquals(0.25, ShortedTurns.missing(9, 12), 1e-12);
    double[] warm = ShortedTurns.CALCULATION.law().apply(new double[] {12, 12, 333.15});
    assertEquals(12 * 0.862, warm[1], 0.005 * 12);
  }
}
