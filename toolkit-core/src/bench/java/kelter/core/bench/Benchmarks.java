package kelter.core.bench;

import org.openjdk.jmh.runner.NoBenchmarksException;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.CommandLineOptionException;
import org.openjdk.jmh.runner.options.CommandLineOptions;

/**
 * Runs the benchmarks of one part that a regular expression names. A part with none of them is
 * passed over, since the build comes by every part that the wanted one needs.
 */
public final class Benchmarks {

  private Benchmarks() {}

  /**
   * Runs and prints them.
   *
   * @param arguments the expression, then options as JMH has them
   * @throws CommandLineOptionException if there is no such option
   * @throws RunnerException if a benchmark cannot be run
   */
  public static void main(String[] arguments) throws CommandLineOptionException, RunnerException {
    try {
      new Runner(new CommandLineOptions(arguments)).run();
    } catch (NoBenchmarksException none) {
      return;
    }
  }
}
