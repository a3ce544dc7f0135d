package kelter.core.file.book;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;

/** Rows of comma-separated values in which no spreadsheet finds a formula. */
final class SafeCsv {

  /** What a cell may not begin with (OWASP, CSV Injection, from memory). */
  private static final String BEGINNINGS = "=+-@\t\r\n";

  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setRecordSeparator("\n").get();

  private SafeCsv() {}

  static String row(List<String> cells) {
    StringBuilder row = new StringBuilder();
    try {
      FORMAT.printRecord(row, cells.stream().map(SafeCsv::cell).toArray());
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return row.toString();
  }

  private static String cell(String text) {
    return isFormula(text) ? "'" + text : text;
  }

  private static boolean isFormula(String text) {
    return !text.isEmpty() && BEGINNINGS.indexOf(text.charAt(0)) >= 0;
  }

  /** The text of a cell that may have been made harmless. */
  static String plain(String cell) {
    return cell.startsWith("'") && isFormula(cell.substring(1)) ? cell.substring(1) : cell;
  }
}
