package kelter.costing.survival;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

class LognormalFitTest {

  /** NIST/SEMATECH e-Handbook 8.4.1.3: the lognormal fit of the same lives has AIC 154.39. */
  @Test
  void theExampleOfTheNistHandbook() {
    assertEquals(154.39, LognormalFit.of(Data.nist()).aic(), 0.5e-2);
    assertTrue(WeibullFit.of(Data.nist()).aic() < LognormalFit.of(Data.nist()).aic());
  }

  /** The same likelihood, its maximum searched with SciPy 1.17.1 (scipy.optimize.minimize). */
  @Test
  void theSameExampleInSciPy() {
    LognormalFit fit = LognormalFit.of(Data.nist());
    assertEquals(6.226015064, Math.log(fit.life().median()), 1e-8);
    assertEquals(0.908914048, fit.life().sigma(), 1e-8);
    assertEquals(-75.196270779, fit.logLikelihood(), 1e-8);
    assertEquals(10, fit.failures());
  }

  /** By hand: the logarithms 0 and 2 have the mean 1 and, over n, the deviation 1. */
  @Test
  void twoDifferentFailuresAreEnough() {
    LognormalFit fit =
        LognormalFit.of(List.of(Observed.failedAt(1), Observed.failedAt(Math.exp(2))));
    assertEquals(Math.E, fit.life().median(), 1e-9);
    assertEquals(1, fit.life().sigma(), 1e-9);
  }

  /** Without censoring: mean and standard deviation (with n) of the logarithms, by hand. */
  @Test
  void withoutCensoringItIsMeanAndDeviationOfTheLogarithms() {
    List<Observed> lives =
        DoubleStream.of(1, Math.E, Math.exp(2), Math.exp(5)).mapToObj(Observed::failedAt).toList();
    LognormalFit fit = LognormalFit.of(lives);
    assertEquals(Math.exp(2), fit.life().median(), 1e-9);
    assertEquals(Math.sqrt(3.5), fit.life().sigma(), 1e-9);
    assertEquals(4, fit.failures());
  }

  @Test
  void twoDifferentFailuresAreNeeded() {
    List<Observed> one = List.of(Observed.failedAt(3), Observed.failedAt(3), Observed.aliveAt(9));
    assertThrows(IllegalArgumentException.class, () -> LognormalFit.of(one));
  }
}
