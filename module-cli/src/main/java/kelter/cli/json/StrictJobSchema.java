package kelter.cli.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import kelter.core.file.job.JobFile;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonText;
import kelter.core.quantity.QuantityKind;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.CurveKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Symptom;
import kelter.core.vocabulary.Vocabulary;

/**
 * The schema of a job with the words of the modules that are loaded: kinds of components, what can
 * be observed on each, units, conditions, grades and symptoms. It refuses more than the reader does
 * where a job uses a rarer spelling of a unit, and names a component like a kind that it is not of.
 */
public final class StrictJobSchema {

  private static final String JOB_ID = "urn:kelter:job:2";
  private static final String OWN = "^x-";
  private static final Map<String, QuantityKind> AGED = Map.of("age", QuantityKind.AGE);
  private static final Map<String, QuantityKind> USED =
      Map.of(
          "energy-per-cycle", QuantityKind.ENERGY,
          "energy-per-cycle-new", QuantityKind.ENERGY,
          "water-per-cycle", QuantityKind.VOLUME,
          "water-per-cycle-new", QuantityKind.VOLUME,
          "carbon-of-new", QuantityKind.MASS,
          "carbon-per-kwh", QuantityKind.MASS);

  private final Vocabulary vocabulary;
  private final UnitPatterns units = new UnitPatterns();

  private StrictJobSchema(Vocabulary vocabulary) {
    this.vocabulary = vocabulary;
  }

  /**
   * The schema.
   *
   * @param vocabulary the words of the modules
   * @return JSON Schema 2020-12
   */
  public static String of(Vocabulary vocabulary) {
    return JsonText.write(new StrictJobSchema(vocabulary).schema());
  }

  private Json.Obj schema() {
    Json.Obj job =
        (Json.Obj)
            JsonText.read(
                JobFile.schema().getBytes(java.nio.charset.StandardCharsets.UTF_8), "schema", "");
    Json.Obj definitions = member(job, "$defs");
    definitions =
        definitions
            .with("symptoms", symptoms(member(definitions, "symptoms")))
            .with("appliance", quantities(member(definitions, "appliance"), AGED))
            .with("use", quantities(member(definitions, "use"), USED))
            .with("component", component(member(definitions, "component")))
            .with("measurement", measurement(member(definitions, "measurement")));
    for (Map.Entry<String, Json> quantity : units.definitions().entrySet()) {
      definitions = definitions.with(quantity.getKey(), quantity.getValue());
    }
    return job.with("$id", new Json.Str(JOB_ID + ":strict"))
        .with("title", new Json.Str("Kelter job file, strict"))
        .with(
            "description",
            new Json.Str(
                "A job file in the words of the modules that are loaded. Units are UCUM codes and"
                    + " the usual spellings of the trade; a job may have others. A component that"
                    + " is called like a kind of component is of that kind."))
        .with("$defs", definitions);
  }

  /** Figures that every job tells in the same kinds of quantity, none of them negative. */
  private Json.Obj quantities(Json.Obj base, Map<String, QuantityKind> kinds) {
    Json.Obj properties = member(base, "properties");
    for (Map.Entry<String, QuantityKind> each : new TreeMap<>(kinds).entrySet()) {
      properties = properties.with(each.getKey(), units.quantity(each.getValue(), false));
    }
    return base.with("properties", properties);
  }

  private Json.Obj symptoms(Json.Obj base) {
    List<String> ids = vocabulary.symptoms().stream().map(Symptom::id).toList();
    return base.with("propertyNames", own(ids));
  }

  private Json.Obj component(Json.Obj base) {
    List<String> ids = vocabulary.kinds().stream().map(ComponentKind::id).toList();
    List<Json> rules = new ArrayList<>();
    for (ComponentKind kind : vocabulary.kinds()) {
      Json.Obj named = properties("id", constant(kind.id()));
      Json.Obj told = required(properties("kind", constant(kind.id())), "kind");
      rules.add(rule(required(named, "id"), properties("kind", constant(kind.id()))));
      Json.Obj either = object("anyOf", new Json.Arr(List.of(required(named, "id"), told)));
      rules.add(rule(either, figuresAndCurves(kind)));
    }
    rules.add(rule(object("not", required(typed("object"), "kind")), properties("id", words(ids))));
    Json.Obj properties = member(base, "properties").with("kind", words(ids));
    return base.with("properties", properties).with("allOf", new Json.Arr(rules));
  }

  private Json.Obj figuresAndCurves(ComponentKind kind) {
    Map<String, Json> figures = new LinkedHashMap<>();
    for (Characteristic figure : kind.figures()) {
      figures.put(figure.id(), units.quantity(figure.kind(), true));
    }
    Map<String, Json> curves = new LinkedHashMap<>();
    for (CurveKind curve : kind.curves()) {
      curves.put(
          curve.id(), points(units.quantity(curve.x(), true), units.quantity(curve.y(), true)));
    }
    Map<String, Json> both = new LinkedHashMap<>();
    both.put("figures", closed(figures));
    both.put("curves", closed(curves));
    return typed("object").with("properties", new Json.Obj(both));
  }

