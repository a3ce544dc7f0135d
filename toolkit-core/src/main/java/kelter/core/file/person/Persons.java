package kelter.core.file.person;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.file.disk.DiskFault;
import kelter.core.file.disk.Folder;
import kelter.core.file.disk.TextFile;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import kelter.core.shop.Person;
import kelter.core.vocabulary.Ids;

/**
 * The persons that a shop knows, one file each in {@code persons/} of its folder.
 *
 * @param shop the folder of the shop
 */
public record Persons(Path shop) {

  private static final String FOLDER = "persons";
  private static final String JSON = ".json";

  private Path folder() {
    return shop.resolve(FOLDER);
  }

  private Path file(String id) {
    if (!Ids.isId(id)) {
      throw new InputException(id, "is no id", "write lower-case letters, digits and hyphens");
    }
    return folder().resolve(id + JSON);
  }

  /**
   * A person by id.
   *
   * @param id a word that somebody gave; only an id can name a person
   * @return the person, or empty if the shop knows none of that id
   * @throws InputException with every mistake of the file
   */
  public Optional<Person> person(String id) {
    Path file = file(id);
    return Files.isRegularFile(file) ? Optional.of(PersonFile.read(file)) : Optional.empty();
  }

  /**
   * Whose a job is.
   *
   * @param job the id of the job
   * @return the person, or empty if nobody's file names the job
   * @throws InputException with every mistake of a file
   */
  public Optional<Person> of(String job) {
    for (Path file : files()) {
      Person person = PersonFile.read(file);
      if (person.jobs().contains(job)) {
        return Optional.of(person);
      }
    }
    return Optional.empty();
  }

  private List<Path> files() {
    if (!Files.isDirectory(folder())) {
      return List.of();
    }
    List<Path> files = new ArrayList<>();
    try (DirectoryStream<Path> all = Files.newDirectoryStream(folder(), "[!.]*" + JSON)) {
      all.forEach(files::add);
    } catch (DirectoryIteratorException unreadable) {
      throw DiskFault.unreadable(folder().toString(), unreadable.getCause());
    } catch (IOException unreadable) {
      throw DiskFault.unreadable(folder().toString(), unreadable);
    }
    files.removeIf(file -> !Files.isRegularFile(file));
    files.sort(null);
    return files;
  }

  /**
   * What became of a person who was to be written.
   *
   * @param file the file
   * @param unread the mistakes of other persons' files, whose jobs are not known for that
   */
  public record Written(Path file, List<Problem> unread) {

    /** Copies the list. */
    public Written {
      unread = List.copyOf(unread);
    }
  }

  /**
   * Writes a person. In a file that is there already everything else stays, such as a note. The
   * file of another person that cannot be read does not hinder it.
   *
   * @param person the person
   * @return the file, and what could not be read beside it
   * @throws InputException if one of the jobs is another person's, or the person's own file cannot
   *     be read or written
   */
  public Written write(Person person) {
    List<Problem> unread = new ArrayList<>();
    requireFree(person, unread);
    Path file = file(person.id());
    if (Files.isRegularFile(file)) {
      PersonFile.change(file, person);
    } else {
      Folder.make(folder());
      PersonFile.writeNew(file, person);
    }
    return new Written(file, unread);
  }

  private void requireFree(Person person, List<Problem> unread) {
    List<Problem> problems = new ArrayList<>();
    for (Path file : files()) {
      if (!file.equals(file(person.id()))) {
        read(file, unread)
            .ifPresent(
                other ->
                    person.jobs().stream()
                        .filter(other.jobs()::contains)
                        .forEach(job -> problems.add(taken(job, other))));
      }
    }
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
  }

  private static Optional<Person> read(Path file, List<Problem> unread) {
    try {
      return Optional.of(PersonFile.read(file));
    } catch (InputException mistakes) {
      unread.addAll(mistakes.problems());
      return Optional.empty();
    }
  }

  private static Problem taken(String job, Person other) {
    return new Problem(
        job,
        "is a job of " + other.id(),
        "take it off first: kelter shop person %s --no-job %s".formatted(other.id(), job));
  }

  /**
   * Gives a call-back to the person whose job the first was.
   *
   * @param first the id of the first job
   * @param next the id of the call-back
   * @return the person with both jobs; empty if nobody's file names the first
   * @throws InputException if the call-back is another person's, or a file cannot be read or
   *     written
   */
  public Optional<Person> join(String first, String next) {
    Optional<Person> joined = of(first).map(person -> person.with(next));
    joined.ifPresent(this::write);
    return joined;
  }

  /**
   * Erases a person, whatever the file holds.
   *
   * @param id the id
   * @return the ids of the person's jobs, which stay; empty if the file could not be read
   * @throws InputException if the shop knows nobody of that id, or the file cannot be erased
   */
  public Optional<List<String>> forget(String id) {
    Path file = file(id);
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) && !Files.isSymbolicLink(file)) {
      throw new InputException(id, "is nobody whom this shop knows", "look into " + folder());
    }
    Optional<List<String>> jobs = jobs(file);
    TextFile.erase(file);
    return jobs;
  }

  private static Optional<List<String>> jobs(Path file) {
    try {
      return Files.isRegularFile(file)
          ? Optional.of(PersonFile.read(file).jobs())
          : Optional.empty();
    } catch (InputException unreadable) {
      return Optional.empty();
    }
  }
}
