package kelter.cli.command.diagnosis;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.BiFunction;
import kelter.cli.batch.Batch;
import kelter.cli.batch.BatchJob;
import kelter.cli.batch.JobFolder;
import kelter.cli.batch.JobLines;
import kelter.cli.command.Invocation;
import kelter.cli.json.DiagnosisJson;
import kelter.cli.usage.CommandOption;
import kelter.core.file.disk.DiskFault;
import kelter.core.file.job.JobDocument;
import kelter.core.problem.InputException;
import kelter.core.problem.Mistake;
import kelter.core.vocabulary.Statement;
import kelter.core.workshop.Case;
import kelter.core.workshop.Workshop;

/** Many jobs in place of one: a folder, or lines of standard input. */
final class BatchOfJobs {

  private static final String STANDARD_INPUT = "-";

  private BatchOfJobs() {}

  /** Whether the first argument means many jobs. */
  static boolean isMeant(Invocation invocation) {
    String argument = invocation.argument();
    return argument.equals(STANDARD_INPUT) || Files.isDirectory(Path.of(argument));
  }

  /** Tells the diagnosis of each job on a line. */
  static void diagnose(
      Invocation invocation,
      List<CommandOption> ofOne,
      BiFunction<Case, JobDocument, List<Statement>> notes) {
    for (CommandOption option : ofOne) {
      if (invocation.given().has(option)) {
        throw new InputException(
            Mistake.USAGE, option.name(), "is for one job", "leave it away, or name a job file");
      }
    }
    Workshop workshop = invocation.workshop();
    Batch batch =
        new Batch(
            workshop,
            document -> {
              Case machine = workshop.open(document.job());
              return DiagnosisJson.diagnosis(machine, notes.apply(machine, document));
            },
            invocation.madeBy());
    try {
      int worst =
          batch.run(
              jobs(invocation),
              Runtime.getRuntime().availableProcessors(),
              invocation.terminal()::printJson);
      invocation.end(worst);
    } catch (IOException unreadable) {
      throw DiskFault.unreadable("standard input", unreadable);
    }
  }

  private static BatchJob.Jobs jobs(Invocation invocation) {
    return invocation.argument().equals(STANDARD_INPUT)
        ? new JobLines(invocation.terminal().input())
        : new JobFolder(invocation.file());
  }
}
