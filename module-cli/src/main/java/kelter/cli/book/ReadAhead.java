package kelter.cli.book;

import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Function;

/** Reads the next page on another thread while one is worked on. */
final class ReadAhead {

  private ReadAhead() {}

  /**
   * Goes through all pages.
   *
   * @param after the page after one, or the first; empty behind the last. It is asked by one thread
   *     at a time
   * @param work is given each page on the thread of the caller
   * @throws RuntimeException whatever one of them throws
   */
  static <P> void of(Function<Optional<P>, Optional<P>> after, Consumer<P> work) {
    ExecutorService reader = Executors.newSingleThreadExecutor(ReadAhead::thread);
    try {
      Optional<P> page = got(reader.submit(() -> after.apply(Optional.empty())));
      while (page.isPresent()) {
        Optional<P> last = page;
        Future<Optional<P>> next = reader.submit(() -> after.apply(last));
        work.accept(page.get());
        page = got(next);
      }
    } finally {
      finish(reader);
    }
  }

  private static Thread thread(Runnable work) {
    Thread thread = new Thread(work, "book-reader");
    thread.setDaemon(true);
    return thread;
  }

  private static <P> P got(Future<P> page) {
    try {
      return page.get();
    } catch (ExecutionException failed) {
      if (failed.getCause() instanceof RuntimeException fault) {
        throw fault;
      }
      throw new IllegalStateException(failed.getCause());
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("stopped while the book was read", stopped);
    }
  }

  /** Whoever closes the connection next must be alone with it. */
  private static void finish(ExecutorService reader) {
    reader.shutdown();
    try {
      while (!reader.awaitTermination(1, TimeUnit.SECONDS)) {
        // The page that is being read comes to an end.
      }
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
  }
}
