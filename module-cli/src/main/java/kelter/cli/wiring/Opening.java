package kelter.cli.wiring;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import kelter.core.shop.Shop;

/**
 * Opens the workshop that a command works in. The usual one, without plugins and of a shop that
 * nobody described, can be opened ahead, on another core, while the command line and the job are
 * read; without that every command would wait longer, and nothing else would change.
 */
public final class Opening {

  private final FutureTask<Workshop> usual = new FutureTask<>(new Usual());

  /** Not a lambda: the first one of a run is dear, and this would be it. */
  private static final class Usual implements Callable<Workshop> {
    @Override
    public Workshop call() {
      return Workshop.open(Optional.empty(), Shop.UNKNOWN);
    }
  }

  private Opening() {}

  /**
   * Opens when a command asks.
   *
   * @return a way to open
   */
  public static Opening onDemand() {
    return new Opening();
  }

  /**
   * Begins to open the usual workshop in a thread of its own, which does not keep the process from
   * ending.
   *
   * @return a way to open
   */
  public static Opening ahead() {
    Opening opening = new Opening();
    Thread ahead = new Thread(opening.usual, "opening");
    ahead.setDaemon(true);
    ahead.start();
    return opening;
  }

  /**
   * Opens a workshop, or waits until the usual one is open.
   *
   * @param plugins the plugin folder, if the user named one
   * @param shop the shop whose rules hold
   * @return the workshop
   * @throws kelter.core.problem.InputException if the folder cannot be read
   */
  public Workshop workshop(Optional<Path> plugins, Shop shop) {
    return plugins.isEmpty() && shop == Shop.UNKNOWN ? usual() : Workshop.open(plugins, shop);
  }

  private Workshop usual() {
    usual.run(); // does nothing where it has begun
    try {
      return usual.get();
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while the modules were loaded", interrupted);
    } catch (ExecutionException failed) {
      if (failed.getCause() instanceof Error error) {
        throw error;
      }
      throw (RuntimeException) failed.getCause();
    }
  }
}
