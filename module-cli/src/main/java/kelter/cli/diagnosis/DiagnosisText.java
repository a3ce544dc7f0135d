package kelter.cli.diagnosis;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kelter.cli.terminal.Terminal;
import kelter.cli.text.CautionLines;
import kelter.cli.text.Figures;
import kelter.cli.text.FindingsText;
import kelter.cli.text.JobText;
import kelter.cli.text.Layout;
import kelter.cli.text.SymptomsText;
import kelter.core.catalogue.Kind;
import kelter.core.check.Checker;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.job.Job;
import kelter.core.quantity.QuantityFormat;
import kelter.core.session.NextStep;
import kelter.core.vocabulary.Likelihood;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Symptom;
import kelter.core.workshop.Case;

/** A diagnosis for a person: findings, states of the machine, what to measure, what to do. */
public final class DiagnosisText {

  private static final int STATES = 4;
  private static final int MEASUREMENTS = 3;
  private static final int QUESTIONS = 3;

  /** A best state whose readings lie so far out with a smaller chance is told to fit badly. */
  static final double MISFIT = 0.01;

  private static final double WORTH_TELLING = 0.02;
  private static final double SPEAKS = 0.3;

  private static final String ENOUGH =
      "You know enough: another reading would not change what you do by what it costs.";
  private static final String NOT_WORTH_IT =
      "Another reading would tell more of the cause, but hardly change what you do first.";
  private static final String FIRST =
      "Before anything else, mend what keeps the machine unplugged: the findings above that do not"
          + " conform. What follows is for the rest.";
  private static final String FIRST_AS_REPORTED =
      "Do not power the machine before the cause of what was reported is found and mended.";
  private static final String STAYS_UNPLUGGED =
      "The machine stays unplugged after %s, so nothing is proposed that needs it to run. Where a"
          + " step says to watch, to listen or to start it: only ask.";

  /** Up to the end of a clause. */
  private static final Pattern FIRST_WORDS = Pattern.compile("^[^.:]+");

  private final Layout layout;
  private final CautionLines cautions;
  private final Terminal terminal;
  private final Set<String> begun = new HashSet<>();

  private DiagnosisText(Terminal terminal) {
    this.terminal = terminal;
    this.layout = new Layout(terminal);
    this.cautions = new CautionLines(layout);
  }

  /**
   * Writes a diagnosis.
   *
   * @param machine the job with its findings and its diagnosis
   * @param notes what else a person should know, such as parts that no module knows faults of
   * @param terminal where it will be shown
   * @return the text, with a line end after the last line
   */
  public static String of(Case machine, List<String> notes, Terminal terminal) {
    DiagnosisText text = new DiagnosisText(terminal);
    Diagnosis diagnosis = machine.diagnosis();
    JobText.write(machine.job(), machine.vocabulary(), text.layout);
    FindingsText.write(
        machine.findings(), machine.settling(), text.layout, text.cautions, terminal, false);
    new LockOutText(machine, text.layout).write();
    boolean found = Checker.keepUnplugged(machine.findings());
    text.ranking(machine);
    text.ask(diagnosis);
    text.next(diagnosis, found);
    text.plan(machine, found);
    text.kind(machine);
    text.notes(diagnosis, notes);
    return text.layout.toString();
  }

  private void ranking(Case machine) {
    Diagnosis diagnosis = machine.diagnosis();
    layout.heading("Most likely");
    layout.hanging("  ", DiagnosisWords.conclusion(diagnosis));
    int place = 0;
    for (Diagnosis.RankedState state : diagnosis.ranking()) {
      boolean enough = place >= STATES || state.probability() < WORTH_TELLING;
      if (place > 0 && enough) {
        break;
      }
      place++;
      state(place, state);
      if (place == 1) {
        whateverElse(diagnosis, state);
      }
    }
    double unexplained = diagnosis.unexplained().probability();
    layout.hanging(
        "  ",
        "Nothing wrong: "
            + Figures.percent(diagnosis.healthy())
            + ". Something else, which no known fault explains: "
            + Figures.percent(unexplained)
            + ".");
    for (Diagnosis.Suspect suspect : diagnosis.basis().suspects()) {
      layout.hanging(
          "  ",
          terminal.attention(
              suspect.component()
                  + " "
                  + suspect.observable().replace('-', ' ')
                  + " "
                  + suspect.shown()
                  + " fits no likely state (wrong with a chance of "
                  + Figures.percent(suspect.probability())
                  + ")"
                  + (LockOutText.mayBeTaken(machine, suspect) ? ": take it again." : ".")));
    }
    if (diagnosis.unexplained().misfit() < MISFIT) {
      layout.hanging(
          "  ",
          terminal.attention(
              "The readings do not fit even the best of these well: take the ones that speak"
                  + " against it again."));
    }
  }

  /** Each fault of the first state by itself, where other states hold it too. */
  private void whateverElse(Diagnosis diagnosis, Diagnosis.RankedState state) {
    String words =
        state.faults().stream()
            .flatMap(it -> diagnosis.faults().stream().filter(each -> each.fault() == it.fault()))
            .map(each -> each.fault().key() + " " + Figures.percent(each.probability()))
            .collect(Collectors.joining(", "));
    if (!words.isEmpty()) {
      layout.hanging("     ", "each by itself: " + words);
    }
  }

  private void state(int place, Diagnosis.RankedState state) {
    String label = "  " + place + ". ";
    String probability = Figures.percent(state.probability());
    String words = Likelihood.of(state.probability()).words();
    layout.hanging(
        label,
        probability
            + " ("
            + words
            + "): "
            + DiagnosisWords.describe(state, DiagnosisText::severity));
    if (place == 1) {
      evidence("     for:     ", state, 1);
      evidence("     against: ", state, -1);
    }
  }

