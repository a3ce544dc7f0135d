package kelter.cli.json;

import java.io.IOException;
import java.util.List;
import kelter.cli.json.output.JsonOutput;
import kelter.cli.json.output.JsonResult;
import kelter.core.diagnosis.Conclusion;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.Explanation;
import kelter.core.job.Job;
import kelter.core.job.SymptomReport;
import kelter.core.vocabulary.Likelihood;
import kelter.core.vocabulary.Statement;
import kelter.core.vocabulary.Vocabulary;
import kelter.core.workshop.Case;

/** Diagnoses as JSON. */
public final class DiagnosisJson {

  private DiagnosisJson() {}

  /**
   * A diagnosis with its findings.
   *
   * @param machine the job with its findings and its diagnosis
   * @param notes what else should be known
   * @return the result
   */
  public static JsonResult diagnosis(Case machine, List<Statement> notes) {
    Job job = machine.job();
    Diagnosis diagnosis = machine.diagnosis();
    return new JsonResult(
        ResultFormat.DIAGNOSIS.id(),
        out -> {
          LockOutJson.write(out, machine.lockOut());
          out.text("job", job.id());
          out.cautions(machine.cautions());
          ResultJson.writeLibrary(out, job);
          out.objects(
              "symptoms",
              job.complaint().symptoms(),
              report -> writeReported(out, machine.vocabulary(), report));
          ResultJson.writeFindings(out, machine.findings(), machine.settling());
          writeConclusion(out, diagnosis.basis().conclusion());
          out.objects("ranking", diagnosis.ranking(), state -> writeState(out, state));
          out.objects("faults", diagnosis.faults(), fault -> writeFault(out, fault));
          out.probability("nothing-wrong", diagnosis.healthy());
          out.object(
              "unexplained",
              () -> {
                out.probability("probability", diagnosis.unexplained().probability());
                out.probability("misfit", diagnosis.unexplained().misfit());
              });
          out.bool("stays-unplugged", diagnosis.basis().staysUnplugged());
          out.objects("ask", diagnosis.ask(), question -> writeQuestion(out, question));
          out.objects("next", diagnosis.next(), next -> writeNext(out, next));
          out.bool("enough-measured", diagnosis.basis().enough());
          out.objects("suspects", diagnosis.basis().suspects(), each -> writeSuspect(out, each));
          out.objects("priors", diagnosis.basis().priors(), prior -> writePrior(out, prior));
          out.number("left-out", diagnosis.basis().leftOut());
          out.objects("plan", diagnosis.plan(), step -> writeStep(out, job, step));
          out.objects("take-along", diagnosis.takeAlong(), needed -> writeNeeded(out, needed));
          out.texts("not-used", diagnosis.notUsed());
          out.statements("notes", notes);
        });
  }

  /**
   * Why a fault is held for as likely as it is.
   *
   * @param machine the job
   * @param explanation the reasons
   * @return the result
   */
  public static JsonResult explanation(Case machine, Explanation explanation) {
    return new JsonResult(
        ResultFormat.EXPLANATION.id(),
        out -> {
          LockOutJson.write(out, machine.lockOut());
          out.text("job", machine.job().id());
          writeFault(out, explanation.fault());
          out.object("prior", () -> writePrior(out, explanation.prior()));
          out.text("rival", explanation.rival());
          out.objects("evidence", explanation.evidence(), evidence -> writeEvidence(out, evidence));
          out.objects("reports", explanation.reports(), report -> writeReport(out, report));
          out.objects("open", explanation.open(), next -> writeNext(out, next));
        });
  }

  /**
   * How the faults would be ranked if some readings or reports were others.
   *
   * @param job the job
   * @param readings the other readings and reports, as they were given
   * @param now the diagnosis of the job as it is
   * @param then the diagnosis with the others
   * @return the result
   */
  public static JsonResult whatIf(Job job, List<String> readings, Diagnosis now, Diagnosis then) {
    return new JsonResult(
        ResultFormat.WHAT_IF.id(),
        out -> {
          out.text("job", job.id());
          out.texts("readings", readings);
          out.object("now", () -> writeShort(out, now));
          out.object("then", () -> writeShort(out, then));
        });
  }

  private static void writeShort(JsonOutput out, Diagnosis diagnosis) throws IOException {
    writeConclusion(out, diagnosis.basis().conclusion());
    out.objects("ranking", diagnosis.ranking(), state -> writeState(out, state));
    out.objects("faults", diagnosis.faults(), fault -> writeFault(out, fault));
    out.probability("nothing-wrong", diagnosis.healthy());
    out.probability("unexplained", diagnosis.unexplained().probability());
  }

