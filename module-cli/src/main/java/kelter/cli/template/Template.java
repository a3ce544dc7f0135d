package kelter.cli.template;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Vocabulary;

/** Job files to fill in, with all that can be told. */
public final class Template {

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

  /**
   * A job file in full; what can be measured stands in a member of its own.
   *
   * @param kind the word for the kind of machine
   * @param parts its parts, by id
   * @param asked the ids of the symptoms to ask for first
   * @param date when the call came, {@code yyyy-mm-dd}
   * @param vocabulary the words of the modules
   * @return the content of the file
   */
  public static String of(
      String kind,
      Map<String, ComponentKind> parts,
      List<String> asked,
      String date,
      Vocabulary vocabulary) {
    List<ComponentKind> known = parts.values().stream().distinct().toList();
    StringBuilder text = new StringBuilder();
    text.append("{\n  \"format\": \"kelter-job/2\",\n");
    text.append("  \"id\": \"%s\",\n  \"date\": \"%s\",\n".formatted(kind + "-1", date));
    text.append("  \"appliance\": {\n    \"kind\": \"%s\",\n".formatted(kind));
    text.append("    \"maker\": \"\",\n    \"model\": \"\",\n    \"serial\": \"\",\n");
    text.append("    \"nameplate\": {},\n    \"components\": [");
    text.append(rows(parts.entrySet().stream().map(Template::component)));
    text.append("\n    ]\n  },\n  \"reason\": \"fault\",\n");
    text.append("  \"complaint\": { \"said\": \"\", \"displayed\": \"\" },\n");
    text.append("  \"symptoms\": {");
    text.append(rows(asked.stream().map(Template::notAsked)));
    text.append("\n  },\n  \"displayed\": [],\n");
    text.append("  \"instruments\": [],\n  \"measurements\": [],\n");
    text.append(FOR_WEIGHING);
    text.append(StatedWords.of(known));
    text.append(StatedWords.questions(vocabulary.symptoms()));
    text.append("  \"x-what-can-be-measured\": [");
    text.append(
        rows(
            parts.entrySet().stream()
                .flatMap(
                    part ->
                        part.getValue().observables().stream()
                            .map(each -> measurement(part.getKey(), each)))));
    return text.append("\n  ]\n}\n").toString();
  }

  private static String rows(Stream<String> rows) {
    return rows.map(row -> "\n" + row).collect(Collectors.joining(","));
  }

  private static String notAsked(String symptom) {
    return "    \"%s\": \"not asked\"".formatted(symptom);
  }

  private static String component(Map.Entry<String, ComponentKind> part) {
    String kind = part.getValue().id();
    String told = part.getKey().equals(kind) ? "" : "\"kind\": \"%s\", ".formatted(kind);
    return "      { \"id\": \"%s\", %s\"nameplate\": {}, \"figures\": {}, \"curves\": {} }"
        .formatted(part.getKey(), told);
  }

  private static String measurement(String component, Observable observable) {
    return "    { \"of\": \"%s\", \"observable\": \"%s\", \"reading\": \"%s\" }"
        .formatted(component, observable.id(), reading(observable));
  }

  private static String reading(Observable observable) {
    return switch (observable.type()) {
      case QUANTITY -> "... " + observable.kind().unit().code();
      case YES_NO -> "yes or no";
      case GRADE -> String.join(" or ", observable.grades());
    };
  }
}
