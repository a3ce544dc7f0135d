package kelter.cli.terminal;

import java.io.IOException;
import java.util.Optional;
import org.jline.reader.EndOfFileException;
import org.jline.reader.LineReader;
import org.jline.reader.LineReaderBuilder;
import org.jline.reader.UserInterruptException;
import org.jline.terminal.TerminalBuilder;

/** Lines that are typed and edited on a terminal. */
final class EditedLines implements LineSource {

  private final LineReader reader;

  private EditedLines(LineReader reader) {
    this.reader = reader;
  }

  /**
   * Lines of the terminal of this process.
   *
   * @throws IOException if it cannot be set up
   */
  static LineSource ofProcess() throws IOException {
    return new EditedLines(
        LineReaderBuilder.builder()
            .terminal(TerminalBuilder.builder().system(true).dumb(true).build())
            .option(LineReader.Option.DISABLE_EVENT_EXPANSION, true)
            .build());
  }

  @Override
  public Optional<String> line(String prompt) {
    try {
      return Optional.of(reader.readLine(prompt));
    } catch (EndOfFileException | UserInterruptException left) {
      return Optional.empty();
    }
  }
}
