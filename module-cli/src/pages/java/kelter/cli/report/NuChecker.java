package kelter.cli.report;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/**
 * The Nu HTML checker (nu.validator:validator). It is called by name: its jars are no modules, two
 * have the same packages, and so it stands on the class path, where no module sees it.
 */
final class NuChecker {

  private NuChecker() {}

  /** What it finds in a page, warnings included; empty if nothing. */
  static String found(String page) throws ReflectiveOperationException {
    Class<?> type =
        Class.forName(
            "nu.validator.client.EmbeddedValidator", true, ClassLoader.getSystemClassLoader());
    Object checker = type.getConstructor().newInstance();
    Object found =
        type.getMethod("validate", InputStream.class)
            .invoke(checker, new ByteArrayInputStream(page.getBytes(StandardCharsets.UTF_8)));
    String told = found.toString().strip();
    return told.contains("\"messages\":[]") ? "" : told.replaceFirst("(?s)\"source\".*", "");
  }
}
