package kelter.core.file.json;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import kelter.core.problem.InputException;

/** JSON texts on the disk. */
public final class JsonFile {

  private JsonFile() {}

  /**
   * Reads a file.
   *
   * @param path the file
   * @param mostBytes the greatest size that is allowed
   * @param what what is expected, for messages, for instance {@code a job file}
   * @param start what to do if there is none, for messages
   * @return its content
   * @throws InputException if it cannot be read, is too large or is no JSON
   */
  public static Json read(Path path, int mostBytes, String what, String start) {
    String name = path.toString();
    return JsonText.read(bytes(path, name, mostBytes, what, start), name, start);
  }

  private static byte[] bytes(Path path, String name, int most, String what, String start) {
    if (Files.isDirectory(path)) {
      throw new InputException(name, "is a directory", "name " + what);
    }
    try (InputStream in = Files.newInputStream(path)) {
      byte[] bytes = in.readNBytes(most + 1);
      if (bytes.length > most) {
        throw new InputException(
            name, "is larger than %s MB".formatted(most / (1024 * 1024)), "name " + what);
      }
      return bytes;
    } catch (NoSuchFileException missing) {
      throw new InputException(name, "there is no such file", start);
    } catch (IOException unreadable) {
      throw new InputException(name, "cannot be read: " + unreadable.getMessage(), "");
    }
  }

  /**
   * Writes a text: beside the old file first, then in its place, so that nothing is lost halfway.
   *
   * @param text the text
   * @param path where to
   * @throws InputException if it cannot be written
   */
  public static void write(String text, Path path) {
    Path target = path.toAbsolutePath();
    if (!Files.isDirectory(target.getParent())) {
      throw new InputException(
          path.toString(),
          "cannot be written: there is no folder " + target.getParent(),
          "make the folder, or name another file");
    }
    try {
      Path part = Files.createTempFile(target.getParent(), ".kelter-", ".part");
      try {
        Files.writeString(part, text);
        move(part, target);
      } finally {
        Files.deleteIfExists(part);
      }
    } catch (IOException unwritable) {
      throw new InputException(
          path.toString(), "cannot be written: " + unwritable.getMessage(), "");
    }
  }

  private static void move(Path part, Path target) throws IOException {
    try {
      Files.move(part, target, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException otherwise) {
      Files.move(part, target, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
