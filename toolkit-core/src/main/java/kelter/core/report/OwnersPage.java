package kelter.core.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import kelter.core.catalogue.KindPart;
import kelter.core.catalogue.WorkSteps;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.Fault;
import kelter.core.job.Component;
import kelter.core.job.Job;
import kelter.core.job.work.Closing;
import kelter.core.job.work.Outcome;
import kelter.core.job.work.PartUsed;
import kelter.core.job.work.WorkDone;
import kelter.core.proof.Proof;
import kelter.core.quantity.Money;
import kelter.core.quantity.Quantity;
import kelter.core.quote.Invoice;
import kelter.core.workshop.Case;

/** The eight points of a page for the owner; common practice, no source. */
public final class OwnersPage {

  private static final double WORTH_TELLING = 0.05;
  private static final double LIKELIER = 0.5;

  private final Case machine;
  private final Job job;
  private final WorkSteps steps;
  private final Optional<Closing> closing;
  private final Beside beside;
  private final MayUse use;

  /**
   * What the page tells beside the job.
   *
   * @param call whom to call, may be empty
   * @param names whether names, notes, the words of the owner and where old parts went are told
   * @param invoice the bill for the work, if the job tells enough for one
   */
  public record Beside(String call, boolean names, Optional<Invoice> invoice) {

    /** Checks that nothing is null. */
    public Beside {
      Objects.requireNonNull(call);
      Objects.requireNonNull(invoice);
    }
  }

  private OwnersPage(Case machine, Proof proof, WorkSteps steps, Beside beside) {
    this.machine = machine;
    this.use = new MayUse(machine, proof);
    this.job = machine.job();
    this.steps = steps.on(machine.kind());
    this.closing = job.progress().closing();
    this.beside = beside;
  }

  /**
   * The points.
   *
   * @param machine the case
   * @param proof what was shown after the work
   * @param steps what is known of work, for what the owner has to watch
   * @param beside what it tells beside the job
   * @return eight points
   */
  public static List<Point> of(Case machine, Proof proof, WorkSteps steps, Beside beside) {
    OwnersPage page = new OwnersPage(machine, proof, steps, beside);
    return List.of(
        page.use.point(beside.names()),
        page.wrong(),
        page.done(),
        page.cost(),
        Tested.of(proof),
        page.watch(),
        Unsettled.of(machine, proof),
        page.guarantee());
  }

  private Point wrong() {
    List<String> causes = closing.map(Closing::causes).orElse(found());
    List<String> answers = new ArrayList<>();
    for (String cause : causes) {
      answers.add(sentence(title(cause)) + ".");
    }
    if (isSound()) {
      answers.add("Nothing wrong was found with your machine.");
    } else if (causes.isEmpty()
        && !job.progress().isWorked()
        && machine.diagnosis().isNothingWrong()) {
      answers.add(
          "Nothing wrong was found: with these readings nothing is in %s of 100 such machines."
              .formatted(Unsettled.inHundred(machine.diagnosis().chanceOfNothing())));
    } else {
      if (answers.isEmpty()) {
        answers.add("The cause was not found for certain.");
      }
      for (Diagnosis.FaultProbability each : told(causes)) {
        answers.add(sure(each, causes.isEmpty()));
      }
    }
    String said = job.complaint().said();
    if (beside.names() && !said.isBlank()) {
      answers.add("You told us: “" + said + "”");
    }
    return Point.of("What was wrong?", answers);
  }

  /** The causes; where none is told, what is likelier than not, or else what is likeliest. */
  private List<Diagnosis.FaultProbability> told(List<String> causes) {
    List<Diagnosis.FaultProbability> faults = machine.diagnosis().faults();
    List<Diagnosis.FaultProbability> told =
        faults.stream()
            .filter(
                each ->
                    causes.isEmpty()
                        ? each.probability() > LIKELIER
                        : causes.contains(each.fault().key()))
            .toList();
    return told.isEmpty() && causes.isEmpty()
        ? faults.stream().limit(1).filter(each -> each.probability() >= WORTH_TELLING).toList()
        : told;
  }

  /** What was found while the work was done. */
  private List<String> found() {
    Set<String> found = new LinkedHashSet<>();
    job.progress().work().forEach(each -> found.addAll(each.found()));
    return List.copyOf(found);
  }

  private static String sure(Diagnosis.FaultProbability each, boolean guess) {
    String title = OwnersTitle.of(each.fault().title());
    String odds = Unsettled.inHundred(each.probability()) + " of 100 such machines";
    return guess
        ? "Most likely: %s (so in %s with these readings).".formatted(title, odds)
        : "The readings before the work spoke for “%s” in %s.".formatted(title, odds);
  }

