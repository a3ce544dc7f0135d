package kelter.core.file.json;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The text of a schema that lies beside a class. */
public final class SchemaText {

  private SchemaText() {}

  /**
   * Reads a schema.
   *
   * @param beside the class that it lies beside
   * @param name the name of the resource
   * @return JSON
   */
  public static String of(Class<?> beside, String name) {
    try (InputStream in = beside.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
