package kelter.core.proof;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kelter.core.check.Finding;
import kelter.core.check.Verdict;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.job.Measurement;
import kelter.core.job.Measurement.Stage;
import kelter.core.safety.lockout.table.Retest;
import kelter.core.vocabulary.Observable;
import kelter.core.workshop.Case;

/** Pairs what was read as found with what was read as left. */
final class ReadingsTwice {

  /** A reading that makes a state twice as likely speaks for it; own choice. */
  private static final double SPEAKS = 1;

  private final Case machine;
  private final List<Diagnosis.Evidence> evidence;

  ReadingsTwice(Case machine) {
    this.machine = machine;
    this.evidence = Proof.mended(machine).map(Diagnosis.RankedState::evidence).orElse(List.of());
  }

  /**
   * One for each observable and circumstance that was read as found, in the order of the job; then
   * what was read only after the work.
   */
  List<ReadTwice> all() {
    Map<String, Measurement> found = new LinkedHashMap<>();
    for (Measurement each : machine.job().measurements()) {
      if (each.stage() == Stage.AS_FOUND) {
        found.put(key(each), each);
      }
    }
    List<ReadTwice> all = new ArrayList<>();
    Set<Measurement> paired = new HashSet<>();
    for (Measurement each : found.values()) {
      Optional<Measurement> after = left(each);
      after.ifPresent(paired::add);
      observable(each).ifPresent(known -> all.add(twice(Optional.of(each), after, known)));
    }
    for (Measurement each : machine.job().asLeft()) {
      if (!paired.contains(each) && !isTest(each)) {
        observable(each)
            .ifPresent(known -> all.add(twice(Optional.empty(), Optional.of(each), known)));
      }
    }
    return all;
  }

  /** Whether a reading is a test on the way back to power, which is told there. */
  private boolean isTest(Measurement measurement) {
    return machine.backToPower().stream()
        .flatMap(step -> step.read().stream())
        .anyMatch(
            each -> each.observable().equals(measurement.observable()) && isOn(each, measurement));
  }

  private boolean isOn(Retest retest, Measurement measurement) {
    return machine
        .job()
        .appliance()
        .component(measurement.component())
        .filter(part -> retest.of().contains(part.kind()))
        .isPresent();
  }

  private Optional<Observable> observable(Measurement measurement) {
    return machine
        .job()
        .appliance()
        .component(measurement.component())
        .flatMap(part -> machine.vocabulary().observable(part.kind(), measurement.observable()));
  }

  private ReadTwice twice(
      Optional<Measurement> found, Optional<Measurement> left, Observable observable) {
    Optional<Finding> before = found.flatMap(this::against);
    boolean outside = before.filter(each -> each.verdict() == Verdict.DOES_NOT_CONFORM).isPresent();
    return new ReadTwice(
        found.or(() -> left).orElseThrow().component(),
        observable,
        found,
        before,
        left,
        left.flatMap(this::against),
        left.map(this::superseded).orElse(List.of()),
        found.flatMap(
            then -> left.flatMap(now -> Difference.of(machine.job(), then, now, observable))),
        outside || found.filter(this::spoke).isPresent());
  }

  private boolean spoke(Measurement found) {
    for (Diagnosis.Evidence each : evidence) {
      if (each.component().equals(found.component())
          && each.observable().equals(found.observable())
          && each.bits() >= SPEAKS) {
        return true;
      }
    }
    return false;
  }

  /** The last reading as left under conditions like those of the one as found. */
  private Optional<Measurement> left(Measurement found) {
    Optional<Measurement> left = Optional.empty();
    for (Measurement each : machine.job().asLeft()) {
      boolean same =
          each.component().equals(found.component())
              && each.observable().equals(found.observable());
      left = same && found.conditions().isAlike(each.conditions()) ? Optional.of(each) : left;
    }
    return left;
  }

  /** What was read after the work before the reading that counts. */
  private List<Measurement> superseded(Measurement left) {
    List<Measurement> earlier = new ArrayList<>();
    for (Measurement each : machine.job().measurements(left.component(), left.observable())) {
      if (each == left) {
        return earlier;
      }
      if (left.supersedes(each)) {
        earlier.add(each);
      }
    }
    return earlier;
  }

  /** What a reading is held against; where several limits are, the one that is met least. */
  private Optional<Finding> against(Measurement measurement) {
    Optional<Finding> worst = Optional.empty();
    for (Finding each : machine.judged(measurement)) {
      if (each.component().equals(measurement.component())
          && each.observable().equals(measurement.observable())
          && (worst.isEmpty() || rank(each) < rank(worst.get()))) {
        worst = Optional.of(each);
      }
    }
    return worst;
  }

  private static int rank(Finding finding) {
    return switch (finding.verdict()) {
      case DOES_NOT_CONFORM -> 0;
      case UNDECIDED -> 1;
      case CONFORMS -> 2;
      case NOT_MEASURED -> 3;
    };
  }

  private static String key(Measurement measurement) {
    return measurement.component()
        + "."
        + measurement.observable()
        + " "
        + measurement.conditions();
  }
}
