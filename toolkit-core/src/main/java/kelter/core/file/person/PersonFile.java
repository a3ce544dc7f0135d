package kelter.core.file.person;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kelter.core.file.disk.TextFile;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonFile;
import kelter.core.file.json.JsonNode;
import kelter.core.file.json.JsonPlaces;
import kelter.core.file.json.JsonText;
import kelter.core.file.json.SchemaText;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import kelter.core.shop.Person;
import kelter.core.vocabulary.Ids;

/** Reads and writes what is known of a person, {@code "format": "kelter-person/1"}. */
public final class PersonFile {

  /** The greatest size of a file of a person, in bytes. */
  public static final int MAX_BYTES = 64 * 1024;

  static final String FORMAT = "kelter-person/1";

  static final Set<String> PERSON =
      JsonNode.names(
          "format", "id", "name", "address", "telephone", "e-mail", "jobs", "purpose", "note");

  private static final String WHAT = "a file of a person";
  private static final String START = "'kelter shop person' makes one";
  private static final String PURPOSE = "quotation and invoice; erase with 'kelter shop forget'";

  private PersonFile() {}

  /**
   * The JSON Schema (2020-12) of files of persons, for editors and other programs.
   *
   * @return JSON
   */
  public static String schema() {
    return SchemaText.of(PersonFile.class, "kelter-person-1.schema.json");
  }

  /**
   * Reads a person.
   *
   * @param path the file
   * @return the person
   * @throws InputException with every mistake of the file, if it has any or cannot be read
   */
  public static Person read(Path path) {
    Json content = JsonFile.read(path, MAX_BYTES, WHAT, START);
    List<Problem> problems = new ArrayList<>();
    JsonNode root = new JsonNode(content, "", problems);
    root.object(PERSON);
    root.required("format").ifPresent(node -> node.word(Set.of(FORMAT), "format"));
    Optional<String> id = root.required("id").flatMap(node -> node.read(Ids::require));
    Optional<String> name = root.required("name").flatMap(JsonNode::text);
    List<String> address = texts(root, "address");
    List<String> jobs = new ArrayList<>();
    root.items("jobs").forEach(node -> node.read(Ids::require).ifPresent(jobs::add));
    String telephone = root.text("telephone").orElse("");
    String email = root.text("e-mail").orElse("");
    root.text("purpose");
    root.text("note");
    Optional<Person> person =
        id.isEmpty() || name.isEmpty()
            ? Optional.empty()
            : root.make(() -> new Person(id.get(), name.get(), address, telephone, email, jobs));
    if (!problems.isEmpty() || person.isEmpty()) {
      throw JsonPlaces.found(path, new InputException(problems));
    }
    return person.get();
  }

  private static List<String> texts(JsonNode root, String name) {
    List<String> texts = new ArrayList<>();
    root.items(name).forEach(node -> node.text().ifPresent(texts::add));
    return texts;
  }

  /** Writes the file of a person whom nobody knew. */
  static void writeNew(Path path, Person person) {
    Json.Obj start =
        new Json.Obj(Map.of())
            .with("format", new Json.Str(FORMAT))
            .with("id", new Json.Str(person.id()));
    Json.Obj content = with(start, person).with("purpose", new Json.Str(PURPOSE));
    TextFile.writeNew(path, JsonText.write(content));
  }

  /** Changes the file of a person; what the person does not tell stays as it is there. */
  static void change(Path path, Person person) {
    JsonFile.change(path, MAX_BYTES, WHAT, START, old -> with((Json.Obj) old, person));
  }

  private static Json.Obj with(Json.Obj content, Person person) {
    Json.Obj with = content.with("name", new Json.Str(person.name()));
    with = told(with, "address", person.address().isEmpty(), array(person.address()));
    with = told(with, "telephone", person.telephone().isEmpty(), new Json.Str(person.telephone()));
    with = told(with, "e-mail", person.email().isEmpty(), new Json.Str(person.email()));
    return told(with, "jobs", person.jobs().isEmpty(), array(person.jobs()));
  }

  /** Nothing is told by leaving it out, but takes the place of what was told before. */
  private static Json.Obj told(Json.Obj content, String name, boolean nothing, Json value) {
    return nothing && !content.members().containsKey(name) ? content : content.with(name, value);
  }

  private static Json array(List<String> texts) {
    return new Json.Arr(texts.stream().map(text -> (Json) new Json.Str(text)).toList());
  }
}
