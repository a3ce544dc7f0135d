package kelter.core.proof;

import java.util.Optional;
import kelter.core.job.Evaluation;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.uncertainty.Estimate;
import kelter.core.vocabulary.Observable;

/**
 * By how much a reading after the work lies above the one before.
 *
 * <p>Where both are of one instrument, its limits of error are taken as one and the same error of
 * both (JCGM 100:2008, F.1.2.3): it cancels but for what grows with the value, {@code
 * |u_error(left) - u_error(found)|}. Rounding and scatter never cancel. Readings of different
 * instruments, or of ones that the job does not name, are independent (5.1.2, equation (10)).
 *
 * @param estimate left less found with its standard uncertainty, in the coherent SI unit
 * @param shared whether the error of a shared instrument cancels
 */
public record Difference(Estimate estimate, boolean shared) {

  /** A difference beyond so many of its standard uncertainties is one (JCGM 100:2008, 6.3.3). */
  private static final double COVERAGE = 2;

  /**
   * The difference of two readings.
   *
   * @param job their job
   * @param found the reading before the work
   * @param left the reading after it
   * @param observable what both are of
   * @return the difference; empty if one of them is not a value
   */
  public static Optional<Difference> of(
      Job job, Measurement found, Measurement left, Observable observable) {
    Optional<Evaluation> before = Evaluation.of(job, found, observable);
    Optional<Evaluation> after = Evaluation.of(job, left, observable);
    if (before.isEmpty() || after.isEmpty()) {
      return Optional.empty();
    }
    boolean shared = found.instrument().isPresent() && found.instrument().equals(left.instrument());
    return Optional.of(of(before.get(), after.get(), shared));
  }

  static Difference of(Evaluation before, Evaluation after, boolean shared) {
    double error =
        shared
            ? Math.abs(after.error() - before.error())
            : Math.hypot(after.error(), before.error());
    double own =
        Math.hypot(
            Math.hypot(before.rounding(), after.rounding()),
            Math.hypot(before.scatter(), after.scatter()));
    double value = after.estimate().value() - before.estimate().value();
    return new Difference(new Estimate(value, Math.hypot(error, own)), shared);
  }

  /**
   * Whether the readings differ at all.
   *
   * @return true if the difference is larger than twice its standard uncertainty
   */
  public boolean isReal() {
    return Math.abs(estimate.value()) > COVERAGE * estimate.standardUncertainty();
  }
}
