package kelter.cli.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.Unit;
import kelter.core.safety.Caution;
import kelter.core.source.Source;

/** A JSON text under construction. What is not finite is written as null. */
final class JsonOutput {

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

  static String document(Document document) {
    try {
      JsonOutput output = new JsonOutput();
      output.generator.writeStartObject();
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
    object(
        "source",
        () -> {
          text("document", source.document());
          text("standing", source.standing().words());
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
