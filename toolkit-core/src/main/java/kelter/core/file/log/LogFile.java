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
import java.util.function.LongConsumer;
import kelter.core.file.log.row.LogCsv;
import kelter.core.file.log.row.LogEncoding;
import kelter.core.file.log.row.LogHead;
import kelter.core.file.log.row.LogSample;
import kelter.core.file.log.row.LogSieve;
import kelter.core.problem.InputException;
import kelter.core.problem.Mistake;
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
      throw new InputException(
          Mistake.FILE, name, "is a directory", "name the log of an instrument");
    }
    try (Counted in = new Counted(Files.newInputStream(path))) {
      return read(in, path, Files.size(path), options, progress);
    } catch (NoSuchFileException missing) {
      throw new InputException(
          Mistake.FILE, name, "there is no such file", "name the log of an instrument");
    } catch (LogSieve.Stopped stopped) {
      throw new InputException(List.of(stopped.problem()));
    } catch (IOException | UncheckedIOException unreadable) {
      throw new InputException(
          Mistake.FILE, name, "cannot be read: " + unreadable.getMessage(), "");
    }
  }

  private static Log read(Counted file, Path path, long size, LogOptions options, Progress progress)
      throws IOException {
    String name = path.toString();
    BufferedInputStream in = new BufferedInputStream(file, HEAD);
    in.mark(HEAD);
    byte[] head = in.readNBytes(HEAD - 1);
    boolean complete = head.length < HEAD - 1;
    if (head.length == 0) {
      throw new InputException(Mistake.FILE, name, "is empty", "name the log of an instrument");
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
    LogHead rows =
        LogHead.find(name, text, complete, options.delimiter(), options.said().decimal());
    LogFound found = LogFound.of(name, rows, rows.rows(), encoding, options);
    if (!found.settled() && !rows.sawAll(complete)) {
      // What the first rows leave open, a later one may tell.
      found = LogFound.of(name, rows, telling(path, name, encoding, rows), encoding, options);
    }
    found.requireTold();
    in.skipNBytes(encoding.mark());
    return read(in, name, encoding, found, options, progress(file, size, progress));
  }

  private static LongConsumer progress(Counted file, long size, Progress progress) {
    return rows -> progress.at(file.count, size, rows);
  }

  /** Rows of the whole log that show what others do not. */
  private static List<List<String>> telling(
      Path path, String name, LogEncoding encoding, LogHead head) throws IOException {
    LogSample sample = new LogSample();
    try (InputStream in = new BufferedInputStream(Files.newInputStream(path), BUFFER)) {
      in.skipNBytes(encoding.mark());
      try (Reader reader = decoded(in, name, encoding, head.delimiter());
          CSVParser parser = LogCsv.parser(reader, head.delimiter())) {
        for (CSVRecord row : parser) {
          List<String> cells = row.toList();
          if (row.getRecordNumber() > head.first() && head.isData(cells)) {
            sample.take(head.row(cells));
          }
        }
      } catch (UncheckedIOException damaged) {
        // What is damaged is told with its row when the log is read.
        return sample.rows();
      }
    }
    return sample.rows();
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

  private static Reader decoded(InputStream in, String name, LogEncoding encoding, char delimiter) {
    Reader decoded =
        new InputStreamReader(
            in,
            encoding
                .charset()
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPLACE)
                .onUnmappableCharacter(CodingErrorAction.REPLACE));
    return new LogSieve(
        new BufferedReader(decoded, BUFFER), name, encoding.charset().name(), delimiter, 1);
  }

  private static Log read(
      InputStream in,
      String name,
      LogEncoding encoding,
      LogFound found,
      LogOptions options,
      LongConsumer told)
      throws IOException {
    LogRows rows = new LogRows(name, found, options);
    LogFormat format = found.format();
    try (Reader reader = decoded(in, name, encoding, format.delimiter());
        CSVParser parser = LogCsv.parser(reader, format.delimiter())) {
      for (CSVRecord row : parser) {
        if (row.getRecordNumber() >= format.firstRow()) {
          rows.take(row.getRecordNumber(), row);
        }
        if (row.getRecordNumber() % ROWS_PER_TELLING == 0) {
          told.accept(rows.count());
        }
      }
    } catch (UncheckedIOException wrapped) {
      rows.stop(wrapped.getCause());
    } catch (IOException broken) {
      rows.stop(broken);
    }
    told.accept(rows.count());
    return rows.log();
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
