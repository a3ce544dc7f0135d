package kelter.core.file.json;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Where things stand in the text of an object: its members, the items of those that are arrays, and
 * how it is laid out. All places are counted in characters (UTF-16) from the start of the text.
 */
final class JsonOutline {

  /**
   * A stretch of the text.
   *
   * @param from where it starts
   * @param to where what follows it starts
   */
  record Span(int from, int to) {}

  /**
   * A member of the object.
   *
   * @param name where its name stands
   * @param value where its value stands
   * @param items where the items of an array stand; none of anything else
   */
  record Member(int name, Span value, List<Span> items) {}

  private final String text;
  private final Map<String, Member> members = new LinkedHashMap<>();

  /** Where the first member of an object that is all on one line has its name and its bracket. */
  private Span oneLineObject = new Span(0, 0);

  private JsonOutline(String text) {
    this.text = text;
  }

  /**
   * The outline of a text.
   *
   * @param text a JSON text that was read before, an object
   */
  static JsonOutline of(String text) {
    JsonOutline outline = new JsonOutline(text);
    try (JsonParser parser = JsonText.parser(text)) {
      parser.nextToken();
      while (parser.nextToken() != JsonToken.END_OBJECT) {
        String name = parser.currentName();
        int at = start(parser);
        parser.nextToken();
        List<Span> items = new ArrayList<>();
        Span value = outline.span(parser, items);
        outline.members.put(name, new Member(at, value, items));
      }
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return outline;
  }

  private static int start(JsonParser parser) {
    return Math.toIntExact(parser.currentTokenLocation().getCharOffset());
  }

  /** Where the value at which the parser is stands; the parser goes to its end. */
  private Span span(JsonParser parser, List<Span> items) throws IOException {
    int from = start(parser);
    if (parser.currentToken() == JsonToken.START_ARRAY) {
      while (parser.nextToken() != JsonToken.END_ARRAY) {
        items.add(span(parser, new ArrayList<>()));
      }
    } else if (parser.currentToken() == JsonToken.START_OBJECT) {
      while (parser.nextToken() != JsonToken.END_OBJECT) {
        int name = start(parser);
        parser.nextToken();
        Span value = span(parser, new ArrayList<>());
        noteOneLine(from, name, value.to());
      }
    } else {
      parser.finishToken();
    }
    JsonLocation end = parser.currentLocation();
    return new Span(from, Math.toIntExact(end.getCharOffset()));
  }

  private void noteOneLine(int bracket, int name, int end) {
    if (oneLineObject.to() == 0 && JsonLayout.isOneLine(text, bracket, end)) {
      oneLineObject = new Span(bracket, name);
    }
  }

  Map<String, Member> members() {
    return members;
  }

  /** The last member of the object; it has one. */
  Member last() {
    Member last = null;
    for (Member member : members.values()) {
      last = member;
    }
    return last;
  }

  /** The first member of the object; it has one. */
  Member first() {
    return members.values().iterator().next();
  }

  boolean hasOneLineObjects() {
    return oneLineObject.to() > 0;
  }

  /** Whether a blank stands behind the bracket of an object that is on one line. */
  boolean isPadded() {
    return oneLineObject.to() - oneLineObject.from() > 1;
  }
}
