package kelter.core.diagnosis.likelihood;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kelter.core.quantity.QuantityKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Span;
import org.junit.jupiter.api.Test;

class LikelihoodTest {

  private static final double BLUNDER = 0.01;

  private static final Observable RESISTANCE =
      Observable.named("resistance", "resistance")
          .logarithmic(QuantityKind.RESISTANCE, new Span(0.01, 1e6))
          .by(LinearModel.PROCEDURE);

  private static double of(double read, double u, double forecast) {
    return Likelihood.value(RESISTANCE, read, u, BLUNDER).of(Math.log(forecast), 0.05);
  }

  /** Leads of 0.2 ohm hide how low a short is, not that it is one. */
  @Test
  void aShortWithinTheErrorOfItsMeterIsNoHeaterInOrder() {
    assertTrue(of(0.001, 0.17, 0.1) > 0.5);
    assertTrue(of(0.001, 0.17, 13) < 0.01);
    assertTrue(of(-0.05, 0.17, 13) < 0.01);
  }

  /** A density of the logarithm: that of N(ln 13, 0.05 and 0.1/13 together) at its middle. */
  @Test
  void wellAboveItsErrorItIsAValue() {
    double sd = Math.hypot(0.05, 0.1 / 13);
    double peak = 0.99 / (sd * Math.sqrt(2 * Math.PI)) + 0.01 / Math.log(1e8);
    assertEquals(peak, of(13, 0.1, 13), 1e-9);
  }
}
