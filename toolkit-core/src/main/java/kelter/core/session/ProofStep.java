package kelter.core.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.Remedy;
import kelter.core.job.Conditions;
import kelter.core.job.Measurement;
import kelter.core.proof.Proof;
import kelter.core.proof.ReadTwice;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Hazard;
import kelter.core.safety.Taken;
import kelter.core.safety.lockout.ActiveRow;
import kelter.core.safety.lockout.LockOut;
import kelter.core.safety.lockout.ReleaseTest;
import kelter.core.safety.lockout.Reread;
import kelter.core.safety.lockout.Suspicion;
import kelter.core.safety.lockout.table.Retest;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Symptom;
import kelter.core.workshop.Case;

/**
 * What is to be shown next after the work: dead readings while the machine is open, the tests on
 * the way back to power, readings under power, then what the machine does. The first test that
 * fails ends it.
 */
final class ProofStep {

  static final String WORK = "work";
  private static final int LIKELY = 3;

  /** What counts as warm, as the lock-out table has it. */
  private static final Conditions WARM =
      new Conditions(
          Map.of("temperature", Quantity.ofSi(Retest.WARM, 0, QuantityKind.TEMPERATURE)));

  private final Case machine;
  private final Proof proof;
  private final Set<String> aside;

  ProofStep(Case machine, Set<String> aside) {
    this.machine = machine;
    this.proof = Proof.of(machine);
    this.aside = aside;
  }

  Prompt next() {
    if (machine.lockOut().barsAll()) {
      return new Prompt.Enough(Optional.empty());
    }
    if (!machine.job().progress().isWorked() && !aside.contains(WORK)) {
      return new Prompt.Work(likely());
    }
    for (ReleaseTest test : proof.tests()) {
      if (test.result() == ReleaseTest.Result.NOT_MET) {
        return new Prompt.Failed(test);
      }
    }
    Optional<ReadTwice> outside = proof.outside().stream().filter(ReadTwice::isDead).findFirst();
    if (outside.isPresent()) {
      return outside(outside.get());
    }
    return suspected()
        .or(() -> released(true))
        .or(() -> repeated(true))
        .or(() -> tested(proof.tests().subList(0, lastRead())))
        .or(() -> released(false))
        .or(() -> repeated(false))
        .or(() -> tested(proof.tests().subList(lastRead(), proof.tests().size())))
        .or(this::symptom)
        .orElseGet(() -> new Prompt.Shown(proof));
  }

  private static Prompt outside(ReadTwice read) {
    Conditions conditions = read.left().orElseThrow().conditions();
    return new Prompt.Outside(read, new Question(read.component(), read.observable(), conditions));
  }

  private List<Remedy> likely() {
    return machine.diagnosis().plan().stream()
        .map(Diagnosis.PlanStep::remedy)
        .limit(LIKELY)
        .toList();
  }

  /** How many tests there are up to the last that is read. */
  private int lastRead() {
    int last = 0;
    for (int i = 0; i < proof.tests().size(); i++) {
      last = proof.tests().get(i).isRead() ? i + 1 : last;
    }
    return last;
  }

  /** The test of what was suspected before the work; nothing is powered before it is in. */
  private Optional<Prompt> suspected() {
    for (Suspicion each : machine.lockOut().suspicions()) {
      Optional<Question> question =
          each.test().flatMap(test -> question(each.component(), test, Conditions.NONE));
      if (question.isPresent() && isOpen(question.get())) {
        return Optional.of(measure(question.get(), "suspected before the work: " + each.fault()));
      }
    }
    return Optional.empty();
  }

  /** A reading that ends a lock-out. */
  private Optional<Prompt> released(boolean dead) {
    for (Reread each : proof.release()) {
      Optional<ReleaseTest> figure = proof.tests().stream().filter(each::isAt).findFirst();
      if (dead && figure.isPresent() && !aside.contains(each.step())) {
        return figure.map(Prompt.Look::new);
      }
      Optional<Question> question =
          question(each.component(), each.observable(), each.warm() ? WARM : Conditions.NONE);
      if (question.isPresent() && isDead(question.get()) == dead && isOpen(question.get())) {
        String warm = each.warm() && isWarm(question.get()) ? ". " + howToWarm() : "";
        return Optional.of(
            measure(question.get(), "it ends the lock-out" + warm + soFar(question.get())));
      }
    }
    return Optional.empty();
  }

  /** What was read of it after the work and decides nothing, so that it is asked again. */
  private String soFar(Question question) {
    return machine.job().measurements(question.component(), question.observable().id()).stream()
        .filter(each -> each.stage() == Measurement.Stage.AS_LEFT)
        .reduce((one, other) -> other)
        .map(each -> ". Read as " + each.shown() + ", which does not do")
        .orElse("");
  }

