package kelter.cli.command;

import java.util.List;
import java.util.Optional;
import kelter.cli.diagnosis.DiagnosisText;
import kelter.cli.diagnosis.WhatIf;
import kelter.cli.diagnosis.WhatIfText;
import kelter.cli.diagnosis.WhyText;
import kelter.cli.json.DiagnosisJson;
import kelter.cli.terminal.Terminal;
import kelter.cli.text.JobText;
import kelter.cli.wiring.Workshop;
import kelter.core.check.Finding;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.Explanation;
import kelter.core.job.Job;
import kelter.core.safety.Caution;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** {@code kelter diagnose JOB}: findings, ranked faults, next measurements, order of remedies. */
final class DiagnoseCommand implements Command {

  private static final String WHY = "--why";
  private static final String WHAT_IF = "--what-if";

  @Override
  public CommandSpec spec() {
    return Arguments.command(
            "diagnose",
            Arguments.lines(
                "Tell what is wrong, how sure that is, what to measure next and what to do."),
            "kelter diagnose demo/jobs/washer-extractor.json",
            "kelter diagnose --why drain-pump.passages-blocked demo/jobs/washer-extractor.json",
            "kelter diagnose --what-if heater.resistance=OL demo/jobs/washer-extractor.json",
            "kelter diagnose --format json demo/jobs/washer-extractor.json")
        .addOption(
            OptionSpec.builder(WHY)
                .paramLabel("FAULT")
                .type(String.class)
                .description("tell why a fault, component.fault, is as likely as it is")
                .build())
        .addOption(
            OptionSpec.builder(WHAT_IF)
                .paramLabel("READING")
                .arity("1")
                .type(List.class)
                .auxiliaryTypes(String.class)
                .description(
                    "show the ranking if component.observable=reading held;"
                        + " may be given several times")
                .build())
        .addOption(Arguments.shop())
        .addPositional(Arguments.jobFile("a job file"));
  }

  @Override
  public void run(Invocation invocation) {
    Workshop workshop = invocation.workshop();
    Job job = workshop.read(invocation.argument()).job();
    Optional<String> why = invocation.option(WHY);
    Optional<List<String>> whatIf = invocation.option(WHAT_IF);
    if (why.isPresent()) {
      why(invocation, workshop, job, why.get());
    } else if (whatIf.isPresent()) {
      whatIf(invocation, workshop, job, whatIf.get());
    } else {
      diagnose(invocation, workshop, job);
    }
  }

  private static void why(Invocation invocation, Workshop workshop, Job job, String fault) {
    String key = workshop.faultKey(job, fault);
    Explanation explanation = workshop.explain(job, key);
    Terminal terminal = invocation.terminal();
    if (invocation.isJson()) {
      terminal.printUtf8(DiagnosisJson.explanation(job, explanation));
    } else {
      terminal.print(WhyText.of(explanation, terminal));
    }
  }

  private static void whatIf(
      Invocation invocation, Workshop workshop, Job job, List<String> readings) {
    Job other = WhatIf.in(job, workshop.vocabulary(), readings);
    Diagnosis now = workshop.diagnose(job);
    Diagnosis then = workshop.diagnose(other);
    Terminal terminal = invocation.terminal();
    if (invocation.isJson()) {
      terminal.printUtf8(DiagnosisJson.whatIf(job, readings, now, then));
    } else {
      terminal.print(WhatIfText.of(readings, now, then, terminal));
    }
  }

  private static void diagnose(Invocation invocation, Workshop workshop, Job job) {
    List<Caution> cautions = workshop.cautions(job);
    List<Finding> findings = workshop.findings(job);
    Diagnosis diagnosis = workshop.diagnose(job);
    List<String> notes = workshop.notes(job);
    if (invocation.isJson()) {
      invocation
          .terminal()
          .printUtf8(
              DiagnosisJson.diagnosis(
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
