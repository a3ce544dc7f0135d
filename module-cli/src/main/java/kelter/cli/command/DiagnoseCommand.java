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
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code kelter diagnose JOB}: findings, ranked faults, next measurements, order of remedies. */
@Command(
    name = "diagnose",
    description = "Tell what is wrong, how sure that is, what to measure next and what to do.",
    footer = {
      "",
      "Examples:",
      "  kelter diagnose demo/jobs/washer-extractor.json",
      "  kelter diagnose --format json demo/jobs/washer-extractor.json"
    })
final class DiagnoseCommand implements Action {

  @Mixin private Shared shared;

  @Parameters(paramLabel = "JOB", description = "a job file")
  private Path file;

  @Override
  public Shared shared() {
    return shared;
  }

  @Override
  public void run(Shared options) {
    Workshop workshop = options.workshop();
    Job job = JobFile.read(file, workshop.vocabulary()).job();
    List<Finding> findings = workshop.findings(job);
    Diagnosis diagnosis = workshop.diagnose(job);
    List<String> notes = workshop.notes(job);
    if (options.isJson()) {
      options.terminal().printUtf8(ResultJson.diagnosis(job, findings, diagnosis, notes));
    } else {
      options
          .terminal()
          .print(DiagnosisText.of(job, findings, diagnosis, notes, options.terminal()));
    }
  }
}
