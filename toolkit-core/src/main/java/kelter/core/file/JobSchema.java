package kelter.core.file;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The JSON Schema (2020-12) of job files, for editors and other programs. */
public final class JobSchema {

  private static final String RESOURCE = "kelter-job-1.schema.json";

  private JobSchema() {}

  /**
   * The text of the schema.
   *
   * @return JSON
   */
  public static String text() {
    return resource(RESOURCE);
  }

  static String resource(String name) {
    try (InputStream in = JobSchema.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
