package kelter.core.file;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The text of a schema that lies beside the classes. */
final class SchemaText {

  private SchemaText() {}

  static String of(String name) {
    try (InputStream in = SchemaText.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
