package kelter.cli.json;

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
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.Unit;
import kelter.core.safety.Caution;
import kelter.core.source.Source;

/** A JSON text under construction. What is not finite is written as null. */
final class JsonOutput {

  private static final double ROUNDING = 1e-9;

  private final StringWriter text = new StringWriter();
  private final JsonGenerator generator;

  private JsonOutput() throws IOException {
    generator = new JsonFactory().createGenerator(text);
    DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
    printer.indentObjectsWith(new DefaultIndenter("  ", "\n"));
    printer.indentArraysWith(new DefaultIndenter("  ", "\n"));
    generator.setPrettyPrinter(printer);
  }

  /** What is written into a JSON text. */
  @FunctionalInterface
  interface Content {
    void write() throws IOException;
  }

  /** What is written for one of several things. */
  @FunctionalInterface
  interface ContentOf<T> {
    void write(T item) throws IOException;
  }

  /** What is written into a new text. */
  @FunctionalInterface
  interface Document {
    void write(JsonOutput output) throws IOException;
  }

  static String document(ResultFormat format, Document document) {
    try {
      JsonOutput output = new JsonOutput();
      output.generator.writeStartObject();
      output.text("format", format.id());
      document.write(output);
      output.generator.writeEndObject();
      output.generator.close();
      return output.text + "\n";
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  void text(String name, String value) throws IOException {
    generator.writeStringField(name, value);
  }

  /** A text, or null where there is none. */
  void textOrNull(String name, Optional<String> value) throws IOException {
    generator.writeStringField(name, value.orElse(null));
  }

  void number(String name, double value) throws IOException {
    generator.writeFieldName(name);
    if (!Double.isFinite(value)) {
      generator.writeNull();
    } else if (value == Math.rint(value) && Math.abs(value) < 1e15) {
      generator.writeNumber((long) value);
    } else {
      generator.writeNumber(value);
    }
  }

  /** A probability. Where a sum of shares is rounded to just above 1, it is 1. */
  void probability(String name, double value) throws IOException {
    number(name, value > 1 && value < 1 + ROUNDING ? 1 : value);
  }

  void bool(String name, boolean value) throws IOException {
    generator.writeBooleanField(name, value);
  }

  void object(String name, Content content) throws IOException {
    generator.writeObjectFieldStart(name);
    content.write();
    generator.writeEndObject();
  }

  <T> void objects(String name, List<T> items, ContentOf<T> content) throws IOException {
    generator.writeArrayFieldStart(name);
    for (T item : items) {
      generator.writeStartObject();
      content.write(item);
      generator.writeEndObject();
    }
    generator.writeEndArray();
  }

  void texts(String name, List<String> items) throws IOException {
    generator.writeArrayFieldStart(name);
    for (String item : items) {
      generator.writeString(item);
    }
    generator.writeEndArray();
  }

  void source(Source source) throws IOException {
    object("source", () -> write(source));
  }

  void sources(List<Source> sources) throws IOException {
    objects("sources", sources, this::write);
  }

  private void write(Source source) throws IOException {
    text("document", source.document());
    text("standing", source.standing().words());
  }

  /** The circumstances of a reading, by name. */
  void conditions(Map<String, Quantity> conditions) throws IOException {
    object(
        "at",
        () -> {
          for (var condition : conditions.entrySet()) {
            text(condition.getKey(), condition.getValue().format());
          }
        });
  }

  void cautions(List<Caution> cautions) throws IOException {
    texts("cautions", cautions.stream().map(Caution::display).toList());
  }

  /** A value in the coherent SI unit, told in a unit. */
  void value(String name, double si, QuantityKind kind, Unit unit) throws IOException {
    number(name, kind.fromSi(si, unit));
  }
}
