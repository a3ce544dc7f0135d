package kelter.core.file.disk;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import kelter.core.problem.InputException;
import kelter.core.problem.Mistake;

/** Folders that Kelter makes. */
public final class Folder {

  private Folder() {}

  /**
   * Makes a folder, with those above it, unless it is there.
   *
   * @param path where
   * @return whether it was made; false if it was there
   * @throws InputException if something else is there, or it cannot be made
   */
  public static boolean make(Path path) {
    if (Files.isDirectory(path)) {
      return false;
    }
    try {
      Files.createDirectories(path);
      return true;
    } catch (FileAlreadyExistsException other) {
      throw new InputException(
          Mistake.FILE,
          path.toString(),
          "cannot be made: a file is in its place",
          "name another folder");
    } catch (IOException unwritable) {
      throw DiskFault.unwritable(path, path.toAbsolutePath(), unwritable);
    }
  }
}
