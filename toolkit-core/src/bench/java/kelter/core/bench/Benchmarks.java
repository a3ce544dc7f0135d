package kelter.core.bench;

import java.lang.reflect.InvocationTargetException;
import java.util.Arrays;
import org.openjdk.jmh.runner.NoBenchmarksException;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.CommandLineOptionException;
import org.openjdk.jmh.runner.options.CommandLineOptions;

/**
 * Runs the benchmarks of one part that a regular expression names, or one of its trials, a class
 * with a main method, by {@code trial} and the name of the class. A part with none of them is
 * passed over, since the build comes by every part that the wanted one needs.
 */
public final class Benchmarks {

  private static final String TRIAL = "trial";

  private Benchmarks() {}

  /**
   * Runs and prints them.
   *
   * @param arguments the expression, then options as JMH has them; or {@code trial}, the name of a
   *     class, and what its main method takes
   * @throws CommandLineOptionException if there is no such option
   * @throws RunnerException if a benchmark cannot be run
   * @throws ReflectiveOperationException if the class of a trial has no main method
   */
  public static void main(String[] arguments)
      throws CommandLineOptionException, RunnerException, ReflectiveOperationException {
    if (arguments.length > 1 && arguments[0].equals(TRIAL)) {
      trial(arguments[1], Arrays.copyOfRange(arguments, 2, arguments.length));
      return;
    }
    try {
      new Runner(new CommandLineOptions(arguments)).run();
    } catch (NoBenchmarksException none) {
      return;
    }
  }

  private static void trial(String name, String[] arguments) throws ReflectiveOperationException {
    Class<?> trial;
    try {
      trial = Class.forName(name);
    } catch (ClassNotFoundException ofAnotherPart) {
      return;
    }
    try {
      trial.getMethod("main", String[].class).invoke(null, (Object) arguments);
    } catch (InvocationTargetException failed) {
      throw new IllegalStateException(name, failed.getCause());
    }
  }
}
