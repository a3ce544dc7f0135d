package kelter.core.file.log;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import kelter.core.file.log.LogFormat.Column;
import kelter.core.file.log.LogFormat.Guess;
import kelter.core.file.log.LogFormat.Role;
import kelter.core.file.log.cell.FigureForm;
import kelter.core.file.log.row.LogEncoding;
import kelter.core.file.log.row.LogHead;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;

/**
 * What was recognised of a log, and how its cells are read.
 *
 * @param format what was recognised
 * @param clock where its times stand and how they are read
 * @param figures how its figures are written
 * @param columns its columns before times were found among them
 * @param settled whether no further row can say otherwise
 * @param open what must be said before it can be read
 */
record LogFound(
    LogFormat format,
    LogClock clock,
    FigureForm figures,
    LogColumns columns,
    boolean settled,
    List<Problem> open) {

  /**
   * Makes out how a log is to be read.
   *
   * @param file its name
   * @param head its rows
   * @param rows cells of rows of readings, of the first or of the whole log
   * @param encoding its character set
   * @param options what is said of it
   */
  static LogFound of(
      String file,
      LogHead head,
      List<List<String>> rows,
      LogEncoding encoding,
      LogOptions options) {
    LogDecimals decimals =
        LogDecimals.of(file, rows, head.width(), head.delimiter(), options.said().decimal());
    LogColumns columns = LogColumns.of(head, rows, decimals.form(), options.said().units());
    LogClock clock =
        new ClockSearch(file, columns.columns(), rows, decimals.form(), options).find();
    List<Guess> guesses = new ArrayList<>(decimals.guess().stream().toList());
    guesses.addAll(clock.guesses());
    List<Column> told =
        columns.columns().stream().map(c -> clock.isAt(c) ? c.as(Role.TIME) : c).toList();
    LogFormat format =
        new LogFormat(
            encoding.charset().name(),
            encoding.assumed(),
            head.delimiter(),
            decimals.form().decimal() == ',',
            columns.headerRow(),
            head.first() + 1,
            clock.timing(),
            told,
            guesses);
    List<Problem> open =
        Stream.of(decimals.open().stream().toList(), columns.open(), clock.open())
            .flatMap(List::stream)
            .toList();
    return new LogFound(
        format, clock, decimals.form(), columns, decimals.settled() && clock.settled(), open);
  }

  /**
   * Refuses a log of which something must be said first.
   *
   * @throws InputException with everything that must be said
   */
  void requireTold() {
    if (!open.isEmpty()) {
      throw new InputException(open);
    }
  }
}
