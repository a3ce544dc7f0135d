package kelter.core.session;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import kelter.core.file.json.Json;
import kelter.core.job.Measurement;
import kelter.core.job.SymptomReport;
import kelter.core.problem.InputException;
import kelter.core.safety.Caution;
import kelter.core.safety.LockState;
import kelter.core.safety.lockout.ActiveRow;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Symptom;
import kelter.core.workshop.Case;
import kelter.core.workshop.Workshop;

/**
 * A case that is led from the call on: it asks, somebody answers, and what is asked next follows.
 * It never changes; an answer makes the next session, which knows the one before. All that was said
 * stands in its content, which is that of a job file, so that whoever keeps it after each answer
 * loses nothing.
 */
public final class Session {

  static final String AGE = "age";
  static final String SAID = "said";

  private final Workshop workshop;
  private final UnaryOperator<String> idOf;
  private final Json.Obj content;

  /** What nobody can tell or read, by symptom, {@code component.observable} or step of the call. */
  private final Set<String> aside;

  private final Set<String> heeded;

  /** Whether what is read and seen is so after the work. */
  private final boolean proving;

  private final Optional<Session> before;

  /** The line that made it of the one before. */
  private String typed = "";

  private Case machine;
  private Prompt prompt;

  private Session(
      Workshop workshop,
      UnaryOperator<String> idOf,
      Json.Obj content,
      Set<String> aside,
      Set<String> heeded,
      boolean proving,
      Optional<Session> before) {
    this.workshop = workshop;
    this.idOf = idOf;
    this.content = content;
    this.aside = Set.copyOf(aside);
    this.heeded = Set.copyOf(heeded);
    this.proving = proving;
    this.before = before;
  }

  /**
   * Begins a new job.
   *
   * @param workshop the workshop
   * @param date the day of the call, {@code yyyy-mm-dd}
   * @param idOf the id of the job by the id of the kind of machine
   * @return a session that asks for the kind of machine
   */
  public static Session begin(Workshop workshop, String date, UnaryOperator<String> idOf) {
    Json.Obj content =
        new Json.Obj(Map.of())
            .with("format", new Json.Str("kelter-job/2"))
            .with("id", new Json.Str("job"))
            .with("date", new Json.Str(date));
    return new Session(workshop, idOf, content, Set.of(), Set.of(), false, Optional.empty());
  }

  /**
   * Goes on with a job. Age and words of the owner are not asked for again.
   *
   * @param workshop the workshop
   * @param content the content of its file
   * @return a session that asks what decides next
   * @throws InputException with every mistake of the content
   */
  public static Session of(Workshop workshop, Json.Obj content) {
    return of(workshop, content, false);
  }

  /**
   * Proves the work of a job: it asks what was done, then leads through readings and tests on the
   * way back to power. What is answered stands in the job as left.
   *
   * @param workshop the workshop
   * @param content the content of its file
   * @return a session that asks for what is still open
   * @throws InputException with every mistake of the content
   */
  public static Session proving(Workshop workshop, Json.Obj content) {
    return of(workshop, content, true);
  }

  private static Session of(Workshop workshop, Json.Obj content, boolean proving) {
    Session session =
        new Session(
            workshop,
            UnaryOperator.identity(),
            content,
            Set.of(AGE, SAID),
            Set.of(),
            proving,
            Optional.empty());
    session.machine();
    return session;
  }

  /**
   * What stands in the job.
   *
   * @return the content of its file; not yet a job until the kind of machine was told
   */
  public Json.Obj content() {
    return content;
  }

  /**
   * Whether there is a job to keep.
   *
   * @return true once the kind of machine was told
   */
  public boolean isBegun() {
    return content.members().containsKey("appliance");
  }

  /**
   * The case as it stands.
   *
   * @return the case
   * @throws IllegalStateException if the kind of machine was not told yet
   */
  public Case machine() {
    if (!isBegun()) {
      throw new IllegalStateException("the kind of machine is not known yet");
    }
    if (machine == null) {
      machine = workshop.open(workshop.read(content).job());
    }
    return machine;
  }

  /**
   * What is asked now.
   *
   * @return the prompt
   */
  public Prompt prompt() {
    if (prompt == null) {
      prompt = next();
    }
    return prompt;
  }

