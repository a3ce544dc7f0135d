package kelter.core.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
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
import kelter.core.proof.Cure;
import kelter.core.proof.Proof;
import kelter.core.proof.ReleaseTest;
import kelter.core.quantity.Money;
import kelter.core.quote.Invoice;
import kelter.core.workshop.Case;

/** The eight points of a page for the owner; common practice, no source. */
public final class OwnersPage {

  private static final double WORTH_TELLING = 0.05;
  private static final double LIKELIER = 0.5;

  private final Case machine;
  private final Job job;
  private final Proof proof;
  private final WorkSteps steps;
  private final Optional<Closing> closing;
  private final Beside beside;

  /**
   * What the page tells beside the job.
   *
   * @param call whom to call, may be empty
   * @param names whether names, notes and the words of the owner are told
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
    this.job = machine.job();
    this.proof = proof;
    this.steps = steps;
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
        page.use(),
        page.wrong(),
        page.done(),
        page.cost(),
        page.tested(),
        page.watch(),
        page.open(),
        page.guarantee());
  }

  private Point use() {
    List<String> answers = new ArrayList<>();
    if (!proof.first().isEmpty()) {
      answers.add("No, not as it is. " + proof.first());
    }
    List<String> failed = new ArrayList<>();
    for (ReleaseTest test : proof.tests()) {
      if (test.result() == ReleaseTest.Result.NOT_MET) {
        failed.add(lower(test.title()));
      }
    }
    if (!failed.isEmpty()) {
      answers.add("No, not as it is. Not as it must be: " + String.join(", ", failed) + ".");
    }
    boolean warning = !answers.isEmpty();
    if (!warning) {
      String who =
          closing
              .map(Closing::by)
              .filter(name -> !name.isBlank())
              .orElse("the person who did the work");
      answers.add("That is for " + who + " to say, here, by name and signature:");
    }
    return new Point("May I use it?", answers, warning);
  }

  private Point wrong() {
    List<String> causes = closing.map(Closing::causes).orElse(found());
    List<String> answers = new ArrayList<>();
    for (String cause : causes) {
      answers.add(sentence(title(cause)) + ".");
    }
    if (answers.isEmpty()) {
      answers.add("The cause was not found for certain.");
    }
    for (Diagnosis.FaultProbability each : told(causes)) {
      answers.add(sure(each, causes.isEmpty()));
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
    return told.isEmpty() && causes.isEmpty() ? faults.stream().limit(1).toList() : told;
  }

  /** What was found while the work was done. */
  private List<String> found() {
    Set<String> found = new LinkedHashSet<>();
    job.progress().work().forEach(each -> found.addAll(each.found()));
    return List.copyOf(found);
  }

  private static String sure(Diagnosis.FaultProbability each, boolean guess) {
    String odds = inHundred(each.probability()) + " of 100 such machines";
    return guess
        ? "Most likely: %s (so in %s with these readings).".formatted(each.fault().title(), odds)
        : "Before anything was opened, the readings spoke for “%s” in %s."
            .formatted(each.fault().title(), odds);
  }

  private static String inHundred(double probability) {
    long whole = Math.round(100 * probability);
    return whole > 99 ? "more than 99" : whole < 1 ? "fewer than 1" : "about " + whole;
  }

