package kelter.core.file.catalogue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kelter.core.catalogue.MachineModel;
import kelter.core.file.field.ApplianceReader;
import kelter.core.file.field.CodeText;
import kelter.core.file.field.IdField;
import kelter.core.file.field.NameplateReader;
import kelter.core.file.field.SourceField;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonNode;
import kelter.core.job.Component;
import kelter.core.job.Nameplate;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import kelter.core.source.Source;
import kelter.core.vocabulary.Meaning;
import kelter.core.vocabulary.Vocabulary;

/** Makes a model of the content of a model file and notes every mistake on the way. */
final class ModelReader {

  static final String FORMAT = "kelter-model/1";

  static final Set<String> MODEL =
      JsonNode.names(
          "format",
          "kind",
          "maker",
          "model",
          "also",
          "nameplate",
          "components",
          "codes",
          "source",
          "note");
  static final Set<String> CODE = JsonNode.names("code", "means");

  /** No more components than a job may have. */
  private static final int COMPONENTS = 200;

  private static final Map<String, Meaning> MEANINGS = new LinkedHashMap<>();

  static {
    for (Meaning meaning : Meaning.values()) {
      MEANINGS.put(meaning.id(), meaning);
    }
  }

  private final Vocabulary vocabulary;
  private final List<Problem> problems = new ArrayList<>();

  private ModelReader(Vocabulary vocabulary) {
    this.vocabulary = vocabulary;
  }

  static MachineModel read(Json content, Vocabulary vocabulary) {
    ModelReader reader = new ModelReader(vocabulary);
    Optional<MachineModel> model = reader.model(new JsonNode(content, "", reader.problems));
    if (!reader.problems.isEmpty() || model.isEmpty()) {
      throw new InputException(reader.problems);
    }
    return model.get();
  }

  private Optional<MachineModel> model(JsonNode root) {
    root.object(MODEL);
    root.required("format").ifPresent(node -> node.word(Set.of(FORMAT), "format"));
    Optional<String> kind = IdField.required(root, "kind");
    Optional<String> maker = root.required("maker").flatMap(JsonNode::text);
    Optional<String> model = root.required("model").flatMap(JsonNode::text);
    List<String> also = also(root);
    Nameplate nameplate = NameplateReader.of(root);
    root.required("source");
    Optional<Source> source = SourceField.of(root);
    List<Component> components = components(root, source);
    Map<String, Meaning> codes = codes(root);
    root.text("note");
    if (kind.isEmpty() || maker.isEmpty() || model.isEmpty() || source.isEmpty()) {
      return Optional.empty();
    }
    return root.make(
        () ->
            new MachineModel(
                kind.get(),
                maker.get(),
                model.get(),
                also,
                nameplate,
                components,
                codes,
                source.get()));
  }

  private static List<String> also(JsonNode root) {
    List<String> names = new ArrayList<>();
    for (JsonNode item : root.items("also")) {
      item.text().ifPresent(names::add);
    }
    return names;
  }

  /** The components; those that name no source have that of the model. */
  private List<Component> components(JsonNode root, Optional<Source> source) {
    List<JsonNode> items = root.items("components");
    if (items.size() > COMPONENTS) {
      root.problem(
          items.size() + " components; a model takes up to " + COMPONENTS,
          "leave out those that nothing is known of");
      return List.of();
    }
    ApplianceReader reader =
        source.isPresent()
            ? new ApplianceReader(vocabulary, source.get())
            : new ApplianceReader(vocabulary);
    return reader.components(items);
  }

  private static Map<String, Meaning> codes(JsonNode root) {
    Map<String, Meaning> codes = new LinkedHashMap<>();
    Set<String> seen = new LinkedHashSet<>();
    for (JsonNode node : root.items("codes")) {
      node.object(CODE);
      Optional<String> code = node.required("code").flatMap(CodeText::of);
      Optional<String> means =
          node.required("means").flatMap(word -> word.word(MEANINGS.keySet(), "meaning"));
      if (code.isPresent() && !seen.add(MachineModel.plain(code.get()))) {
        node.problem("the code '" + code.get() + "' occurs twice", "keep one of them");
      } else if (code.isPresent() && means.isPresent()) {
        codes.put(code.get(), MEANINGS.get(means.get()));
      }
    }
    return codes;
  }
}
