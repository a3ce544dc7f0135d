package kelter.cli.command.entry;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import kelter.cli.command.Invocation;
import kelter.core.diagnosis.Remedy;
import kelter.core.file.job.JobDocument;
import kelter.core.file.job.JobFile;
import kelter.core.file.job.MarkedEdit;
import kelter.core.file.json.Json;
import kelter.core.job.Component;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import kelter.core.quantity.Nearest;
import kelter.core.vocabulary.OwnersWords;
import kelter.core.vocabulary.Symptom;

/**
 * What a command line adds to a job: all of it or, where one piece is wrong, nothing. Every mistake
 * is told with the words that it stands in.
 */
public final class JobEdits {

  private final Invocation invocation;
  private final Path file;
  private final List<UnaryOperator<Json.Obj>> changes = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();
  private Json.Obj content;

  /**
   * Begins to change a job.
   *
   * @throws InputException if it is closed or cannot be read
   */
  public JobEdits(Invocation invocation) {
    this.invocation = invocation;
    this.file = invocation.jobFile();
    this.content = Leading.open(file);
    JobDocument document = invocation.job(file, content);
    invocation.terminal().speakAsIn(invocation.workshop().open(document.job()).market());
  }

  /** The job as it stands so far. */
  public JobDocument document() {
    return invocation.job(file, content);
  }

  /**
   * Asks for a part that the machine has, or for a kind of component that may be added to it.
   *
   * @throws IllegalArgumentException if it is neither; the message names the parts
   */
  void requirePart(String id) {
    List<String> parts =
        document().job().appliance().components().stream().map(Component::id).toList();
    if (!parts.contains(id) && invocation.workshop().vocabulary().kind(id).isEmpty()) {
      throw new IllegalArgumentException(
          "'%s' is no part of this machine; %s"
              .formatted(
                  id,
                  Nearest.of(id, parts)
                      .map(near -> "did you mean '" + near + "'?")
                      .orElse("known: " + String.join(", ", parts))));
    }
  }

  /**
   * Asks for a work that mends something of the machine.
   *
   * @throws IllegalArgumentException if none is called so; the message names the nearest
   */
  void requireWork(String key) {
    List<String> known =
        invocation.workshop().open(document().job()).remedies().stream()
            .map(Remedy::key)
            .distinct()
            .toList();
    if (!known.contains(key)) {
      throw new IllegalArgumentException(
          "'%s' is no work that is known for this machine; %s"
              .formatted(
                  key,
                  Nearest.of(key, known)
                      .map(near -> "did you mean '" + near + "'?")
                      .orElse("'kelter diagnose --full' lists what may be done")));
    }
  }

  /**
   * A symptom by its id, with blanks or hyphens. Other words may mean something else, so that they
   * are not taken for one.
   *
   * @throws IllegalArgumentException if it is told by other words; the message names what they may
   *     mean
   */
  String symptom(String words) {
    String id = words.strip().replace(' ', '-');
    List<Symptom> known = invocation.workshop().vocabulary().symptoms();
    List<String> meant = OwnersWords.meant(words, known).stream().map(Symptom::id).toList();
    if (words.contains(" ") && known.stream().noneMatch(each -> each.id().equals(id))) {
      throw new IllegalArgumentException(
          "'%s' is no symptom by its id; %s"
              .formatted(
                  words,
                  meant.isEmpty()
                      ? "'kelter modules' lists them"
                      : "it may be: " + String.join(", ", meant)));
    }
    return id;
  }

  /** Notes a mistake. */
  public void problem(String where, String what, String remedy) {
    problems.add(new Problem(where, what, remedy));
  }

  /**
   * Adds something.
   *
   * @param told the words of the command line that ask for it
   * @param change adds it to the content
   */
  public void add(String told, Supplier<UnaryOperator<Json.Obj>> change) {
    try {
      UnaryOperator<Json.Obj> asked = change.get();
      UnaryOperator<Json.Obj> made =
          old -> MarkedEdit.withKinds(asked.apply(old), invocation.workshop().kinds());
      Json.Obj next = made.apply(content);
      invocation.workshop().open(invocation.workshop().read(next).job());
      changes.add(made);
      content = next;
    } catch (InputException mistakes) {
      mistakes.problems().forEach(each -> problem(told, each.what(), each.remedy()));
    } catch (IllegalArgumentException refused) {
      problem(told, refused.getMessage(), "");
    }
  }

  /** Whether anything is added. */
  public boolean isEmpty() {
    return changes.isEmpty() && problems.isEmpty();
  }

  /**
   * Writes it.
   *
   * @throws InputException with every mistake, and then nothing is written
   */
  public void write() {
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    JobFile.change(
        file,
        old -> {
          Json.Obj next = (Json.Obj) old;
          for (UnaryOperator<Json.Obj> change : changes) {
            next = change.apply(next);
          }
          return next;
        });
  }
}
