package kelter.testkit;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.opentest4j.AssertionFailedError;

/**
 * How one rule came out for a module.
 *
 * @param breach what is wrong, with the place in the module's code where it threw or where it was
 *     last seen; empty if the rule is kept
 * @param ended whether it came to an end
 */
record HeldRule(Optional<String> breach, boolean ended) {

  /** Whose frames say nothing to the author of a module. */
  private static final String[] NOT_THEIRS = {
    "java.", "javax.", "jdk.", "sun.", "kelter.core.", "kelter.testkit."
  };

  /** Holds a rule on a thread of its own, since a module may never come back. */
  static HeldRule of(Method rule, ModuleContract contract, Duration patience)
      throws InterruptedException {
    AtomicReference<Throwable> thrown = new AtomicReference<>();
    Thread thread = new Thread(() -> thrown.set(thrownBy(rule, contract)), rule.getName());
    thread.setDaemon(true);
    thread.start();
    thread.join(patience.toMillis());
    if (thread.isAlive()) {
      String where = place(thread.getStackTrace());
      return new HeldRule(
          Optional.of("did not come back within %d s%s".formatted(patience.toSeconds(), where)),
          false);
    }
    return new HeldRule(Optional.ofNullable(thrown.get()).map(HeldRule::told), true);
  }

  private static Throwable thrownBy(Method rule, ModuleContract contract) {
    try {
      rule.invoke(contract);
      return null;
    } catch (InvocationTargetException failed) {
      return failed.getCause();
    } catch (IllegalAccessException impossible) {
      return impossible;
    }
  }

  /** What a rule says in its own words, or what was thrown and where. */
  static String told(Throwable thrown) {
    if (thrown instanceof AssertionFailedError) {
      return thrown.getMessage();
    }
    Throwable cause = thrown;
    while (cause.getCause() != null) {
      cause = cause.getCause();
    }
    return "threw " + cause + place(cause.getStackTrace());
  }

  private static String place(StackTraceElement[] frames) {
    for (StackTraceElement frame : frames) {
      if (isTheirs(frame.getClassName())) {
        return ", at " + frame;
      }
    }
    return frames.length == 0 ? "" : ", at " + frames[0];
  }

  private static boolean isTheirs(String type) {
    for (String prefix : NOT_THEIRS) {
      if (type.startsWith(prefix)) {
        return false;
      }
    }
    return true;
  }
}
