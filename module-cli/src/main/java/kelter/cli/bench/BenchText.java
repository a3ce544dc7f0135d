package kelter.cli.bench;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import kelter.cli.proof.ProofText;
import kelter.cli.terminal.Terminal;
import kelter.cli.text.Figures;
import kelter.cli.text.Layout;
import kelter.cli.text.StepText;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.Remedy;
import kelter.core.job.Component;
import kelter.core.proof.Proof;
import kelter.core.proof.ReadTwice;
import kelter.core.quantity.Quantity;
import kelter.core.safety.Caution;
import kelter.core.safety.lockout.ReleaseTest;
import kelter.core.session.Prompt;
import kelter.core.session.Reply;
import kelter.core.session.Session;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;

/** What a led case says: where it stands, and what is asked. */
public final class BenchText {

  private static final String ENOUGH =
      "You know enough: another reading would not change what you do.";
  private static final String NOT_DECIDED =
      "It is not decided, but another reading would hardly change what you do first.";
  private static final String CHEAP_TO_TRY =
      "It is not decided, but to try this costs less than another reading would save.";

  /** The chance of a cure from which work is more than a trial. */
  private static final double LIKELY = 0.5;

  /** What stands before what is typed. */
  public static final String SIGN = "> ";

  private static final int STATES = 3;
  private static final double WORTH_TELLING = 0.02;

  private final Terminal terminal;

  /**
   * A face of a session.
   *
   * @param terminal where it is shown
   */
  public BenchText(Terminal terminal) {
    this.terminal = terminal;
  }

  /** Says what can be done. */
  public void opening() {
    print(new Layout(terminal).line("Type ? for help, undo to take back, done to leave."));
  }

  /**
   * Says where it is kept and how to go on.
   *
   * @param kept the file of the job
   */
  public void closing(Path kept) {
    print(
        new Layout(terminal)
            .line("Kept in " + kept + ". Go on with: kelter bench " + kept)
            .line("Work sheet: kelter sheet " + kept)
            .line("All of it: kelter diagnose --full " + kept));
  }

  /**
   * Says where a proof is kept and what comes behind it.
   *
   * @param kept the file of the job
   */
  public void proved(Path kept) {
    print(
        new Layout(terminal)
            .line("Kept in " + kept + ". See it with: kelter prove " + kept)
            .line("Close the job with: kelter close " + kept));
  }

  /**
   * Says what came of a line.
   *
   * @param reply what came of it
   */
  public void told(Reply reply) {
    Layout layout = new Layout(terminal);
    reply
        .told()
        .forEach(line -> layout.hanging(line.startsWith("  ") ? "    " : "  ", line.strip()));
    print(layout);
  }

  /**
   * Says where the case stands and what is asked.
   *
   * @param session the session
   */
  public void prompt(Session session) {
    Layout layout = new Layout(terminal);
    Prompt prompt = session.prompt();
    if (session.isBegun()) {
      terminal.speakAsIn(session.machine().market());
    }
    if (prompt instanceof Prompt.KindOfMachine) {
      layout.blank().line("What kind of machine is it?");
    } else if (prompt instanceof Prompt.Age) {
      layout.blank().line("How old is it, in years? (Enter if nobody knows)");
    } else if (prompt instanceof Prompt.Said) {
      layout.blank().line("What does the owner say?");
    } else if (prompt instanceof Prompt.Heed heed) {
      layout.blank().hanging("! ", terminal.attention(heed.caution().text()));
      layout.line("Type ok once that is done or kept to.");
    } else if (prompt instanceof Prompt.Ask ask) {
      standing(session, layout);
      layout.hanging("Ask: ", ask.symptom().question() + " (y, n, s)");
    } else if (prompt instanceof Prompt.Measure measure) {
      standing(session, layout);
      measure(measure, layout);
      ofClass(session, measure.question().observable(), layout);
    } else if (prompt instanceof Prompt.RangeEnd asked) {
      rangeEnd(asked.question(), layout);
    } else if (prompt instanceof Prompt.Work work) {
      work(work, layout);
    } else if (prompt instanceof Prompt.Look look) {
      layout.blank().hanging("Test: ", look.test().text() + " " + holds(look.test()));
    } else if (prompt instanceof Prompt.Failed failed) {
      failed(failed.test(), layout);
    } else if (prompt instanceof Prompt.Outside outside) {
      outside(outside.read(), layout);
    } else if (prompt instanceof Prompt.Shown shown) {
      shown(shown.proof(), layout);
    } else if (prompt instanceof Prompt.Enough enough) {
      standing(session, layout);
      enough(session, enough, layout);
    }
    print(layout);
  }

  private static void work(Prompt.Work work, Layout layout) {
    layout.blank().line("What was done?");
    int number = 1;
    for (Remedy remedy : work.likely()) {
      layout.hanging(
          "  " + number++ + ". ", Component.words(remedy.component()) + ": " + remedy.title());
    }
    layout.line("A number, PART.REMEDY, or your own words.");
  }

  private static void rangeEnd(Question question, Layout layout) {
    layout
        .blank()
        .hanging(
            "Read: ",
            Component.words(question.component())
                + ": above the range of the tester. Up to what does it read? Only that decides it.")
        .hanging(
            "      ",
            "(the end of its range, such as > 200 "
                + question.observable().kind().unit().symbol()
                + "; skip)");
  }

