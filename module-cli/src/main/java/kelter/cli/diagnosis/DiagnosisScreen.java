package kelter.cli.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.cli.terminal.Terminal;
import kelter.cli.text.Figures;
import kelter.cli.text.JobText;
import kelter.cli.text.Layout;
import kelter.cli.text.StepText;
import kelter.core.diagnosis.Conclusion;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.quantity.QuantityFormat;
import kelter.core.safety.Caution;
import kelter.core.session.NextStep;
import kelter.core.vocabulary.Likelihood;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import kelter.core.workshop.Case;

/**
 * A diagnosis on one screen of 80 columns by 24 lines: what is most likely, what decides next, what
 * to take along. {@link DiagnosisText} tells all of it.
 */
public final class DiagnosisScreen {

  /** A screen of 24 lines less the one in which the next command is typed. */
  private static final int LINES = 23;

  private static final double WORTH_TELLING = 0.02;

  /** From so much more on it is told that a fault may be there beside another. */
  private static final double MUCH_MORE = 0.1;

  private static final String INDENT = "  ";

  /** What is left out so that all fits, the least first. */
  private enum Brevity {
    NOTHING(3),
    A_STATE(2),
    ASSUMPTIONS(2),
    HOW_TO_ENTER(2),
    HOW_TO_MEASURE(2);

    private final int states;

    Brevity(int states) {
      this.states = states;
    }
  }

  private final Case machine;
  private final Brevity brevity;
  private final Diagnosis diagnosis;
  private final Terminal terminal;
  private final Layout layout;
  private final StepText steps;

  private DiagnosisScreen(Case machine, Brevity brevity, Terminal terminal) {
    this.machine = machine;
    this.brevity = brevity;
    this.diagnosis = machine.diagnosis();
    this.terminal = terminal;
    this.layout = new Layout(terminal);
    this.steps = new StepText(layout, terminal.width());
  }

  /**
   * Writes what decides what to do next.
   *
   * @param machine the job with its findings and its diagnosis
   * @param cautions what to mind before anything is done
   * @param terminal where it will be shown
   * @return the text, with a line end after the last line
   */
  public static String of(Case machine, List<Caution> cautions, Terminal terminal) {
    String text = "";
    for (Brevity brevity : Brevity.values()) {
      text = of(machine, cautions, brevity, terminal);
      if (text.lines().count() <= LINES) {
        return text;
      }
    }
    return text;
  }

  private static String of(
      Case machine, List<Caution> cautions, Brevity brevity, Terminal terminal) {
    DiagnosisScreen screen = new DiagnosisScreen(machine, brevity, terminal);
    JobText.head(machine.job(), cautions, screen.layout);
    screen.ranking(screen.brevity.states);
    screen.next();
    screen.rest();
    return screen.layout.toString();
  }

  private void ranking(int states) {
    layout.heading("Most likely" + open());
    int told = 0;
    double others = 1 - diagnosis.healthy() - diagnosis.unexplained().probability();
    for (Diagnosis.RankedState state : diagnosis.ranking()) {
      boolean enough =
          told == states || state.probability() < WORTH_TELLING || state.faults().isEmpty();
      if (told == 0 || !enough) {
        told++;
        others -= isKnown(state) ? state.probability() : 0;
        layout.hanging(
            INDENT + told + ". ",
            "%s (%s): %s%s"
                .formatted(
                    Figures.percent(state.probability()),
                    Likelihood.of(state.probability()).words(),
                    DiagnosisWords.describe(state, DiagnosisScreen::severity),
                    besideOthers(state)));
      }
    }
    layout.hanging(INDENT, rest(others));
    if (diagnosis.unexplained().misfit() < DiagnosisText.MISFIT) {
      layout.hanging(
          INDENT, terminal.attention("The readings do not fit even the best of these well."));
    }
  }

  /** How likely the one fault of a state is beside others too, where that is much more. */
  private String besideOthers(Diagnosis.RankedState state) {
    if (state.faults().size() != 1) {
      return "";
    }
    return diagnosis
        .fault(state.faults().get(0).fault().key())
        .map(Diagnosis.FaultProbability::probability)
        .filter(each -> each >= state.probability() + MUCH_MORE)
        .map(each -> "; " + Figures.percent(each) + " with or without another fault")
        .orElse("");
  }

  private static boolean isKnown(Diagnosis.RankedState state) {
    return !state.faults().isEmpty() && !state.unexplained();
  }

  /** All that has no line of its own. */
  private String rest(double others) {
    List<String> rest = new ArrayList<>();
    if (others >= WORTH_TELLING) {
      rest.add("other known causes " + Figures.percent(others));
    }
    boolean nothingFirst = !diagnosis.ranking().isEmpty() && isNothing(diagnosis.ranking().get(0));
    if (!nothingFirst) {
      rest.add("nothing wrong " + Figures.percent(diagnosis.healthy()));
    }
    rest.add("something else " + Figures.percent(diagnosis.unexplained().probability()));
    return StepText.sentence(String.join(", ", rest)) + ".";
  }

  private static boolean isNothing(Diagnosis.RankedState state) {
    return state.faults().isEmpty() && !state.unexplained();
  }

  private String open() {
    Conclusion.Reason reason = diagnosis.basis().conclusion().reason();
    return switch (reason) {
      case DECIDED -> "";
      case NOT_SEPARABLE -> ", not decided: several causes look alike";
      case NO_CAUSE_FITS -> ", not decided: no known cause fits";
      case INSTRUMENT_TOO_COARSE -> ", not decided: an instrument is too coarse";
      case NOT_MEASURED -> ", not decided: too little was measured";
    };
  }