  private Prompt next() {
    if (!isBegun()) {
      return new Prompt.KindOfMachine(Optional.empty());
    }
    if (!aside.contains(AGE) && machine().job().appliance().age().isEmpty()) {
      return new Prompt.Age();
    }
    if (!aside.contains(SAID) && machine().job().complaint().said().isBlank()) {
      return new Prompt.Said();
    }
    Optional<Caution> lockOut = machine().lockOutAsFound().caution();
    if (lockOut.isPresent() && !heeded.contains(lockOut.get().text())) {
      return new Prompt.Heed(lockOut.get());
    }
    Optional<Symptom> danger = ofDanger();
    if (danger.isPresent()) {
      return new Prompt.Ask(danger.get());
    }
    if (!leftToOthers().isEmpty()) {
      return new Prompt.Enough(Optional.empty());
    }
    if (proving) {
      return new ProofStep(machine(), aside).next();
    }
    NextStep step = NextStep.of(machine(), aside);
    if (step instanceof NextStep.Ask ask) {
      return new Prompt.Ask(ask.symptom());
    }
    if (step instanceof NextStep.Measure measure) {
      return new Prompt.Measure(measure.question(), measure.minutes(), measure.why());
    }
    return new Prompt.Enough(((NextStep.Mend) step).first());
  }

  /**
   * A sign of danger that nobody has asked for: one that the owner denied or was not sure of, or
   * one of his words that leaves the machine to others, since a no gives it back.
   */
  private Optional<Symptom> ofDanger() {
    Set<String> answered = answered();
    List<String> signs = new ArrayList<>(machine().lockOutAsFound().ask());
    for (ActiveRow row : leftToOthers()) {
      row.row().when().told().forEach(told -> signs.add(told.symptom()));
    }
    return signs.stream()
        .filter(id -> !answered.contains(id))
        .flatMap(id -> machine().vocabulary().symptom(id).stream())
        .filter(this::isAskedOrHolds)
        .findFirst();
  }

  private boolean isAskedOrHolds(Symptom sign) {
    return machine().lockOutAsFound().ask().contains(sign.id())
        || leftToOthers().stream()
            .anyMatch(
                row -> row.because().stream().anyMatch(ground -> ground.about().equals(sign.id())));
  }

  /** The rows by which danger, not only the kind of machine, leaves nothing to be done here. */
  private List<ActiveRow> leftToOthers() {
    return machine().lockOutAsFound().rows().stream()
        .filter(each -> each.row().state() == LockState.D)
        .filter(each -> each.row().only().isEmpty() && !each.standing())
        .toList();
  }

  private Set<String> answered() {
    Set<String> answered = new LinkedHashSet<>(aside);
    for (SymptomReport report : machine().job().complaint().symptoms()) {
      answered.add(report.symptom());
    }
    return answered;
  }

  /**
   * Answers what is asked, or gives an order.
   *
   * @param line what was typed
   * @return the session as it goes on, and what to say to the line
   */
  public Reply answer(String line) {
    Reply reply = new Answering(this, line.strip()).reply();
    if (reply.session().before.filter(each -> each == this).isPresent()) {
      reply.session().typed = line.strip();
    }
    return reply;
  }

  /** The line that made it of the one before. */
  String typed() {
    return typed;
  }

  Workshop workshop() {
    return workshop;
  }

  UnaryOperator<String> idOf() {
    return idOf;
  }

  /**
   * Whether the work of the job is proved.
   *
   * @return true if what is read and seen is so after the work
   */
  public boolean isProving() {
    return proving;
  }

  /** At which stage something is read now. */
  Measurement.Stage stage() {
    return proving ? Measurement.Stage.AS_LEFT : Measurement.Stage.AS_FOUND;
  }

  Optional<Session> before() {
    return before;
  }

  /** The same with another content. */
  Session saying(Json.Obj other) {
    return new Session(workshop, idOf, other, aside, heeded, proving, Optional.of(this));
  }

  /** The same with another content, as if it had begun with that. */
  Session holding(Json.Obj other) {
    return new Session(workshop, idOf, other, aside, heeded, proving, Optional.empty());
  }

  /** The same that asks something before all else. */
  Session asking(Prompt first) {
    Session next = new Session(workshop, idOf, content, aside, heeded, proving, Optional.of(this));
    next.prompt = first;
    return next;
  }

  /** The same in which something cannot be told or read. */
  Session without(List<String> more) {
    Set<String> all = new LinkedHashSet<>(aside);
    all.addAll(more);
    return new Session(workshop, idOf, content, all, heeded, proving, Optional.of(this));
  }

  /** The same in which a caution was read. */
  Session heeding(Caution caution) {
    Set<String> all = new LinkedHashSet<>(heeded);
    all.add(caution.text());
    return new Session(workshop, idOf, content, aside, all, proving, Optional.of(this));
  }

  /** Everything that can be read of a component, as it is set aside. */
  List<String> allOf(String component) {
    List<String> keys = new ArrayList<>();
    machine()
        .job()
        .appliance()
        .component(component)
        .flatMap(part -> workshop.vocabulary().kind(part.kind()))
        .ifPresent(
            kind -> {
              for (Observable observable : kind.observables()) {
                keys.add(component + "." + observable.id());
              }
            });
    return keys;
  }
}
