package kelter.core.file.disk;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import kelter.core.problem.InputException;
import kelter.core.problem.Mistake;

/** Why a file cannot be read or written, in words of a user. */
public final class DiskFault {

  private static final String ANOTHER = "name another file";

  private DiskFault() {}

  /**
   * A file that cannot be read.
   *
   * @param name its name
   * @param fault what the system said
   * @return the mistake, with the cause
   */
  public static InputException unreadable(String name, IOException fault) {
    Refusal refusal =
        fault instanceof AccessDeniedException
            ? new Refusal("you have no permission to read it", "ask its owner")
            : said(fault);
    return new InputException(
        Mistake.FILE, name, "cannot be read: " + refusal.getMessage(), refusal.remedy());
  }

  /**
   * A file that cannot be written.
   *
   * @param named its name
   * @param file the file that the name leads to
   * @param fault what the system said
   */
  static InputException unwritable(Path named, Path file, IOException fault) {
    return refused(named, cause(file, fault));
  }

  static InputException refused(Path named, Refusal cause) {
    return new InputException(
        Mistake.FILE, named.toString(), "cannot be written: " + cause.getMessage(), cause.remedy());
  }

  private static Refusal cause(Path file, IOException fault) {
    if (isOnReadOnlyDisk(file)) {
      return new Refusal("the disk is read-only", "name a file on another disk");
    }
    if (fault instanceof Refusal known) {
      return known;
    }
    if (fault instanceof NoSuchFileException) {
      return new Refusal("it is gone", "see who took it away, and run this again");
    }
    if (fault instanceof AccessDeniedException denied) {
      return file.toString().equals(denied.getFile())
          ? new Refusal("you have no permission to read and write it", "ask its owner")
          : new Refusal(
              "you have no permission to write in the folder " + file.getParent(),
              "ask its owner, or " + ANOTHER);
    }
    return said(fault);
  }

  private static boolean isOnReadOnlyDisk(Path file) {
    try {
      return Files.getFileStore(file.getParent()).isReadOnly();
    } catch (IOException unknown) {
      return false;
    }
  }

  /** What the system says; where it speaks another language than English it is told as it is. */
  private static Refusal said(IOException fault) {
    String reason =
        fault instanceof FileSystemException file ? file.getReason() : fault.getMessage();
    String words = reason == null ? "" : reason;
    if (fault instanceof FileSystemLoopException || words.contains("symbolic links")) {
      return new Refusal("its links lead in a circle", ANOTHER);
    }
    if (words.contains("No space left")) {
      return Refusal.diskFull();
    }
    if (words.contains("quota")) {
      return new Refusal("your share of the disk (quota) is used up", "make room, or " + ANOTHER);
    }
    if (words.contains("name too long")) {
      return new Refusal("its name is too long", "give it a shorter one");
    }
    return new Refusal(words.isEmpty() ? "the system gives no reason" : words, "");
  }
}
