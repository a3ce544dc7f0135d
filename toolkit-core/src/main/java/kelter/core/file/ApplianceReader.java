package kelter.core.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kelter.core.file.json.JsonNode;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Curve;
import kelter.core.job.Nameplate;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.QuantityParser;
import kelter.core.source.Source;
import kelter.core.source.Standing;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.CurveKind;
import kelter.core.vocabulary.Ids;
import kelter.core.vocabulary.Vocabulary;

/** Reads the appliance of a job, with its components. */
final class ApplianceReader {

  static final Set<String> APPLIANCE =
      JsonNode.names("kind", "maker", "model", "serial", "age", "nameplate", "components");
  static final Set<String> COMPONENT =
      JsonNode.names("id", "kind", "nameplate", "figures", "curves", "source");
  static final Set<String> SOURCE = JsonNode.names("document", "standing");

  /** What is said of figures whose source the job does not name. */
  private static final Source UNNAMED =
      new Source("figures entered in the job without a source", Standing.FROM_MEMORY);

  private final Vocabulary vocabulary;

  ApplianceReader(Vocabulary vocabulary) {
    this.vocabulary = vocabulary;
  }

  Optional<Appliance> appliance(JsonNode node) {
    node.object(APPLIANCE);
    Optional<String> kind = node.required("kind").flatMap(field -> field.read(Ids::require));
    String maker = node.optional("maker").flatMap(JsonNode::text).orElse("");
    String model = node.optional("model").flatMap(JsonNode::text).orElse("");
    String serial = node.optional("serial").flatMap(JsonNode::text).orElse("");
    Optional<Quantity> age =
        node.optional("age").flatMap(field -> field.read(ApplianceReader::age));
    Nameplate nameplate = NameplateReader.of(node);
    List<Component> components = components(node);
    return node.make(
        () ->
            new Appliance(
                kind.orElse("unknown"), maker, model, serial, age, nameplate, components));
  }

  private static Quantity age(String text) {
    Quantity age = QuantityParser.parse(text, QuantityKind.AGE);
    if (age.value() < 0) {
      throw new IllegalArgumentException("'" + text + "' is negative; an age is not");
    }
    return age;
  }

  private List<Component> components(JsonNode appliance) {
    List<Component> components = new ArrayList<>();
    Set<String> ids = new LinkedHashSet<>();
    for (JsonNode node : appliance.required("components").map(JsonNode::items).orElse(List.of())) {
      Optional<Component> component = component(node);
      if (component.isPresent() && !ids.add(component.get().id())) {
        node.problem(
            "component '" + component.get().id() + "' occurs twice", "give each its own id");
      } else {
        component.ifPresent(components::add);
      }
    }
    return components;
  }

  private Optional<Component> component(JsonNode node) {
    node.object(COMPONENT);
    Optional<String> id = node.required("id").flatMap(field -> field.read(Ids::require));
    Optional<ComponentKind> kind =
        (node.optional("kind").isPresent() ? node.optional("kind") : node.optional("id"))
            .flatMap(field -> field.word(kindIds(), "kind of component"))
            .flatMap(vocabulary::kind);
    Nameplate nameplate = NameplateReader.of(node);
    Source source = node.optional("source").flatMap(ApplianceReader::source).orElse(UNNAMED);
    if (id.isEmpty() || kind.isEmpty()) {
      return Optional.empty();
    }
    Map<String, Quantity> figures = figures(node, kind.get());
    Map<String, Curve> curves = curves(node, kind.get());
    return node.make(
        () -> new Component(id.get(), kind.get().id(), nameplate, figures, curves, source));
  }

  private Set<String> kindIds() {
    Set<String> ids = new LinkedHashSet<>();
    vocabulary.kinds().forEach(kind -> ids.add(kind.id()));
    return ids;
  }

  private static Map<String, Quantity> figures(JsonNode node, ComponentKind kind) {
    Map<String, QuantityKind> known = new LinkedHashMap<>();
    kind.figures().forEach(figure -> known.put(figure.id(), figure.kind()));
    return node.optional("figures")
        .map(
            figures ->
                figures.each(
                    known,
                    (field, quantity) -> field.read(text -> QuantityParser.parse(text, quantity))))
        .orElse(Map.of());
  }

  private static Map<String, Curve> curves(JsonNode node, ComponentKind kind) {
    Map<String, CurveKind> known = new LinkedHashMap<>();
    kind.curves().forEach(curve -> known.put(curve.id(), curve));
    return node.optional("curves")
        .map(curves -> curves.each(known, ApplianceReader::curve))
        .orElse(Map.of());
  }

  private static Optional<Curve> curve(JsonNode node, CurveKind kind) {
    List<Curve.Point> points = new ArrayList<>();
    List<JsonNode> items = node.items();
    for (JsonNode item : items) {
      List<JsonNode> pair = item.items();
      if (pair.size() != 2) {
        item.problem(
            "is not a point",
            "write [\"%s\", \"%s\"]".formatted(example(kind.x()), example(kind.y())));
        continue;
      }
      Optional<Quantity> x = pair.get(0).read(text -> QuantityParser.parse(text, kind.x()));
      Optional<Quantity> y = pair.get(1).read(text -> QuantityParser.parse(text, kind.y()));
      if (x.isPresent() && y.isPresent()) {
        points.add(new Curve.Point(x.get(), y.get()));
      }
    }
    return points.size() < items.size() ? Optional.empty() : node.make(() -> new Curve(points));
  }

  private static String example(QuantityKind kind) {
    return "1 " + kind.unit().code();
  }

  private static Optional<Source> source(JsonNode node) {
    node.object(SOURCE);
    Optional<String> document = node.required("document").flatMap(JsonNode::text);
    Map<String, Standing> standings = new LinkedHashMap<>();
    for (Standing standing : Standing.values()) {
      standings.put(standing.words(), standing);
    }
    Optional<Standing> standing =
        node.required("standing")
            .flatMap(field -> field.word(standings.keySet(), "standing"))
            .map(standings::get);
    if (document.isEmpty() || standing.isEmpty()) {
      return Optional.empty();
    }
    return node.make(() -> new Source(document.get(), standing.get()));
  }
}
