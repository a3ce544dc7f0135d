package kelter.cli.json.output;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.file.json.Json;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.Unit;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.core.vocabulary.Statement;

/** A JSON text under construction. What is not finite is written as null. */
public final class JsonOutput {

  private static final double ROUNDING = 1e-9;

  private final StringWriter text = new StringWriter();
  private final JsonGenerator generator;

  private JsonOutput(boolean onOneLine) throws IOException {
    generator = new JsonFactory().createGenerator(text);
    if (onOneLine) {
      return;
    }
    DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
    printer.indentObjectsWith(new DefaultIndenter("  ", "\n"));
    printer.indentArraysWith(new DefaultIndenter("  ", "\n"));
    generator.setPrettyPrinter(printer);
  }

  /** What is written into a JSON text. */
  @FunctionalInterface
  public interface Content {
    /**
     * Writes it.
     *
     * @throws IOException never, since it is written into a text
     */
    void write() throws IOException;
  }

  /** What is written for one of several things. */
  @FunctionalInterface
  public interface ContentOf<T> {
    /**
     * Writes it.
     *
     * @param item the thing
     * @throws IOException never, since it is written into a text
     */
    void write(T item) throws IOException;
  }

  /** What is written into a new text. */
  @FunctionalInterface
  public interface Document {
    /**
     * Writes it.
     *
     * @param output where to
     * @throws IOException never, since it is written into a text
     */
    void write(JsonOutput output) throws IOException;
  }

