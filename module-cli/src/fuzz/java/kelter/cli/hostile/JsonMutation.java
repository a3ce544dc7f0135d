package kelter.cli.hostile;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonText;

/**
 * Changes a JSON text by its structure: values go, come twice, change places, become another, or
 * are nested; or by the text in a string.
 *
 * @param text changes the text of a string
 */
record JsonMutation(TextMutation text) {

  private static final int DEEP = 40;

  /** A value in the text: where its name begins, where it begins, where it ends. */
  private record Place(int from, int start, int end) {
    boolean holds(Place other) {
      return from <= other.from && other.end <= end;
    }
  }

  /** A change of a text, or of its letters where it is no JSON any more. */
  String of(String json, Chance chance) {
    List<Place> places;
    try {
      places = places(json);
    } catch (IOException broken) {
      return text.of(json, chance);
    }
    if (places.isEmpty()) {
      return text.words().any(chance);
    }
    Place one = chance.of(places);
    return switch (chance.below(12)) {
      case 0 -> without(json, one);
      case 1 -> json.substring(0, one.end) + "," + json.substring(one.from);
      case 2 -> swapped(json, one, chance.of(places));
      case 3 -> valued(json, one, json.substring(chance.of(places).start).split("[,\\n]", 2)[0]);
      case 4 -> valued(json, one, literal(chance));
      case 5 -> valued(json, one, nested(json.substring(one.start, one.end), chance));
      case 6 -> chance.oneIn(8) ? text.of(json, chance) : copied(json, one, chance.of(places));
      default -> worded(json, places, chance);
    };
  }

  /** A change after which the text may well be in order: a figure is another, something is gone. */
  String gentle(String json, Chance chance) {
    try {
      List<Place> places = places(json);
      Place one = chance.of(places);
      return switch (chance.below(6)) {
        case 0 -> without(json, one);
        case 1 -> json.substring(0, one.end) + "," + json.substring(one.from);
        default -> {
          Place string = chance.of(strings(json, places));
          yield valued(json, string, text.scaled(json.substring(string.start, string.end), chance));
        }
      };
    } catch (IOException | IllegalArgumentException broken) {
      return json;
    }
  }

  private static String without(String json, Place one) {
    String before = json.substring(0, one.from).stripTrailing();
    String after = json.substring(one.end);
    if (before.endsWith(",")) {
      return before.substring(0, before.length() - 1) + after;
    }
    String rest = after.stripLeading();
    return before + (rest.startsWith(",") ? rest.substring(1) : after);
  }

  private static String valued(String json, Place one, String value) {
    return json.substring(0, one.start) + value + json.substring(one.end);
  }

  private static String copied(String json, Place to, Place from) {
    return valued(json, to, json.substring(from.start, from.end));
  }

  private static String swapped(String json, Place one, Place other) {
    if (one.holds(other) || other.holds(one)) {
      return copied(json, one, other);
    }
    Place first = one.start < other.start ? one : other;
    Place second = first == one ? other : one;
    return json.substring(0, first.start)
        + json.substring(second.start, second.end)
        + json.substring(first.end, second.start)
        + json.substring(first.start, first.end)
        + json.substring(second.end);
  }

  private String literal(Chance chance) {
    return switch (chance.below(8)) {
      case 0 -> "null";
      case 1 -> "[]";
      case 2 -> "{}";
      case 3 -> "true";
      case 4 -> text.words().number(chance);
      default -> string(text.words().any(chance));
    };
  }

  private static String nested(String value, Chance chance) {
    int depth = chance.oneIn(4) ? DEEP : chance.few();
    return chance.oneIn(2)
        ? "[".repeat(depth) + value + "]".repeat(depth)
        : "{\"id\": ".repeat(depth) + value + "}".repeat(depth);
  }

  private String worded(String json, List<Place> places, Chance chance) {
    List<Place> strings = strings(json, places);
    if (strings.isEmpty()) {
      return text.of(json, chance);
    }
    Place one = chance.of(strings);
    String inside = json.substring(one.start + 1, one.end - 1);
    return valued(json, one, string(text.of(inside, chance)));
  }

  private static List<Place> strings(String json, List<Place> places) {
    List<Place> strings = new ArrayList<>();
    for (Place place : places) {
      if (json.charAt(place.start) == '"') {
        strings.add(place);
      }
    }
    return strings;
  }

  private static String string(String text) {
    return JsonText.write(new Json.Str(text)).strip();
  }

  private static List<Place> places(String json) throws IOException {
    List<Place> places = new ArrayList<>();
    Deque<int[]> open = new ArrayDeque<>();
    try (JsonParser parser = new JsonFactory().createParser(json)) {
      int name = -1;
      for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
        int start = (int) parser.currentTokenLocation().getCharOffset();
        if (token == JsonToken.FIELD_NAME) {
          name = start;
          continue;
        }
        int from = name < 0 ? start : name;
        name = -1;
        if (token.isStructStart()) {
          open.push(new int[] {from, start});
        } else if (token.isStructEnd()) {
          int[] begun = open.pop();
          places.add(new Place(begun[0], begun[1], start + 1));
        } else {
          parser.getText();
          int end = (int) parser.currentLocation().getCharOffset();
          places.add(new Place(from, start, Math.min(end, json.length())));
        }
      }
    }
    return places;
  }
}
