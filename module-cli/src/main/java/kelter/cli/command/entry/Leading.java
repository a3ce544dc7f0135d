package kelter.cli.command.entry;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.BiConsumer;
import kelter.cli.bench.BenchText;
import kelter.cli.command.Invocation;
import kelter.cli.terminal.Terminal;
import kelter.core.file.disk.TextFile;
import kelter.core.file.job.JobFile;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonText;
import kelter.core.file.shop.ShopFolder;
import kelter.core.problem.InputException;
import kelter.core.session.Reply;
import kelter.core.session.Session;

/** A session on the terminal, whose job is kept after each answer. */
public final class Leading {

  private final Invocation invocation;
  private Optional<Path> file;

  /** What was kept last, or read first. */
  private Optional<Json.Obj> kept = Optional.empty();

  /**
   * Leads a session.
   *
   * @param invocation the call
   * @param file where the job is kept, if that is known
   */
  public Leading(Invocation invocation, Optional<Path> file) {
    this.invocation = invocation;
    this.file = file;
  }

  /** The content of a job that is not closed. */
  public static Json.Obj open(Path file) {
    Json content = JobFile.content(file);
    JobFile.requireOpen(file, content);
    return (Json.Obj) content;
  }

  /** Asks until it is left or the input ends, then says how to go on. */
  public void run(Session first, BiConsumer<BenchText, Path> closing) {
    Session session = first;
    kept = file.filter(Files::exists).map(known -> first.content());
    Terminal terminal = invocation.terminal();
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
        keep(reply.session());
      }
      session = reply.session();
    }
    file.filter(Files::exists)
        .ifPresentOrElse(
            written -> closing.accept(text, written),
            () -> terminal.print("Nothing was kept: no machine was told.\n"));
  }

  private void keep(Session session) {
    if (!session.isBegun()) {
      return;
    }
    if (file.isEmpty()) {
      file = Optional.of(place(session));
    }
    if (!Files.exists(file.get())) {
      TextFile.writeNew(file.get(), JsonText.write(session.content()));
    } else {
      JobFile.change(file.get(), content -> ours(content, session));
    }
    kept = Optional.of(session.content());
  }

  /** The content of the session, unless another program wrote the job meanwhile. */
  private Json.Obj ours(Json content, Session session) {
    boolean same = kept.isEmpty() || kept.get().equals(content);
    if (!same && !session.content().equals(content)) {
      throw new InputException(
          file.orElseThrow().toString(),
          "was changed meanwhile by another program",
          "nothing of that is lost; begin again, and enter the last answer once more");
    }
    return session.content();
  }

  private Path place(Session session) {
    String id = session.machine().job().id();
    Optional<ShopFolder> shop = invocation.shop().folder();
    return shop.isPresent() ? shop.get().newJob(id) : Path.of(id + ".json");
  }
}
