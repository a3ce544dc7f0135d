package kelter.cli.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonNode;
import kelter.core.problem.InputException;
import kelter.core.problem.Mistake;
import kelter.core.problem.Problem;

/**
 * What another program asks for.
 *
 * @param command what to do, one of {@link #COMMANDS}
 * @param job the content of a job file; an object without members for {@link #MODULES}
 * @param fault the fault to explain, {@code component.fault}; only for {@link #EXPLAIN}
 * @param readings what would be read; only for {@link #WHAT_IF}
 */
public record Request(String command, Json.Obj job, String fault, List<String> readings) {

  /** Needs no job. */
  public static final String MODULES = "modules";

  /** Needs a fault. */
  public static final String EXPLAIN = "explain";

  /** Needs readings. */
  public static final String WHAT_IF = "what-if";

  /** All there are. */
  public static final Set<String> COMMANDS =
      JsonNode.names(
          "check", "diagnose", "next", EXPLAIN, WHAT_IF, "weigh", "quote", "prove", MODULES);

  private static final String JOB = "job";
  private static final String FAULT = "fault";
  private static final String READINGS = "readings";
  private static final Json.Obj NO_JOB = new Json.Obj(Map.of());
  private static final int MOST_READINGS = 100;
  private static final int LONGEST_ID = 100;
  private static final Set<String> MEMBERS = JsonNode.names("id", "command", JOB, FAULT, READINGS);

  public Request {
    readings = List.copyOf(readings);
  }

  /** The id of a request, as far as there is one that can be used. */
  static Json id(Json content) {
    Json id = content instanceof Json.Obj object ? object.members().get("id") : null;
    boolean text =
        id instanceof Json.Str str && !str.text().isEmpty() && str.text().length() <= LONGEST_ID;
    return text || id instanceof Json.Num ? id : new Json.Null();
  }

  /**
   * Reads a request.
   *
   * @throws InputException with all that is wrong with it, but not what is wrong with its job
   */
  static Request read(Json content) {
    List<Problem> problems = new ArrayList<>();
    JsonNode root = new JsonNode(content, "", problems);
    root.object(MEMBERS);
    root.required("id").ifPresent(id -> requireId(content, id));
    Optional<String> command =
        root.required("command").flatMap(word -> word.word(COMMANDS, "command"));
    Json.Obj job = command.map(word -> job(content, root, word)).orElse(NO_JOB);
    Optional<String> fault =
        command.flatMap(word -> belongs(root, FAULT, word.equals(EXPLAIN))).flatMap(JsonNode::text);
    List<String> readings =
        command
            .flatMap(word -> belongs(root, READINGS, word.equals(WHAT_IF)))
            .map(Request::readings)
            .orElse(List.of());
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    return new Request(command.orElseThrow(), job, fault.orElse(""), readings);
  }

  private static void requireId(Json content, JsonNode id) {
    if (id(content) instanceof Json.Null) {
      id.problem(
          Mistake.WRONG_TYPE,
          "is no id",
          "write a text of 1 to " + LONGEST_ID + " signs, or a number");
    }
  }

  private static Json.Obj job(Json content, JsonNode root, String command) {
    Optional<JsonNode> job = belongs(root, JOB, !command.equals(MODULES));
    job.ifPresent(JsonNode::object);
    return job.isPresent() && job.get().isObject()
        ? (Json.Obj) ((Json.Obj) content).members().get(JOB)
        : NO_JOB;
  }

  /** A member that a command needs, and others do not take. */
  private static Optional<JsonNode> belongs(JsonNode root, String name, boolean needed) {
    if (needed) {
      return root.required(name);
    }
    root.optional(name)
        .ifPresent(
            other ->
                other.problem(
                    Mistake.UNKNOWN_NAME, "does not go with this command", "leave it out"));
    return Optional.empty();
  }

  private static List<String> readings(JsonNode told) {
    List<JsonNode> items = told.items();
    if (told.isArray() && (items.isEmpty() || items.size() > MOST_READINGS)) {
      told.problem(
          Mistake.UNUSABLE, "has " + items.size() + " items", "give 1 to " + MOST_READINGS);
    }
    return items.stream().flatMap(item -> item.text().stream()).toList();
  }
}
