package kelter.core.file.catalogue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kelter.core.catalogue.WorkSteps;
import kelter.core.catalogue.WorkSteps.Steps;
import kelter.core.file.field.SourceField;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonNode;
import kelter.core.file.json.JsonText;
import kelter.core.file.json.SchemaText;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import kelter.core.source.Source;

/** Reads the steps of work that come with Kelter, {@code "format": "kelter-work/1"}. */
public final class WorkStepsFile {

  private static final String FORMAT = "kelter-work/1";
  private static final String NAME = "/kelter/core/sheet/work-steps.json";
  private static final Set<String> FILE =
      JsonNode.names("format", "source", "always", "parts", "machines", "places", "note");
  private static final Set<String> STEPS =
      JsonNode.names("bring", "open", "look", "traps", "close", "run", "owner");

  private WorkStepsFile() {}

  /**
   * The JSON Schema (2020-12) of such files.
   *
   * @return JSON
   */
  public static String schema() {
    return SchemaText.of(WorkStepsFile.class, "kelter-work-1.schema.json");
  }

  /**
   * The steps that come with Kelter.
   *
   * @return the steps
   */
  public static WorkSteps shipped() {
    try (InputStream in = WorkStepsFile.class.getResourceAsStream(NAME)) {
      return read(JsonText.read(in.readAllBytes(), NAME, ""));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /**
   * Reads steps.
   *
   * @param content the content of a file
   * @return the steps
   * @throws InputException with every mistake of the content
   */
  public static WorkSteps read(Json content) {
    List<Problem> problems = new ArrayList<>();
    JsonNode root = new JsonNode(content, "", problems);
    root.object(FILE);
    root.required("format").ifPresent(node -> node.word(Set.of(FORMAT), "format"));
    Optional<Source> source = SourceField.of(root);
    Steps always = root.required("always").map(WorkStepsFile::steps).orElse(Steps.NONE);
    Map<String, Steps> parts = byKind(root, "parts");
    Map<String, Steps> machines = byKind(root, "machines");
    Map<String, Map<String, Steps>> places = new LinkedHashMap<>();
    root.optional("places")
        .map(JsonNode::members)
        .orElse(Map.of())
        .forEach((machine, node) -> places.put(machine, byKind(node)));
    root.text("note");
    if (!problems.isEmpty() || source.isEmpty()) {
      throw new InputException(problems);
    }
    return new WorkSteps(always, parts, machines, places, source.get());
  }

  private static Map<String, Steps> byKind(JsonNode root, String name) {
    return root.optional(name).map(WorkStepsFile::byKind).orElse(Map.of());
  }

  private static Map<String, Steps> byKind(JsonNode node) {
    Map<String, Steps> steps = new LinkedHashMap<>();
    node.members().forEach((kind, each) -> steps.put(kind, steps(each)));
    return steps;
  }

  private static Steps steps(JsonNode node) {
    node.object(STEPS);
    return new Steps(
        texts(node, "bring"),
        texts(node, "open"),
        texts(node, "look"),
        texts(node, "traps"),
        texts(node, "close"),
        texts(node, "run"),
        texts(node, "owner"));
  }

  private static List<String> texts(JsonNode node, String name) {
    List<String> texts = new ArrayList<>();
    for (JsonNode item : node.items(name)) {
      item.text().ifPresent(texts::add);
    }
    return texts;
  }
}
