package kelter.cli.plugin;

import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import kelter.core.problem.Problem;

/**
 * What stands in for standard output while plugins are loaded: the lines that one writes are told
 * with its name. What comes from no call of a plugin goes where complaints go.
 */
final class ToldOutput extends OutputStream {

  /** A line without an end is told in pieces of this size. */
  private static final int LONGEST = 200;

  /** How many lines of one call are told. */
  private static final int MOST = 3;

  private final PluginWatch watch;
  private final PrintStream beside;
  private final Map<String, Integer> lines = new ConcurrentHashMap<>();
  private final ByteArrayOutputStream line = new ByteArrayOutputStream();

  ToldOutput(PluginWatch watch, PrintStream beside) {
    this.watch = watch;
    this.beside = beside;
  }

  @Override
  public synchronized void write(int value) {
    if (value == '\n' || line.size() >= LONGEST) {
      flush();
    }
    if (value != '\n' && value != '\r') {
      line.write(value);
    }
  }

  @Override
  public synchronized void flush() {
    if (line.size() > 0) {
      end();
    }
  }

  private void end() {
    String text = line.toString(StandardCharsets.UTF_8);
    line.reset();
    String here = watch.here();
    if (here.isEmpty()) {
      beside.println(text);
    } else if (lines.merge(here, 1, Integer::sum) <= MOST) {
      watch.tell(
          new Problem(
              here,
              "writes to standard output: '" + text + "'",
              "results go there; it is kept out of them"));
    }
  }
}