  static String text(JsonResult result, MadeBy by, boolean onOneLine) {
    try {
      JsonOutput output = new JsonOutput(onOneLine);
      output.generator.writeStartObject();
      output.text("format", result.format());
      output.object("made-by", () -> by.write(output));
      result.document().write(output);
      output.generator.writeEndObject();
      output.generator.close();
      return output.text + "\n";
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  /**
   * A text.
   *
   * @param name the name of the member
   * @param value the text, or null
   * @throws IOException never, since it is written into a text
   */
  public void text(String name, String value) throws IOException {
    generator.writeStringField(name, value);
  }

  /**
   * A value as it is.
   *
   * @param name the name of the member
   * @param value the value
   * @throws IOException never, since it is written into a text
   */
  public void json(String name, Json value) throws IOException {
    generator.writeFieldName(name);
    write(value);
  }

  /**
   * What is JSON already.
   *
   * @param name the name of the member
   * @param json one value, JSON
   * @throws IOException never, since it is written into a text
   */
  public void written(String name, String json) throws IOException {
    generator.writeFieldName(name);
    generator.writeRawValue(json);
  }

  private void write(Json value) throws IOException {
    if (value instanceof Json.Obj object) {
      generator.writeStartObject();
      for (Map.Entry<String, Json> member : object.members().entrySet()) {
        json(member.getKey(), member.getValue());
      }
      generator.writeEndObject();
    } else if (value instanceof Json.Arr array) {
      generator.writeStartArray();
      for (Json item : array.items()) {
        write(item);
      }
      generator.writeEndArray();
    } else if (value instanceof Json.Str text) {
      generator.writeString(text.text());
    } else if (value instanceof Json.Num number) {
      generator.writeNumber(number.spelling());
    } else if (value instanceof Json.Bool bool) {
      generator.writeBoolean(bool.value());
    } else {
      generator.writeNull();
    }
  }

  /**
   * A text, or null where there is none.
   *
   * @param name the name of the member
   * @param value the text, if there is one
   * @throws IOException never, since it is written into a text
   */
  public void textOrNull(String name, Optional<String> value) throws IOException {
    generator.writeStringField(name, value.orElse(null));
  }

  /**
   * Words for a person, with their word for programs in a member of the same name that ends with
   * {@code -id}.
   *
   * @param name the name of the member with the words
   * @param id the word for programs, or null
   * @param words the words, or null
   * @throws IOException never, since it is written into a text
   */
  public void word(String name, String id, String words) throws IOException {
    text(name, words);
    text(name + "-id", id);
  }

  /**
   * What is told to a person, each with what it is about.
   *
   * @param name the name of the member
   * @param statements what is told
   * @throws IOException never, since it is written into a text
   */
  public void statements(String name, List<Statement> statements) throws IOException {
    objects(
        name,
        statements,
        each -> {
          text("id", each.id());
          text("text", each.text());
        });
  }

  /**
   * A number, or null where it is not finite.
   *
   * @param name the name of the member
   * @param value the number
   * @throws IOException never, since it is written into a text
   */
  public void number(String name, double value) throws IOException {
    generator.writeFieldName(name);
    if (!Double.isFinite(value)) {
      generator.writeNull();
    } else if (value == Math.rint(value) && Math.abs(value) < 1e15) {
      generator.writeNumber((long) value);
    } else {
      generator.writeNumber(value);
    }
  }

  /**
   * A probability. Where a sum of shares is rounded to just above 1, it is 1.
   *
   * @param name the name of the member
   * @param value the probability
   * @throws IOException never, since it is written into a text
   */
  public void probability(String name, double value) throws IOException {
    number(name, value > 1 && value < 1 + ROUNDING ? 1 : value);
  }

  /**
   * True or false.
   *
   * @param name the name of the member
   * @param value which
   * @throws IOException never, since it is written into a text
   */
  public void bool(String name, boolean value) throws IOException {
    generator.writeBooleanField(name, value);
  }

  /**
   * An object.
   *
   * @param name the name of the member
   * @param content writes its members
   * @throws IOException never, since it is written into a text
   */
  public void object(String name, Content content) throws IOException {
    generator.writeObjectFieldStart(name);
    content.write();
    generator.writeEndObject();
  }

  /**
   * An object, or null where there is none.
   *
   * @param name the name of the member
   * @param value what the object tells of, if there is one
   * @param content writes the members of the object
   * @param <T> the type of the value
   * @throws IOException never, since it is written into a text
   */
  public <T> void objectOrNull(String name, Optional<T> value, ContentOf<T> content)
      throws IOException {
    if (value.isEmpty()) {
      generator.writeNullField(name);
    } else {
      object(name, () -> content.write(value.get()));
    }
  }

  /**
   * An array of objects.
   *
   * @param name the name of the member
   * @param items one thing for each object
   * @param content writes the members of one
   * @param <T> the type of the things
   * @throws IOException never, since it is written into a text
   */
  public <T> void objects(String name, List<T> items, ContentOf<T> content) throws IOException {
    generator.writeArrayFieldStart(name);
    for (T item : items) {
      generator.writeStartObject();
      content.write(item);
      generator.writeEndObject();
    }
    generator.writeEndArray();
  }

  /**
   * An array of texts.
   *
   * @param name the name of the member
   * @param items the texts
   * @throws IOException never, since it is written into a text
   */
  public void texts(String name, List<String> items) throws IOException {
    generator.writeArrayFieldStart(name);
    for (String item : items) {
      generator.writeString(item);
    }
    generator.writeEndArray();
  }

  /**
   * Where a figure comes from.
   *
   * @param source the source
   * @throws IOException never, since it is written into a text
   */
  public void source(Source source) throws IOException {
    object("source", () -> write(source));
  }

  /**
   * Where figures come from.
   *
   * @param sources the sources
   * @throws IOException never, since it is written into a text
   */
  public void sources(List<Source> sources) throws IOException {
    objects("sources", sources, this::write);
  }

  private void write(Source source) throws IOException {
    text("document", source.document());
    word("standing", source.standing().id(), source.standing().words());
  }

  /**
   * The circumstances of a reading, by name.
   *
   * @param conditions the circumstances
   * @throws IOException never, since it is written into a text
   */
  public void conditions(Map<String, Quantity> conditions) throws IOException {
    object(
        "at",
        () -> {
          for (var condition : conditions.entrySet()) {
            text(condition.getKey(), condition.getValue().format());
          }
        });
  }

  /**
   * What to mind.
   *
   * @param cautions the cautions
   * @throws IOException never, since it is written into a text
   */
  public void cautions(List<Caution> cautions) throws IOException {
    objects("cautions", cautions, this::write);
  }

  private void write(Caution caution) throws IOException {
    text("id", caution.id());
    text("level", caution.signal().id());
    text("text", caution.text());
    bool("keeps-unplugged", caution.keepsUnplugged());
  }

  /**
   * A value in the coherent SI unit, told in a unit.
   *
   * @param name the name of the member
   * @param si the value, in the coherent SI unit
   * @param kind what it is
   * @param unit the unit in which it is told
   * @throws IOException never, since it is written into a text
   */
  public void value(String name, double si, QuantityKind kind, Unit unit) throws IOException {
    number(name, kind.fromSi(si, unit));
  }
}
