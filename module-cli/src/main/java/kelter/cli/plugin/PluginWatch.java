package kelter.cli.plugin;

import java.io.PrintStream;
import java.lang.module.Configuration;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import kelter.cli.terminal.Terminal;
import kelter.core.problem.Problem;

/**
 * Watches over the plugins of a process. What they write to standard output is told as theirs, so
 * that results stay whole. Where one ends the process, or does not come back, that is told and the
 * process ends with {@link #ENDED}.
 */
public final class PluginWatch {

  /** The exit code of a process that a plugin ended, or that had to be ended because of one. */
  public static final int ENDED = 1;

  private static final long LOOK = 100;
  private static final String END = "take the plugin out, or mend it";

  private final Terminal terminal;
  private final Duration most;

  /** The innermost call of a plugin in each thread. */
  private final Map<Thread, Call> running = new ConcurrentHashMap<>();

  /** Which plugin a module of the Java machine belongs to, by its name. */
  private final Map<String, String> pluginOf = new ConcurrentHashMap<>();

  private final Set<String> told = ConcurrentHashMap.newKeySet();

  /** What stands in for standard output. */
  private final ToldOutput output;

  /** A call that has not come back. */
  private record Call(String plugin, String what, long since, Call outer) {}

  /**
   * A watch that has not begun.
   *
   * @param terminal where faults are told
   * @param most how long a call may take
   */
  public PluginWatch(Terminal terminal, Duration most) {
    this.terminal = terminal;
    this.most = most;
    output = new ToldOutput(this, System.err);
  }

  /** Begins, for the rest of the process. */
  public void begin() {
    System.setOut(new PrintStream(output, true, StandardCharsets.UTF_8));
    Runtime.getRuntime().addShutdownHook(new Thread(this::tellWhoEnds, "plugin end"));
    Thread clock = new Thread(this::look, "plugin watch");
    clock.setDaemon(true);
    clock.start();
  }

  /** Notes which modules of the Java machine belong to a plugin. */
  void know(String plugin, Configuration modules) {
    modules.modules().forEach(module -> pluginOf.put(module.name(), plugin));
  }

  void enter(String plugin, String what) {
    Thread thread = Thread.currentThread();
    running.put(thread, new Call(plugin, what, System.nanoTime(), running.get(thread)));
  }

  void leave() {
    output.flush();
    Thread thread = Thread.currentThread();
    Call outer = running.get(thread).outer();
    if (outer == null) {
      running.remove(thread);
    } else {
      running.put(thread, outer);
    }
  }

  /** Where this thread is, in words; empty if it is in no call of a plugin. */
  String here() {
    Call call = running.get(Thread.currentThread());
    return call == null ? "" : where(call.plugin(), call.what());
  }

  static String where(String plugin, String what) {
    return "plugin " + plugin + ", " + what;
  }

  /** Tells a fault, each once. */
  void tell(Problem problem) {
    if (told.add(problem.display())) {
      terminal.complain("kelter: " + problem.display());
    }
  }

  private void look() {
    try {
      while (true) {
        Thread.sleep(LOOK);
        for (Call call : running.values()) {
          if (System.nanoTime() - call.since() > most.toNanos()) {
            endless(call);
          }
        }
      }
    } catch (InterruptedException ended) {
      Thread.currentThread().interrupt();
    }
  }

  private void endless(Call call) {
    tell(
        new Problem(
            where(call.plugin(), call.what()),
            "does not come back within " + most.toSeconds() + " s, so Kelter ends here",
            END + ", or give it longer with --plugin-seconds"));
    Runtime.getRuntime().halt(ENDED);
  }

  /** Runs while the process ends: says so if that was a plugin, or if one does not let it. */
  private void tellWhoEnds() {
    Thread last = new Thread(this::tellWhoStays, "plugin stay");
    last.setDaemon(true);
    last.start();
    for (Map.Entry<Thread, StackTraceElement[]> thread : Thread.getAllStackTraces().entrySet()) {
      if (isEnding(thread.getValue())) {
        end(thread.getKey(), thread.getValue(), "calls System.exit, which ends Kelter at once");
      }
    }
  }

  private void tellWhoStays() {
    try {
      Thread.sleep(most.toMillis());
    } catch (InterruptedException ended) {
      Thread.currentThread().interrupt();
      return;
    }
    Thread.getAllStackTraces()
        .forEach((thread, stack) -> end(thread, stack, "does not let Kelter end"));
  }

  /** Ends at once if a plugin is at work in a thread. */
  private void end(Thread thread, StackTraceElement[] stack, String fault) {
    Call call = running.get(thread);
    String plugin = call == null ? plugin(stack) : call.plugin();
    if (!plugin.isEmpty()) {
      String what = call == null ? "thread " + thread.getName() : call.what();
      tell(new Problem(where(plugin, what), fault, END));
      Runtime.getRuntime().halt(ENDED);
    }
  }

  private static boolean isEnding(StackTraceElement... stack) {
    for (StackTraceElement frame : stack) {
      if (frame.getClassName().equals("java.lang.Runtime")
          && frame.getMethodName().equals("exit")) {
        return true;
      }
    }
    return false;
  }

  private String plugin(StackTraceElement... stack) {
    for (StackTraceElement frame : stack) {
      String module = frame.getModuleName();
      if (module != null && pluginOf.containsKey(module)) {
        return pluginOf.get(module);
      }
    }
    return "";
  }
}
