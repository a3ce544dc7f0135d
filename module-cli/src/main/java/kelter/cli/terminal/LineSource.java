package kelter.cli.terminal;

import java.util.Optional;

/** Where the lines come from that somebody types. */
@FunctionalInterface
public interface LineSource {

  /**
   * Waits for a line.
   *
   * @param prompt what stands before it
   * @return the line without its end; empty if there are no more
   */
  Optional<String> line(String prompt);
}
