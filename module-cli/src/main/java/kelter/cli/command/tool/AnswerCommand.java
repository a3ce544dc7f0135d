package kelter.cli.command.tool;

import java.io.IOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import kelter.cli.batch.Answers;
import kelter.cli.batch.JobLines;
import kelter.cli.batch.Request;
import kelter.cli.command.Command;
import kelter.cli.command.Invocation;
import kelter.cli.command.diagnosis.DiagnoseCommand;
import kelter.cli.command.work.WeighCommand;
import kelter.cli.diagnosis.WhatIf;
import kelter.cli.json.DiagnosisJson;
import kelter.cli.json.ModulesJson;
import kelter.cli.json.NextJson;
import kelter.cli.json.ProofJson;
import kelter.cli.json.QuoteJson;
import kelter.cli.json.ResultJson;
import kelter.cli.json.WeighingJson;
import kelter.cli.json.output.JsonResult;
import kelter.cli.terminal.Terminal;
import kelter.cli.usage.CommandUsage;
import kelter.cli.weighing.Weighed;
import kelter.core.file.disk.DiskFault;
import kelter.core.file.job.JobDocument;
import kelter.core.job.Job;
import kelter.core.proof.Proof;
import kelter.core.quote.Quote;
import kelter.core.workshop.Case;
import kelter.core.workshop.Workshop;

/** {@code kelter answer}: requests of another program on standard input, answers on the other. */
public final class AnswerCommand implements Command {

  @Override
  public CommandUsage usage() {
    return new CommandUsage(
        "answer",
        "Answer the requests of another program, line by line.",
        "Each line of standard input is a request (kelter schema request), each line of standard"
            + " output the answer to one, in their order (kelter schema answer). It ends at the end"
            + " of its input, keeps nothing from one request to the next and opens no port.",
        List.of(Invocation.WITHOUT_BOOK, Invocation.SHOP),
        List.of(),
        List.of("kelter answer", "kelter answer --shop my-shop"));
  }

  @Override
  public boolean diagnoses() {
    return true;
  }

  @Override
  public void run(Invocation invocation) {
    Workshop workshop = invocation.workshop();
    Terminal terminal = invocation.terminal();
    Answers answers =
        new Answers(request -> result(request, workshop, invocation), invocation.madeBy());
    try {
      answers.run(
          new JobLines(terminal.input()),
          line -> {
            terminal.printJson(line);
            return terminal.lostOutput().isEmpty();
          });
    } catch (IOException unreadable) {
      throw DiskFault.unreadable("standard input", unreadable);
    }
  }

  private static JsonResult result(Request request, Workshop workshop, Invocation invocation) {
    if (request.command().equals(Request.MODULES)) {
      return ModulesJson.of(workshop, invocation.refused());
    }
    JobDocument document = workshop.read(request.job());
    Case machine = workshop.open(document.job());
    return switch (request.command()) {
      case "check" -> ResultJson.findings(machine, false);
      case "diagnose" -> diagnosis(machine, document);
      case "next" -> NextJson.of(machine);
      case Request.EXPLAIN -> DiagnosisJson.explanation(machine, machine.explain(request.fault()));
      case Request.WHAT_IF -> whatIf(machine, workshop, request.readings());
      case "weigh" -> weighing(machine);
      case "quote" -> quote(machine, workshop, invocation);
      case "prove" -> ProofJson.of(machine, Proof.of(machine));
      default -> throw new IllegalArgumentException(request.command());
    };
  }

  private static JsonResult diagnosis(Case machine, JobDocument document) {
    return DiagnosisJson.diagnosis(machine, DiagnoseCommand.notes(machine, document));
  }

  private static JsonResult whatIf(Case machine, Workshop workshop, List<String> readings) {
    Job other = WhatIf.in(machine.job(), workshop.vocabulary(), readings);
    return DiagnosisJson.whatIf(
        machine.job(), readings, machine.diagnosis(), workshop.open(other).diagnosis());
  }

  private static JsonResult weighing(Case machine) {
    Weighed weighed =
        new Weighed(
            machine.job(),
            machine.vocabulary(),
            machine.options(WeighCommand.USUAL_SEED),
            Optional.empty(),
            Optional.empty());
    return WeighingJson.of(weighed, machine);
  }

  private static JsonResult quote(Case machine, Workshop workshop, Invocation invocation) {
    LocalDate day = LocalDate.ofInstant(invocation.clock().instant(), ZoneOffset.UTC);
    return QuoteJson.of(Quote.of(machine, workshop.shop().offering(), day), machine);
  }
}
