package kelter.core.file.disk;

import java.io.Closeable;
import java.io.IOException;
import java.io.InterruptedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.util.Set;
import java.util.concurrent.TimeUnit;

/**
 * A file that is there, held against other programs that change it the same way. The lock is on a
 * byte far behind its end, so that it can be read meanwhile, and goes with the program.
 */
final class HeldFile implements Closeable {

  private static final long LOCKED_BYTE = Long.MAX_VALUE - 1;
  private static final long LONGEST_WAIT = TimeUnit.SECONDS.toNanos(30);
  private static final long BETWEEN_TRIES = 10;

  private static final Set<PosixFilePermission> WRITING =
      Set.of(
          PosixFilePermission.OWNER_WRITE,
          PosixFilePermission.GROUP_WRITE,
          PosixFilePermission.OTHERS_WRITE);

  private final Path file;
  private final FileChannel channel;
  private final Stamp stamp;

  /** What tells a file from the one that takes its place. */
  private record Stamp(Object key, FileTime modified, long size) {
    static Stamp of(Path file) throws IOException {
      BasicFileAttributes found = Files.readAttributes(file, BasicFileAttributes.class);
      return new Stamp(found.fileKey(), found.lastModifiedTime(), found.size());
    }
  }

  private HeldFile(Path file, FileChannel channel, Stamp stamp) {
    this.file = file;
    this.channel = channel;
    this.stamp = stamp;
  }

  /**
   * Waits until nobody else holds a file and holds it.
   *
   * @throws Refusal if it may not be written, or another program does not let go of it
   */
  static HeldFile of(Path file) throws IOException {
    long start = System.nanoTime();
    while (System.nanoTime() - start < LONGEST_WAIT) {
      Stamp before = Stamp.of(file);
      requireWritable(file);
      FileChannel channel =
          FileChannel.open(file, StandardOpenOption.READ, StandardOpenOption.WRITE);
      // Whoever waited for the lock of a file may hold one that was replaced meanwhile.
      if (isLocked(channel) && Stamp.of(file).equals(before)) {
        return new HeldFile(file, channel, before);
      }
      channel.close();
      pause();
    }
    throw new Refusal("another program is writing it", "run this again when that is done");
  }

  /** Where the disk knows no locks, what is left is to compare before it is replaced. */
  private static boolean isLocked(FileChannel channel) {
    try {
      return channel.tryLock(LOCKED_BYTE, 1, false) != null;
    } catch (IOException noLocks) {
      return true;
    }
  }

  private static void pause() throws InterruptedIOException {
    try {
      Thread.sleep(BETWEEN_TRIES);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new InterruptedIOException("stopped");
    }
  }

  /** The superuser may write everything; what nobody is meant to write stays, too. */
  private static void requireWritable(Path file) throws IOException {
    PosixFileAttributeView view = Files.getFileAttributeView(file, PosixFileAttributeView.class);
    boolean forNobody = false;
    if (view != null) {
      forNobody = view.readAttributes().permissions().stream().noneMatch(WRITING::contains);
    }
    if (forNobody || !Files.isWritable(file)) {
      throw new Refusal(
          "it is read-only", "allow writing if it may be changed, or name another file");
    }
  }

  /** The first bytes of the file. */
  byte[] content(int most) throws IOException {
    return Channels.newInputStream(channel).readNBytes(most);
  }

  /**
   * Puts other content in the place of the file.
   *
   * @return false if another program, which does not know of the lock, wrote it meanwhile
   */
  boolean replace(byte[] bytes) throws IOException {
    try (PartFile part = PartFile.beside(file)) {
      part.write(bytes);
      boolean alike = part.takesAfter(file) && !hasOtherNames();
      if (!Stamp.of(file).equals(stamp)) {
        return false;
      }
      if (alike) {
        become(part);
        return true;
      }
    }
    overwrite(bytes);
    return true;
  }

  private void become(PartFile part) throws IOException {
    try {
      part.become(file);
    } catch (AccessDeniedException held) {
      // Windows replaces no file that is open.
      channel.close();
      part.become(file);
    }
  }

  private boolean hasOtherNames() throws IOException {
    return file.getFileSystem().supportedFileAttributeViews().contains("unix")
        && (int) Files.getAttribute(file, "unix:nlink") > 1;
  }

  /**
   * Writes into the file itself, which keeps an owner that this user cannot give and other names
   * (hard links) of the file. There was room for all of it a moment ago.
   */
  private void overwrite(byte[] bytes) throws IOException {
    byte[] old = new byte[Math.toIntExact(channel.size())];
    channel.read(ByteBuffer.wrap(old), 0);
    try {
      fill(bytes);
    } catch (IOException full) {
      fill(old);
      throw full;
    }
  }

  private void fill(byte[] bytes) throws IOException {
    ByteBuffer left = ByteBuffer.wrap(bytes);
    channel.position(0);
    while (left.hasRemaining()) {
      channel.write(left);
    }
    channel.truncate(bytes.length);
    channel.force(true);
  }

  @Override
  public void close() throws IOException {
    channel.close();
  }
}
