package kelter.cli.command.handover;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.cli.command.Command;
import kelter.cli.command.Invocation;
import kelter.cli.command.NamedShop;
import kelter.cli.text.Layout;
import kelter.cli.usage.CommandOption;
import kelter.cli.usage.CommandUsage;
import kelter.cli.usage.ValueKind;
import kelter.core.file.disk.TextFile;
import kelter.core.file.job.JobFile;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonText;
import kelter.core.file.person.Persons;
import kelter.core.job.Job;
import kelter.core.problem.InputException;
import kelter.core.shop.Person;

/** {@code kelter reopen JOB}: begins the job of a call-back, joined to the first. */
public final class ReopenCommand implements Command {

  private static final CommandOption OUTPUT =
      CommandOption.one(
              "--output",
              ValueKind.FILE,
              "JOB",
              "the file of the new job (default: beside the first)")
          .or("-o");
  private static final CommandOption SAID =
      CommandOption.one("--said", ValueKind.TEXT, "TEXT", "what the owner says now");

  /** What stays the same from one call to the next. */
  private static final List<String> KEPT =
      List.of("format", "market", "appliance", "instruments", "prices", "use");

  private static final int MOST = 99;

  @Override
  public CommandUsage usage() {
    return new CommandUsage(
            "reopen",
            "Begin the job of a call-back, joined to the first.",
            "Machine, instruments, prices and use are taken over; symptoms and readings are not.",
            List.of(SAID, OUTPUT, NamedShop.OPTION),
            List.of(Invocation.jobFile("a closed job")),
            List.of("kelter reopen job.json -o job-again.json"))
        .forPeople();
  }

  @Override
  public void run(Invocation invocation) {
    Path first = invocation.jobFile();
    Json.Obj content = (Json.Obj) JobFile.content(first);
    Job job = invocation.job(first, content).job();
    if (job.progress().closing().isEmpty()) {
      throw new InputException(
          first.toString(), "the job is still open", "go on with it: kelter bench " + first);
    }
    Optional<Path> told = invocation.given().path(OUTPUT);
    String id = told.map(ReopenCommand::idOf).orElseGet(() -> free(first, job.id()));
    Path file = told.orElseGet(() -> first.resolveSibling(id + ".json"));
    Json.Obj next = next(content, job.id(), id, invocation);
    invocation.job(file, next);
    Optional<Persons> persons =
        invocation.shop().folder().map(folder -> new Persons(folder.path()));
    persons.ifPresent(each -> requireJoinable(each, job.id(), id));
    TextFile.writeNew(file, JsonText.write(next));
    Optional<Person> person = persons.flatMap(each -> each.join(job.id(), id));
    Layout layout =
        new Layout(invocation.terminal())
            .line("Begun: " + file + ", a call-back of " + job.id() + ".");
    person.ifPresent(each -> layout.line("It is named for " + each.id() + ", as the first is."));
    invocation.terminal().print(layout.line("Go on with: kelter bench " + file).toString());
  }

  /** Nothing is begun where the call-back is somebody else's already. */
  private static void requireJoinable(Persons persons, String first, String next) {
    Optional<Person> whose = persons.of(first);
    Optional<Person> other = persons.of(next);
    if (whose.isPresent()
        && other.filter(each -> !each.id().equals(whose.get().id())).isPresent()) {
      throw new InputException(
          next,
          "is a job of %s, and %s is one of %s"
              .formatted(other.get().id(), first, whose.get().id()),
          "name another file with --output");
    }
  }

  private static Json.Obj next(Json.Obj first, String firstId, String id, Invocation invocation) {
    Json.Obj next = new Json.Obj(Map.of());
    for (String name : KEPT) {
      Json member = first.members().get(name);
      if (member != null) {
        next = next.with(name, member);
      }
      if (name.equals("format")) {
        next =
            next.with("id", new Json.Str(id))
                .with("date", new Json.Str(LocalDate.now(invocation.clock()).toString()))
                .with("call-back-of", new Json.Str(firstId));
      }
    }
    Optional<String> said = invocation.given().text(SAID);
    return said.isPresent()
        ? next.with("complaint", new Json.Obj(Map.of("said", new Json.Str(said.get()))))
        : next;
  }

  private static String idOf(Path file) {
    return file.getFileName().toString().replaceFirst("\\.json$", "");
  }

  /** The id of the first job with the next free number behind it. */
  private static String free(Path first, String id) {
    String stem = id.replaceFirst("-again(-[0-9]+)?$", "");
    for (int number = 1; number <= MOST; number++) {
      String next = stem + "-again" + (number == 1 ? "" : "-" + number);
      if (!Files.exists(first.resolveSibling(next + ".json"))) {
        return next;
      }
    }
    throw new InputException(id, "has too many call-backs", "name the file with --output");
  }
}