  private static Json.Obj points(Json x, Json y) {
    Json.Obj pair =
        typed("array")
            .with("prefixItems", new Json.Arr(List.of(x, y)))
            .with("minItems", new Json.Num("2"))
            .with("items", new Json.Bool(false));
    return typed("array").with("items", pair);
  }

  private Json.Obj measurement(Json.Obj base) {
    Map<String, List<Observable>> byId = new TreeMap<>();
    List<Json> rules = new ArrayList<>();
    for (ComponentKind kind : vocabulary.kinds()) {
      List<String> ids = new ArrayList<>();
      for (Observable each : kind.observables()) {
        ids.add(each.id());
        byId.computeIfAbsent(each.id(), any -> new ArrayList<>()).add(each);
      }
      Json.Obj allowed = ids.isEmpty() ? object("not", new Json.Obj(Map.of())) : words(ids);
      rules.add(
          rule(
              required(properties("of", constant(kind.id())), "of"),
              properties("observable", allowed)));
    }
    byId.forEach(
        (id, all) ->
            rules.add(
                rule(required(properties("observable", constant(id)), "observable"), read(all))));
    Json.Obj properties =
        member(base, "properties").with("observable", words(List.copyOf(byId.keySet())));
    return base.with("properties", properties).with("allOf", new Json.Arr(rules));
  }

  /** What a reading of an observable looks like, in any of the kinds that have it. */
  private Json.Obj read(List<Observable> all) {
    Set<Json> readings = new LinkedHashSet<>();
    Map<String, Set<Json>> conditions = new TreeMap<>();
    for (Observable each : all) {
      readings.add(reading(each));
      for (Characteristic condition : each.conditions()) {
        conditions
            .computeIfAbsent(condition.id(), any -> new LinkedHashSet<>())
            .add(units.quantity(condition.kind(), true));
      }
    }
    Json one = any(readings);
    Json.Obj several = typed("array").with("items", one);
    Map<String, Json> at = new LinkedHashMap<>();
    conditions.forEach((id, forms) -> at.put(id, any(forms)));
    Map<String, Json> both = new LinkedHashMap<>();
    both.put("reading", object("anyOf", new Json.Arr(List.of(one, several))));
    both.put("at", closed(at));
    return typed("object").with("properties", new Json.Obj(both));
  }

  private Json reading(Observable observable) {
    return switch (observable.type()) {
      case QUANTITY -> units.reading(observable.kind(), observable.span().low() < 0);
      case YES_NO ->
          object(
              "enum",
              new Json.Arr(
                  List.of(
                      new Json.Str("yes"),
                      new Json.Str("no"),
                      new Json.Bool(true),
                      new Json.Bool(false))));
      case GRADE -> words(observable.grades());
    };
  }

  private static Json any(Set<Json> forms) {
    return forms.size() == 1
        ? forms.iterator().next()
        : object("anyOf", new Json.Arr(List.copyOf(forms)));
  }

  /** An object with these members and those of one's own. */
  private static Json.Obj closed(Map<String, Json> properties) {
    return typed("object")
        .with("properties", new Json.Obj(properties))
        .with("patternProperties", object(OWN, new Json.Bool(true)))
        .with("additionalProperties", new Json.Bool(false));
  }

  private static Json.Obj own(List<String> ids) {
    Json.Obj extra = typed("string").with("pattern", new Json.Str(OWN));
    return object("anyOf", new Json.Arr(List.of(words(ids), extra)));
  }

  private static Json.Obj rule(Json.Obj condition, Json.Obj then) {
    return object("if", condition).with("then", then);
  }

  private static Json.Obj properties(String name, Json schema) {
    return typed("object").with("properties", object(name, schema));
  }

  private static Json.Obj required(Json.Obj schema, String name) {
    return schema.with("required", new Json.Arr(List.of(new Json.Str(name))));
  }

  private static Json.Obj constant(String word) {
    return object("const", new Json.Str(word));
  }

  private static Json.Obj words(List<String> words) {
    List<Json> sorted = new ArrayList<>();
    new TreeSet<>(words).forEach(word -> sorted.add(new Json.Str(word)));
    return object("enum", new Json.Arr(sorted));
  }

  static Json.Obj typed(String type) {
    return object("type", new Json.Str(type));
  }

  private static Json.Obj object(String name, Json value) {
    return new Json.Obj(Map.of(name, value));
  }

  private static Json.Obj member(Json.Obj object, String name) {
    return (Json.Obj) object.members().get(name);
  }
}
