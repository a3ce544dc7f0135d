package kelter.cli.json;

import java.io.IOException;
import java.util.List;
import kelter.cli.json.output.JsonOutput;
import kelter.cli.json.output.JsonResult;
import kelter.core.check.Finding;
import kelter.core.check.Settling;
import kelter.core.job.Instrument;
import kelter.core.job.Job;
import kelter.core.workshop.Case;

/** The results of the commands as JSON. */
public final class ResultJson {

  private ResultJson() {}

  /**
   * Findings.
   *
   * @param machine the job with its findings
   * @param risks whether to tell the risks of a wrong verdict
   * @return the result
   */
  public static JsonResult findings(Case machine, boolean risks) {
    Job job = machine.job();
    List<Finding> findings = machine.findings();
    Settling settling = machine.settling();
    return new JsonResult(
        ResultFormat.FINDINGS.id(),
        out -> {
          LockOutJson.writeAsFound(out, machine.lockOutAsFound());
          out.text("job", job.id());
          out.cautions(machine.cautions());
          writeLibrary(out, job);
          writeFindings(out, findings, settling);
          if (risks) {
            RiskJson.write(out, findings, settling.rule());
          }
        });
  }

  static void writeLibrary(JsonOutput out, Job job) throws IOException {
    out.texts(
        "library-instruments",
        job.instruments().stream()
            .filter(instrument -> instrument.typical().isPresent())
            .map(Instrument::id)
            .toList());
  }

  static void writeFindings(JsonOutput out, List<Finding> findings, Settling settling)
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
          out.bool("accuracy-assumed", finding.judgement().assumed());
        });
    out.object(
        "limits",
        () -> {
          out.value("low", finding.limits().low(), finding.kind(), finding.unit());
          out.value("high", finding.limits().high(), finding.kind(), finding.unit());
          out.text("unit", finding.unit().code());
        });
    out.word("verdict", finding.verdict().id(), finding.verdict().words());
    out.probability("probability-of-conformity", finding.judgement().probabilityOfConformity());
    out.source(finding.source());
    out.cautions(finding.cautions());
    out.text("remark", finding.remark());
    out.statements("to-settle", settling.of(finding));
  }
}
