package kelter.core.proof;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.check.Finding;
import kelter.core.check.Verdict;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.job.Measurement;
import kelter.core.job.Measurement.Stage;
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

  /** One for each observable and circumstance that was read as found, in the order of the job. */
  List<ReadTwice> all() {
    Map<String, Measurement> found = new LinkedHashMap<>();
    for (Measurement each : machine.job().measurements()) {
      if (each.stage() == Stage.AS_FOUND) {
        found.put(key(each), each);
      }
    }
    List<ReadTwice> all = new ArrayList<>();
    for (Measurement each : found.values()) {
      observable(each).ifPresent(observable -> all.add(twice(each, observable)));
    }
    return all;
  }

  private Optional<Observable> observable(Measurement measurement) {
    return machine
        .job()
        .appliance()
        .component(measurement.component())
        .flatMap(part -> machine.vocabulary().observable(part.kind(), measurement.observable()));
  }

  private ReadTwice twice(Measurement found, Observable observable) {
    Optional<Measurement> left = left(found);
    Optional<Finding> before = against(found);
    boolean outside = before.filter(each -> each.verdict() == Verdict.DOES_NOT_CONFORM).isPresent();
    return new ReadTwice(
        found.component(),
        observable,
        found,
        before,
        left,
        left.flatMap(this::against),
        left.flatMap(after -> Difference.of(machine.job(), found, after, observable)),
        outside || spoke(found));
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

  /** The last reading as left under the same conditions; else the last under any. */
  private Optional<Measurement> left(Measurement found) {
    Optional<Measurement> same = Optional.empty();
    Optional<Measurement> any = Optional.empty();
    for (Measurement each : machine.job().measurements(found.component(), found.observable())) {
      if (each.stage() == Stage.AS_LEFT) {
        any = Optional.of(each);
        same = each.conditions().equals(found.conditions()) ? any : same;
      }
    }
    return same.isPresent() ? same : any;
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
