package kelter.core.file.log.row;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Rows of text in columns, as RFC 4180 has them, with any delimiter. */
public final class LogCsv {

  private LogCsv() {}

  /**
   * Rows as they are read.
   *
   * @param reader the text
   * @param delimiter what stands between columns
   * @return the rows
   * @throws IOException if the text cannot be read
   */
  public static CSVParser parser(Reader reader, char delimiter) throws IOException {
    return CSVParser.builder().setReader(reader).setFormat(format(delimiter)).get();
  }

  private static CSVFormat format(char delimiter) {
    return CSVFormat.Builder.create()
        .setDelimiter(delimiter)
        .setQuote('"')
        .setIgnoreSurroundingSpaces(true)
        .setIgnoreEmptyLines(false)
        .setLenientEof(true)
        .setTrailingData(true)
        .get();
  }

  /**
   * The first rows of a text.
   *
   * @param text the text
   * @param delimiter what stands between columns
   * @param most how many rows are wanted at most
   * @return the rows, as far as they can be told apart
   */
  public static List<List<String>> rows(String text, char delimiter, int most) {
    List<List<String>> rows = new ArrayList<>();
    try (CSVParser parser = parser(new StringReader(text), delimiter)) {
      for (CSVRecord row : parser) {
        if (rows.size() == most) {
          break;
        }
        rows.add(List.copyOf(row.toList()));
      }
    } catch (IOException | UncheckedIOException notInColumns) {
      return rows;
    }
    return rows;
  }
}
