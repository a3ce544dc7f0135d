package kelter.core.file.log;

import java.io.BufferedInputStream;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.CodingErrorAction;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import kelter.core.problem.InputException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Reads instrument logs: text in columns, a row for each time. Delimiter, decimal sign, headings,
 * times and character set are recognised by the first rows; then the file is read once, whatever
 * its size.
 */
public final class LogFile {

  private static final int HEAD = 256 * 1024;
  private static final int BUFFER = 256 * 1024;
  private static final int ROWS_PER_TELLING = 8192;

  private LogFile() {}

  /** Is told how far reading has come. */
  @FunctionalInterface
  public interface Progress {

    /** Nobody is told. */
    Progress NONE = (read, size, rows) -> {};

    /**
     * Reading has come this far.
     *
     * @param read how many bytes have been read
     * @param size how many there are
     * @param rows how many rows of readings have been read
     */
    void at(long read, long size, long rows);
  }

  /**
   * Reads a log.
   *
   * @param path the file
   * @param options what is said of it
   * @param progress is told how far reading has come
   * @return the log
   * @throws InputException with row and column of every mistake, up to twenty, if it has any or
   *     cannot be read
   */
  public static Log read(Path path, LogOptions options, Progress progress) {
    String name = path.toString();
    if (Files.isDirectory(path)) {
      throw new InputException(name, "is a directory", "name the log of an instrument");
    }
    try (Counted in = new Counted(Files.newInputStream(path))) {
      return read(in, name, Files.size(path), options, progress);
    } catch (NoSuchFileException missing) {
      throw new InputException(name, "there is no such file", "name the log of an instrument");
    } catch (LogSieve.Stopped stopped) {
      throw new InputException(List.of(stopped.problem()));
    } catch (IOException | UncheckedIOException unreadable) {
      throw new InputException(name, "cannot be read: " + unreadable.getMessage(), "");
    }
  }

  private static Log read(
      Counted file, String name, long size, LogOptions options, Progress progress)
      throws IOException {
    BufferedInputStream in = new BufferedInputStream(file, HEAD);
    in.mark(HEAD);
    byte[] head = in.readNBytes(HEAD - 1);
    boolean complete = head.length < HEAD - 1;
    if (head.length == 0) {
      throw new InputException(name, "is empty", "name the log of an instrument");
    }
    in.reset();
    LogEncoding recognised = LogEncoding.of(head, complete);
    LogEncoding encoding =
        options
            .encoding()
            .map(said -> new LogEncoding(said, recognised.mark(), false))
            .orElse(recognised);
    String text = encoding.text(head);
    sift(text, name, encoding, complete);
    LogHead.Found found = LogHead.find(name, text, complete, encoding, options);
    in.skipNBytes(encoding.mark());
    LogRows rows = new LogRows(name, found, options);
    try (Reader reader = rest(in, name, encoding, found.format())) {
      read(reader, rows, found.format(), () -> progress.at(file.count, size, rows.count()));
    }
    progress.at(size, size, rows.count());
    return rows.log();
  }

  /** Stops at a damaged head before anything is made of it. */
  private static void sift(String head, String name, LogEncoding encoding, boolean complete)
      throws IOException {
    // Bytes that are cut apart at the end of the head are no damage.
    String whole = complete ? head : head.substring(0, Math.max(0, head.length() - 2));
    try (LogSieve sieve =
        new LogSieve(new StringReader(whole), name, encoding.charset().name(), likely(whole), 1)) {
      char[] buffer = new char[BUFFER];
      while (sieve.read(buffer, 0, BUFFER) >= 0) {
        continue;
      }
    }
  }

  /** The delimiter that occurs most, for counting columns before it is recognised. */
  private static char likely(String head) {
    char likely = ',';
    long most = 0;
    for (char c : LogHead.DELIMITERS) {
      long count = head.chars().filter(each -> each == c).count();
      if (count > most) {
        most = count;
        likely = c;
      }
    }
    return likely;
  }

  /** The rows of readings, with what stands above them passed over. */
  private static Reader rest(InputStream in, String name, LogEncoding encoding, LogFormat format)
      throws IOException {
    Reader decoded =
        new InputStreamReader(
            in,
            encoding
                .charset()
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPLACE)
                .onUnmappableCharacter(CodingErrorAction.REPLACE));
    BufferedReader reader = new BufferedReader(decoded, BUFFER);
    for (long row = 1; row < format.firstRow(); row++) {
      reader.readLine();
    }
    return new LogSieve(
        reader, name, encoding.charset().name(), format.delimiter(), format.firstRow());
  }

  private static void read(Reader reader, LogRows rows, LogFormat format, Runnable told)
      throws IOException {
    CSVFormat csv =
        CSVFormat.Builder.create()
            .setDelimiter(format.delimiter())
            .setQuote('"')
            .setIgnoreSurroundingSpaces(true)
            .setIgnoreEmptyLines(false)
            .setLenientEof(true)
            .get();
    try (CSVParser parser = CSVParser.builder().setReader(reader).setFormat(csv).get()) {
      for (CSVRecord row : parser) {
        rows.take(format.firstRow() + row.getRecordNumber() - 1, row);
        if (row.getRecordNumber() % ROWS_PER_TELLING == 0) {
          told.run();
        }
      }
    } catch (UncheckedIOException wrapped) {
      rows.stop(wrapped.getCause());
    } catch (IOException broken) {
      rows.stop(broken);
    }
  }

  /** Counts the bytes that pass. */
  private static final class Counted extends InputStream {
    private final InputStream in;
    private long count;

    Counted(InputStream in) {
      this.in = in;
    }

    @Override
    public int read() throws IOException {
      int value = in.read();
      count += value < 0 ? 0 : 1;
      return value;
    }

    @Override
    public int read(byte[] buffer, int offset, int length) throws IOException {
      int read = in.read(buffer, offset, length);
      count += Math.max(0, read);
      return read;
    }

    @Override
    public void close() throws IOException {
      in.close();
    }
  }
}
