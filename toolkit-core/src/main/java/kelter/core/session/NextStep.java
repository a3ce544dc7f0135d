package kelter.core.session;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import kelter.core.catalogue.Kind;
import kelter.core.diagnosis.Conclusion;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.Remedy;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.safety.Hazard;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.OwnersWords;
import kelter.core.vocabulary.Symptom;
import kelter.core.workshop.Case;

/** The one thing that decides next: a question to the owner, a reading, or work. */
public sealed interface NextStep {

  /** What a question to the owner takes, in min; common practice, no source. */
  double ASKING = 1;

  /** An answer that tells less, in bits, is not worth a question. */
  double WORTH_ASKING = 0.05;

  /** What does not fit is read so often at most: the third tells which of two was wrong. */
  int MOST_TAKEN = 3;

  /**
   * A question to the owner.
   *
   * @param symptom what is asked for
   * @param otherwise what to measure where nobody can answer
   */
  record Ask(Symptom symptom, Optional<Diagnosis.NextMeasurement> otherwise) implements NextStep {}

  /**
   * A reading.
   *
   * @param again what is advised where it is taken again; empty for a new one
   * @param why the same in words; empty for a new one
   * @param question what is measured
   * @param minutes how long it takes, in min
   */
  record Measure(Optional<Conclusion.Advice> again, String why, Question question, double minutes)
      implements NextStep {

    /**
     * A reading that is not taken again.
     *
     * @param question what to measure
     * @param minutes how long it takes
     */
    public Measure(Question question, double minutes) {
      this(Optional.empty(), "", question, minutes);
    }
  }

  /**
   * No further reading.
   *
   * @param first the work to do first, if any is worth it
   */
  record Mend(Optional<Diagnosis.PlanStep> first) implements NextStep {}

  /**
   * Decides what comes next for a job.
   *
   * @param machine the case
   * @return what comes next
   */
  static NextStep of(Case machine) {
    return of(machine, Set.of());
  }

  /**
   * Decides what comes next for a job in which some things cannot be answered or read.
   *
   * @param machine the case
   * @param aside the ids of symptoms that nobody can tell, and {@code component.observable} of what
   *     cannot be read
   * @return what comes next
   */
  static NextStep of(Case machine, Set<String> aside) {
    Diagnosis diagnosis = machine.diagnosis();
    Optional<NextStep> again = again(machine, diagnosis, aside);
    if (again.isPresent()) {
      return again.get();
    }
    List<Diagnosis.NextMeasurement> next =
        diagnosis.next().stream().filter(each -> !aside.contains(each.question().key())).toList();
    Optional<Diagnosis.NextMeasurement> first = next.stream().findFirst();
    Optional<Symptom> named = named(machine, aside);
    if (named.isPresent()) {
      return new Ask(named.get(), first);
    }
    boolean suspected =
        first.isPresent()
            && !machine.job().measurements().isEmpty()
            && machine
                .lockOut()
                .goesFirst(
                    first.get().question().component(), first.get().question().observable().id());
    if (suspected) {
      return new Measure(first.get().question(), first.get().minutes());
    }
    if (!diagnosis.basis().enough()) {
      Optional<Symptom> asked = asked(diagnosis, next, aside);
      if (asked.isPresent()) {
        return new Ask(asked.get(), next.stream().findFirst());
      }
      if (!next.isEmpty()) {
        return new Measure(next.get(0).question(), next.get(0).minutes());
      }
    }
    Optional<Diagnosis.PlanStep> work = diagnosis.plan().stream().findFirst();
    Optional<Diagnosis.NextMeasurement> look =
        work.flatMap(step -> before(step.remedy(), machine, next));
    return look.isPresent()
        ? new Measure(look.get().question(), look.get().minutes())
        : new Mend(work);
  }

  /**
   * What to look at before a component is renewed that nobody has opened: while the case is not
   * decided, it may do to free or clean it. Common practice, no source.
   */
  private static Optional<Diagnosis.NextMeasurement> before(
      Remedy remedy, Case machine, List<Diagnosis.NextMeasurement> next) {
    boolean sure = machine.diagnosis().basis().conclusion().isDecided();
    boolean opened =
        machine.job().measurements().stream()
            .filter(each -> each.component().equals(remedy.component()))
            .anyMatch(each -> isDead(each.component(), each.observable(), machine));
    if (sure || opened || remedy.restores() != Remedy.Restores.COMPONENT) {
      return Optional.empty();
    }
    return next.stream()
        .filter(each -> each.question().component().equals(remedy.component()))
        .filter(each -> each.question().observable().type() != Observable.Type.QUANTITY)
        .filter(each -> isDead(remedy.component(), each.question().observable().id(), machine))
        .findFirst();
  }

