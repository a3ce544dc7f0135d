package kelter.core.file.disk;

import java.io.IOException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.Files;
import java.nio.file.Path;
import kelter.core.problem.InputException;
import kelter.core.problem.Mistake;

/**
 * Where a file is written.
 *
 * @param file the file itself, behind all links; it need not be there
 */
record Target(Path file) {

  /** More links in a row than this lead in a circle; Linux allows 40, too. */
  private static final int MOST_LINKS = 40;

  /**
   * The file that a name leads to.
   *
   * @param named the name
   * @throws InputException if no file can be written there
   */
  static Target of(Path named) {
    Path file;
    try {
      file = followed(named.toAbsolutePath());
    } catch (IOException circle) {
      throw DiskFault.unwritable(named, named.toAbsolutePath(), circle);
    }
    if (Files.isDirectory(file)) {
      throw new InputException(Mistake.FILE, named.toString(), "is a directory", "name a file");
    }
    Path folder = file.getParent();
    if (Files.notExists(folder)) {
      throw DiskFault.refused(
          named,
          new Refusal("there is no folder " + folder, "make the folder, or name another file"));
    }
    if (Files.isRegularFile(folder)) {
      throw DiskFault.refused(
          named, new Refusal(folder + " is a file, no folder", "name another file"));
    }
    if (Files.exists(file) && !Files.isRegularFile(file)) {
      throw DiskFault.refused(named, new Refusal("it is no usual file", "name another file"));
    }
    return new Target(file);
  }

  private static Path followed(Path named) throws IOException {
    Path at = named;
    for (int links = 0; Files.isSymbolicLink(at); links++) {
      if (links == MOST_LINKS) {
        throw new FileSystemLoopException(named.toString());
      }
      at = at.resolveSibling(Files.readSymbolicLink(at));
    }
    return at;
  }

  Path folder() {
    return file.getParent();
  }

  boolean exists() {
    return Files.exists(file);
  }

  /**
   * Writes a file that is not there yet.
   *
   * @throws java.nio.file.FileAlreadyExistsException if it has come to be there meanwhile
   */
  void create(byte[] bytes) throws IOException {
    try (PartFile part = PartFile.beside(file)) {
      part.write(bytes);
      part.becomeNew(file);
    }
  }
}
