package kelter.core.file.catalogue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonText;
import kelter.core.file.json.SchemaText;
import kelter.core.problem.InputException;
import kelter.core.safety.lockout.table.LockOutTable;

/** Reads the lock-out table, {@code "format": "kelter-lock-out/1"}. It comes with Kelter. */
public final class LockOutFile {

  private static final String NAME = "/kelter/core/safety/lock-out.json";

  private static final String START =
      "a lock-out table starts as {\"format\": \"" + LockOutReader.FORMAT + "\"}";

  /** Read when somebody first asks for it. */
  private static final class Shipped {
    static final LockOutTable TABLE = LockOutReader.read(content());

    private Shipped() {}
  }

  private LockOutFile() {}

  /**
   * The JSON Schema (2020-12) of the table, for editors and other programs.
   *
   * @return JSON
   */
  public static String schema() {
    return SchemaText.of(LockOutFile.class, "kelter-lock-out-1.schema.json");
  }

  /**
   * The table that comes with Kelter.
   *
   * @return the table
   */
  public static LockOutTable shipped() {
    return Shipped.TABLE;
  }

  /**
   * Reads a table.
   *
   * @param content the content of its file
   * @return the table
   * @throws InputException with every mistake of it
   */
  public static LockOutTable read(Json content) {
    return LockOutReader.read(content);
  }

  private static Json content() {
    try (InputStream in = LockOutFile.class.getResourceAsStream(NAME)) {
      return JsonText.read(in.readAllBytes(), NAME, START);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
