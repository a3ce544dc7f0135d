package kelter.core.file.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kelter.core.problem.FilePlace;
import kelter.core.problem.InputException;
import kelter.core.problem.Mistake;
import kelter.core.problem.Problem;

/** Reads and writes JSON text (RFC 8259), strictly and within limits. */
public final class JsonText {

  private static final int MAX_DEPTH = 20;
  private static final int MAX_STRING = 20_000;
  private static final int MAX_NUMBER = 100;
  private static final int MAX_NAME = 200;

  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          .streamReadConstraints(
              StreamReadConstraints.builder()
                  .maxNestingDepth(MAX_DEPTH)
                  .maxStringLength(MAX_STRING)
                  .maxNumberLength(MAX_NUMBER)
                  .maxNameLength(MAX_NAME)
                  .build())
          .build();

  private final List<Problem> problems = new ArrayList<>();
  private final String name;

  private JsonText(String name) {
    this.name = name;
  }

  /** Reads a text within the limits. */
  static JsonParser parser(String text) throws IOException {
    return FACTORY.createParser(text);
  }

  /** The value of a text that was read before. */
  static Json value(String text) {
    return new JsonText("").parse(text, "");
  }

  /**
   * Reads a JSON text.
   *
   * @param bytes the text in UTF-8 without a byte order mark
   * @param name the name of the file, for messages
   * @param start what to do about an empty one, for messages
   * @return the value
   * @throws InputException if it is not such a text
   */
  public static Json read(byte[] bytes, String name, String start) {
    String text = decode(bytes, name, start);
    JsonText reader = new JsonText(name);
    Json value = reader.parse(text, start);
    if (!reader.problems.isEmpty()) {
      throw new InputException(reader.problems);
    }
    return value;
  }

  private static String decode(byte[] bytes, String name, String start) {
    if (bytes.length == 0) {
      throw new InputException(Mistake.NOT_JSON, name, "is empty", start);
    }
    if (startsWith(bytes, 0xEF, 0xBB, 0xBF)) {
      throw new InputException(
          Mistake.NOT_JSON, name, "starts with a byte order mark", "save it as UTF-8 without one");
    }
    if (startsWith(bytes, 0xFE, 0xFF) || startsWith(bytes, 0xFF, 0xFE) || hasNul(bytes)) {
      throw new InputException(
          Mistake.NOT_JSON,
          name,
          "is not UTF-8 text; it looks like UTF-16 or binary",
          "save it as UTF-8");
    }
    try {
      return StandardCharsets.UTF_8
          .newDecoder()
          .onMalformedInput(CodingErrorAction.REPORT)
          .onUnmappableCharacter(CodingErrorAction.REPORT)
          .decode(ByteBuffer.wrap(bytes))
          .toString();
    } catch (CharacterCodingException notUtf8) {
      throw new InputException(Mistake.NOT_JSON, name, "is not UTF-8 text", "save it as UTF-8");
    }
  }

  private static boolean startsWith(byte[] bytes, int... prefix) {
    if (bytes.length < prefix.length) {
      return false;
    }
    for (int i = 0; i < prefix.length; i++) {
      if ((bytes[i] & 0xFF) != prefix[i]) {
        return false;
      }
    }
    return true;
  }

  private static boolean hasNul(byte[] bytes) {
    for (byte b : bytes) {
      if (b == 0) {
        return true;
      }
    }
    return false;
  }

