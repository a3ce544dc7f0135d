package kelter.core.file.json;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.function.Function;
import kelter.core.file.disk.DiskFault;
import kelter.core.file.disk.TextFile;
import kelter.core.problem.InputException;
import kelter.core.problem.Mistake;

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
      throw new InputException(Mistake.FILE, name, "is a directory", "name " + what);
    }
    try (InputStream in = Files.newInputStream(path)) {
      byte[] bytes = in.readNBytes(most + 1);
      requireSize(bytes.length, most, name, what);
      return bytes;
    } catch (NoSuchFileException missing) {
      throw new InputException(Mistake.FILE, name, "there is no such file", start);
    } catch (IOException unreadable) {
      throw DiskFault.unreadable(name, unreadable);
    }
  }

  private static void requireSize(int bytes, int most, String name, String what) {
    if (bytes > most) {
      throw new InputException(
          Mistake.FILE, name, "is larger than %s MB".formatted(megabytes(most)), "name " + what);
    }
  }

  private static int megabytes(int bytes) {
    return bytes / (1024 * 1024);
  }

  /**
   * Changes a file: what changes in its content changes in its text, and everything else stays to
   * the byte.
   *
   * @param path the file
   * @param mostBytes the greatest size that is allowed, before and after
   * @param what what is expected, for messages, for instance {@code a job file}
   * @param start what to do if it is empty, for messages
   * @param change makes the new content of the one that is in the file now; nothing is written if
   *     both are the same. It may be asked more than once
   * @throws InputException if the file cannot be read, is no JSON, or cannot be written
   */
  public static void change(
      Path path, int mostBytes, String what, String start, Function<Json, Json.Obj> change) {
    String name = path.toString();
    TextFile.change(
        path,
        mostBytes + 1,
        old -> {
          requireSize(old.length, mostBytes, name, what);
          Json content = JsonText.read(old, name, start);
          Json.Obj wanted = change.apply(content);
          byte[] bytes = wanted.equals(content) ? old : edited(old, wanted);
          if (bytes.length > mostBytes) {
            throw new InputException(
                name,
                "would be larger than %s MB with what is to be added"
                    .formatted(megabytes(mostBytes)),
                "begin another file");
          }
          return bytes;
        });
  }

  private static byte[] edited(byte[] old, Json.Obj wanted) {
    Json.Obj before = (Json.Obj) JsonText.read(old, "", "");
    boolean dropped = !wanted.members().keySet().containsAll(before.members().keySet());
    String text =
        dropped
            ? JsonText.write(wanted)
            : JsonEdit.edited(new String(old, StandardCharsets.UTF_8), wanted);
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    if (!JsonText.read(bytes, "", "").equals(wanted)) {
      throw new IllegalStateException("what was written is not what was meant");
    }
    return bytes;
  }
}