  private static String severity(Diagnosis.Severity severity) {
    return ", severity " + QuantityFormat.fixed(severity.mean(), 1) + " of 1";
  }

  private void next() {
    layout.heading("Check next");
    LockOutText.first(machine.lockOut()).ifPresent(line -> layout.hanging(INDENT + "! ", line));
    NextStep step = NextStep.of(machine);
    if (step instanceof NextStep.Ask ask) {
      ask(ask);
    } else if (step instanceof NextStep.Measure measure) {
      measure(measure);
    } else if (step instanceof NextStep.Mend mend) {
      mend(mend);
    }
  }

  private void ask(NextStep.Ask ask) {
    layout.hanging(INDENT + "Ask the owner: ", ask.symptom().question());
    layout.hanging(
        INDENT + "Enter the answer: ",
        DiagnosisWords.unbroken("kelter enter JOB --saw " + ask.symptom().id() + "=yes"));
    ask.otherwise()
        .ifPresent(
            other ->
                layout.hanging(
                    INDENT,
                    "If nobody can tell, take "
                        + measured(new NextStep.Measure(other.question(), other.minutes()))
                        + " '--full' says how."));
  }

  private void measure(NextStep.Measure measure) {
    if (!measure.why().isEmpty()) {
      layout.hanging(INDENT, terminal.attention(StepText.sentence(measure.why()) + "."));
    }
    Procedure procedure = measure.question().observable().procedure();
    layout.hanging(INDENT, measured(measure));
    steps.cautions(INDENT, procedure.cautions());
    boolean onlyAsk =
        machine.lockOut().forbidsRunning() && NextStep.isOnlyLookedAt(measure.question());
    if (onlyAsk) {
      layout.hanging(INDENT + "! ", "Where it says to watch, to listen or to start it: only ask.");
    }
    layout.hanging(
        INDENT,
        brevity == Brevity.HOW_TO_MEASURE ? "'--full' says how to take it." : procedure.text());
    if (brevity.compareTo(Brevity.HOW_TO_ENTER) < 0) {
      layout.hanging(
          INDENT + "Enter it: ",
          DiagnosisWords.unbroken(
                  "kelter enter JOB --read " + measure.question().key() + "=READING")
              + words(measure.question().observable()));
    }
  }

  /** The words that a reading may be, where it is no figure. */
  private static String words(Observable observable) {
    return switch (observable.type()) {
      case QUANTITY -> "";
      case YES_NO -> " (yes or no)";
      case GRADE -> " (" + String.join(", ", observable.grades()) + ")";
    };
  }

  private static String measured(NextStep.Measure measure) {
    return "%s: %s%s. About %s\u00a0min, %s."
        .formatted(
            measure.question().component(),
            measure.question().observable().title(),
            DiagnosisWords.conditions(measure.question()),
            QuantityFormat.fixed(measure.minutes(), 0),
            measure.question().observable().procedure().hazard().word());
  }

  private void mend(NextStep.Mend mend) {
    List<String> unplugged = new FindingsLine(machine, terminal).keepingUnplugged();
    if (unplugged.isEmpty()) {
      layout.hanging(INDENT, known());
    } else {
      layout.hanging(
          INDENT + "! ",
          terminal.attention(
              "First mend what keeps the machine unplugged: "
                  + FindingsLine.some(unplugged)
                  + "."));
    }
    Optional<Diagnosis.PlanStep> first = mend.first();
    if (first.isEmpty()) {
      layout.hanging(
          INDENT, DiagnosisWords.noWork(machine, "No work is likely enough to be worth it."));
      return;
    }
    layout.hanging(
        INDENT + (unplugged.isEmpty() ? "Do first: " : "Then: "),
        DiagnosisWords.work(machine.job(), first.get()));
    steps.cautions(INDENT, first.get().remedy().cautions());
  }

  /** Why no reading comes next. */
  private String known() {
    Diagnosis.Basis basis = diagnosis.basis();
    boolean settled = basis.conclusion().isDecided() && basis.suspects().isEmpty();
    if (settled) {
      return diagnosis.next().isEmpty()
          ? "Nothing more: no further reading would tell much."
          : "Nothing more: another reading would not change what you do.";
    }
    return basis.enough()
        ? "Nothing more: another reading would hardly change what you do first."
        : StepText.sentence(basis.conclusion().action()) + ".";
  }

  private void rest() {
    layout.blank();
    layout.hanging("Take along: ", TakeAlong.line(diagnosis.takeAlong()));
    layout.hanging("Readings: ", new FindingsLine(machine, terminal).line());
    List<String> unknown = machine.notAssessed();
    if (!unknown.isEmpty()) {
      layout.hanging("Not assessed: ", FindingsLine.some(unknown) + ".");
    }
    int standIns = machine.standIns().size();
    if (standIns > 0 && brevity.compareTo(Brevity.ASSUMPTIONS) < 0) {
      layout.hanging(
          "Assumed: ",
          standIns + (standIns == 1 ? " figure is" : " figures are") + " typical ones (--full).");
    }
    String why =
        diagnosis.faults().isEmpty()
            ? ""
            : " or "
                + DiagnosisWords.unbroken(
                    "--why " + diagnosis.faults().get(0).fault().key() + " JOB");
    layout.hanging("More: ", DiagnosisWords.unbroken("kelter diagnose --full JOB") + why);
  }
}
