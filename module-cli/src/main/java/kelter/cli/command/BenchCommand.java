package kelter.cli.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import kelter.cli.bench.BenchText;
import kelter.cli.terminal.Terminal;
import kelter.cli.usage.CommandArgument;
import kelter.cli.usage.CommandUsage;
import kelter.cli.usage.ValueKind;
import kelter.core.file.JobFile;
import kelter.core.file.disk.TextFile;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonText;
import kelter.core.file.shop.ShopFolder;
import kelter.core.session.Reply;
import kelter.core.session.Session;
import kelter.core.workshop.Workshop;

/** {@code kelter bench [JOB]}: a case that is led from the call on. */
final class BenchCommand implements Command {

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
    Terminal terminal = invocation.terminal();
    Workshop workshop = invocation.workshop();
    Optional<Path> named = named(invocation);
    Optional<Path> file = named.filter(Files::exists);
    Session session =
        file.isPresent()
            ? Session.of(workshop, (Json.Obj) JobFile.content(file.get()))
            : Session.begin(
                workshop,
                LocalDate.now(invocation.clock()).toString(),
                kind -> freeId(kind, named, invocation));
    Keeper keeper = new Keeper(file.or(() -> named), invocation);
    BenchText text = new BenchText(terminal);
    text.opening();
    while (true) {
      text.prompt(session);
      Optional<String> line = terminal.read(BenchText.SIGN);
      if (line.isEmpty()) {
        break;
      }
      Reply reply = session.answer(line.get());
      text.told(reply);
      if (reply.ended()) {
        break;
      }
      if (reply.session() != session) {
        keeper.keep(reply.session());
      }
      session = reply.session();
    }
    keeper.file().ifPresent(text::closing);
  }

  /** The job that is named, whether there is one or not. */
  private static Optional<Path> named(Invocation invocation) {
    return invocation.given().arguments().stream().findFirst().map(word -> invocation.file());
  }

  private static String freeId(String kind, Optional<Path> named, Invocation invocation) {
    return invocation
        .shop()
        .folder()
        .filter(folder -> named.isEmpty())
        .map(folder -> folder.freeId(kind))
        .orElse(kind + "-1");
  }

  /** Keeps the job after each answer. */
  private static final class Keeper {

    private final Invocation invocation;
    private Optional<Path> file;

    Keeper(Optional<Path> file, Invocation invocation) {
      this.file = file;
      this.invocation = invocation;
    }

    Optional<Path> file() {
      return file;
    }

    void keep(Session session) {
      if (!session.isBegun()) {
        return;
      }
      if (file.isEmpty()) {
        file = Optional.of(place(session));
      }
      if (!Files.exists(file.get())) {
        TextFile.writeNew(file.get(), JsonText.write(session.content()));
        return;
      }
      JobFile.change(file.get(), content -> session.content());
      if (!JobFile.content(file.get()).equals(session.content())) {
        TextFile.write(file.get(), JsonText.write(session.content()));
      }
    }

    private Path place(Session session) {
      String id = session.machine().job().id();
      Optional<ShopFolder> shop = invocation.shop().folder();
      return shop.isPresent() ? shop.get().newJob(id) : Path.of(id + ".json");
    }
  }
}
