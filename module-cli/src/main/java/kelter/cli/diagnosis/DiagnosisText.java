package kelter.cli.diagnosis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.Currency;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.StringJoiner;
import java.util.function.Function;
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
import kelter.core.check.Checker;
import kelter.core.diagnosis.Conclusion;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.Question;
import kelter.core.job.Job;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityFormat;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Symptom;
import kelter.core.workshop.Case;

/** A diagnosis for a person: findings, states of the machine, what to measure, what to do. */
public final class DiagnosisText {

  private static final int STATES = 4;
  private static final int MEASUREMENTS = 3;
  private static final int QUESTIONS = 3;

  private static final double WORTH_TELLING = 0.02;
  private static final double SPEAKS = 0.3;

  /** Above this spread the readings tell nothing of a severity; the prior's is 0.29. */
  private static final double SEVERITY_TOLD = 0.25;

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
    boolean found = Checker.keepUnplugged(machine.findings());
    text.ranking(diagnosis);
    text.ask(diagnosis);
    text.next(diagnosis, found);
    text.plan(machine.job(), diagnosis, found);
    text.notes(diagnosis, notes);
    return text.layout.toString();
  }

  private void ranking(Diagnosis diagnosis) {
    layout.heading("Most likely");
    layout.hanging("  ", conclusion(diagnosis));
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
                  + "): take it again."));
    }
    if (diagnosis.unexplained().misfit() < 0.01) {
      layout.hanging(
          "  ",
          terminal.attention(
              "The readings do not fit even the best of these well: take the ones that speak"
                  + " against it again."));
    }
  }

  /** Whether it is decided, and if not, for which reason and what to do about it. */
  static String conclusion(Diagnosis diagnosis) {
    Conclusion conclusion = diagnosis.basis().conclusion();
    String words =
        switch (conclusion.reason()) {
          case DECIDED -> "Decided";
          case NOT_SEPARABLE -> "Not decided, several causes look alike";
          case NO_CAUSE_FITS -> "Not decided, no known cause fits";
          case INSTRUMENT_TOO_COARSE -> "Not decided, the instrument is too coarse";
          case NOT_MEASURED -> "Not decided, too little was measured";
        };
    return words + ": " + conclusion.action() + ".";
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
    String words = Figures.likelihood(state.probability());
    layout.hanging(
        label, probability + " (" + words + "): " + describe(state, DiagnosisText::severity));
    if (place == 1) {
      evidence("     for:     ", state, 1);
      evidence("     against: ", state, -1);
    }
  }

  /** What is wrong in a state, with how bad it is in some words where the readings tell of it. */
  static String describe(
      Diagnosis.RankedState state, Function<Diagnosis.Severity, String> severity) {
    List<String> parts = new ArrayList<>();
    for (Diagnosis.PresentFault present : state.faults()) {
      Fault fault = present.fault();
      boolean told = fault.modelled() && present.severity().sd() <= SEVERITY_TOLD;
      parts.add(named(fault) + (told ? severity.apply(present.severity()) : ""));
    }
    if (state.unexplained()) {
      parts.add("something that no known fault explains");
    }
    return parts.isEmpty() ? "nothing wrong" : String.join("; and ", parts);
  }

  /** Part and fault; said where no measurement can tell of it. */
  static String named(Fault fault) {
    return fault.component()
        + ": "
        + fault.title()
        + (fault.modelled() ? "" : " (no measurement of it is known here)");
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
        "  Put answers into the job: ", unbroken("\"symptoms\": { \"" + first + "\": \"yes\" }"));
    layout.hanging(
        "  Or see what one changes:  ",
        unbroken("kelter diagnose JOB --what-if " + first + "=yes"));
  }

  static String unbroken(String words) {
    return words.replace(' ', '\u00a0');
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
            + conditions(next.question())
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

  static String conditions(Question question) {
    StringJoiner stated = new StringJoiner(", ", " (at ", ")");
    stated.setEmptyValue("");
    for (Map.Entry<String, Quantity> figure : question.conditions().figures().entrySet()) {
      stated.add(figure.getKey().replace('-', ' ') + " " + figure.getValue().display());
    }
    return stated.toString();
  }

  private void plan(Job job, Diagnosis diagnosis, boolean found) {
    layout.heading("What to do, in this order");
    if (diagnosis.basis().staysUnplugged()) {
      layout.hanging("  ! ", terminal.attention(found ? FIRST : FIRST_AS_REPORTED));
    }
    if (diagnosis.plan().isEmpty()) {
      layout.hanging("  ", "Nothing that is likely enough to be worth the work.");
      return;
    }
    int place = 0;
    for (Diagnosis.PlanStep step : diagnosis.plan()) {
      layout.hanging("  " + ++place + ". ", work(job, step));
      cautions.write("     ", step.remedy().cautions());
    }
  }

  /** A step of the plan with its chance, time and cost. */
  static String work(Job job, Diagnosis.PlanStep step) {
    String cost =
        Double.isNaN(step.cost())
            ? "price not stated"
            : "about " + price(step.cost(), job.prices().orElseThrow().currency());
    return "%s: %s. Chance of a cure %s; %s\u00a0min, %s."
        .formatted(
            step.remedy().component(),
            step.remedy().title(),
            Figures.percent(step.probabilityOfCure()),
            QuantityFormat.fixed(step.remedy().minutes(), 0),
            cost);
  }

  private static String price(double amount, Currency currency) {
    return QuantityFormat.fixed(amount, 0) + "\u00a0" + currency.getCurrencyCode();
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
