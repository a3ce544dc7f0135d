package kelter.cli.template;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Symptom;
import kelter.core.vocabulary.Symptoms;
import kelter.core.vocabulary.Vocabulary;

/**
 * Job files to fill in. Which components a kind of appliance has, and which symptoms are asked for
 * first, is common practice, no source.
 */
public final class Template {

  private static final Map<String, List<String>> COMPONENTS = components();

  /** What is asked of any machine. */
  private static final List<Symptom> ASKED_ALWAYS =
      List.of(
          Symptoms.DOES_NOT_START, Symptoms.TRIPS_BREAKER, Symptoms.TRIPS_RCD, Symptoms.SHOCK_FELT);

  /** What is asked beside it where there is such a part, in the order of the questions. */
  private static final Map<String, List<Symptom>> ASKED_WITH = askedWith();

  /**
   * What {@code kelter weigh} takes, to be moved out of the member of its own; all but the
   * currency, the price of an hour and that of a new machine may be left out.
   */
  private static final String FOR_WEIGHING =
      """
        "x-for-weigh": {
          "prices": {
            "currency": "EUR",
            "date": "yyyy-mm-dd",
            "labour-per-hour": "... EUR",
            "least-work": "... min",
            "call-out": "... EUR",
            "call-out-credited": false,
            "replacement": "... EUR",
            "replacement-available": true,
            "installation": "... EUR",
            "running-per-year": "... EUR",
            "running-per-year-new": "... EUR",
            "discount-rate": "3 %",
            "parts": { "component.remedy": "... EUR" },
            "parts-delivery": "... d",
            "replacement-delivery": "... d",
            "day-without": "... EUR",
            "repair-warranty": "12 mo",
            "new-warranty": "24 mo",
            "spread": { "repair": "10 %", "replacement": "10 %", "running": "20 %" }
          },
          "use": { "cycles-per-week": "...", "energy-per-cycle": "... kW.h", "water-per-cycle": "... L" }
        },
      """;

  private Template() {}

  private static Map<String, List<Symptom>> askedWith() {
    Map<String, List<Symptom>> asked = new LinkedHashMap<>();
    asked.put("inlet-valve", List.of(Symptoms.FILLS_SLOWLY, Symptoms.LEAKS));
    asked.put("wash-pump", List.of(Symptoms.POOR_RESULT));
    asked.put("drain-pump", List.of(Symptoms.DOES_NOT_DRAIN, Symptoms.DRAINS_SLOWLY));
    asked.put("heater", List.of(Symptoms.STAYS_COLD, Symptoms.HEATS_SLOWLY));
    asked.put("air-heater", List.of(Symptoms.STAYS_COLD, Symptoms.DOES_NOT_DRY, Symptoms.TOO_HOT));
    asked.put("motor", List.of(Symptoms.DOES_NOT_TURN, Symptoms.LOUD));
    return asked;
  }

  private static Map<String, List<String>> components() {
    Map<String, List<String>> kinds = new LinkedHashMap<>();
    List<String> washer =
        List.of(
            "inlet-valve",
            "drain-pump",
            "heater",
            "temperature-sensor",
            "motor",
            "door-switch",
            "supply-cord");
    kinds.put("washer-extractor", washer);
    kinds.put("washing-machine", washer);
    kinds.put(
        "glasswasher",
        List.of(
            "inlet-valve",
            "wash-pump",
            "drain-pump",
            "heater",
            "temperature-sensor",
            "door-switch",
            "supply-cord"));
    kinds.put(
        "water-boiler", List.of("heater", "thermal-link", "temperature-sensor", "supply-cord"));
    kinds.put(
        "tumble-dryer",
        List.of(
            "air-heater",
            "thermal-link",
            "temperature-sensor",
            "motor",
            "run-capacitor",
            "door-switch",
            "supply-cord"));
    kinds.put("other", List.of());
    return kinds;
  }

  /**
   * The kinds of appliances.
   *
   * @return their words
   */
  public static List<String> kinds() {
    return List.copyOf(COMPONENTS.keySet());
  }

  /**
   * The parts of a kind of appliance.
   *
   * @param kind one of the kinds
   * @return the words of its parts; none where the kind says nothing
   */
  public static List<String> components(String kind) {
    return COMPONENTS.get(kind);
  }

  /**
   * A job file for a kind of appliance; what can be measured stands in a member of its own.
   *
   * @param kind one of the kinds
   * @param date when the call came, {@code yyyy-mm-dd}
   * @param vocabulary the words of the modules
   * @return the content of the file
   */
  public static String of(String kind, String date, Vocabulary vocabulary) {
    List<ComponentKind> known =
        COMPONENTS.get(kind).stream().map(vocabulary::kind).flatMap(Optional::stream).toList();
    StringBuilder text = new StringBuilder();
    text.append("{\n  \"format\": \"kelter-job/2\",\n");
    text.append("  \"id\": \"%s\",\n  \"date\": \"%s\",\n".formatted(kind + "-1", date));
    text.append("  \"appliance\": {\n    \"kind\": \"%s\",\n".formatted(kind));
    text.append("    \"maker\": \"\",\n    \"model\": \"\",\n    \"serial\": \"\",\n");
    text.append("    \"nameplate\": {},\n    \"components\": [");
    text.append(rows(known.stream().map(Template::component)));
    text.append("\n    ]\n  },\n  \"reason\": \"fault\",\n");
    text.append("  \"complaint\": { \"said\": \"\", \"displayed\": \"\" },\n");
    text.append("  \"symptoms\": {");
    text.append(rows(asked(COMPONENTS.get(kind)).map(Template::notAsked)));
    text.append("\n  },\n  \"displayed\": [],\n");
    text.append("  \"instruments\": [],\n  \"measurements\": [],\n");
    text.append(FOR_WEIGHING);
    text.append(StatedWords.of(known));
    text.append(StatedWords.questions(vocabulary.symptoms()));
    text.append("  \"x-what-can-be-measured\": [");
    text.append(
        rows(
            known.stream()
                .flatMap(
                    part -> part.observables().stream().map(each -> measurement(part, each)))));
    return text.append("\n  ]\n}\n").toString();
  }

  private static String rows(Stream<String> rows) {
    return rows.map(row -> "\n" + row).collect(Collectors.joining(","));
  }

  private static Stream<Symptom> asked(List<String> components) {
    Stream<Symptom> ofParts =
        ASKED_WITH.entrySet().stream()
            .filter(part -> components.contains(part.getKey()))
            .flatMap(part -> part.getValue().stream());
    return Stream.concat(ASKED_ALWAYS.stream(), ofParts).distinct();
  }

  private static String notAsked(Symptom symptom) {
    return "    \"%s\": \"not asked\"".formatted(symptom.id());
  }

  private static String component(ComponentKind kind) {
    return "      { \"id\": \"%s\", \"nameplate\": {}, \"figures\": {}, \"curves\": {} }"
        .formatted(kind.id());
  }

  private static String measurement(ComponentKind component, Observable observable) {
    return "    { \"of\": \"%s\", \"observable\": \"%s\", \"reading\": \"%s\" }"
        .formatted(component.id(), observable.id(), reading(observable));
  }

  private static String reading(Observable observable) {
    return switch (observable.type()) {
      case QUANTITY -> "... " + observable.kind().unit().code();
      case YES_NO -> "yes or no";
      case GRADE -> String.join(" or ", observable.grades());
    };
  }
}