  private static String severity(Diagnosis.Severity severity) {
    return ", severity "
        + QuantityFormat.fixed(severity.mean(), 2)
        + "\u00a0±\u00a0"
        + QuantityFormat.fixed(2 * severity.sd(), 2);
  }

  private void evidence(String label, Diagnosis.RankedState state, int sign) {
    Stream<String> readings =
        state.evidence().stream()
            .filter(evidence -> sign * evidence.bits() > SPEAKS)
            .sorted(Comparator.comparingDouble(evidence -> -Math.abs(evidence.bits())))
            .map(DiagnosisText::told);
    Stream<String> reports =
        state.reports().stream()
            .filter(report -> sign * report.bits() > SPEAKS)
            .sorted(Comparator.comparingDouble(report -> -Math.abs(report.bits())))
            .map(report -> SymptomsText.answered(report.symptom(), report.answer()));
    String all = Stream.concat(readings, reports).collect(Collectors.joining("; "));
    if (!all.isEmpty()) {
      layout.hanging(label, all);
    }
  }

  private static String told(Diagnosis.Evidence evidence) {
    String what = evidence.component() + " " + evidence.observable().replace('-', ' ');
    return what + " " + evidence.shown();
  }

  private void ask(Diagnosis diagnosis) {
    List<Symptom> telling =
        diagnosis.ask().stream()
            .filter(question -> question.bits() >= NextStep.WORTH_ASKING)
            .limit(QUESTIONS)
            .map(Diagnosis.NextQuestion::symptom)
            .toList();
    if (telling.isEmpty() || diagnosis.basis().enough()) {
      return;
    }
    layout.heading("Ask the owner first");
    int place = 0;
    for (Symptom symptom : telling) {
      layout.hanging("  " + ++place + ". ", symptom.question() + " (" + symptom.id() + ")");
    }
    String first = telling.get(0).id();
    layout.hanging(
        "  Enter an answer:         ",
        DiagnosisWords.unbroken("kelter enter JOB --saw " + first + "=yes"));
    layout.hanging(
        "  Or see what one changes: ",
        DiagnosisWords.unbroken("kelter diagnose JOB --what-if " + first + "=yes"));
  }

  private void next(Diagnosis diagnosis, boolean found) {
    layout.heading("Check next");
    if (diagnosis.basis().staysUnplugged()) {
      String after = found ? "these findings" : "what was reported";
      layout.hanging("  ! ", terminal.attention(STAYS_UNPLUGGED.formatted(after)));
    }
    if (diagnosis.next().isEmpty()) {
      layout.hanging("  ", "No further reading would tell much.");
      return;
    }
    if (diagnosis.basis().enough()) {
      layout.hanging("  ", diagnosis.basis().conclusion().isDecided() ? ENOUGH : NOT_WORTH_IT);
    }
    int place = 0;
    for (Diagnosis.NextMeasurement next : diagnosis.next()) {
      if (++place > MEASUREMENTS) {
        break;
      }
      measurement(place, next);
    }
  }

  private void measurement(int place, Diagnosis.NextMeasurement next) {
    Procedure procedure = next.question().observable().procedure();
    layout.hanging(
        "  " + place + ". ",
        next.question().component()
            + ": "
            + next.question().observable().title()
            + DiagnosisWords.conditions(next.question())
            + ". About "
            + QuantityFormat.fixed(next.minutes(), 0)
            + "\u00a0min, "
            + procedure.hazard().word()
            + ".");
    cautions.write("     ", procedure.cautions());
    layout.hanging("     ", begins(procedure.before()) + procedure.text());
  }

  /**
   * What all such work begins with: in full where it comes first, after that by its first words.
   */
  private String begins(String before) {
    Matcher first = FIRST_WORDS.matcher(before);
    return begun.add(before) || !first.find() ? before : first.group() + " (as above). ";
  }

  private void plan(Case machine, boolean found) {
    Job job = machine.job();
    Diagnosis diagnosis = machine.diagnosis();
    layout.heading("What to do, in this order");
    if (diagnosis.basis().staysUnplugged()) {
      layout.hanging("  ! ", terminal.attention(found ? FIRST : FIRST_AS_REPORTED));
    }
    if (diagnosis.plan().isEmpty()) {
      layout.hanging(
          "  ",
          DiagnosisWords.noWork(machine, "Nothing that is likely enough to be worth the work."));
      return;
    }
    int place = 0;
    for (Diagnosis.PlanStep step : diagnosis.plan()) {
      layout.hanging("  " + ++place + ". ", DiagnosisWords.work(job, step));
      layout.hanging("     ", "Its word, for 'kelter done': " + step.remedy().key() + ".");
      cautions.write("     ", step.remedy().cautions());
    }
  }

  private void kind(Case machine) {
    List<String> cautions = machine.kind().map(Kind::cautions).orElse(List.of());
    if (!cautions.isEmpty()) {
      layout.heading("To mind with any " + machine.kind().orElseThrow().title());
      cautions.forEach(caution -> layout.hanging("  - ", caution));
    }
  }

  private void notes(Diagnosis diagnosis, List<String> notes) {
    layout.heading("Assumptions");
    for (String note : notes) {
      layout.hanging("  - ", note);
    }
    if (!diagnosis.notUsed().isEmpty()) {
      layout.hanging(
          "  - ", "No fault model uses: " + String.join(", ", diagnosis.notUsed()) + ".");
    }
    layout.hanging("  - ", "Chances before measuring: " + EngineSettings.SOURCE.display() + ".");
    layout.hanging(
        "  - ",
        "Severity runs from 0 (none) to 1 (total); ± is the standard uncertainty times 2. Kelter"
            + " says which readings meet which limit, never that a machine may be used: local codes"
            + " and licensed practice come first.");
  }
}
