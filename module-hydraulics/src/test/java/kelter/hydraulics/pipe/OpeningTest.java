package kelter.hydraulics.pipe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import kelter.hydraulics.water.Water;
import kelter.testkit.ledger.OutsideCheck;
import kelter.testkit.ledger.Worth;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OpeningTest {

  /** ISO 80000-3 g and a head of 1 m: 4.4287 m/s (any table of free fall, sqrt(2 g h)). */
  @Test
  void torricelli() {
    assertEquals(4.4287, TorricelliJet.flow(1, 1), 0.6e-4);
    assertEquals(1, TorricelliJet.head(1, 4.4287), 0.3e-4);
  }

  /**
   * Crane TP-410, problem 7.23: 2 in orifice in 4 in pipe, flow coefficient 0.625 with the approach
   * velocity in it, 4.4 in of mercury under water at 60 °F: 106 US gal/min. The differential head
   * is 4.4 in times 12.57 (mercury under water) = 1.405 m.
   */
  @OutsideCheck(of = "jet-flow", against = "Crane TP-410, problem 7.23")
  @Test
  void orificeOfAHandbook() {
    double area = 0.625 * Math.PI / 4 * 0.0508 * 0.0508;
    double gallonsPerMinute = TorricelliJet.flow(area, 4.4 * 0.0254 * 12.57) / 6.30902e-5;
    assertEquals(106, gallonsPerMinute, 0.7);
  }

  /** A sharp-edged hole with C 0.62 (handbooks: 0.60 to 0.62); 10 kPa before 100 mm2 at 20 °C. */
  @Test
  void jetsByName() {
    double[] out = TorricelliJet.calculation().law().apply(new double[] {1e4, 1e-4, 0.62, 293.15});
    // Arithmetic on 998.2065 kg/m3: sqrt(2 * 1e4 / 998.2065) = 4.47616 m/s.
    assertEquals(0.62e-4 * 4.47616, out[0], 1e-9);
    assertEquals(Water.at(293.15).head(1e4), TorricelliJet.head(0.62e-4, out[0]), 1e-9);
  }

  /**
   * An orifice in a pipe, by the loss that handbooks give for it: Idelchik, Handbook of Hydraulic
   * Resistance, thin sharp-edged orifice in a straight pipe (diagram 4-14), from memory: 47.8 for
   * an open share of 0.2, 3.8 for 0.5. Contraction formulas differ by a quarter.
   */
  @OutsideCheck(
      of = "blocked-bore",
      against = "Idelchik, diagram 4-14, within a quarter",
      worth = Worth.FROM_MEMORY)
  @Test
  void blockedBoreAgainstAHandbook() {
    assertEquals(47.8, BlockedBore.lossCoefficient(0.2), 0.25 * 47.8);
    assertEquals(3.8, BlockedBore.lossCoefficient(0.5), 0.25 * 3.8);
  }

  @Test
  void openBoreTakesNothing() {
    assertEquals(0, BlockedBore.lossCoefficient(1), 1e-15);
    assertThrows(IllegalArgumentException.class, () -> BlockedBore.lossCoefficient(0));
  }

  /**
   * J. Weisbach measured the loss of a diaphragm at the mouth of a pipe (Encyclopaedia Britannica,
   * 11th edition, vol. 14, Hydraulics, abrupt contraction of section): 231.7, 50.99 and 19.78 for
   * an open share of 0.1, 0.2 and 0.3. The wide stream before it contracts up to 8 % more than one
   * in the pipe would.
   */
  @OutsideCheck(
      of = "blocked-bore",
      against = "measurements of Weisbach, Encyclopaedia Britannica, 11th edition")
  @ParameterizedTest
  @CsvSource({"0.1, 231.7", "0.2, 50.99", "0.3, 19.78"})
  void blockedBoreAgainstMeasurements(double open, double loss) {
    assertEquals(loss, BlockedBore.lossCoefficient(open), 0.08 * loss);
  }

  /**
   * The Python package fluids, documentation of discharge_coefficient_to_K, after ISO 5167-2: an
   * orifice of 50 mm in a pipe of 73.66 mm with a discharge coefficient of 0.61512 takes 5.231
   * velocity heads.
   */
  @OutsideCheck(
      of = "blocked-bore",
      against = "ISO 5167-2 by the Python package fluids, within 3 %")
  @Test
  void blockedBoreAgainstTheOrificeOfAStandard() {
    double open = 0.05 * 0.05 / (0.07366 * 0.07366);
    assertEquals(5.231, BlockedBore.lossCoefficient(open), 0.03 * 5.231);
  }
}