  private String title(String key) {
    return machine.faults().stream()
        .filter(fault -> fault.key().equals(key))
        .map(Fault::title)
        .map(OwnersTitle::of)
        .findFirst()
        .orElse(key);
  }

  private Point done() {
    List<String> answers = new ArrayList<>();
    for (WorkDone work : job.progress().work()) {
      String title = work.title().isBlank() ? work.remedy().orElse("") : work.title();
      String on = work.component().map(each -> Component.words(each) + ": ").orElse("");
      answers.add(sentence(on + title) + parts(work) + ".");
      if (beside.names() && !work.note().isBlank()) {
        answers.add(work.note());
      }
    }
    if (answers.isEmpty()) {
      answers.add(
          isCured()
              ? "What was done was not written down."
              : isSound() ? "Nothing had to be mended." : "Nothing was mended.");
    }
    closing
        .map(Closing::note)
        .filter(note -> beside.names() && !note.isBlank())
        .ifPresent(answers::add);
    closing.ifPresent(each -> answers.add("How it ended: " + each.outcome().words() + "."));
    return Point.of("What was done?", answers);
  }

  private static String parts(WorkDone work) {
    return work.parts().isEmpty()
        ? ""
        : ". Parts: "
            + work.parts().stream().map(PartUsed::words).collect(Collectors.joining(", "));
  }

  private Point cost() {
    List<String> answers = new ArrayList<>();
    Optional<Money> total = beside.invoice().flatMap(each -> each.bill().total());
    Optional<Money> charged = closing.flatMap(Closing::charged).or(() -> total);
    answers.add(
        charged
            .map(
                amount ->
                    amount.format() + ", tax included where it is due. The bill has the lines.")
            .orElse("No amount is told here; the bill has it."));
    if (charged.isPresent() && charged.equals(total)) {
      beside.invoice().flatMap(Invoice::difference).ifPresent(each -> answers.add(offered(each)));
    }
    return Point.of("What does it cost?", answers);
  }

  /** Why it is not what was offered: an offer tells the most that it may become. */
  private static String offered(Money difference) {
    int sign = difference.amount().signum();
    String amount = new Money(difference.amount().abs(), difference.currency()).format();
    if (sign == 0) {
      return "That is what the offer said.";
    }
    return sign < 0
        ? amount + " less than the most that the offer allowed for."
        : amount + " more than the offer allowed for: ask what was found and agreed.";
  }

  private Point watch() {
    Set<String> parts = new LinkedHashSet<>();
    for (WorkDone work : job.progress().work()) {
      work.component().ifPresent(parts::add);
    }
    Set<String> answers = new LinkedHashSet<>();
    if (use.isBarred()) {
      answers.add(use.outOfUse());
    } else if (isCured()) {
      answers.addAll(steps.always().owner());
    }
    for (String part : parts) {
      answers.addAll(steps.of(job.appliance().kind(), part, kindOf(part)).owner());
    }
    if (answers.isEmpty()) {
      answers.add("If it does anything new, take its power off and call.");
    }
    MayUse.ofKind(machine.lockOut())
        .forEach(text -> answers.add("Holds for every such machine: " + text));
    return Point.of("What do I have to do or to watch?", List.copyOf(answers));
  }

  private boolean isSound() {
    return closing.filter(each -> each.outcome() == Outcome.NOTHING_WRONG).isPresent();
  }

  private boolean isCured() {
    return closing.filter(each -> each.outcome() == Outcome.CURED).isPresent();
  }

  private String kindOf(String component) {
    return job.appliance()
        .component(component)
        .map(Component::kind)
        .or(() -> machine.kind().flatMap(kind -> kind.part(component)).map(KindPart::kind))
        .orElse(component);
  }

  private Point guarantee() {
    List<String> answers = new ArrayList<>();
    closing
        .flatMap(Closing::guarantee)
        .ifPresent(
            time ->
                answers.add(
                    ("On this repair we give %s from %s, parts and labour, for the same defect; your"
                            + " rights by law stay as they are.")
                        .formatted(lasting(time), closing.get().date())));
    if (answers.isEmpty()) {
      answers.add("Your rights by law stay as they are.");
    }
    answers.add(beside.call().isBlank() ? "Call whoever did the work." : "Call: " + beside.call());
    String old = closing.map(Closing::oldParts).filter(told -> beside.names()).orElse("");
    answers.add(old.isBlank() ? "Old parts: not told here." : "Old parts: " + old + ".");
    return Point.of("Guarantee, whom to call, old parts", answers);
  }

  private static String lasting(Quantity time) {
    String told = time.display();
    return time.unit().symbol().equals("mo")
        ? told.replaceFirst(
            "mo$", told.startsWith("1\u00a0") || told.startsWith("1 ") ? "month" : "months")
        : told;
  }

  private static String sentence(String words) {
    return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }
}
