package kelter.core.file.disk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.function.UnaryOperator;
import kelter.core.problem.InputException;
import kelter.core.problem.Mistake;

/**
 * Files that Kelter writes. A file is written beside the old one first and then takes its place, so
 * that it is whole or as it was, whenever the program ends. Links are followed; mode, owner and
 * group stay. What a killed program left beside a file goes when the next file is written into that
 * folder.
 */
public final class TextFile {

  private TextFile() {}

  /**
   * Writes a text in UTF-8, in place of an older one.
   *
   * @param path where to
   * @param text the text
   * @throws InputException if it cannot be written, with the cause
   */
  public static synchronized void write(Path path, String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    Target target = Target.of(path);
    try {
      PartFile.clear(target.folder());
      if (target.exists()) {
        change(target, bytes.length + 1, old -> bytes);
      } else {
        target.create(bytes);
      }
    } catch (FileAlreadyExistsException meanwhile) {
      change(path, bytes.length + 1, old -> bytes);
    } catch (IOException unwritable) {
      throw DiskFault.unwritable(path, target.file(), unwritable);
    }
  }

  /**
   * Writes a text in UTF-8, and never over an older one.
   *
   * @param path where to
   * @param text the text
   * @throws InputException if there is something already, or it cannot be written, with the cause
   */
  public static synchronized void writeNew(Path path, String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    if (Files.exists(path, LinkOption.NOFOLLOW_LINKS)) {
      throw isThere(path);
    }
    Target target = Target.of(path);
    try {
      PartFile.clear(target.folder());
      target.create(bytes);
    } catch (FileAlreadyExistsException another) {
      throw isThere(path);
    } catch (IOException unwritable) {
      throw DiskFault.unwritable(path, target.file(), unwritable);
    }
  }

  /**
   * Gives a file that is whole its name, and never that of another one.
   *
   * @param whole the file, written by whoever beside its place
   * @param path its place
   * @throws InputException if there is something already, or it cannot be moved, with the cause
   */
  public static void place(Path whole, Path path) {
    try {
      Files.move(whole, path);
    } catch (FileAlreadyExistsException another) {
      throw isThere(path);
    } catch (IOException unwritable) {
      throw DiskFault.unwritable(path, path.toAbsolutePath(), unwritable);
    }
  }

  private static InputException isThere(Path path) {
    return new InputException(
        Mistake.FILE, path.toString(), "is there already", "name another file");
  }

  /**
   * Changes a file. Nobody else changes it meanwhile by this method, and what somebody else did to
   * it before is what the change starts from.
   *
   * @param path the file
   * @param mostBytes how much of it is read at most, in bytes
   * @param change makes the new content of the old one; it may be asked again where another program
   *     wrote the file meanwhile. If both are the same, nothing is written
   * @throws InputException if the file cannot be read or written, with the cause, or if the change
   *     throws it
   */
  public static synchronized void change(Path path, int mostBytes, UnaryOperator<byte[]> change) {
    Target target = Target.of(path);
    try {
      PartFile.clear(target.folder());
      change(target, mostBytes, change);
    } catch (IOException unwritable) {
      throw DiskFault.unwritable(path, target.file(), unwritable);
    }
  }

  private static void change(Target target, int mostBytes, UnaryOperator<byte[]> change)
      throws IOException {
    boolean done = false;
    while (!done) {
      try (HeldFile held = HeldFile.of(target.file())) {
        byte[] old = held.content(mostBytes);
        byte[] changed = change.apply(old);
        done = Arrays.equals(old, changed) || held.replace(changed);
      }
    }
  }

  /**
   * Erases a file.
   *
   * @param path the file
   * @throws InputException if it cannot be erased
   */
  public static void erase(Path path) {
    try {
      Files.deleteIfExists(path);
    } catch (IOException unwritable) {
      throw DiskFault.unwritable(path, path.toAbsolutePath(), unwritable);
    }
  }
}
