package kelter.hydraulics.pipe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import kelter.hydraulics.pipe.FrictionFactor.Regime;
import kelter.hydraulics.water.Water;
import kelter.testkit.ledger.OutsideCheck;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FrictionTest {

  /** The Python package fluids, documentation of Colebrook, printed to 17 digits. */
  @OutsideCheck(
      of = "friction-factor",
      against = "documentation of the Python package fluids, Colebrook")
  @Test
  void colebrookAsOthersSolvedIt() {
    assertEquals(0.018513866, ColebrookWhite.factor(1e5, 1e-4), 0.5e-9);
  }

  /** Colebrook's equation as solved elsewhere, printed to five decimals. */
  @ParameterizedTest
  @CsvSource({
    "1e5, 0, 0.01799",
    "1e4, 0, 0.03088",
    "1e4, 1e-3, 0.03238",
    "5e4, 1e-3, 0.02402",
    "1e6, 1e-3, 0.01994",
    "1e5, 0.01, 0.03850"
  })
  void colebrookAtMorePoints(double reynolds, double roughness, double factor) {
    assertEquals(factor, FrictionFactor.value(reynolds, roughness), 0.6e-5);
  }

  /** Swamee and Jain 1976, 0.0184524 (fluids), within the 1 % that they claim. */
  @OutsideCheck(of = "friction-factor", against = "Swamee and Jain 1976 by fluids, within 1 %")
  @Test
  void agreesWithTheExplicitEquation() {
    assertEquals(0.0184524, FrictionFactor.value(1e5, 1e-4), 0.01 * 0.0184524);
  }

  /** Crane TP-410, problem 7.9: Re 1675.62, f 0.0381949. */
  @OutsideCheck(of = "friction-factor", against = "Crane TP-410, problem 7.9")
  @Test
  void laminar() {
    FrictionFactor factor = FrictionFactor.of(1675.62, 0);
    assertEquals(0.0381949, factor.value(), 0.5e-6);
    assertEquals(Regime.LAMINAR, factor.regime());
  }

  /** Moody 1944: limits at 2000 and 4000; nothing jumps there. */
  @Test
  void transitionIsFlaggedAndWithoutAStep() {
    assertEquals(Regime.TRANSITIONAL, FrictionFactor.of(3000, 0).regime());
    assertEquals(Regime.TURBULENT, FrictionFactor.of(4000, 0).regime());
    assertEquals(FrictionFactor.value(2000, 0), FrictionFactor.value(2000 + 1e-7, 0), 1e-9);
    assertEquals(FrictionFactor.value(4000, 0), FrictionFactor.value(4000 - 1e-7, 0), 1e-9);
  }

  /**
   * The equation itself is the check: both sides agree to the last digits anywhere in the range.
   */
  @Test
  void solvesTheEquationToMachinePrecision() {
    Random random = new Random(20);
    for (int i = 0; i < 20_000; i++) {
      double reynolds = 4000 * Math.pow(25_000, random.nextDouble());
      double roughness = random.nextInt(4) == 0 ? 0 : 0.05 * Math.pow(random.nextDouble(), 4);
      double f = ColebrookWhite.factor(reynolds, roughness);
      double right = -2 * Math.log10(roughness / 3.7 + 2.51 / (reynolds * Math.sqrt(f)));
      assertEquals(1, right * Math.sqrt(f), 2e-15, "Re " + reynolds + ", roughness " + roughness);
    }
  }

  /**
   * White, Fluid Mechanics, Example 6.7: oil of 1e-5 m2/s, 0.2 m3/s through 500 m of 200 mm cast
   * iron, roughness 0.26 mm: 117 m, printed to three digits.
   */
  @OutsideCheck(of = "hose-head-loss", against = "White, Fluid Mechanics, example 6.7")
  @Test
  void oilThroughCastIron() {
    Hose pipe = new Hose(100, 0.2, 0.26e-3, 0);
    assertEquals(117, 5 * pipe.headLoss(0.2, 1e-5), 0.6);
    assertEquals(128_000, pipe.reynolds(0.2, 1e-5), 1000);
  }

  /**
   * White, Example 6.6 (Moody's own): water at 6 ft/s through 200 ft of 6 in pipe with a relative
   * roughness of 0.0008, Re 2.7e5: 4.5 ft. The friction factor was read from the chart as 0.020,
   * good to one in its last digit.
   */
  @OutsideCheck(of = "hose-head-loss", against = "White, Fluid Mechanics, example 6.6")
  @Test
  void exampleOfMoody() {
    double foot = 0.3048;
    Hose pipe = new Hose(200 * foot, 0.5 * foot, 0.0008 * 0.5 * foot, 0);
    double flow = 6 * foot * Math.PI / 4 * 0.25 * foot * foot;
    double viscosity = 6 * foot * 0.5 * foot / 2.7e5;
    assertEquals(4.5, pipe.headLoss(flow, viscosity) / foot, 0.05 * 4.5);
  }

  /**
   * Arithmetic on IAPWS properties and Colebrook's equation, done elsewhere: 15 L/min through a
   * smooth 20 mm hose at 20 °C, Re 15 862, 0.04426 m for each metre.
   */
  @Test
  void drainHose() {
    Hose hose = new Hose(1, 0.02, 0, 0);
    double viscosity = Water.at(293.15).kinematicViscosity();
    assertEquals(0.04426, hose.headLoss(15.0 / 60_000, viscosity), 0.6e-5);
    assertEquals(15_862, hose.reynolds(15.0 / 60_000, viscosity), 1);
    assertEquals(0.79577, hose.velocity(15.0 / 60_000), 0.6e-5);
  }

  /** Munson et al., Table 8.2: a swing check valve takes 2 velocity heads; at 1 m/s 0.10197 m. */
  @Test
  void fittings() {
    Hose valve = new Hose(0, 0.02, 0, 2);
    double flow = Math.PI / 4 * 0.02 * 0.02;
    assertEquals(0.10197, valve.headLoss(flow, 1e-6), 1e-5);
  }

  @Test
  void refusesWhatIsNotAHose() {
    assertThrows(IllegalArgumentException.class, () -> new Hose(1, 0, 0, 0));
    assertThrows(IllegalArgumentException.class, () -> new Hose(Double.NaN, 0.02, 0, 0));
    IllegalArgumentException refused =
        assertThrows(IllegalArgumentException.class, () -> new Hose(1, 5, 0, 0));
    assertTrue(refused.getMessage().contains("5000 mm"), refused.getMessage());
  }
}
