package kelter.cli.json;

import java.io.IOException;
import java.util.Optional;
import kelter.cli.json.output.JsonOutput;
import kelter.cli.json.output.JsonResult;
import kelter.core.diagnosis.Conclusion;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.Question;
import kelter.core.session.NextStep;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Symptom;
import kelter.core.workshop.Case;

/** The one question, reading or work that comes next, as a result. */
public final class NextJson {

  private static final String QUESTION = "question";
  private static final String READING = "reading";
  private static final String WORK = "work";

  private NextJson() {}

  /**
   * What comes next for a job.
   *
   * @param machine the case
   * @return the result
   */
  public static JsonResult of(Case machine) {
    NextStep step = NextStep.of(machine);
    return new JsonResult(
        ResultFormat.NEXT.id(),
        out -> {
          LockOutJson.write(out, machine.lockOut());
          out.text("job", machine.job().id());
          write(out, step);
        });
  }

  private static void write(JsonOutput out, NextStep step) throws IOException {
    if (step instanceof NextStep.Ask ask) {
      out.text("step", "ask");
      out.word("why", null, "");
      out.object(QUESTION, () -> writeQuestion(out, ask.symptom()));
      Optional<Diagnosis.NextMeasurement> otherwise = ask.otherwise();
      if (otherwise.isPresent()) {
        writeReading(out, otherwise.get().question(), otherwise.get().minutes());
      } else {
        out.text(READING, null);
      }
      out.text(WORK, null);
    } else if (step instanceof NextStep.Measure measure) {
      out.text("step", "measure");
      out.word("why", measure.again().map(Conclusion.Advice::id).orElse(null), measure.why());
      out.text(QUESTION, null);
      writeReading(out, measure.question(), measure.minutes());
      out.text(WORK, null);
    } else {
      out.text("step", "mend");
      out.word("why", null, "");
      out.text(QUESTION, null);
      out.text(READING, null);
      writeWork(out, ((NextStep.Mend) step).first());
    }
  }

  private static void writeQuestion(JsonOutput out, Symptom symptom) throws IOException {
    out.text("symptom", symptom.id());
    out.text("title", symptom.title());
    out.text(QUESTION, symptom.question());
  }

  private static void writeReading(JsonOutput out, Question question, double minutes)
      throws IOException {
    Observable observable = question.observable();
    out.object(
        READING,
        () -> {
          out.text("component", question.component());
          out.text("observable", observable.id());
          out.text("title", observable.title());
          out.conditions(question.conditions().figures());
          out.number("minutes", minutes);
          out.text("hazard", observable.procedure().hazard().word());
          out.text("procedure", observable.procedure().whole());
          out.cautions(observable.procedure().cautions());
        });
  }

  private static void writeWork(JsonOutput out, Optional<Diagnosis.PlanStep> first)
      throws IOException {
    if (first.isEmpty()) {
      out.text(WORK, null);
      return;
    }
    var remedy = first.get().remedy();
    out.object(
        WORK,
        () -> {
          out.text("remedy", remedy.key());
          out.text("title", remedy.title());
          out.number("minutes", remedy.minutes());
          out.cautions(remedy.cautions());
        });
  }
}