  private static String holds(ReleaseTest test) {
    return test.limits()
        .flatMap(limits -> test.awaited())
        .map(
            read ->
                "%s: what do you read? (a value in %s, better than y or n; skip)"
                    .formatted(StepText.sentence(read.title()), read.kind().unit().symbol()))
        .orElse("Does it hold? (y, n; skip)");
  }

  private void failed(ReleaseTest test, Layout layout) {
    layout
        .blank()
        .hanging("! ", terminal.attention("Not met: " + test.text() + " Take its power off."))
        .line(
            test.isRead()
                ? "Mend that first, then read it again: a value, undo, or done."
                : "Mend that first, then look again: y or n, undo, or done.");
  }

  private void outside(ReadTwice read, Layout layout) {
    layout
        .blank()
        .hanging(
            "! ",
            terminal.attention(
                "Not within its limits after the work: %s. Keep its power off."
                    .formatted(ProofText.outside(read))))
        .line("Mend that first, then read it again: a value, undo, or done.");
  }

  private static void shown(Proof proof, Layout layout) {
    layout.blank();
    proof
        .cure()
        .ifPresent(
            cure ->
                layout.line(
                    cure.tellsChance()
                        ? "%s (the cause is gone: %s)."
                            .formatted(cure.words(), percent(cure.chance()))
                        : cure.words() + "."));
    for (ReleaseTest test : proof.beforePower()) {
      layout.hanging(
          "Power waits for: ", ProofText.title(test) + " (" + test.result().words() + ").");
    }
    int open = proof.open();
    layout.line(
        open == 0
            ? "Nothing is open. Type done."
            : "Left open: " + open + " of it; 'kelter prove JOB' lists them. Type done.");
  }

  private void standing(Session session, Layout layout) {
    if (session.isProving()) {
      layout.blank();
      return;
    }
    Diagnosis diagnosis = session.machine().diagnosis();
    List<String> told = new ArrayList<>();
    for (Diagnosis.FaultProbability each : diagnosis.faults()) {
      if (told.size() < STATES && each.probability() >= WORTH_TELLING) {
        told.add(percent(each.probability()) + " " + each.fault().title());
      }
    }
    if (diagnosis.healthy() >= WORTH_TELLING) {
      told.add(percent(diagnosis.healthy()) + " nothing wrong");
    }
    layout.blank().hanging("So far: ", String.join("; ", told) + ".");
  }

  private static String percent(double probability) {
    return Figures.percent(probability).replace(' ', '\u00a0');
  }

  private void measure(Prompt.Measure measure, Layout layout) {
    Question question = measure.question();
    Observable observable = question.observable();
    Procedure procedure = observable.procedure();
    if (!measure.why().isEmpty()) {
      layout.line(StepText.sentence(measure.why()) + ".");
    }
    layout.hanging(
        "Read: ",
        Component.words(question.component())
            + ": "
            + observable.title()
            + conditions(question)
            + ". About "
            + Math.round(measure.minutes())
            + "\u00a0min, "
            + procedure.hazard().word()
            + ".");
    layout.hanging("      ", procedure.text());
    for (Caution caution : procedure.cautions()) {
      layout.hanging("    ! ", terminal.attention(StepText.firstSentence(caution.text())));
    }
    layout.hanging("      ", answers(observable));
  }

  /** Nobody reads the earth of a machine that has none. */
  private static void ofClass(Session session, Observable observable, Layout layout) {
    boolean told = session.machine().job().appliance().nameplate().protectionClass().isPresent();
    if (!told && observable.id().startsWith("protective-conductor")) {
      layout.hanging(
          "      ", "(a square in a square on the nameplate: it has no earth; then type class II)");
    }
  }

  private static String conditions(Question question) {
    List<String> told = new ArrayList<>();
    question
        .conditions()
        .figures()
        .forEach((word, figure) -> told.add(word.replace('-', ' ') + " " + shown(figure)));
    return told.isEmpty() ? "" : " (at " + String.join(", ", told) + ")";
  }

  private static String shown(Quantity figure) {
    return figure.display();
  }

  private static String answers(Observable observable) {
    return switch (observable.type()) {
      case YES_NO -> "(y, n; skip)";
      case GRADE -> "(" + String.join(", ", observable.grades()) + "; skip)";
      case QUANTITY ->
          "(a value in "
              + observable.kind().unit().symbol()
              + " or another unit; above the range: OL, better > and its end; skip)";
    };
  }

  private void enough(Session session, Prompt.Enough enough, Layout layout) {
    if (session.machine().lockOutAsFound().barsAll()) {
      layout.line("Nothing here is yours to mend. Do what the caution says.");
      return;
    }
    if (enough.first().isEmpty()) {
      layout.line(ENOUGH);
      layout.line("No work is likely enough to be worth it.");
      return;
    }
    Diagnosis.PlanStep step = enough.first().get();
    boolean decided = session.machine().diagnosis().basis().conclusion().isDecided();
    layout.line(step.probabilityOfCure() < LIKELY ? CHEAP_TO_TRY : decided ? ENOUGH : NOT_DECIDED);
    layout.hanging(
        "Do first: ",
        "%s: %s. Chance of a cure %s; about %s\u00a0min."
            .formatted(
                Component.words(step.remedy().component()),
                step.remedy().title(),
                percent(step.probabilityOfCure()),
                Math.round(step.remedy().minutes())));
    layout.line("Enter another reading as WORDS = READING, or done.");
  }

  private void print(Layout layout) {
    terminal.print(layout.toString());
  }
}
