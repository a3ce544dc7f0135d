package kelter.core.file.field;

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
import kelter.core.job.rule.EntryRules;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.core.source.Standing;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.CurveKind;
import kelter.core.vocabulary.Ids;
import kelter.core.vocabulary.Vocabulary;

/** Reads the appliance of a job, with its components. */
public final class ApplianceReader {

  public static final Set<String> APPLIANCE =
      JsonNode.names("kind", "maker", "model", "serial", "age", "nameplate", "components", "lacks");
  public static final Set<String> COMPONENT =
      JsonNode.names("id", "kind", "nameplate", "figures", "curves", "source");

  /** What is said of figures whose source the job does not name. */
  private static final Source UNNAMED =
      new Source("figures entered in the job without a source", Standing.FROM_MEMORY);

  private final Vocabulary vocabulary;
  private final Source unnamed;

  /** A reader of the machine of a job. */
  public ApplianceReader(Vocabulary vocabulary) {
    this(vocabulary, UNNAMED);
  }

  /**
   * A reader.
   *
   * @param unnamed what is said of figures whose source is not named
   */
  public ApplianceReader(Vocabulary vocabulary, Source unnamed) {
    this.vocabulary = vocabulary;
    this.unnamed = unnamed;
  }

  public Optional<Appliance> appliance(JsonNode node) {
    node.object(APPLIANCE);
    String kind = IdField.required(node, "kind").orElse("unknown");
    String maker = node.text("maker").orElse("");
    String model = node.text("model").orElse("");
    String serial = node.text("serial").orElse("");
    Optional<Quantity> age = age(node);
    Nameplate nameplate = NameplateReader.of(node);
    List<Component> components = components(node.items("components"));
    List<String> lacks = lacks(node);
    try {
      return Optional.of(
          new Appliance(kind, maker, model, serial, age, nameplate, components, lacks));
    } catch (IllegalArgumentException refused) {
      return node.refuse(refused);
    }
  }

  private static Optional<Quantity> age(JsonNode appliance) {
    Optional<Quantity> age = appliance.quantity("age", QuantityKind.AGE);
    return age.isPresent()
        ? EntryRules.age(
            age.get(), appliance.text("age").orElseThrow(), appliance.optional("age").orElseThrow())
        : age;
  }

  private static List<String> lacks(JsonNode appliance) {
    List<String> lacks = new ArrayList<>();
    for (JsonNode item : appliance.items("lacks")) {
      item.read(Ids::require).ifPresent(lacks::add);
    }
    return lacks;
  }

  /** The components that these places hold, each id once; mistakes are noted. */
  public List<Component> components(List<JsonNode> items) {
    List<Component> components = new ArrayList<>();
    Set<String> ids = new LinkedHashSet<>();
    for (JsonNode node : items) {
      Optional<Component> component = component(node);
      if (component.isPresent() && EntryRules.once(ids, "component", component.get().id(), node)) {
        components.add(component.get());
      }
    }
    return components;
  }

  private Optional<Component> component(JsonNode node) {
    node.object(COMPONENT);
    Optional<String> id = IdField.required(node, "id");
    Optional<ComponentKind> kind = kind(node, id);
    Nameplate nameplate = NameplateReader.of(node);
    Source source = SourceField.of(node).orElse(unnamed);
    if (id.isEmpty() || kind.isEmpty()) {
      return Optional.empty();
    }
    Map<String, Quantity> figures = figures(node, kind.get());
    Map<String, Curve> curves = curves(node, kind.get());
    try {
      return Optional.of(
          new Component(id.get(), kind.get().id(), nameplate, figures, curves, source));
    } catch (IllegalArgumentException refused) {
      return node.refuse(refused);
    }
  }

  /** The kind of a component, which is its id where no kind is told. */
  private Optional<ComponentKind> kind(JsonNode node, Optional<String> id) {
    Optional<JsonNode> told = node.optional("kind");
    Optional<JsonNode> field = told.isPresent() ? told : node.optional("id");
    String start = told.isEmpty() && id.isPresent() ? startOf(id.get()) : "";
    if (!start.isEmpty()) {
      field
          .orElseThrow()
          .problem(
              "'" + id.get() + "' is not a known kind of component",
              "keep the id and write \"kind\": \"" + start + "\" beside it");
      return Optional.empty();
    }
    Optional<String> word = field.isPresent() ? field.get().text() : Optional.empty();
    return word.isPresent()
        ? EntryRules.kind(word.get(), vocabulary, field.get())
        : Optional.empty();
  }

  /** The longest known kind with which an unknown one starts, as heater in heater-2. */
  private String startOf(String id) {
    String longest = "";
    for (ComponentKind kind : vocabulary.kinds()) {
      if (kind.id().equals(id)) {
        return "";
      }
      if (id.startsWith(kind.id() + "-") && kind.id().length() > longest.length()) {
        longest = kind.id();
      }
    }
    return longest;
  }

  private static Map<String, Quantity> figures(JsonNode component, ComponentKind kind) {
    return QuantityFields.read(component.optional("figures"), kind.figures());
  }

  private static Map<String, Curve> curves(JsonNode component, ComponentKind kind) {
    Map<String, CurveKind> known = new LinkedHashMap<>();
    for (CurveKind curve : kind.curves()) {
      known.put(curve.id(), curve);
    }
    Optional<JsonNode> node = component.optional("curves");
    Map<String, JsonNode> members =
        node.isPresent() ? node.get().members(known.keySet()) : Map.of();
    Map<String, Curve> curves = new LinkedHashMap<>();
    for (Map.Entry<String, JsonNode> member : members.entrySet()) {
      Optional<Curve> curve = curve(member.getValue(), known.get(member.getKey()));
      if (curve.isPresent()) {
        curves.put(member.getKey(), curve.get());
      }
    }
    return curves;
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
      Optional<Quantity> x = pair.get(0).quantity(kind.x());
      Optional<Quantity> y = pair.get(1).quantity(kind.y());
      if (x.isPresent() && y.isPresent()) {
        points.add(new Curve.Point(x.get(), y.get()));
      }
    }
    try {
      return points.size() < items.size() ? Optional.empty() : Optional.of(new Curve(points));
    } catch (IllegalArgumentException refused) {
      return node.refuse(refused);
    }
  }

  private static String example(QuantityKind kind) {
    return "1 " + kind.unit().code();
  }
}