  private static boolean isDead(String component, String observable, Case machine) {
    return machine
        .job()
        .appliance()
        .component(component)
        .flatMap(part -> machine.vocabulary().observable(part.kind(), observable))
        .filter(each -> each.procedure().hazard() == Hazard.DEAD)
        .isPresent();
  }

  /**
   * A symptom that the owner may have spoken of, or a sign of danger that he denied or was not sure
   * of, and that nobody has asked for.
   */
  private static Optional<Symptom> named(Case machine, Set<String> aside) {
    Set<String> answered = new HashSet<>(aside);
    machine.job().complaint().symptoms().forEach(report -> answered.add(report.symptom()));
    Set<String> ofKind = machine.kind().map(Kind::symptoms).orElse(Set.of());
    Stream<Symptom> signs =
        machine.lockOutAsFound().ask().stream()
            .flatMap(id -> machine.vocabulary().symptom(id).stream());
    Stream<Symptom> said =
        OwnersWords.named(machine.job().complaint().said(), machine.vocabulary().symptoms())
            .stream()
            .filter(symptom -> ofKind.isEmpty() || ofKind.contains(symptom.id()));
    return Stream.concat(signs, said)
        .filter(symptom -> !answered.contains(symptom.id()))
        .findFirst();
  }

  /** The question that tells most, if it tells more for its time than the best reading. */
  private static Optional<Symptom> asked(
      Diagnosis diagnosis, List<Diagnosis.NextMeasurement> next, Set<String> aside) {
    double reading = next.isEmpty() ? 0 : next.get(0).bits() / next.get(0).minutes();
    return diagnosis.ask().stream()
        .filter(question -> !aside.contains(question.symptom().id()))
        .findFirst()
        .filter(asked -> asked.bits() >= WORTH_ASKING && asked.bits() / ASKING > reading)
        .map(Diagnosis.NextQuestion::symptom);
  }

  /** A reading of the job that does not fit, or whose instrument was too coarse. */
  private static Optional<NextStep> again(Case machine, Diagnosis diagnosis, Set<String> aside) {
    String key = doubtful(diagnosis);
    int dot = key.indexOf('.');
    if (dot < 0 || aside.contains(key)) {
      return Optional.empty();
    }
    Optional<Component> component = machine.job().appliance().component(key.substring(0, dot));
    Optional<Observable> observable =
        component.flatMap(
            part -> machine.vocabulary().observable(part.kind(), key.substring(dot + 1)));
    if (observable.isEmpty()
        || taken(component.get(), observable.get(), machine) >= MOST_TAKEN
        || !mayBeTaken(component.get(), observable.get(), machine)) {
      return Optional.empty();
    }
    return Optional.of(
        new Measure(
            Optional.of(diagnosis.basis().conclusion().advice()),
            diagnosis.basis().conclusion().action(),
            new Question(component.get().id(), observable.get(), Conditions.NONE),
            observable.get().procedure().minutes()));
  }

  private static int taken(Component component, Observable observable, Case machine) {
    return machine.job().measurements(component.id(), observable.id()).stream()
        .mapToInt(each -> each.readings().size())
        .sum();
  }

  private static String doubtful(Diagnosis diagnosis) {
    Conclusion conclusion = diagnosis.basis().conclusion();
    boolean named =
        conclusion.reason() == Conclusion.Reason.NO_CAUSE_FITS
            || conclusion.reason() == Conclusion.Reason.INSTRUMENT_TOO_COARSE;
    if (named && !conclusion.about().isEmpty()) {
      return conclusion.about().get(0);
    }
    List<Diagnosis.Suspect> suspects = diagnosis.basis().suspects();
    boolean suspected = conclusion.isDecided() && !suspects.isEmpty();
    return suspected ? suspects.get(0).component() + "." + suspects.get(0).observable() : "";
  }

  /** A live reading is never proposed here, nor what the machine is locked out from. */
  private static boolean mayBeTaken(Component component, Observable observable, Case machine) {
    Hazard hazard = observable.procedure().hazard();
    return hazard != Hazard.LIVE
        && machine.lockOut().allows(component.id(), observable.id(), hazard);
  }

  /**
   * Whether nothing is opened or measured, so that the step may say to watch the machine run.
   *
   * @param question what is looked at
   * @return true if it is
   */
  static boolean isOnlyLookedAt(Question question) {
    return question.observable().procedure().hazard() == Hazard.NONE;
  }
}
