package kelter.cli.proof;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import kelter.cli.terminal.Terminal;
import kelter.cli.text.Figures;
import kelter.cli.text.JobText;
import kelter.cli.text.Layout;
import kelter.cli.text.StepText;
import kelter.core.check.Finding;
import kelter.core.check.Verdict;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.job.Component;
import kelter.core.job.Measurement;
import kelter.core.job.work.PartUsed;
import kelter.core.job.work.WorkDone;
import kelter.core.proof.Change;
import kelter.core.proof.Cure;
import kelter.core.proof.Difference;
import kelter.core.proof.Proof;
import kelter.core.proof.ReadTwice;
import kelter.core.safety.lockout.ActiveRow;
import kelter.core.safety.lockout.ReleaseTest;
import kelter.core.vocabulary.Observable;
import kelter.core.workshop.Case;

/** What was shown after the work, and what is open. */
public final class ProofText {

  /** What a list of met limits does not say. */
  public static final String STANDING =
      "This says which readings that were entered meet which limit, and no more. Who did the work"
          + " says whether the machine may be used. Local codes and licensed practice come first.";

  private static final String INDENT = "  ";
  private static final String PROVE = "kelter prove JOB ";

  private final Case machine;
  private final Proof proof;
  private final Terminal terminal;
  private final Layout layout;

  private ProofText(Case machine, Proof proof, Terminal terminal) {
    this.machine = machine;
    this.proof = proof;
    this.terminal = terminal;
    this.layout = new Layout(terminal);
  }

  /**
   * The text.
   *
   * @param machine the case
   * @param proof what was shown
   * @param terminal where it will be shown
   * @return the text, which fits a narrow screen
   */
  public static String of(Case machine, Proof proof, Terminal terminal) {
    ProofText text = new ProofText(machine, proof, terminal);
    JobText.head(machine.job(), machine.cautions(), text.layout);
    text.work();
    text.cure();
    text.readings();
    text.symptoms();
    text.tests();
    text.open();
    text.layout.blank().line(STANDING);
    return text.layout.toString();
  }

  private void work() {
    List<WorkDone> work = machine.job().progress().work();
    if (work.isEmpty()) {
      layout.line("Nothing is recorded as done: kelter done JOB PART.REMEDY");
    }
    for (WorkDone each : work) {
      layout.hanging("Done: ", done(each) + ".");
    }
    for (String each : proof.unknown()) {
      layout.hanging(
          INDENT, "'" + each + "' is no work that is known here: it does not count for the cure.");
    }
  }

  /**
   * A piece of work in a line.
   *
   * @param work the work
   * @return what was done, on what, how long, with which parts, by whom
   */
  public static String done(WorkDone work) {
    StringBuilder line = new StringBuilder(title(work));
    work.time().ifPresent(time -> line.append(", ").append(time.display()));
    for (PartUsed part : work.parts()) {
      line.append("; ").append(part.words());
    }
    line.append(work.by().isBlank() ? "" : ", by " + work.by());
    return line.toString();
  }

  /**
   * A piece of work by its part and title.
   *
   * @param work the work
   * @return for instance {@code Heater: renew the heater}
   */
  public static String title(WorkDone work) {
    String title = work.title().isBlank() ? work.remedy().orElse("") : work.title();
    return StepText.sentence(
        work.component().map(each -> Component.words(each) + ": ").orElse("") + title);
  }

  private void cure() {
    if (proof.cure().isEmpty()) {
      return;
    }
    Cure cure = proof.cure().get();
    layout.heading("Did it work");
    layout.hanging(INDENT, words(cure) + ".");
    for (Cure.Still still : cure.still()) {
      layout.hanging(INDENT + "  ", still(still));
    }
  }

  /**
   * How a cure came out, with its chance where that says how the machine stands.
   *
   * @param cure the cure
   * @return a sentence without its full stop
   */
  public static String words(Cure cure) {
    if (cure.read() && !cure.tellsChance()) {
      return cure.words();
    }
    String chance = cure.read() ? "the cause is gone: " : "by what such work cures: ";
    return cure.words() + " (" + chance + Figures.percent(cure.chance()) + ")";
  }