  private String title(String key) {
    return machine.faults().stream()
        .filter(fault -> fault.key().equals(key))
        .map(Fault::title)
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
      answers.add("Nothing was mended.");
    }
    closing.ifPresent(each -> answers.add("How it ended: " + each.outcome().words() + "."));
    return Point.of("What was done?", answers);
  }

  private static String parts(WorkDone work) {
    List<String> parts = new ArrayList<>();
    for (PartUsed part : work.parts()) {
      String count = part.count() == 1 ? "" : part.count() + " × ";
      parts.add(count + part.title() + " (" + part.condition().id().replace('-', ' ') + ")");
    }
    return parts.isEmpty() ? "" : ". Parts: " + String.join(", ", parts);
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

  private Point tested() {
    Map<String, ReleaseTest.Result> worst = new LinkedHashMap<>();
    for (ReleaseTest test : proof.tests()) {
      if (test.result() != ReleaseTest.Result.NOT_APPLICABLE && !test.title().isEmpty()) {
        worst.merge(test.title(), test.result(), OwnersPage::worse);
      }
    }
    List<String> answers = new ArrayList<>();
    worst.forEach((title, result) -> answers.add(title + ": " + words(result) + "."));
    return Point.of("What was looked at and measured after the work?", answers);
  }

  private static ReleaseTest.Result worse(ReleaseTest.Result one, ReleaseTest.Result other) {
    List<ReleaseTest.Result> order =
        List.of(
            ReleaseTest.Result.NOT_MET,
            ReleaseTest.Result.UNDECIDED,
            ReleaseTest.Result.NOT_MEASURED,
            ReleaseTest.Result.MET);
    return order.indexOf(one) < order.indexOf(other) ? one : other;
  }

  private static String words(ReleaseTest.Result result) {
    return switch (result) {
      case MET -> "as it must be, by what was entered";
      case NOT_MET -> "not as it must be";
      case UNDECIDED -> "too close to say";
      case NOT_MEASURED -> "not measured";
      case NOT_APPLICABLE -> "does not apply";
    };
  }

  private Point watch() {
    Set<String> kinds = new LinkedHashSet<>();
    for (WorkDone work : job.progress().work()) {
      work.component().map(this::kindOf).ifPresent(kinds::add);
    }
    Set<String> answers = new LinkedHashSet<>();
    if (closing.filter(each -> each.outcome() == Outcome.CURED).isPresent()) {
      answers.addAll(steps.always().owner());
    }
    kinds.forEach(kind -> answers.addAll(steps.of(kind).owner()));
    if (answers.isEmpty()) {
      answers.add("If it does anything new, switch it off, pull the plug and call.");
    }
    return Point.of("What do I have to do or to watch?", List.copyOf(answers));
  }

  private String kindOf(String component) {
    return job.appliance()
        .component(component)
        .map(Component::kind)
        .or(() -> machine.kind().flatMap(kind -> kind.part(component)).map(KindPart::kind))
        .orElse(component);
  }

  private Point open() {
    List<String> answers = new ArrayList<>();
    proof.cure().ifPresent(cure -> answers.addAll(cure(cure)));
    if (proof.cure().isEmpty()) {
      answers.add("Nothing was mended, so what was wrong is wrong still.");
    }
    for (String symptom : proof.openSymptoms()) {
      answers.add(
          "Nobody has looked after the work whether it still "
              + machine.vocabulary().symptom(symptom).orElseThrow().title()
              + ".");
    }
    long tests =
        proof.openTests().stream()
            .filter(each -> each.result() == ReleaseTest.Result.NOT_MEASURED)
            .count();
    if (tests > 0) {
      answers.add("Not measured or looked at: " + tests + " of the tests after the work.");
    }
    return Point.of("What is not settled?", answers);
  }

  private static List<String> cure(Cure cure) {
    List<String> answers = new ArrayList<>();
    answers.add(
        "%s: in %s of 100 such cases the cause is gone."
            .formatted(cure.words(), inHundred(cure.chance())));
    for (Cure.Still still : cure.still()) {
      if (still.fault().probability() >= WORTH_TELLING) {
        answers.add(
            "It may also have this (%s in 100): %s."
                .formatted(inHundred(still.fault().probability()), still.fault().fault().title()));
      }
    }
    return answers;
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
                        .formatted(time.display(), closing.get().date())));
    if (answers.isEmpty()) {
      answers.add("Your rights by law stay as they are.");
    }
    answers.add(beside.call().isBlank() ? "Call whoever did the work." : "Call: " + beside.call());
    String old = closing.map(Closing::oldParts).orElse("");
    answers.add(old.isBlank() ? "Old parts: not told." : "Old parts: " + old + ".");
    return Point.of("Guarantee, whom to call, old parts", answers);
  }

  private static String sentence(String words) {
    return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  private static String lower(String words) {
    return words.isEmpty() ? words : Character.toLowerCase(words.charAt(0)) + words.substring(1);
  }
}
