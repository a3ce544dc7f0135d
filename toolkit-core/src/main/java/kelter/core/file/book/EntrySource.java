package kelter.core.file.book;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import kelter.core.book.BookEntry;
import kelter.core.file.disk.DiskFault;
import kelter.core.problem.FilePlace;
import kelter.core.problem.InputException;
import kelter.core.problem.Mistake;
import kelter.core.problem.Problem;

/**
 * A file with many entries, read from front to back in little room: lines of JSON, or a table of
 * the Open Repair Data Standard. A row that cannot be used is told and does not end the reading.
 */
public final class EntrySource {

  /** The longest line, in bytes; own choice. */
  private static final int LONGEST = 1024 * 1024;

  private static final int BUFFER = 1 << 16;

  private final Path file;
  private final Sink sink;

  private EntrySource(Path file, Sink sink) {
    this.file = file;
    this.sink = sink;
  }

  /** Takes what was read. */
  public interface Sink {

    /**
     * An entry.
     *
     * @param line the line that it stands in, from 1
     * @param entry the entry
     */
    void entry(long line, BookEntry entry);

    /**
     * A row that cannot be used.
     *
     * @param line the line that it stands in, from 1
     * @param text the row; shortened if it is too long to be one
     * @param problems what is wrong with it
     */
    void refused(long line, String text, List<Problem> problems);
  }

  /**
   * Reads a file.
   *
   * @param file the file
   * @param sink takes entries and refused rows, in the order of the file
   * @throws InputException if it cannot be read, or is no file of entries
   */
  public static void read(Path file, Sink sink) {
    try (InputStream in = new BufferedInputStream(Files.newInputStream(file), BUFFER)) {
      in.mark(BUFFER);
      int first = in.read();
      while (first == ' ' || first == '\n' || first == '\r' || first == '\t') {
        first = in.read();
      }
      in.reset();
      if (first == '{') {
        new EntrySource(file, sink).lines(in);
      } else {
        RepairData.read(in, file.toString(), sink);
      }
    } catch (NoSuchFileException missing) {
      throw new InputException(file.toString(), "there is no such file", "");
    } catch (IOException unreadable) {
      throw DiskFault.unreadable(file.toString(), unreadable);
    }
  }

  private void lines(InputStream in) throws IOException {
    ByteArrayOutputStream line = new ByteArrayOutputStream();
    long number = 1;
    long length = 0;
    int next = in.read();
    while (next >= 0) {
      if (next == '\n') {
        line(number++, line, length);
        line.reset();
        length = 0;
      } else {
        length++;
        if (length <= LONGEST) {
          line.write(next);
        }
      }
      next = in.read();
    }
    if (length > 0) {
      line(number, line, length);
    }
  }

  private void line(long number, ByteArrayOutputStream bytes, long length) {
    if (length > LONGEST) {
      refuse(number, bytes.toString(StandardCharsets.UTF_8).substring(0, 200), "is too long");
      return;
    }
    String text;
    try {
      text =
          StandardCharsets.UTF_8
              .newDecoder()
              .onMalformedInput(CodingErrorAction.REPORT)
              .onUnmappableCharacter(CodingErrorAction.REPORT)
              .decode(ByteBuffer.wrap(bytes.toByteArray()))
              .toString()
              .strip();
    } catch (CharacterCodingException notUtf8) {
      refuse(number, bytes.toString(StandardCharsets.ISO_8859_1).strip(), "is not UTF-8 text");
      return;
    }
    if (!text.isEmpty()) {
      entry(number, text);
    }
  }

  private void entry(long number, String text) {
    BookEntry entry;
    try {
      entry = EntryLine.read(text);
    } catch (InputException mistakes) {
      sink.refused(number, text, placed(number, mistakes));
      return;
    }
    sink.entry(number, entry);
  }

  private List<Problem> placed(long number, InputException mistakes) {
    return mistakes.problems().stream().map(problem -> placed(number, problem)).toList();
  }

  /** What is no JSON tells its own place, of which the column is worth telling. */
  private Problem placed(long number, Problem problem) {
    boolean isColumn = problem.place().file().equals(EntryLine.NAME);
    return problem.at(
        new FilePlace(file.toString(), number, isColumn ? problem.place().column() : 0));
  }

  private void refuse(long number, String text, String what) {
    sink.refused(
        number,
        text,
        List.of(
            new Problem(
                Mistake.UNUSABLE, "", what, "", new FilePlace(file.toString(), number, 0))));
  }
}