  private static String still(Cure.Still still) {
    String now = severity(still.fault().severity());
    String before =
        still
            .before()
            .map(
                each ->
                    ", as found " + Figures.percent(each.probability()) + severity(each.severity()))
            .orElse("");
    return "still possible: %s, %s%s%s"
        .formatted(
            still.fault().fault().title(),
            Figures.percent(still.fault().probability()),
            now,
            before);
  }

  private static String severity(Diagnosis.Severity severity) {
    return severity.isTold() ? ", severity " + Math.round(10 * severity.mean()) / 10.0 : "";
  }

  private void readings() {
    if (proof.readings().isEmpty()) {
      return;
    }
    layout.heading("As found, as left");
    for (ReadTwice each : proof.readings()) {
      layout.hanging(INDENT, Component.words(each.component()) + ": " + each.observable().title());
      layout.hanging(INDENT + "  as found ", told(each.foundAgainst(), each.foundShown()));
      for (Measurement earlier : each.superseded()) {
        layout.hanging(INDENT + "  before   ", earlier.shown() + " (read again since)");
      }
      if (each.left().isPresent()) {
        layout.hanging(INDENT + "  as left  ", told(each.leftAgainst(), each.left().get().shown()));
      }
      each.difference().ifPresent(d -> layout.hanging(INDENT + "  ", difference(each, d)));
      layout.hanging(INDENT + "  ", change(each.change()));
    }
  }

  /**
   * A reading after the work that does not conform.
   *
   * @param read the reading
   * @return part, what was read, what it may be
   */
  public static String outside(ReadTwice read) {
    return Component.words(read.component())
        + ": "
        + read.observable().title()
        + ", "
        + read.leftAgainst()
            .map(each -> Figures.measured(each) + "; allowed " + Figures.limits(each))
            .orElse(read.left().map(Measurement::shown).orElse(""));
  }

  private static String typed(ReadTwice read) {
    boolean figure = read.observable().type() == Observable.Type.QUANTITY;
    String at =
        read.left().orElseThrow().conditions().figures().entrySet().stream()
            .map(each -> each.getKey() + "=" + each.getValue().format())
            .collect(Collectors.joining(","));
    return "--read \"%s.%s=...%s%s\""
        .formatted(
            read.component(),
            read.observable().id(),
            figure ? " " + read.observable().kind().unit().symbol() : "",
            at.isEmpty() ? "" : " at " + at);
  }

  /**
   * A test in a few words.
   *
   * @param test the test
   * @return its title, or else its text
   */
  public static String title(ReleaseTest test) {
    return test.title().isEmpty() ? test.text() : test.title();
  }

  /**
   * The tests that hold the power back.
   *
   * @param proof what was shown
   * @return their titles and how they came out, with semicolons between
   */
  public static String beforePower(Proof proof) {
    return proof.beforePower().stream()
        .map(test -> title(test) + " (" + test.result().words() + ")")
        .distinct()
        .collect(Collectors.joining("; "));
  }

  private String change(Change change) {
    String words = StepText.sentence(change.words()) + ".";
    return switch (change) {
      case SAME, WORSE, BETTER, BAD -> terminal.attention(words);
      default -> words;
    };
  }

  private static String told(Optional<Finding> against, String shown) {
    return against
        .map(
            each ->
                "%s; allowed %s: %s"
                    .formatted(
                        Figures.measured(each), Figures.limits(each), each.verdict().words()))
        .orElse(shown);
  }

  private static String difference(ReadTwice read, Difference difference) {
    return "changed by "
        + Figures.difference(difference.estimate(), read.observable(), unit(read))
        + (difference.shared() ? " (same instrument: its own error cancels)" : "")
        + (difference.isReal() ? "" : ", which is not more than its uncertainty");
  }

  private static Optional<Finding> unit(ReadTwice read) {
    return read.leftAgainst().or(read::foundAgainst);
  }

