package kelter.cli.json;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/**
 * The formats of the results, each with its JSON Schema (2020-12). The number of a format rises
 * when the name or the meaning of a member changes.
 */
public enum ResultFormat {
  /** {@code kelter check}. */
  FINDINGS("findings", 4),
  /** {@code kelter diagnose}. */
  DIAGNOSIS("diagnosis", 4),
  /** {@code kelter diagnose --why}. */
  EXPLANATION("explanation", 4),
  /** {@code kelter diagnose --what-if}. */
  WHAT_IF("what-if", 4),
  /** What {@code kelter answer} tells on the command next. */
  NEXT("next", 2),
  /** {@code kelter weigh}. */
  WEIGHING("weighing", 5),
  /** {@code kelter quote}. */
  QUOTE("quote", 2),
  /** {@code kelter quote --final}. */
  INVOICE("invoice", 3),
  /** {@code kelter quote --form json}. */
  REPAIR_FORM("repair-form", 2),
  /** {@code kelter prove}. */
  PROOF("proof", 2),
  /** {@code kelter simulate}. */
  SIMULATION("simulation", 4),
  /** {@code kelter readings}. */
  READINGS("readings", 4),
  /** {@code kelter compute}. */
  COMPUTATION("computation", 4),
  /** {@code kelter compute} without values. */
  CALCULATION("calculation", 3),
  /** {@code kelter modules}. */
  MODULES("modules", 3),
  /** {@code kelter modules --coverage}. */
  COVERAGE("coverage", 2),
  /** {@code kelter instruments}. */
  INSTRUMENTS("instruments", 4),
  /** {@code kelter book add} and {@code import}. */
  BOOK_ADDED("book-added", 1),
  /** {@code kelter book list} and {@code search}. */
  BOOK_ENTRIES("book-entries", 1),
  /** {@code kelter book similar}. */
  BOOK_SIMILAR("book-similar", 1),
  /** {@code kelter book stats}. */
  BOOK_STATS("book-stats", 1),
  /** {@code kelter book backup}. */
  BOOK_BACKUP("book-backup", 1),
  /** {@code kelter book check}. */
  BOOK_CHECK("book-check", 1),
  /** {@code kelter schema}. */
  SCHEMAS("schemas", 2),
  /** Any command that cannot give its result. */
  ERRORS("errors", 1);

  private final String word;
  private final int version;

  ResultFormat(String word, int version) {
    this.word = word;
    this.version = version;
  }

  /**
   * The word for it.
   *
   * @return for instance {@code what-if}
   */
  public String word() {
    return word;
  }

  /**
   * What the member {@code format} of a result says.
   *
   * @return for instance {@code kelter-what-if/2}
   */
  public String id() {
    return "kelter-" + word + "/" + version;
  }

  /**
   * Its JSON Schema.
   *
   * @return JSON
   */
  public String schema() {
    String name = "kelter-" + word + "-" + version + ".schema.json";
    try (InputStream in = ResultFormat.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
