package kelter.cli.template;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonText;
import kelter.core.job.Complaint.Reason;
import kelter.core.job.Market;
import kelter.core.quantity.QuantityKind;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.CurveKind;
import kelter.core.vocabulary.Meaning;
import kelter.core.vocabulary.Symptom;

/**
 * The members of a template that tell which words a job, nameplates, figures, curves and
 * circumstances of readings have, and which symptoms can be asked for.
 */
final class StatedWords {

  /** What the nameplate of a machine or of a component may tell. */
  private static final String NAMEPLATE =
      "    \"nameplate\": { \"voltage\": \"... V\", \"frequency\": \"... Hz\", \"power\": \"... W\","
          + " \"current\": \"... A\", \"protection-class\": \"I or II or III\" }";

  private StatedWords() {}

  /** The member with its name, for some kinds of components. */
  static String of(List<ComponentKind> kinds) {
    StringBuilder text = new StringBuilder("  \"x-what-can-be-stated\": {\n");
    text.append("    \"market\": \"").append(words(Market.values(), Market::name)).append("\",\n");
    text.append("    \"reason\": \"").append(words(Reason.values(), Reason::id)).append("\",\n");
    text.append("    \"displayed\": [\"")
        .append(words(Meaning.values(), Meaning::id))
        .append("\"],\n");
    text.append(NAMEPLATE);
    for (ComponentKind kind : kinds) {
      List<String> parts = parts(kind);
      if (!parts.isEmpty()) {
        text.append(",\n    \"").append(kind.id()).append("\": {\n");
        text.append(String.join(",\n", parts)).append("\n    }");
      }
    }
    return text.append("\n  },\n").toString();
  }

  private static <T> String words(T[] values, Function<T, String> word) {
    return Arrays.stream(values).map(word).collect(Collectors.joining(" or "));
  }

  /** The member that tells what to ask for each symptom; what a machine shows is stated apart. */
  static String questions(List<Symptom> symptoms) {
    Set<String> shown =
        Arrays.stream(Meaning.values())
            .map(meaning -> meaning.symptom().id())
            .collect(Collectors.toSet());
    return symptoms.stream()
        .filter(symptom -> !shown.contains(symptom.id()))
        .map(symptom -> "    \"" + symptom.id() + "\": " + quoted(symptom.question()))
        .collect(Collectors.joining(",\n", "  \"x-what-can-be-asked\": {\n", "\n  },\n"));
  }

  private static String quoted(String text) {
    return JsonText.write(new Json.Str(text)).strip();
  }

  private static List<String> parts(ComponentKind kind) {
    List<String> parts = new ArrayList<>();
    if (!kind.figures().isEmpty()) {
      parts.add("      \"figures\": " + object(kind.figures()));
    }
    List<String> curves = kind.curves().stream().map(StatedWords::curve).toList();
    if (!curves.isEmpty()) {
      parts.add("      \"curves\": { " + String.join(", ", curves) + " }");
    }
    List<String> at =
        kind.observables().stream()
            .filter(observable -> !observable.conditions().isEmpty())
            .map(each -> "        \"" + each.id() + "\": " + object(each.conditions()))
            .toList();
    if (!at.isEmpty()) {
      parts.add("      \"at\": {\n" + String.join(",\n", at) + "\n      }");
    }
    return parts;
  }

  private static String curve(CurveKind curve) {
    String point = "[\"" + blank(curve.x()) + "\", \"" + blank(curve.y()) + "\"]";
    return "\"" + curve.id() + "\": [" + point + ", " + point + "]";
  }

  private static String object(List<Characteristic> words) {
    return words.stream()
        .map(word -> "\"" + word.id() + "\": \"" + blank(word.kind()) + "\"")
        .collect(Collectors.joining(", ", "{ ", " }"));
  }

  private static String blank(QuantityKind kind) {
    String code = kind.unit().code();
    return code.equals("1") ? "..." : "... " + code;
  }
}
