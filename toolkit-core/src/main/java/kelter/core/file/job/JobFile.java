package kelter.core.file.job;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import kelter.core.catalogue.Completion;
import kelter.core.file.disk.TextFile;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonFile;
import kelter.core.file.json.JsonPlaces;
import kelter.core.file.json.JsonText;
import kelter.core.file.json.SchemaText;
import kelter.core.job.Instrument;
import kelter.core.problem.InputException;
import kelter.core.problem.Mistake;
import kelter.core.vocabulary.Vocabulary;

/**
 * Reads, changes and writes job files.
 *
 * <p>The present version is {@code "format": "kelter-job/2"}. Beside what version 1 has, it tells
 * at its top level why the call was made ({@code reason}: fault or inspection), in which {@code
 * market} the machine stands (EU, UK or NA), what was said of {@code symptoms} of the whole machine
 * (yes, no, sometimes, not asked, or an object with {@code report}, {@code when}, {@code step} and
 * {@code since}), and what the machine shows of itself ({@code displayed}, words of {@link
 * kelter.core.vocabulary.Meaning}, or an object with a {@code code} whose meaning the model of the
 * machine tells).
 *
 * <p>Files of version 1 are read as well. What they tell as readings of a component and is a
 * symptom of the whole machine now ({@link VersionOne}) becomes a report of that symptom, and the
 * notes of the document tell so.
 */
public final class JobFile {

  /** The greatest size of a job file, in bytes. */
  public static final int MAX_BYTES = 4 * 1024 * 1024;

  private static final String START = "start one with 'kelter new'";

  private JobFile() {}

  /**
   * The JSON Schema (2020-12) of job files, for editors and other programs.
   *
   * @return JSON
   */
  public static String schema() {
    return SchemaText.of(JobFile.class, "kelter-job-2.schema.json");
  }

  /**
   * The JSON Schema (2020-12) of job files of version 1, which are still read.
   *
   * @return JSON
   */
  public static String schemaOfVersionOne() {
    return SchemaText.of(JobFile.class, "kelter-job-1.schema.json");
  }

  /**
   * Mistakes in the content of a job file, with the lines that they stand in.
   *
   * @param path the file
   * @param mistakes what {@link #document} found in its content
   * @return the same mistakes with their lines
   */
  public static InputException placed(Path path, InputException mistakes) {
    return JsonPlaces.found(path, mistakes);
  }

  /**
   * Reads the content of a job file, without asking what its words mean.
   *
   * @param path the file
   * @return the content
   * @throws InputException if it cannot be read, is too large or is no JSON
   */
  public static Json content(Path path) {
    return JsonFile.read(path, MAX_BYTES, "a job file", START);
  }

  /**
   * Makes a job of the content of a job file, its machine filled by what is known beside the job.
   * Programs let {@link kelter.core.workshop.Workshop#read(Json)} do it, which knows that.
   *
   * @param content the content
   * @param vocabulary the words that a job may use
   * @param instruments the instruments of the shop, then those of the modules
   * @param completion fills the machine before the readings are read, so that they may be of
   *     components that the job leaves out; the content stays as it is
   * @return the job with its content
   * @throws InputException with every mistake of the content, if it has any
   */
  public static JobDocument document(
      Json content, Vocabulary vocabulary, List<Instrument> instruments, Completion completion) {
    return JobReader.read(content, vocabulary, instruments, completion);
  }

  /**
   * Reads the content of a job that is kept elsewhere than in a file, without asking what its words
   * mean.
   *
   * @param text the content of a job file
   * @return the content
   * @throws InputException if it has more than {@link #MAX_BYTES} in UTF-8, or is no JSON
   */
  public static Json content(String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    if (bytes.length > MAX_BYTES) {
      throw new InputException(
          Mistake.FILE, "job", "is larger than %s MB".formatted(MAX_BYTES >> 20), "");
    }
    return JsonText.read(bytes, "job", START);
  }

  /**
   * Changes a job file: what the change adds to its content is added to its text, and everything
   * else stays to the byte.
   *
   * @param path the file
   * @param change makes the new content of the one that is in the file when it is written. It may
   *     be asked again where another program wrote the file meanwhile
   * @throws InputException if the job is closed, the file cannot be read or written, with the
   *     cause, or if the change throws it
   */
  public static void change(Path path, Function<Json, Json.Obj> change) {
    JsonFile.change(
        path,
        MAX_BYTES,
        "a job file",
        START,
        content -> {
          requireOpen(path, content);
          return change.apply(content);
        });
  }

  /**
   * Refuses a job that is closed.
   *
   * @param path its file
   * @param content the content of the file
   * @throws InputException if it is closed
   */
  public static void requireOpen(Path path, Json content) {
    if (content instanceof Json.Obj job && job.members().get("closed") instanceof Json.Obj closed) {
      String day =
          closed.members().get("date") instanceof Json.Str date ? " on " + date.text() : "";
      throw new InputException(
          path.toString(),
          "the job was closed" + day + " and is not changed any more",
          "if the owner called again, begin the next one with 'kelter reopen'");
    }
  }

  /**
   * Writes a new job file and never over an old one.
   *
   * @param document the job with its content
   * @param path where to
   * @throws InputException if there is something already, or it cannot be written
   */
  public static void writeNew(JobDocument document, Path path) {
    TextFile.writeNew(path, document.text());
  }
}
