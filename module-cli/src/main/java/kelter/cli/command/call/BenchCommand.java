package kelter.cli.command.call;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import kelter.cli.bench.BenchText;
import kelter.cli.command.Command;
import kelter.cli.command.Invocation;
import kelter.cli.command.NamedShop;
import kelter.cli.command.entry.Leading;
import kelter.cli.usage.CommandArgument;
import kelter.cli.usage.CommandUsage;
import kelter.cli.usage.ValueKind;
import kelter.core.session.Session;
import kelter.core.workshop.Workshop;

/** {@code kelter bench [JOB]}: a case that is led from the call on. */
public final class BenchCommand implements Command {

  @Override
  public CommandUsage usage() {
    return new CommandUsage(
            "bench",
            "Lead a case: it asks, you answer, what to do next follows.",
            "Each answer is kept in the job before the next question. Without JOB it begins a new one,"
                + " in the folder of the shop, or where you say. 'undo' takes answers back, '?' tells"
                + " what can be typed, 'done' leaves.",
            List.of(NamedShop.OPTION),
            List.of(
                new CommandArgument(
                    "JOB",
                    ValueKind.FILE,
                    true,
                    false,
                    "the job to go on with, or the file of a new one")),
            List.of("kelter bench", "kelter bench demo/jobs/tumble-dryer.json"))
        .forPeople();
  }

  @Override
  public boolean diagnoses() {
    return true;
  }

  @Override
  public void run(Invocation invocation) {
    Workshop workshop = invocation.workshop();
    Optional<Path> named = named(invocation);
    Optional<Path> file = named.filter(Files::exists);
    Session session =
        file.isPresent()
            ? Session.of(workshop, Leading.open(file.get()))
            : Session.begin(
                workshop,
                LocalDate.now(invocation.clock()).toString(),
                kind -> freeId(kind, named, invocation));
    new Leading(invocation, file.or(() -> named)).run(session, BenchText::closing);
  }

  /** The job that is named, whether there is one or not. */
  private static Optional<Path> named(Invocation invocation) {
    return invocation.given().arguments().stream()
        .findFirst()
        .map(word -> invocation.shop().hasJob(word) ? invocation.jobFile() : invocation.file());
  }

  private static String freeId(String kind, Optional<Path> named, Invocation invocation) {
    return invocation
        .shop()
        .folder()
        .filter(folder -> named.isEmpty())
        .map(folder -> folder.freeId(kind))
        .orElse(kind + "-1");
  }
}
