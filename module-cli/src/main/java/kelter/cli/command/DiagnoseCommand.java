package kelter.cli.command;

import java.util.List;
import java.util.Optional;
import kelter.cli.advice.PriceAdvice;
import kelter.cli.diagnosis.DiagnosisText;
import kelter.cli.diagnosis.WhatIf;
import kelter.cli.diagnosis.WhatIfText;
import kelter.cli.diagnosis.WhyText;
import kelter.cli.json.DiagnosisJson;
import kelter.cli.terminal.Terminal;
import kelter.cli.text.JobText;
import kelter.cli.usage.CommandOption;
import kelter.cli.usage.CommandUsage;
import kelter.cli.usage.ValueKind;
import kelter.cli.wiring.Workshop;
import kelter.core.check.Checker;
import kelter.core.check.Finding;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.Explanation;
import kelter.core.job.Job;
import kelter.core.safety.Caution;

/** {@code kelter diagnose JOB}: findings, ranked faults, next measurements, order of remedies. */
final class DiagnoseCommand implements Command {

  private static final CommandOption WHY =
      CommandOption.one(
          "--why",
          ValueKind.TEXT,
          "FAULT",
          "tell why a fault, component.fault, is as likely as it is");
  private static final CommandOption WHAT_IF =
      CommandOption.many(
          "--what-if",
          "READING",
          "show the ranking if component.observable=reading held; may be given several times");

  @Override
  public CommandUsage usage() {
    return new CommandUsage(
        "diagnose",
        "Tell what is wrong, how sure that is, and what to do next.",
        "What to measure next is ranked by what it tells for the minutes that it takes, and the"
            + " remedies by what they are expected to cost.",
        List.of(WHY, WHAT_IF, Invocation.SHOP),
        List.of(Invocation.jobFile("a job file")),
        List.of(
            "kelter diagnose demo/jobs/washer-extractor.json",
            "kelter diagnose --why drain-pump.passages-blocked demo/jobs/washer-extractor.json",
            "kelter diagnose --what-if heater.resistance=OL demo/jobs/washer-extractor.json",
            "kelter diagnose --format json demo/jobs/washer-extractor.json"));
  }

  @Override
  public boolean needsWorkshop() {
    return true;
  }

  @Override
  public void run(Invocation invocation) {
    Job job = invocation.job();
    Optional<String> why = invocation.given().text(WHY);
    List<String> whatIf = invocation.given().list(WHAT_IF);
    if (why.isPresent()) {
      why(invocation, job, why.get());
    } else if (!whatIf.isEmpty()) {
      whatIf(invocation, job, whatIf);
    } else {
      diagnose(invocation, job);
    }
  }

  private static void why(Invocation invocation, Job job, String fault) {
    Workshop workshop = invocation.workshop();
    String key = workshop.faultKey(job, fault);
    List<Finding> findings = invocation.checker().findings(job);
    Explanation explanation = workshop.explain(job, findings, key);
    Terminal terminal = invocation.terminal();
    if (invocation.isJson()) {
      terminal.printUtf8(DiagnosisJson.explanation(job, explanation));
    } else {
      terminal.print(WhyText.of(explanation, terminal));
    }
  }

  private static void whatIf(Invocation invocation, Job job, List<String> readings) {
    Workshop workshop = invocation.workshop();
    Job other = WhatIf.in(job, invocation.modules().vocabulary(), readings);
    Checker checker = invocation.checker();
    Diagnosis now = workshop.diagnose(job, checker.findings(job));
    Diagnosis then = workshop.diagnose(other, checker.findings(other));
    Terminal terminal = invocation.terminal();
    if (invocation.isJson()) {
      terminal.printUtf8(DiagnosisJson.whatIf(job, readings, now, then));
    } else {
      terminal.print(WhatIfText.of(readings, now, then, terminal));
    }
  }

  private static void diagnose(Invocation invocation, Job job) {
    List<Caution> cautions = invocation.shop().cautions(job);
    Checker checker = invocation.checker();
    List<Finding> findings = checker.findings(job);
    Workshop workshop = invocation.workshop();
    Diagnosis diagnosis = workshop.diagnose(job, findings);
    Workshop.Knowledge known = workshop.knowledge(job);
    List<String> notes = known.notes();
    invocation.advise(PriceAdvice.of(job, known.remedies()));
    if (invocation.isJson()) {
      invocation
          .terminal()
          .printUtf8(
              DiagnosisJson.diagnosis(
                  job, cautions, findings, checker.settling(job), diagnosis, notes));
    } else {
      Terminal terminal = invocation.terminal();
      terminal.print(
          JobText.cautions(cautions, terminal)
              + DiagnosisText.of(job, findings, checker.settling(job), diagnosis, notes, terminal));
    }
  }
}
