package kelter.cli.command;

import java.nio.file.Path;
import java.util.List;
import kelter.cli.json.ResultJson;
import kelter.cli.text.DiagnosisText;
import kelter.cli.wiring.Workshop;
import kelter.core.check.Finding;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.file.JobFile;
import kelter.core.job.Job;
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
        .addPositional(Arguments.jobFile("a job file"));
  }

  @Override
  public void run(Invocation invocation) {
    Workshop workshop = invocation.workshop();
    Job job = JobFile.read(invocation.<Path>argument(), workshop.vocabulary()).job();
    List<Finding> findings = workshop.findings(job);
    Diagnosis diagnosis = workshop.diagnose(job);
    List<String> notes = workshop.notes(job);
    if (invocation.isJson()) {
      invocation
          .terminal()
          .printUtf8(ResultJson.diagnosis(job, findings, workshop.settling(job), diagnosis, notes));
    } else {
      invocation
          .terminal()
          .print(
              DiagnosisText.of(
                  job, findings, workshop.settling(job), diagnosis, notes, invocation.terminal()));
    }
  }
}
