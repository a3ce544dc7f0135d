package kelter.cli.json;

import java.io.IOException;
import java.util.List;
import kelter.core.check.Finding;
import kelter.core.check.Settling;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.job.Instrument;
import kelter.core.job.Job;
import kelter.core.module.CalculationModule;
import kelter.core.safety.Caution;

/** The results of the commands as JSON. */
public final class ResultJson {

  private ResultJson() {}

  /**
   * Findings.
   *
   * @param job the job
   * @param cautions what to mind about its instruments
   * @param findings its findings
   * @param settling how undecided ones could be settled
   * @param risks whether to tell the risks of a wrong verdict
   * @return the text
   */
  public static String findings(
      Job job, List<Caution> cautions, List<Finding> findings, Settling settling, boolean risks) {
    return JsonOutput.document(
        out -> {
          out.text("format", "kelter-findings/1");
          out.text("job", job.id());
          out.cautions(cautions);
          writeLibrary(out, job);
          writeFindings(out, findings, settling);
          if (risks) {
            RiskJson.write(out, findings, settling.rule());
          }
        });
  }

  /**
   * A diagnosis with its findings.
   *
   * @param job the job
   * @param cautions what to mind about its instruments
   * @param findings its findings
   * @param settling how undecided ones could be settled
   * @param diagnosis its diagnosis
   * @param notes what else should be known
   * @return the text
   */
  public static String diagnosis(
      Job job,
      List<Caution> cautions,
      List<Finding> findings,
      Settling settling,
      Diagnosis diagnosis,
      List<String> notes) {
    return JsonOutput.document(
        out -> {
          out.text("format", "kelter-diagnosis/1");
          out.text("job", job.id());
          out.cautions(cautions);
          writeLibrary(out, job);
          writeFindings(out, findings, settling);
          out.objects("ranking", diagnosis.ranking(), state -> writeState(out, state));
          out.objects(
              "faults",
              diagnosis.faults(),
              fault -> {
                out.text("id", fault.fault().id());
                out.text("component", fault.fault().component());
                out.text("title", fault.fault().title());
                out.number("probability", fault.probability());
                writeSeverity(out, fault.severity());
              });
          out.number("nothingWrong", diagnosis.healthy());
          out.object(
              "unexplained",
              () -> {
                out.number("probability", diagnosis.unexplained().probability());
                out.number("misfit", diagnosis.unexplained().misfit());
              });
          out.objects("next", diagnosis.next(), next -> writeNext(out, next));
          out.objects("plan", diagnosis.plan(), step -> writeStep(out, job, step));
          out.texts("notUsed", diagnosis.notUsed());
          out.texts("notes", notes);
        });
  }

  private static void writeLibrary(JsonOutput out, Job job) throws IOException {
    out.texts(
        "libraryInstruments",
        job.instruments().stream()
            .filter(instrument -> instrument.typical().isPresent())
            .map(Instrument::id)
            .toList());
  }

  private static void writeFindings(JsonOutput out, List<Finding> findings, Settling settling)
      throws IOException {
    out.objects("findings", findings, finding -> writeFinding(out, finding, settling));
  }

  private static void writeFinding(JsonOutput out, Finding finding, Settling settling)
      throws IOException {
    out.text("id", finding.id());
    out.text("component", finding.component());
    out.text("observable", finding.observable());
    out.text("title", finding.title());
    out.object(
        "measured",
        () -> {
          out.text("shown", finding.shown());
          if (finding.judgement().measured().isPresent()) {
            var estimate = finding.judgement().measured().get();
            out.value("value", estimate.value(), finding.kind(), finding.unit());
            out.text("unit", finding.unit().code());
            out.number("u", estimate.standardUncertainty() / finding.unit().factor());
          }
          out.bool("accuracyAssumed", finding.judgement().assumed());
        });
    out.object(
        "limits",
        () -> {
          out.value("low", finding.limits().low(), finding.kind(), finding.unit());
          out.value("high", finding.limits().high(), finding.kind(), finding.unit());
          out.text("unit", finding.unit().code());
        });
    out.text("verdict", finding.verdict().words());
    out.number("probabilityOfConformity", finding.judgement().probabilityOfConformity());
    out.source(finding.source());
    out.cautions(finding.cautions());
    out.text("remark", finding.remark());
    out.texts("toSettle", settling.of(finding));
  }

  private static void writeState(JsonOutput out, Diagnosis.RankedState state) throws IOException {
    out.objects(
        "faults",
        state.faults(),
        present -> {
          out.text("id", present.fault().id());
          out.text("component", present.fault().component());
          out.text("title", present.fault().title());
          writeSeverity(out, present.severity());
        });
    out.bool("unexplained", state.unexplained());
    out.number("probability", state.probability());
    out.objects(
        "evidence",
        state.evidence(),
        evidence -> {
          out.text("component", evidence.component());
          out.text("observable", evidence.observable());
          out.text("reading", evidence.shown());
          out.number("bits", evidence.bits());
        });
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
    out.object(
        "at",
        () -> {
          for (var condition : next.question().conditions().figures().entrySet()) {
            out.text(condition.getKey(), condition.getValue().format());
          }
        });
    out.number("bits", next.bits());
    out.number("minutes", observable.procedure().minutes());
    out.text("hazard", observable.procedure().hazard().word());
    out.text("procedure", observable.procedure().text());
    out.cautions(observable.procedure().cautions());
  }

  private static void writeStep(JsonOutput out, Job job, Diagnosis.PlanStep step)
      throws IOException {
    out.text("remedy", step.remedy().component() + "." + step.remedy().id());
    out.text("title", step.remedy().title());
    out.texts("cures", step.cures());
    out.number("probabilityOfCure", step.probabilityOfCure());
    out.number("minutes", step.remedy().minutes());
    out.number("cost", step.cost());
    out.text("currency", job.prices().map(p -> p.currency().getCurrencyCode()).orElse(""));
    out.cautions(step.remedy().cautions());
  }

  /**
   * What is loaded.
   *
   * @param modules the modules
   * @return the text
   */
  public static String modules(List<CalculationModule> modules) {
    return JsonOutput.document(
        out -> {
          out.text("format", "kelter-modules/1");
          out.objects(
              "modules",
              modules,
              module -> {
                out.text("id", module.about().id());
                out.text("title", module.about().title());
                out.text("version", module.about().version());
                out.objects(
                    "calculations",
                    module.calculations(),
                    calculation -> {
                      out.text("id", calculation.id());
                      out.text("title", calculation.title());
                      out.source(calculation.source());
                    });
                out.texts("checks", module.checks().stream().map(check -> check.id()).toList());
                out.texts(
                    "components", module.componentKinds().stream().map(kind -> kind.id()).toList());
              });
        });
  }
}
