package kelter.core.file.disk;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.util.concurrent.ThreadLocalRandom;

/**
 * A file on its way, beside the one that it becomes. Its writer locks it as long as it lives; one
 * without a lock was left by a writer that was killed.
 */
final class PartFile implements Closeable {

  private static final String PREFIX = ".kelter-";
  private static final String SUFFIX = ".part";

  private final Path path;
  private final FileChannel channel;

  private PartFile(Path path, FileChannel channel) {
    this.path = path;
    this.channel = channel;
  }

  /** Begins a file in the folder of another. */
  static PartFile beside(Path file) throws IOException {
    while (true) {
      String name = PREFIX + Long.toHexString(ThreadLocalRandom.current().nextLong()) + SUFFIX;
      Path path = file.resolveSibling(name);
      FileChannel channel;
      try {
        channel = FileChannel.open(path, StandardOpenOption.WRITE, StandardOpenOption.CREATE_NEW);
      } catch (FileAlreadyExistsException taken) {
        continue;
      }
      lock(channel);
      if (Files.exists(path)) {
        return new PartFile(path, channel);
      }
      // Another program took it for one that was left, before it was locked.
      channel.close();
    }
  }

  /** On a disk without locks nothing that was left is cleared either. */
  private static void lock(FileChannel channel) {
    try {
      channel.lock();
    } catch (IOException noLocks) {
      return;
    }
  }

  /**
   * Takes away what killed writers left in a folder. To be called before a file there is held: a
   * writer that was killed may have left a second name of it, and who opens and closes a file loses
   * the locks that he has on it (POSIX).
   */
  static void clear(Path folder) {
    try (DirectoryStream<Path> parts = Files.newDirectoryStream(folder, PREFIX + "*" + SUFFIX)) {
      for (Path part : parts) {
        clearIfLeft(part);
      }
    } catch (IOException | DirectoryIteratorException cannotBeListed) {
      return;
    }
  }

  private static void clearIfLeft(Path part) {
    try (FileChannel channel =
        FileChannel.open(part, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS)) {
      if (channel.tryLock() != null) {
        Files.deleteIfExists(part);
      }
    } catch (IOException | OverlappingFileLockException notOurs) {
      return;
    }
  }

  void write(byte[] bytes) throws IOException {
    ByteBuffer left = ByteBuffer.wrap(bytes);
    try {
      while (left.hasRemaining()) {
        channel.write(left);
      }
      channel.force(true);
    } catch (IOException failed) {
      // The system tells this in its own language.
      throw Files.getFileStore(path).getUsableSpace() < left.remaining()
          ? Refusal.diskFull()
          : failed;
    }
  }

  /**
   * Takes mode, owner and group of a file.
   *
   * @return false if this user may not give them
   */
  boolean takesAfter(Path file) throws IOException {
    PosixFileAttributeView view = Files.getFileAttributeView(path, PosixFileAttributeView.class);
    if (view == null) {
      return true;
    }
    PosixFileAttributes wanted = Files.readAttributes(file, PosixFileAttributes.class);
    PosixFileAttributes own = view.readAttributes();
    try {
      if (!own.owner().equals(wanted.owner())) {
        view.setOwner(wanted.owner());
      }
      if (!own.group().equals(wanted.group())) {
        view.setGroup(wanted.group());
      }
      if (!own.permissions().equals(wanted.permissions())) {
        view.setPermissions(wanted.permissions());
      }
      return true;
    } catch (FileSystemException notAllowed) {
      return false;
    }
  }

  /** Takes the place of a file. */
  void become(Path file) throws IOException {
    try {
      Files.move(path, file, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException otherwise) {
      Files.move(path, file, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  /**
   * Takes a place where there is no file.
   *
   * @throws FileAlreadyExistsException if there is one
   */
  void becomeNew(Path file) throws IOException {
    try {
      Files.createLink(file, path);
    } catch (FileAlreadyExistsException another) {
      throw another;
    } catch (FileSystemException | UnsupportedOperationException noSecondNames) {
      Files.move(path, file);
    }
  }

  @Override
  public void close() throws IOException {
    Files.deleteIfExists(path);
    channel.close();
  }
}
