package kelter.cli.wiring;

import com.google.inject.Guice;
import com.google.inject.Stage;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.FutureTask;
import kelter.cli.plugin.PluginWatch;
import kelter.cli.terminal.Terminal;
import kelter.core.file.catalogue.LockOutFile;
import kelter.core.shop.Shop;
import kelter.core.workshop.Workshop;

/**
 * Finds the modules and wires the workshop that a command works in. For the usual case, without
 * plugins and of a shop that nobody described, both can be begun ahead, on another core, while the
 * command line and the job are read; without that every command would wait longer, and nothing else
 * would change.
 */
public final class Opening implements Runnable {

  private final Terminal terminal;
  private final Clock clock;
  private final FutureTask<Found> usualModules = new FutureTask<>(new Finding());
  private final FutureTask<Workshop> usualWorkshop = new FutureTask<>(new Usual());

  // Not lambdas: the first one of a run is dear, and these would be it.

  private static final class Finding implements Callable<Found> {
    @Override
    public Found call() {
      return Found.usual();
    }
  }

  private final class Usual implements Callable<Workshop> {
    @Override
    public Workshop call() {
      return wired(done(usualModules), Shop.UNKNOWN);
    }
  }

  /**
   * An opening of which nothing has begun.
   *
   * @param terminal where results and complaints go
   * @param clock tells the day
   */
  public Opening(Terminal terminal, Clock clock) {
    this.terminal = terminal;
    this.clock = clock;
  }

  /**
   * The clock.
   *
   * @return what tells the day
   */
  public Clock clock() {
    return clock;
  }

  /** Begins in a thread of its own, which does not keep the process from ending. */
  public void beginAhead() {
    Thread ahead = new Thread(this, "opening");
    ahead.setDaemon(true);
    ahead.start();
  }

  /** Finds the usual modules and wires the usual workshop, unless that was begun before. */
  @Override
  public void run() {
    usualModules.run();
    usualWorkshop.run();
  }

  /**
   * The usual modules, when they are found.
   *
   * @return the modules on the module path
   */
  public Found modules() {
    usualModules.run();
    return done(usualModules);
  }

  /**
   * The modules with those of a plugin folder, over which somebody watches from now on.
   *
   * @param plugins the folder that the user named
   * @param seconds how long a call of a plugin may take
   * @return the modules on the module path and those plugins that go with them
   * @throws kelter.core.problem.InputException if the folder cannot be read
   */
  public Found modules(Path plugins, int seconds) {
    PluginWatch watch = new PluginWatch(terminal, Duration.ofSeconds(seconds));
    watch.begin();
    return Found.with(plugins, watch);
  }

  /**
   * The workshop, when it is wired.
   *
   * @param found the modules at work
   * @param shop the shop whose rules hold
   * @return the workshop
   */
  public Workshop workshop(Found found, Shop shop) {
    boolean usual = shop == Shop.UNKNOWN && usualModules.isDone() && found == done(usualModules);
    if (!usual) {
      return wired(found, shop);
    }
    // Every job needs the table, and it is read while the other thread still wires.
    LockOutFile.shipped();
    usualWorkshop.run();
    return done(usualWorkshop);
  }

  private Workshop wired(Found found, Shop shop) {
    return Guice.createInjector(Stage.DEVELOPMENT, new Wiring(found, shop, terminal, clock))
        .getInstance(Workshop.class);
  }

  private static <T> T done(Future<T> task) {
    try {
      return task.get();
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