  /** The one powered step that a row allows, else how a part gets warm without the mains. */
  private String howToWarm() {
    LockOut lockOut = machine.lockOut();
    return lockOut.rows().stream()
        .filter(ActiveRow::supervised)
        .map(each -> each.row().supervised().orElseThrow().text().in(lockOut.market()))
        .findFirst()
        .orElse("Warm it to 40 °C or above without the mains: warm water, warm air");
  }

  /**
   * Whether a reading counts only on a warm part, so that its temperature has to be told.
   *
   * @param question what is read
   * @return true if it asks for a warm part
   */
  static boolean isWarm(Question question) {
    return question.conditions().equals(WARM);
  }

  private static boolean isDead(Question question) {
    return question.observable().procedure().hazard().compareTo(Hazard.DEAD) <= 0;
  }

  /** A reading that spoke for what was mended and was not taken again. */
  private Optional<Prompt> repeated(boolean dead) {
    for (ReadTwice each : proof.toRepeat()) {
      Question question =
          new Question(
              each.component(),
              each.observable(),
              each.found().map(Measurement::conditions).orElse(Conditions.NONE));
      boolean powered = mayBePowered() && proof.beforePower().isEmpty();
      if (isDead(question) == dead && (dead || powered) && isOpen(question)) {
        return Optional.of(measure(question, "as found " + each.foundShown()));
      }
    }
    return Optional.empty();
  }

  private Optional<Prompt> tested(List<ReleaseTest> tests) {
    for (ReleaseTest test : tests) {
      if (test.powered() && !(mayBePowered() && isNext(test))) {
        return Optional.empty();
      }
      Optional<Question> question = question(test.component(), test.observable(), Conditions.NONE);
      if (test.isOpen() && question.isPresent() && isOpen(question.get())) {
        return Optional.of(measure(question.get(), sentence(test.text()) + soFar(question.get())));
      }
      boolean look = test.isOpen() && !test.isRead() && !aside.contains(test.step());
      if (look) {
        return Optional.of(new Prompt.Look(test));
      }
    }
    return Optional.empty();
  }

  /** Whether nothing that comes before a powered test is open. */
  private boolean isNext(ReleaseTest test) {
    List<ReleaseTest> before = proof.beforePower();
    return before.isEmpty() || before.get(0).equals(test);
  }

  /**
   * Whether power may be put on, be it only for the last readings of a lock-out, covers on and
   * behind a residual-current device: once all tests before it are met and nothing is suspected any
   * more. What only the kind of machine asks for is left to who isolates it.
   */
  private boolean mayBePowered() {
    LockOut lockOut = machine.lockOut();
    boolean opened =
        lockOut.suspicions().isEmpty()
            && lockOut.rows().stream()
                .filter(each -> !each.standing() && each.row().only().isEmpty())
                .filter(each -> !each.row().allowed().contains(Taken.RUNNING))
                .allMatch(ActiveRow::opened);
    boolean shown = proof.tests().stream().noneMatch(each -> !each.powered() && each.isOpen());
    return shown && (!lockOut.forbidsRunning() || opened);
  }

  private Optional<Question> question(String component, String observable, Conditions conditions) {
    return machine
        .job()
        .appliance()
        .component(component)
        .flatMap(part -> machine.vocabulary().observable(part.kind(), observable))
        .map(known -> new Question(component, known, stateable(known, conditions)));
  }

  /** Only what can be stated of a reading. */
  private static Conditions stateable(Observable observable, Conditions conditions) {
    boolean all =
        observable.conditions().stream()
            .map(Characteristic::id)
            .toList()
            .containsAll(conditions.figures().keySet());
    return all ? conditions : Conditions.NONE;
  }

  private static String sentence(String text) {
    return text.endsWith(".") ? text.substring(0, text.length() - 1) : text;
  }

  private static Prompt measure(Question question, String why) {
    return new Prompt.Measure(question, question.observable().procedure().minutes(), why);
  }

  /** Whether it was not set aside and may be read now; live readings are never asked for. */
  private boolean isOpen(Question question) {
    Observable observable = question.observable();
    Hazard hazard = observable.procedure().hazard();
    return !aside.contains(question.key())
        && hazard != Hazard.LIVE
        && machine.lockOut().allows(question.component(), observable.id(), hazard);
  }

  private Optional<Prompt> symptom() {
    List<String> open = new ArrayList<>(proof.openSymptoms());
    open.removeIf(aside::contains);
    boolean held = !mayBePowered() || !proof.beforePower().isEmpty();
    if (held) {
      return Optional.empty();
    }
    return open.stream()
        .flatMap(id -> machine.vocabulary().symptom(id).stream())
        .filter(symptom -> machine.vocabulary().weighed().contains(symptom))
        .findFirst()
        .map((Symptom symptom) -> new Prompt.Ask(symptom));
  }
}
