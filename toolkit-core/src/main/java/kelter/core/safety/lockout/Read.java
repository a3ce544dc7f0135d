package kelter.core.safety.lockout;

import java.util.List;
import java.util.Optional;
import kelter.core.check.Finding;
import kelter.core.check.Verdict;
import kelter.core.job.Measurement;
import kelter.core.job.Reading;
import kelter.core.safety.lockout.table.Beyond;
import kelter.core.safety.lockout.table.LockOutRow;
import kelter.core.uncertainty.Estimate;

/** Holds measurements of a situation against the limits of rows. */
record Read(Situation situation) {

  private static final double LEAST_OF_230 = 220;
  private static final double MOST_OF_230 = 240;

  /** Whether a measurement makes a row hold. */
  boolean isBeyond(Beyond limit, Measurement measurement) {
    if (!limit.observable().equals(measurement.observable())
        || !limit.isOf(situation.kindOf(measurement.component()))) {
      return false;
    }
    if (limit.finding() && isOutside(measurement)) {
      return true;
    }
    for (Reading reading : measurement.readings()) {
      if (isBeyond(limit, measurement, reading)) {
        return true;
      }
    }
    return false;
  }

  private boolean isBeyond(Beyond limit, Measurement measurement, Reading reading) {
    if (reading instanceof Reading.YesNo answer) {
      return limit.yes() && answer.yes();
    }
    if (reading instanceof Reading.Grade grade) {
      return limit.grade().isPresent() && grade.rank() >= rank(measurement, limit.grade().get());
    }
    double factor = factor(limit, measurement);
    boolean above = reading.least() * factor > most(limit);
    return above && !isBetweenPhases(limit, measurement) || reading.most() < least(limit);
  }

  /** Whether a voltage that is too high for one phase is right for two, as its check holds. */
  private boolean isBetweenPhases(Beyond limit, Measurement measurement) {
    List<Finding> findings = limit.aboveShare().isPresent() ? of(measurement) : List.of();
    return !findings.isEmpty()
        && findings.stream().allMatch(finding -> finding.verdict() == Verdict.CONFORMS);
  }

  private int rank(Measurement measurement, String word) {
    int rank =
        situation
            .observable(measurement.component(), measurement.observable())
            .map(observable -> observable.grades().indexOf(word))
            .orElse(-1);
    return rank < 0 ? Integer.MAX_VALUE : rank;
  }

  /** By what a reading is multiplied; NaN, which is above nothing, if that is not stated. */
  private static double factor(Beyond limit, Measurement measurement) {
    return limit.times().isEmpty()
        ? 1
        : measurement.conditions().si(limit.times().get(), Double.NaN);
  }

  private double most(Beyond limit) {
    if (limit.above().isPresent()) {
      return limit.above().getAsDouble();
    }
    return limit.aboveShare().isPresent()
        ? limit.aboveShare().getAsDouble() * situation.nominal()
        : Double.POSITIVE_INFINITY;
  }

  private double least(Beyond limit) {
    double nominal = situation.nominal();
    boolean of230 =
        nominal >= LEAST_OF_230
            && nominal <= MOST_OF_230
            && situation.market().voltage().si() >= LEAST_OF_230;
    return limit.belowShare().isPresent() && of230
        ? limit.belowShare().getAsDouble() * nominal
        : Double.NEGATIVE_INFINITY;
  }

  /** Whether a check says so, or cannot decide and the plain value lies outside its limits. */
  private boolean isOutside(Measurement measurement) {
    for (Finding finding : of(measurement)) {
      Optional<Estimate> measured = finding.judgement().measured();
      boolean doubtful =
          finding.verdict() == Verdict.UNDECIDED
              && measured.isPresent()
              && !finding.limits().contain(measured.get().value());
      if (finding.verdict() == Verdict.DOES_NOT_CONFORM || doubtful) {
        return true;
      }
    }
    return false;
  }

  private List<Finding> of(Measurement measurement) {
    return situation.judge().apply(measurement).stream()
        .filter(finding -> finding.component().equals(measurement.component()))
        .filter(finding -> finding.observable().equals(measurement.observable()))
        .toList();
  }

  /**
   * Whether a measurement is decided and conforms: by its checks; where there is none, by the
   * limits of a row.
   */
  boolean conforms(LockOutRow row, Measurement measurement) {
    boolean limited = false;
    for (Beyond limit : row.when().readings()) {
      if (isBeyond(limit, measurement)) {
        return false;
      }
      limited |= !limit.finding() && limit.observable().equals(measurement.observable());
    }
    List<Finding> findings = of(measurement);
    if (findings.isEmpty()) {
      return limited;
    }
    return findings.stream().allMatch(finding -> finding.verdict() == Verdict.CONFORMS);
  }
}