  private Json parse(String text, String start) {
    try (JsonParser parser = parser(text)) {
      return parse(parser, start);
    } catch (JsonProcessingException notJson) {
      throw notJson(notJson.getLocation(), "is not JSON: " + JsonMistake.words(notJson, text), "");
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  private Json parse(JsonParser parser, String start) throws IOException {
    try {
      if (parser.nextToken() == null) {
        throw notJson(null, "holds nothing but blanks", start);
      }
      Json value = value(parser, "");
      if (parser.nextToken() != null) {
        throw notJson(parser.currentTokenLocation(), "something follows the end of the object", "");
      }
      return value;
    } catch (StreamConstraintsException tooMuch) {
      throw notJson(parser.currentLocation(), limit(tooMuch), "");
    }
  }

  private static String limit(StreamConstraintsException tooMuch) {
    String message = tooMuch.getOriginalMessage();
    if (message.contains("nesting")) {
      return "is nested deeper than " + MAX_DEPTH + " levels";
    }
    if (message.contains("Name")) {
      return "a name has more than " + MAX_NAME + " characters";
    }
    return message.contains("Number")
        ? "a number has more than " + MAX_NUMBER + " digits"
        : "a text has more than " + MAX_STRING + " characters";
  }

  static FilePlace at(String name, JsonLocation location) {
    return location == null
        ? new FilePlace(name, 0, 0)
        : new FilePlace(name, location.getLineNr(), location.getColumnNr());
  }

  private InputException notJson(JsonLocation location, String what, String remedy) {
    return new InputException(
        List.of(new Problem(Mistake.NOT_JSON, "", what, remedy, at(name, location))));
  }

  private Json value(JsonParser parser, String pointer) throws IOException {
    return switch (parser.currentToken()) {
      case START_OBJECT -> object(parser, pointer);
      case START_ARRAY -> array(parser, pointer);
      case VALUE_STRING -> new Json.Str(parser.getText());
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new Json.Num(parser.getText());
      case VALUE_TRUE -> new Json.Bool(true);
      case VALUE_FALSE -> new Json.Bool(false);
      default -> new Json.Null();
    };
  }

  private Json object(JsonParser parser, String pointer) throws IOException {
    Map<String, Json> members = new LinkedHashMap<>();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String member = parser.currentName();
      String place = pointer + "/" + escape(member);
      if (members.containsKey(member)) {
        FilePlace line = at(name, parser.currentTokenLocation());
        JsonNode.note(
            problems, new Problem(Mistake.TWICE, place, "occurs twice", "keep one of them", line));
      }
      parser.nextToken();
      members.put(member, value(parser, place));
    }
    return new Json.Obj(members);
  }

  private Json array(JsonParser parser, String pointer) throws IOException {
    List<Json> items = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      items.add(value(parser, pointer + "/" + items.size()));
    }
    return new Json.Arr(items);
  }

  /**
   * A reference token of a JSON pointer, RFC 6901, section 3.
   *
   * @param member the name of a member
   * @return the token
   */
  public static String escape(String member) {
    return member.replace("~", "~0").replace("/", "~1");
  }

  /**
   * Writes a JSON text, two blanks a level, with a line end after the last line.
   *
   * @param value the value
   * @return the text
   */
  public static String write(Json value) {
    StringWriter text = new StringWriter();
    DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer =
        new DefaultPrettyPrinter(
            Separators.createDefaultInstance()
                .withObjectFieldValueSpacing(Separators.Spacing.AFTER));
    printer.indentObjectsWith(indenter);
    printer.indentArraysWith(indenter);
    try (JsonGenerator generator = FACTORY.createGenerator(text)) {
      generator.setPrettyPrinter(printer);
      write(value, generator);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return text + "\n";
  }

  /**
   * Writes a JSON text in one line.
   *
   * @param value the value
   * @return the text without a line end
   */
  public static String line(Json value) {
    StringWriter text = new StringWriter();
    try (JsonGenerator generator = FACTORY.createGenerator(text)) {
      write(value, generator);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return text.toString();
  }

  private static void write(Json value, JsonGenerator generator) throws IOException {
    if (value instanceof Json.Obj object) {
      generator.writeStartObject();
      for (Map.Entry<String, Json> member : object.members().entrySet()) {
        generator.writeFieldName(member.getKey());
        write(member.getValue(), generator);
      }
      generator.writeEndObject();
    } else if (value instanceof Json.Arr array) {
      generator.writeStartArray();
      for (Json item : array.items()) {
        write(item, generator);
      }
      generator.writeEndArray();
    } else if (value instanceof Json.Str string) {
      generator.writeString(string.text());
    } else if (value instanceof Json.Num number) {
      generator.writeRawValue(number.spelling());
    } else if (value instanceof Json.Bool bool) {
      generator.writeBoolean(bool.value());
    } else {
      generator.writeNull();
    }
  }
}
