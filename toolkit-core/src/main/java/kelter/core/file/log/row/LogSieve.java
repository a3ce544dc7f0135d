package kelter.core.file.log.row;

import java.io.IOException;
import java.io.Reader;
import kelter.core.problem.Problem;

/**
 * Passes the text of a log through and stops at what no log holds: NUL, bytes that the character
 * set does not know, rows without end, quotes that do not close. So whatever comes behind it needs
 * little room.
 */
public final class LogSieve extends Reader {

  static final int COLUMNS = 1000;
  static final int ROW = 1_000_000;
  static final int QUOTED = 10_000;

  private static final char LOST = '\uFFFD';

  private final Reader in;
  private final String encoding;
  private final String file;
  private final char delimiter;
  private long row;
  private int column = 1;
  private int inRow;
  private int inQuotes = -1;
  private boolean cellStarts = true;
  private char last;

  /**
   * Begins at a row.
   *
   * @param in the text
   * @param file the name of the log
   * @param encoding the name of its character set
   * @param delimiter what stands between columns
   * @param firstRow the number of the first row
   */
  public LogSieve(Reader in, String file, String encoding, char delimiter, long firstRow) {
    this.in = in;
    this.file = file;
    this.encoding = encoding;
    this.delimiter = delimiter;
    this.row = firstRow;
  }

  /** What stopped the sieve. */
  public static final class Stopped extends IOException {
    private static final long serialVersionUID = 1L;

    private final transient Problem problem;

    Stopped(Problem problem) {
      super(problem.display());
      this.problem = problem;
    }

    /**
     * Why it stopped.
     *
     * @return row, column, and what is wrong there
     */
    public Problem problem() {
      return problem;
    }
  }

  @Override
  public int read(char[] buffer, int offset, int length) throws IOException {
    int count = in.read(buffer, offset, length);
    for (int i = offset; i < offset + count; i++) {
      pass(buffer[i]);
    }
    return count;
  }

  private void pass(char c) throws Stopped {
    inRow++;
    if (c == 0) {
      throw stopped(
          "holds a NUL byte",
          "the file is damaged or no text; logs look like this when the power fails while they are"
              + " written: cut off what follows");
    }
    if (c == LOST) {
      throw stopped(
          "holds a byte that is not " + encoding + " text", "name the encoding with --encoding");
    }
    if (inQuotes >= 0) {
      quoted(c);
      return;
    }
    if (c == '\n' || c == '\r') {
      endRow(c);
    } else if (c == delimiter) {
      column++;
      cellStarts = true;
      if (column > COLUMNS) {
        throw stopped("the row has more than " + COLUMNS + " columns", "a log has fewer");
      }
    } else if (c == '"' && cellStarts) {
      inQuotes = 0;
      cellStarts = false;
    } else if (c != ' ') {
      cellStarts = false;
    }
    if (inRow > ROW) {
      throw stopped("the row has more than " + ROW + " characters", "a log has shorter ones");
    }
    last = c;
  }

  private void endRow(char c) {
    if (c == '\r' || last != '\r') {
      row++;
    }
    column = 1;
    inRow = 0;
    cellStarts = true;
  }

  private void quoted(char c) throws Stopped {
    inQuotes++;
    if (c == '"') {
      inQuotes = -1;
    } else if (inQuotes > QUOTED) {
      throw stopped("a quote opens here and does not close", "close it, or take it out");
    }
    last = c;
  }

  private Stopped stopped(String what, String remedy) {
    return new Stopped(
        new Problem("%s, row %s, column %s".formatted(file, row, column), what, remedy));
  }

  @Override
  public void close() throws IOException {
    in.close();
  }
}
