package kelter.core.file.person;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.file.disk.DiskFault;
import kelter.core.file.disk.Folder;
import kelter.core.file.disk.TextFile;
import kelter.core.file.json.JsonText;
import kelter.core.problem.InputException;
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
   * Writes a person, in the place of what was known.
   *
   * @param person the person
   * @return the file
   * @throws InputException if it cannot be written
   */
  public Path write(Person person) {
    Path file = file(person.id());
    Folder.make(folder());
    TextFile.write(file, JsonText.write(PersonFile.content(person)));
    return file;
  }

  /**
   * Erases a person.
   *
   * @param id the id
   * @return the ids of the person's jobs, which stay
   * @throws InputException if the shop knows nobody of that id, or the file cannot be erased
   */
  public List<String> forget(String id) {
    Person person =
        person(id)
            .orElseThrow(
                () ->
                    new InputException(
                        id, "is nobody whom this shop knows", "look into " + folder()));
    TextFile.erase(file(id));
    return person.jobs();
  }
}
