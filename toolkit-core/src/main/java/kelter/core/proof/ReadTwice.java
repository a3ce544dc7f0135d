package kelter.core.proof;

import java.util.List;
import java.util.Optional;
import kelter.core.check.Finding;
import kelter.core.check.Verdict;
import kelter.core.job.Measurement;
import kelter.core.safety.Hazard;
import kelter.core.vocabulary.Observable;

/**
 * A reading as found beside the one as left.
 *
 * @param component the id of the component
 * @param observable what was read
 * @param found the reading before the work; empty if it was read only after it
 * @param foundAgainst what it was held against, if there are limits
 * @param left the reading after the work, if it was taken
 * @param leftAgainst what that is held against, if there are limits
 * @param superseded what was read after the work before that and does not count any more
 * @param difference left less found, where both have a value
 * @param spoke whether the reading before the work spoke for what was mended, or did not conform
 */
public record ReadTwice(
    String component,
    Observable observable,
    Optional<Measurement> found,
    Optional<Finding> foundAgainst,
    Optional<Measurement> left,
    Optional<Finding> leftAgainst,
    List<Measurement> superseded,
    Optional<Difference> difference,
    boolean spoke) {

  /** Copies the list. */
  public ReadTwice {
    superseded = List.copyOf(superseded);
  }

  /**
   * Whether it does not conform after the work.
   *
   * @return true if it has to be mended and read again
   */
  public boolean isOutside() {
    return Proof.refutes(change());
  }

  /**
   * Whether it is read without power.
   *
   * @return true if a fault that shows in it is there before any power
   */
  public boolean isDead() {
    return observable.procedure().hazard().compareTo(Hazard.DEAD) <= 0;
  }

  /**
   * What became of it.
   *
   * @return the change by limits; a better reading that is not within them is not mended
   */
  public Change change() {
    if (left.isEmpty()) {
      return Change.OPEN;
    }
    Verdict before = foundAgainst.map(Finding::verdict).orElse(Verdict.NOT_MEASURED);
    return switch (leftAgainst.map(Finding::verdict).orElse(Verdict.NOT_MEASURED)) {
      case NOT_MEASURED -> withoutLimit(left.get());
      case UNDECIDED -> isOpen(leftAgainst.get()) ? Change.OPEN_LIMIT : Change.UNDECIDED;
      case CONFORMS -> before == Verdict.DOES_NOT_CONFORM ? Change.MENDED : Change.GOOD;
      case DOES_NOT_CONFORM -> outside(before);
    };
  }

  /** Whether the limit is open and not the value. */
  private static boolean isOpen(Finding finding) {
    return finding.judgement().measured().isPresent()
        && Double.isNaN(finding.judgement().probabilityOfConformity());
  }

  private Change withoutLimit(Measurement after) {
    boolean another =
        difference
            .map(Difference::isReal)
            .orElse(!after.shown().equals(found.map(Measurement::shown).orElse("")));
    return another ? Change.CHANGED : Change.WITHOUT_LIMIT;
  }

  private Change outside(Verdict before) {
    if (before != Verdict.DOES_NOT_CONFORM) {
      return before == Verdict.CONFORMS ? Change.WORSE : Change.BAD;
    }
    double nearer = beyond(foundAgainst) - beyond(leftAgainst);
    boolean real = difference.filter(Difference::isReal).isPresent();
    if (!real || nearer == 0 || Double.isNaN(nearer)) {
      return Change.SAME;
    }
    return nearer > 0 ? Change.BETTER : Change.WORSE;
  }

  /** By how much a value lies outside its limits, in the coherent SI unit; NaN without a value. */
  private static double beyond(Optional<Finding> finding) {
    return finding
        .flatMap(each -> each.judgement().measured().map(value -> beyond(each, value.value())))
        .orElse(Double.NaN);
  }

  private static double beyond(Finding finding, double value) {
    return Math.max(0, Math.max(finding.limits().low() - value, value - finding.limits().high()));
  }

  /**
   * The reading before the work as it is told to a person.
   *
   * @return its text; {@code not read} if there is none
   */
  public String foundShown() {
    return found.map(Measurement::shown).orElse("not read");
  }
}
