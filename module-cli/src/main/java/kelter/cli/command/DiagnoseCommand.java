package kelter.cli.command;

import java.util.List;
import kelter.cli.json.ResultJson;
import kelter.cli.terminal.Terminal;
import kelter.cli.text.DiagnosisText;
import kelter.cli.text.JobText;
import kelter.cli.wiring.Workshop;
import kelter.core.check.Finding;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.job.Job;
import kelter.core.safety.Caution;
import picocli.CommandLine.Model.CommandSpec;

/** {@code kelter diagnose JOB}: findings, ranked faults, next measurements, order of remedies. */
final class DiagnoseCommand implements Command {

  @Override
  public CommandSpec spec() {
    return Arguments.command(
            "diagnose",
            Arguments.lines(
                "Tell what is wrong, how sure that is, what to measure next and what to do."),
            "kelter diagnose demo/jobs/washer-extractor.json",
            "kelter diagnose --format json demo/jobs/washer-extractor.json")
        .addOption(Arguments.shop())
        .addPositional(Arguments.jobFile("a job file"));
  }

  @Override
  public void run(Invocation invocation) {
    Workshop workshop = invocation.workshop();
    Job job = workshop.read(invocation.argument()).job();
    List<Caution> cautions = workshop.cautions(job);
    List<Finding> findings = workshop.findings(job);
    Diagnosis diagnosis = workshop.diagnose(job);
    List<String> notes = workshop.notes(job);
    if (invocation.isJson()) {
      invocation
          .terminal()
          .printUtf8(
              ResultJson.diagnosis(
                  job, cautions, findings, workshop.settling(job), diagnosis, notes));
    } else {
      Terminal terminal = invocation.terminal();
      terminal.print(
          JobText.cautions(cautions, terminal)
              + DiagnosisText.of(
                  job, findings, workshop.settling(job), diagnosis, notes, terminal));
    }
  }
}
