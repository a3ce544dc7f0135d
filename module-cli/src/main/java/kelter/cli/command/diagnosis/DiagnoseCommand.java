package kelter.cli.command.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.cli.advice.PriceAdvice;
import kelter.cli.command.Command;
import kelter.cli.command.Invocation;
import kelter.cli.diagnosis.DiagnosisNote;
import kelter.cli.diagnosis.DiagnosisScreen;
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
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.Explanation;
import kelter.core.file.job.JobDocument;
import kelter.core.job.Complaint;
import kelter.core.job.Job;
import kelter.core.vocabulary.Statement;
import kelter.core.workshop.Case;
import kelter.core.workshop.Workshop;

/** {@code kelter diagnose JOB}: findings, ranked faults, next measurements, order of remedies. */
public final class DiagnoseCommand implements Command {

  private static final CommandOption FULL =
      CommandOption.flag(
          "--full", "all of it: readings, evidence, order of work, cautions, assumptions");
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
          "show the ranking if component.observable=reading or symptom=answer (yes, no, sometimes,"
              + " not-asked) held; may be given several times");

  private static final String COMPLAINT_ASSUMED =
      "Somebody complains of this machine; put \"reason\":\u00a0\"inspection\" into the job for a"
          + " routine check.";

  @Override
  public CommandUsage usage() {
    return new CommandUsage(
        "diagnose",
        "Tell what is wrong, how sure that is, and what to do next.",
        "What to measure next is ranked by what it tells for the minutes that it takes, and the"
            + " remedies by what they are expected to cost. For a folder of jobs, or - for jobs on"
            + " standard input, one on a line, it tells one line of JSON each, in their order.",
        List.of(FULL, WHY, WHAT_IF, Invocation.WITHOUT_BOOK, Invocation.SHOP),
        List.of(Invocation.jobFile("a job file, a folder of them, -")),
        List.of(
            "kelter diagnose demo/jobs/washer-extractor.json",
            "kelter diagnose --full demo/jobs/washer-extractor.json",
            "kelter diagnose --why drain-pump.passages-blocked demo/jobs/washer-extractor.json",
            "kelter diagnose --what-if heater.resistance=OL demo/jobs/washer-extractor.json",
            "kelter diagnose --what-if stays-cold=yes demo/jobs/washer-extractor.json",
            "kelter diagnose --format json demo/jobs/washer-extractor.json"));
  }

  @Override
  public boolean diagnoses() {
    return true;
  }

  @Override
  public void run(Invocation invocation) {
    if (BatchOfJobs.isMeant(invocation)) {
      BatchOfJobs.diagnose(invocation, List.of(FULL, WHY, WHAT_IF), DiagnoseCommand::notes);
      return;
    }
    Case machine = invocation.open();
    Optional<String> why = invocation.given().text(WHY);
    List<String> whatIf = invocation.given().list(WHAT_IF);
    if (why.isPresent()) {
      why(invocation, machine, why.get());
    } else if (!whatIf.isEmpty()) {
      whatIf(invocation, machine, whatIf);
    } else {
      diagnose(invocation, machine);
    }
  }

  private static void why(Invocation invocation, Case machine, String fault) {
    Explanation explanation = machine.explain(fault);
    Command.show(
        invocation,
        () -> DiagnosisJson.explanation(machine, explanation),
        () ->
            JobText.cautions(machine.cautions(), invocation.terminal())
                + WhyText.of(explanation, machine.remedies(), invocation.terminal()));
  }

  private static void whatIf(Invocation invocation, Case machine, List<String> readings) {
    Workshop workshop = invocation.workshop();
    Job other = WhatIf.in(machine.job(), workshop.vocabulary(), readings);
    Diagnosis now = machine.diagnosis();
    Diagnosis then = workshop.open(other).diagnosis();
    Command.show(
        invocation,
        () -> DiagnosisJson.whatIf(machine.job(), readings, now, then),
        () ->
            JobText.cautions(machine.cautions(), invocation.terminal())
                + WhatIfText.of(readings, now, then, invocation.terminal()));
  }

  /** Shows the diagnosis of a case. */
  static void diagnose(Invocation invocation, Case machine) {
    Terminal terminal = invocation.terminal();
    List<Statement> notes = notes(machine);
    List<Statement> allNotes = new ArrayList<>(DiagnosisNote.AS_READ.each(invocation.notes()));
    allNotes.addAll(notes);
    invocation.advise(PriceAdvice.of(machine.job(), machine.remedies()));
    invocation.adviseOnShop(machine);
    Command.show(
        invocation,
        () -> DiagnosisJson.diagnosis(machine, allNotes),
        () ->
            invocation.given().has(FULL)
                ? JobText.cautions(machine.cautions(), terminal)
                    + DiagnosisText.of(machine, Statement.texts(notes), terminal)
                : DiagnosisScreen.of(machine, machine.cautions(), terminal));
  }

  /** What has to be told beside a diagnosis, and how its job was read. */
  public static List<Statement> notes(Case machine, JobDocument document) {
    List<Statement> notes = new ArrayList<>(DiagnosisNote.AS_READ.each(document.notes()));
    notes.addAll(notes(machine));
    return notes;
  }

  private static List<Statement> notes(Case machine) {
    List<Statement> notes = new ArrayList<>();
    if (isOnlyAssumed(machine.job())) {
      notes.add(DiagnosisNote.COMPLAINT_ASSUMED.of(COMPLAINT_ASSUMED));
    }
    List<String> standIns = machine.standIns();
    if (!standIns.isEmpty()) {
      notes.add(
          DiagnosisNote.STAND_INS.of(
              "Taken until the job states them: " + String.join("; ", standIns) + "."));
    }
    notes.addAll(DiagnosisNote.FROM_BOOK.each(machine.fromBook()));
    List<String> rest = machine.notAssessed();
    if (!rest.isEmpty()) {
      notes.add(
          DiagnosisNote.NOT_ASSESSED.of(
              "Not assessed, for want of a fault model or of figures: "
                  + String.join(", ", rest)
                  + "."));
    }
    return notes;
  }

  /** Whether nothing in a job tells that somebody complains. */
  private static boolean isOnlyAssumed(Job job) {
    Complaint complaint = job.complaint();
    return complaint.isMade()
        && complaint.symptoms().isEmpty()
        && (complaint.said() + complaint.displayed()).isBlank()
        && job.measurements().isEmpty();
  }
}
