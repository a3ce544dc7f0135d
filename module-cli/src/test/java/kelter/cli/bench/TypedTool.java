package kelter.cli.bench;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/** A program that runs, is typed into, and whose output is read as it comes. */
final class TypedTool implements AutoCloseable {

  private static final long PATIENCE_SECONDS = 60;

  private final Process process;
  private final OutputStream keys;
  private final StringBuilder said = new StringBuilder();
  private int heard;

  private TypedTool(Process process) {
    this.process = process;
    this.keys = process.getOutputStream();
    Thread listener = new Thread(this::listen, "listener");
    listener.setDaemon(true);
    listener.start();
  }

  static TypedTool start(Path folder, Map<String, String> environment, List<String> command)
      throws IOException {
    ProcessBuilder builder =
        new ProcessBuilder(command).directory(folder.toFile()).redirectErrorStream(true);
    builder.environment().remove("KELTER_SHOP");
    builder.environment().putAll(environment);
    return new TypedTool(builder.start());
  }

  private void listen() {
    byte[] some = new byte[8192];
    try (InputStream out = process.getInputStream()) {
      for (int count = out.read(some); count >= 0; count = out.read(some)) {
        synchronized (said) {
          said.append(new String(some, 0, count, StandardCharsets.ISO_8859_1));
          said.notifyAll();
        }
      }
    } catch (IOException gone) {
      // What it said until then is there.
    }
  }

  /** Types keys; a process that has gone does not hear them. */
  void type(String typed) {
    try {
      keys.write(typed.getBytes(StandardCharsets.UTF_8));
      keys.flush();
    } catch (IOException gone) {
      // Told by what it does not say.
    }
  }

  /**
   * Waits until it has said one of some words, behind what was waited for before.
   *
   * @return what it said until then
   * @throws TimeoutException with all that was said, if it does not come
   */
  String hear(String... words) throws TimeoutException, InterruptedException {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
    synchronized (said) {
      int from = heard;
      while (!heardOne(words)) {
        long left = TimeUnit.NANOSECONDS.toMillis(end - System.nanoTime());
        if (left <= 0) {
          throw new TimeoutException(String.join(" or ", words) + " in:\n" + said);
        }
        said.wait(left);
      }
      return said.substring(from, heard);
    }
  }

  private boolean heardOne(String... words) {
    for (String word : words) {
      int at = said.indexOf(word, heard);
      if (at >= 0) {
        heard = at + word.length();
        return true;
      }
    }
    return false;
  }

  /** All that it said so far, one character for each byte. */
  String said() {
    synchronized (said) {
      return said.toString();
    }
  }

  /** Ends it as if the power failed: SIGKILL, with no time for anything. */
  void kill() throws InterruptedException {
    process.destroyForcibly();
    process.waitFor();
  }

  int end() throws TimeoutException, InterruptedException {
    if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
      throw new TimeoutException("it does not end:\n" + said());
    }
    return process.exitValue();
  }

  @Override
  public void close() {
    process.destroyForcibly();
  }
}