  private void symptoms() {
    if (proof.symptoms().isEmpty()) {
      return;
    }
    layout.heading("What it did, what it does");
    for (Proof.SeenTwice each : proof.symptoms()) {
      String title = machine.vocabulary().symptom(each.symptom()).orElseThrow().title();
      layout.hanging(
          INDENT,
          "%s: %s before, %s now"
              .formatted(
                  title,
                  each.found().map(answer -> answer.id()).orElse("not asked"),
                  each.left().map(answer -> answer.id()).orElse("not looked at")));
    }
  }

  private void tests() {
    layout.heading("Tests on the way back to power; the first that fails ends them");
    String before = "";
    for (ReleaseTest test : proof.tests()) {
      String text = test.text().equals(before) ? "" : test.text();
      String read =
          test.awaited().map(each -> " " + StepText.sentence(each.title()) + ":").orElse("");
      layout.hanging(INDENT + mark(test) + " ", (text + read + " " + result(test)).strip());
      test.against().filter(each -> test.note().isBlank()).ifPresent(this::against);
      before = test.text();
    }
  }

  private void against(Finding finding) {
    layout.hanging(
        INDENT + "    ",
        "%s; allowed %s".formatted(Figures.measured(finding), Figures.limits(finding)));
    if (finding.verdict() == Verdict.UNDECIDED && !finding.remark().isEmpty()) {
      layout.hanging(INDENT + "    ", StepText.sentence(finding.remark()));
    }
    layout.hanging(INDENT + "    Source: ", finding.source().display());
  }

  private static String mark(ReleaseTest test) {
    return switch (test.result()) {
      case MET -> "[x]";
      case NOT_MET -> "[!]";
      case UNDECIDED -> "[?]";
      case NOT_MEASURED -> "[ ]";
      case NOT_APPLICABLE -> "[-]";
    };
  }

  private String result(ReleaseTest test) {
    String words =
        "(" + test.result().words() + (test.note().isBlank() ? "" : ": " + test.note()) + ")";
    return test.result() == ReleaseTest.Result.NOT_MET ? terminal.attention(words) : words;
  }

  private void open() {
    List<ReadTwice> repeat = proof.toRepeat();
    List<String> looks = proof.openSymptoms();
    List<ReleaseTest> tests = proof.openTests();
    if (proof.open() == 0) {
      layout.blank().line("Nothing of this is open.");
      return;
    }
    layout.heading("Still open");
    ReleaseWords words = new ReleaseWords(machine);
    for (ActiveRow row : machine.lockOut().keeping()) {
      layout.hanging(INDENT, "to end the lock-out (" + row.text() + "):");
      layout.hanging(INDENT + "  ", StepText.sentence(row.row().until().words()) + ".");
      words.open(row).forEach(each -> layout.hanging(INDENT + "  read ", each));
      words.typed(row).forEach(each -> layout.hanging(INDENT + "    ", PROVE + each));
    }
    for (ReadTwice each : proof.outside()) {
      layout.hanging(INDENT + "mend and read again: ", outside(each));
      layout.hanging(INDENT + "    ", PROVE + typed(each));
    }
    for (ReadTwice each : repeat) {
      layout.hanging(
          INDENT + "read again: ",
          Component.words(each.component()) + ": " + each.observable().title());
    }
    for (String symptom : looks) {
      layout.hanging(
          INDENT + "look: ", machine.vocabulary().symptom(symptom).orElseThrow().question());
    }
    if (!tests.isEmpty()) {
      Set<String> steps = new LinkedHashSet<>(tests.stream().map(ReleaseTest::step).toList());
      layout.hanging(
          INDENT + steps.size() + (steps.size() == 1 ? " test" : " tests") + ": ",
          String.join(", ", steps));
    }
    if (proof.readings().stream().anyMatch(each -> each.isOutside() && each.isDead())) {
      layout.hanging(
          INDENT, terminal.attention("No power before what is outside its limits is mended."));
    } else if (!proof.beforePower().isEmpty()) {
      layout.hanging(INDENT + "power waits for: ", beforePower(proof));
    }
    layout.hanging(
        INDENT,
        "'kelter prove --led JOB' leads through them"
            + tests.stream()
                .filter(each -> each.awaited().isEmpty())
                .findFirst()
                .map(each -> "; --test " + each.step() + "=met keeps one.")
                .orElse("."));
  }
}