  private static void writeFault(JsonOutput out, Diagnosis.FaultProbability fault)
      throws IOException {
    out.text("id", fault.fault().id());
    out.text("component", fault.fault().component());
    out.text("title", fault.fault().title());
    out.bool("modelled", fault.fault().modelled());
    out.probability("probability", fault.probability());
    writeLikelihood(out, fault.probability());
    writeSeverity(out, fault.severity());
  }

  static void writeConclusion(JsonOutput out, Conclusion conclusion) throws IOException {
    out.object(
        "conclusion",
        () -> {
          out.bool("decided", conclusion.isDecided());
          out.word("reason", conclusion.reason().id(), conclusion.reason().words());
          out.texts("about", conclusion.about());
          out.word("action", conclusion.advice().id(), conclusion.action());
        });
  }

  private static void writeSuspect(JsonOutput out, Diagnosis.Suspect suspect) throws IOException {
    out.text("component", suspect.component());
    out.text("observable", suspect.observable());
    out.text("reading", suspect.shown());
    out.probability("probability-wrong", suspect.probability());
  }

  private static void writePrior(JsonOutput out, Diagnosis.Prior prior) throws IOException {
    out.text("fault", prior.fault().key());
    out.probability("probability", prior.probability());
    out.source(prior.source());
    out.number("turning-factor", prior.turning());
  }

  private static void writeEvidence(JsonOutput out, Diagnosis.Evidence evidence)
      throws IOException {
    out.text("component", evidence.component());
    out.text("observable", evidence.observable());
    out.text("reading", evidence.shown());
    out.number("bits", evidence.bits());
    out.number("bits-against-next", evidence.againstNext());
  }

  private static void writeState(JsonOutput out, Diagnosis.RankedState state) throws IOException {
    out.objects(
        "faults",
        state.faults(),
        present -> {
          out.text("id", present.fault().id());
          out.text("component", present.fault().component());
          out.text("title", present.fault().title());
          out.bool("modelled", present.fault().modelled());
          writeSeverity(out, present.severity());
        });
    out.bool("unexplained", state.unexplained());
    out.probability("probability", state.probability());
    writeLikelihood(out, state.probability());
    out.objects("evidence", state.evidence(), evidence -> writeEvidence(out, evidence));
    out.objects("reports", state.reports(), report -> writeReport(out, report));
  }

  private static void writeReported(JsonOutput out, Vocabulary vocabulary, SymptomReport report)
      throws IOException {
    out.text("id", report.symptom());
    out.text("title", vocabulary.symptom(report.symptom()).orElseThrow().title());
    out.text("answer", report.answer().id());
  }

  private static void writeReport(JsonOutput out, Diagnosis.ReportEvidence report)
      throws IOException {
    out.text("symptom", report.symptom().id());
    out.text("answer", report.answer().id());
    out.number("bits", report.bits());
  }

  private static void writeQuestion(JsonOutput out, Diagnosis.NextQuestion question)
      throws IOException {
    out.text("symptom", question.symptom().id());
    out.text("question", question.symptom().question());
    out.number("bits", question.bits());
  }

  private static void writeLikelihood(JsonOutput out, double probability) throws IOException {
    Likelihood likelihood = Likelihood.of(probability);
    out.word("likelihood", likelihood.id(), likelihood.words());
  }

  private static void writeSeverity(JsonOutput out, Diagnosis.Severity severity)
      throws IOException {
    out.object(
        "severity",
        () -> {
          out.number("mean", severity.mean());
          out.number("sd", severity.sd());
        });
  }

  private static void writeNext(JsonOutput out, Diagnosis.NextMeasurement next) throws IOException {
    var observable = next.question().observable();
    out.text("component", next.question().component());
    out.text("observable", observable.id());
    out.conditions(next.question().conditions().figures());
    out.number("bits", next.bits());
    out.number("minutes", next.minutes());
    out.number("worth", next.worth());
    out.text("hazard", observable.procedure().hazard().word());
    out.text("procedure", observable.procedure().whole());
    out.cautions(observable.procedure().cautions());
  }

  private static void writeStep(JsonOutput out, Job job, Diagnosis.PlanStep step)
      throws IOException {
    out.text("remedy", step.remedy().key());
    out.text("title", step.remedy().title());
    out.texts("cures", step.cures());
    out.probability("probability-of-cure", step.probabilityOfCure());
    out.number("minutes", step.remedy().minutes());
    out.number("cost", step.cost());
    out.text("currency", job.prices().map(p -> p.currency().getCurrencyCode()).orElse(""));
    out.cautions(step.remedy().cautions());
  }

  private static void writeNeeded(JsonOutput out, Diagnosis.Needed needed) throws IOException {
    out.text("component", needed.remedy().component());
    out.text("remedy", needed.remedy().key());
    out.text("title", needed.remedy().title());
    out.probability("chance", needed.chance());
  }
}
