package kelter.costing.survival;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.rng.core.source64.SplitMix64;
import org.apache.commons.statistics.distribution.WeibullDistribution;
import org.junit.jupiter.api.Test;

class WeibullFitTest {

  private final WeibullFit nist = WeibullFit.of(Data.nist());

  /**
   * NIST/SEMATECH e-Handbook 8.4.1.3, printed: scale 606.5280, shape 1.7208, log-likelihood
   * -75.135, AIC 154.27, mean 540.737 h.
   */
  @Test
  void theExampleOfTheNistHandbook() {
    assertEquals(1.7208, nist.life().shape(), 0.5e-4);
    assertEquals(606.5280, nist.life().scale(), 0.001);
    assertEquals(-75.135, nist.logLikelihood(), 0.5e-3);
    assertEquals(154.27, nist.aic(), 0.5e-2);
    assertEquals(540.737, nist.life().mean(), 0.002);
    assertEquals(10, nist.failures());
  }

  /** The same data in R 4.2.2, package survival 3.5-3, function survreg. */
  @Test
  void theSameExampleInR() {
    assertEquals(1.720797261, nist.life().shape(), 1e-8);
    assertEquals(606.527558, nist.life().scale(), 1e-5);
    assertEquals(-75.13461816, nist.logLikelihood(), 1e-8);
    assertEquals(0.2059439, nist.errorOfLogScale(), 1e-7);
    assertEquals(0.2918128, nist.errorOfLogShape(), 1e-7);
  }

  @Test
  void theUnitOfTimeDoesNotMatter() {
    List<Observed> days =
        Data.nist().stream().map(o -> new Observed(o.time() / 24, o.failed())).toList();
    WeibullFit fit = WeibullFit.of(days);
    assertEquals(nist.life().shape(), fit.life().shape(), 1e-10);
    assertEquals(nist.life().scale() / 24, fit.life().scale(), 1e-9);
    assertEquals(nist.errorOfLogShape(), fit.errorOfLogShape(), 1e-10);
  }

  /** Lives drawn by another library from a known law: the interval holds it. */
  @Test
  void aKnownLawIsFoundAgain() {
    var sampler = WeibullDistribution.of(2.2, 13.65).createSampler(new SplitMix64(5));
    List<Observed> lives =
        IntStream.range(0, 2_000)
            .mapToObj(i -> sampler.sample())
            .map(t -> t > 12 ? Observed.aliveAt(12) : Observed.failedAt(t))
            .toList();
    WeibullFit fit = WeibullFit.of(lives);
    assertTrue(fit.shapeInterval()[0] < 2.2 && 2.2 < fit.shapeInterval()[1]);
    assertTrue(fit.scaleInterval()[0] < 13.65 && 13.65 < fit.scaleInterval()[1]);
    assertFalse(fit.isBasedOnFew());
  }

  @Test
  void leavingOutTheMachinesThatStillWorkMakesLivesTooShort() {
    List<Observed> failures = Data.nist().stream().filter(Observed::failed).toList();
    assertTrue(WeibullFit.of(failures).life().mean() < 0.6 * nist.life().mean());
  }

  @Test
  void fewFailuresAreSaidToBeFew() {
    WeibullFit fit = WeibullFit.of(List.of(Observed.failedAt(4), Observed.aliveAt(9)));
    assertTrue(fit.isBasedOnFew());
    assertTrue(fit.shapeInterval()[1] / fit.shapeInterval()[0] > 4);
    assertFalse(new WeibullFit(fit.life(), 5, 0, 1, 1).isBasedOnFew());
    assertTrue(new WeibullFit(fit.life(), 4, 0, 1, 1).isBasedOnFew());
  }

  /** R's approximation of 95 % limits: value times exp(-1.96 se) to exp(1.96 se), arithmetic. */
  @Test
  void theIntervalFollowsFromTheErrorOfTheLogarithm() {
    double factor = Math.exp(1.96 * 0.2918128);
    assertArrayEquals(
        new double[] {1.720797 / factor, 1.720797 * factor}, nist.shapeInterval(), 2e-4);
  }

  @Test
  void whatCannotBeFittedIsRefusedAndNamed() {
    assertEquals(
        "none of 2 lives ended by failure; a fit needs failures",
        assertThrows(
                IllegalArgumentException.class,
                () -> WeibullFit.of(Collections.nCopies(2, Observed.aliveAt(3))))
            .getMessage());
    assertThrows(IllegalArgumentException.class, () -> WeibullFit.of(List.of()));
    assertThrows(
        IllegalArgumentException.class,
        () -> WeibullFit.of(Collections.nCopies(3, Observed.failedAt(7))));
    assertThrows(IllegalArgumentException.class, () -> new Observed(0, true));
    assertThrows(IllegalArgumentException.class, () -> new Observed(Double.NaN, true));
  }
}
