package kelter.core.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import kelter.core.problem.InputException;
import kelter.core.vocabulary.Vocabulary;

/** Reads and writes job files, {@code "format": "kelter-job/1"}. */
public final class JobFile {

  /** The greatest size of a job file, in bytes. */
  public static final int MAX_BYTES = 4 * 1024 * 1024;

  private JobFile() {}

  /**
   * Reads a job file.
   *
   * @param path the file
   * @param vocabulary the words that a job may use
   * @return the job with the content of its file
   * @throws InputException with every mistake of the file, if it has any or cannot be read
   */
  public static JobDocument read(Path path, Vocabulary vocabulary) {
    String name = path.toString();
    return JobReader.read(JsonText.read(bytes(path, name), name), vocabulary);
  }

  /**
   * Reads a job from text.
   *
   * @param text the content of a job file
   * @param vocabulary the words that a job may use
   * @return the job with its content
   * @throws InputException with every mistake of the text, if it has any
   */
  public static JobDocument parse(String text, Vocabulary vocabulary) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    return JobReader.read(JsonText.read(bytes, "job"), vocabulary);
  }

  private static byte[] bytes(Path path, String name) {
    if (Files.isDirectory(path)) {
      throw new InputException(name, "is a directory", "name a job file");
    }
    try (InputStream in = Files.newInputStream(path)) {
      byte[] bytes = in.readNBytes(MAX_BYTES + 1);
      if (bytes.length > MAX_BYTES) {
        throw new InputException(
            name, "is larger than %d MB".formatted(MAX_BYTES / (1024 * 1024)), "name a job file");
      }
      return bytes;
    } catch (NoSuchFileException missing) {
      throw new InputException(name, "there is no such file", "start one with 'kelter new'");
    } catch (IOException unreadable) {
      throw new InputException(name, "cannot be read: " + unreadable.getMessage(), "");
    }
  }

  /**
   * Writes a job file: beside the old one first, then in its place, so that nothing is lost
   * halfway.
   *
   * @param document the job with its content
   * @param path where to
   * @throws InputException if it cannot be written
   */
  public static void write(JobDocument document, Path path) {
    Path target = path.toAbsolutePath();
    try {
      Path part = Files.createTempFile(target.getParent(), ".kelter-", ".part");
      try {
        Files.writeString(part, document.text());
        move(part, target);
      } finally {
        Files.deleteIfExists(part);
      }
    } catch (IOException unwritable) {
      throw new InputException(
          path.toString(), "cannot be written: " + unwritable.getMessage(), "");
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
    if (Files.exists(path)) {
      throw new InputException(path.toString(), "is there already", "name another file");
    }
    write(document, path);
  }

  private static void move(Path part, Path target) throws IOException {
    try {
      Files.move(part, target, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException otherwise) {
      Files.move(part, target, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
