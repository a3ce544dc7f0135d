package kelter.core.safety.lockout;

import static kelter.core.catalogue.MainsConnection.EITHER;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import kelter.core.catalogue.Kind;
import kelter.core.catalogue.KindMachine;
import kelter.core.catalogue.KindPart;
import kelter.core.check.Finding;
import kelter.core.job.Component;
import kelter.core.job.Job;
import kelter.core.job.Market;
import kelter.core.job.Measurement;
import kelter.core.job.SymptomReport;
import kelter.core.job.SymptomReport.Answer;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Vocabulary;

/**
 * All that decides what a machine may be used for.
 *
 * @param job the job, on the machine with all parts of its kind
 * @param findings what the checks say of the whole job
 * @param judge what the checks say of one of its measurements by itself
 * @param kind the kind of machine, if it is known
 * @param market where the machine stands
 * @param vocabulary the words of the modules
 */
public record Situation(
    Job job,
    List<Finding> findings,
    Function<Measurement, List<Finding>> judge,
    Optional<Kind> kind,
    Market market,
    Vocabulary vocabulary) {

  /** The sign that tells whether a machine has a plug. */
  static final String NO_PLUG = "no-plug";

  public Situation {
    findings = List.copyOf(findings);
  }

  /**
   * What was answered when somebody was asked for a symptom. One that is there after the work is
   * there; that it is gone after it does not take back what was told before.
   */
  Optional<Answer> answer(String symptom) {
    if (isSeenAfterWork(symptom)) {
      return Optional.of(Answer.YES);
    }
    for (SymptomReport report : job.complaint().symptoms()) {
      if (report.symptom().equals(symptom)) {
        return Optional.of(report.answer());
      }
    }
    return Optional.empty();
  }

  /** Whether a symptom is there after the work. */
  boolean isSeenAfterWork(String symptom) {
    return job.progress().symptoms().stream()
        .anyMatch(each -> each.symptom().equals(symptom) && each.answer() != Answer.NO);
  }

  /** What the owner says, what the machine displays, and what it is. */
  String said() {
    return String.join(
        ". ",
        job.complaint().said(),
        job.complaint().displayed(),
        job.appliance().kind().replace('-', ' '));
  }

  /** Whether the machine is wired in without a plug. */
  boolean isFixed() {
    Optional<Answer> noPlug = answer(NO_PLUG);
    return noPlug.isPresent() ? noPlug.get() != Answer.NO : kind.filter(Kind::fixed).isPresent();
  }

  /**
   * Whether such machines have a plug or none, and nobody told of this one before work was done on
   * it: from then on it counts as isolated.
   */
  boolean isSupplyOpen() {
    return answer(NO_PLUG).isEmpty()
        && !job.progress().isWorked()
        && kind.filter(each -> each.supply() == EITHER).isPresent();
  }

  /** Whether the kind of machine has one of some names under {@code lock-out}. */
  boolean isNamed(Set<String> names) {
    return kind.isPresent() && kind.get().lockOut().stream().anyMatch(names::contains);
  }

  /**
   * The ids of the parts of some kinds: components of the job, and what its kind of machine has.
   */
  List<String> parts(Set<String> kinds) {
    List<String> ids = new ArrayList<>();
    for (Component component : job.appliance().components()) {
      if (kinds.contains(component.kind())) {
        ids.add(component.id());
      }
    }
    for (KindPart part : kind.map(Kind::parts).orElse(List.of())) {
      boolean there = !job.appliance().lacks().contains(part.id()) && part.isIn(market);
      if (kinds.contains(part.kind()) && there && !ids.contains(part.id())) {
        ids.add(part.id());
      }
    }
    return ids;
  }

  /** Whether a job itself lists a component of some kinds. */
  boolean isStated(Set<String> kinds) {
    for (Component component : job.appliance().components()) {
      boolean added = kind.filter(each -> KindMachine.isOnlyAdded(each, component)).isPresent();
      if (kinds.contains(component.kind()) && !added) {
        return true;
      }
    }
    return false;
  }

  /** The kind of a component or of a part of the kind of machine; empty if there is none. */
  String kindOf(String component) {
    return job.appliance()
        .component(component)
        .map(Component::kind)
        .or(() -> kind.flatMap(each -> each.part(component)).map(KindPart::kind))
        .orElse("");
  }

  /** What a word stands for on a component. */
  Optional<Observable> observable(String component, String word) {
    return vocabulary.observable(kindOf(component), word);
  }

  /** The components of some kinds on which something can be read. */
  List<String> readable(Set<String> kinds, String observable) {
    List<String> readable = new ArrayList<>();
    for (Component component : job.appliance().components()) {
      if (kinds.contains(component.kind()) && observable(component.id(), observable).isPresent()) {
        readable.add(component.id());
      }
    }
    return readable;
  }

  /**
   * The nominal voltage of the machine, V: of its nameplate; of the market where that has none or
   * is made for several nets.
   */
  double nominal() {
    return job.appliance()
        .nameplate()
        .voltage()
        .filter(rated -> rated.high().si() <= ONE_NET * rated.low().si())
        .map(rated -> rated.meanSi())
        .orElse(market.voltage().si());
  }

  /** The ends of a rated range for one net do not lie farther apart, as a ratio. */
  private static final double ONE_NET = 1.25;
}
