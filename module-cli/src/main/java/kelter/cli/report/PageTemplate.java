package kelter.cli.report;

import com.samskivert.mustache.Mustache;
import com.samskivert.mustache.Template;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The pages that look alike. What goes into one is escaped. */
final class PageTemplate {

  private static final String ENDING = ".mustache";

  private PageTemplate() {}

  /** A template by its name, with the parts that it names. */
  static Template of(String name) {
    return Mustache.compiler()
        .escapeHTML(true)
        .withLoader(PageTemplate::reader)
        .compile(reader(name));
  }

  private static Reader reader(String name) {
    try (InputStream in = PageTemplate.class.getResourceAsStream(name + ENDING)) {
      return new StringReader(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
