package kelter.core.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import kelter.core.uncertainty.ErrorTerm;
import kelter.core.uncertainty.Estimate;
import kelter.core.uncertainty.Shape;
import org.junit.jupiter.api.Test;

class ConformityRiskTest {

  private static final Estimate RESISTORS = new Estimate(1500, 0.12);
  private static final Limits TOLERANCE = new Limits(1499.8, 1500.2);

  /**
   * JCGM 106:2012, 9.5, example (results from memory): resistors of 1500 ohm, spread 0.12 ohm,
   * measured with 0.04 ohm, tolerance ± 0.20 ohm, accepted within ± 0.18 ohm: consumer's risk about
   * 1 %, producer's risk about 7 %.
   */
  @Test
  void resistorsWithAGuardBand() {
    ConformityRisk risk =
        ConformityRisk.of(RESISTORS, 0.04, TOLERANCE, new GuardBand(0.02).acceptance(TOLERANCE));
    assertEquals(0.01, risk.consumer(), 5e-4);
    assertEquals(0.07, risk.producer(), 5e-3);
  }

  /** The same without a guard band, integrated by an independent program: 0.0189 and 0.0372. */
  @Test
  void resistorsWithoutOne() {
    ConformityRisk risk = ConformityRisk.of(RESISTORS, 0.04, TOLERANCE, TOLERANCE);
    assertEquals(0.0189, risk.consumer(), 5e-5);
    assertEquals(0.0372, risk.producer(), 5e-5);
  }

  /** All parts judged wrongly are those outside and accepted and those inside and rejected. */
  @Test
  void withoutAnyRejectionTheConsumerBearsAll() {
    Limits all = new Limits(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    ConformityRisk risk = ConformityRisk.of(RESISTORS, 0.04, TOLERANCE, all);
    // JCGM 106:2012, 9.5, example: 90.4 % of the resistors conform
    assertEquals(1 - 0.904, risk.consumer(), 5e-4);
    assertEquals(0, risk.producer(), 1e-9);
  }

  /**
   * Far coarser parts than limits make the parts evenly spread about a limit: of a rectangular
   * error of half-width a, a quarter of a times the density is passed wrongly at either limit, and
   * as much rejected (the mean of a - x from 0 to a, over 2a).
   */
  @Test
  void aRectangularErrorOnEvenlySpreadParts() {
    double half = 0.3;
    Estimate parts = new Estimate(0, 1000);
    List<ErrorTerm> errors = List.of(ErrorTerm.within(Shape.RECTANGULAR, half));
    Limits limits = new Limits(-1, 1);
    ConformityRisk risk = ConformityRisk.of(parts, errors, limits, limits);
    double density = 1 / (1000 * Math.sqrt(2 * Math.PI));
    assertEquals(2 * density * half / 4, risk.consumer(), 1e-3 * density);
    assertEquals(2 * density * half / 4, risk.producer(), 1e-3 * density);
  }

  @Test
  void spreadsThatAreNoneAreRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> ConformityRisk.of(Estimate.exact(1), 1, TOLERANCE, TOLERANCE));
    assertThrows(
        IllegalArgumentException.class,
        () -> ConformityRisk.of(RESISTORS, 0, TOLERANCE, TOLERANCE));
    assertThrows(
        IllegalArgumentException.class,
        () -> ConformityRisk.of(RESISTORS, Double.NaN, TOLERANCE, TOLERANCE));
  }
}
