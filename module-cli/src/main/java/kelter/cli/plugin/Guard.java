package kelter.cli.plugin;

import java.lang.module.Configuration;
import java.util.function.Supplier;
import kelter.core.problem.InputException;
import kelter.core.problem.Mistake;
import kelter.core.problem.Problem;

/** Calls one plugin, and turns whatever it does wrong into a fault of its own. */
public final class Guard {

  private static final String OUT = "that is left out, the rest goes on";
  private static final String REFUSED = "left out";
  private static final String END = "nothing is left without it: mend the plugin, or take it out";

  private final String plugin;
  private final PluginWatch watch;

  /**
   * A guard.
   *
   * @param plugin the name of its jar or folder
   * @param watch watches over all plugins
   */
  public Guard(String plugin, PluginWatch watch) {
    this.plugin = plugin;
    this.watch = watch;
  }

  /**
   * That the plugin, or a module of it, cannot be used.
   *
   * @param failed why
   * @return the mistake, to be told
   */
  public Problem refused(Failed failed) {
    return failed.problem(plugin, REFUSED);
  }

  /**
   * That the plugin, or a module of it, cannot be used.
   *
   * @param reason why
   * @param remedy what to do about it, may be empty
   * @return the mistake, to be told
   */
  public Problem refused(String reason, String remedy) {
    return new Problem(
        Mistake.PLUGIN,
        "plugin " + plugin,
        reason,
        remedy.isEmpty() ? REFUSED : REFUSED + "; " + remedy);
  }

  /**
   * Tells something about the plugin that does not keep it from being used.
   *
   * @param what what
   * @param remedy what to do about it
   */
  public void note(String what, String remedy) {
    watch.tell(new Problem(Mistake.PLUGIN, "plugin " + plugin, what, remedy));
  }

  /**
   * Notes which modules of the Java machine are its own.
   *
   * @param modules the modules
   */
  public void know(Configuration modules) {
    watch.know(plugin, modules);
  }

  /**
   * Asks the plugin.
   *
   * @param call what it is asked, for the message
   * @param answer asks it; must not give null
   * @param <T> what it gives
   * @return the answer
   * @throws Failed if it throws anything
   */
  public <T> T ask(String call, Supplier<T> answer) {
    try {
      return askOfJob(call, answer);
    } catch (InputException unasked) {
      throw new Failed(call, "throws " + reason(unasked), unasked);
    }
  }

  /**
   * Asks the plugin about a job, which may be found wrong.
   *
   * @param call what it is asked, for the message
   * @param answer asks it; must not give null
   * @param <T> what it gives
   * @return the answer
   * @throws InputException if it finds the job wrong
   * @throws Failed if it throws anything else
   */
  <T> T askOfJob(String call, Supplier<T> answer) {
    watch.enter(plugin, call);
    try {
      T given = answer.get();
      if (given == null) {
        throw new Failed(call, "gives null", null);
      }
      return given;
    } catch (InputException | PluginFault | Failed passed) {
      throw passed;
    } catch (Throwable thrown) { // Errors too: a stack that overflowed, a class that is missing.
      throw new Failed(call, "throws " + reason(thrown), thrown);
    } finally {
      watch.leave();
    }
  }

  /**
   * Asks the plugin for something that the rest can do without.
   *
   * @param call what it is asked, for the message
   * @param answer asks it; must not give null
   * @param otherwise stands in if it fails
   * @param <T> what it gives
   * @return the answer
   */
  <T> T ask(String call, Supplier<T> answer, T otherwise) {
    try {
      return ask(call, answer);
    } catch (Failed failed) {
      tell(failed);
      return otherwise;
    }
  }

  /** Tells a failure that the rest can do without. */
  void tell(Failed failed) {
    watch.tell(failed.problem(plugin, OUT));
  }

  /** Tells a failure in the middle of something. */
  PluginFault fault(Failed failed, boolean leftOut) {
    Problem problem = failed.problem(plugin, leftOut ? OUT : END);
    watch.tell(problem);
    return new PluginFault(problem, leftOut, failed);
  }

  /** Tells something that is wrong with what the plugin gave. */
  void tell(String call, String reason) {
    tell(new Failed(call, reason, null));
  }

  /**
   * What was thrown, in a few words.
   *
   * @param thrown an exception or error
   * @return its kind, its message and the line of the code that threw it, as far as known
   */
  public static String reason(Throwable thrown) {
    Throwable cause = thrown;
    while (cause.getCause() != null && cause.getCause() != cause) {
      cause = cause.getCause();
    }
    String message = cause.getMessage();
    StackTraceElement[] stack = cause.getStackTrace();
    return cause.getClass().getSimpleName()
        + (message == null ? "" : ": " + message)
        + (stack.length == 0 || stack[0].getLineNumber() < 0
            ? ""
            : " (" + stack[0].getFileName() + ":" + stack[0].getLineNumber() + ")");
  }

  /** An answer that could not be had. */
  public static final class Failed extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String call;

    Failed(String call, String reason, Throwable cause) {
      super(reason, cause);
      this.call = call;
    }

    Problem problem(String plugin, String remedy) {
      return new Problem(Mistake.PLUGIN, PluginWatch.where(plugin, call), getMessage(), remedy);
    }
  }
}
