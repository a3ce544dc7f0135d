package kelter.core.file.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.file.log.LogFormat.Guess;
import kelter.core.file.log.LogFormat.Sureness;
import kelter.core.file.log.cell.CellTime;
import kelter.core.file.log.cell.DecimalEvidence;
import kelter.core.file.log.cell.FigureForm;
import kelter.core.problem.Problem;

/**
 * How the figures of a log are written.
 *
 * @param form the form
 * @param guess how sure that is; empty where no figure has a mark
 * @param settled whether no further row can say otherwise
 * @param open what must be said first, if anything
 */
record LogDecimals(
    FigureForm form, Optional<Guess> guess, boolean settled, Optional<Problem> open) {

  private static final String FLAG = "--decimal";

  /**
   * Makes out the form.
   *
   * @param file the name of the log
   * @param rows cells of rows of readings
   * @param width how many columns there are
   * @param delimiter what stands between columns
   * @param said the decimal sign, if somebody said it
   */
  static LogDecimals of(
      String file, List<List<String>> rows, int width, char delimiter, Optional<Character> said) {
    List<DecimalEvidence> columns = new ArrayList<>();
    for (int i = 0; i < width; i++) {
      DecimalEvidence evidence = new DecimalEvidence();
      for (List<String> row : rows) {
        if (!CellTime.of(row.get(i)).isTime()) {
          evidence.add(row.get(i));
        }
      }
      columns.add(evidence);
    }
    return said.isPresent()
        ? of(said.get(), true, Sureness.SAID, "")
        : new Seen(file, columns, delimiter).decide();
  }

  private static LogDecimals of(char decimal, boolean grouped, Sureness sureness, String why) {
    return new LogDecimals(
        new FigureForm(decimal, grouped),
        Optional.of(new Guess("decimals", decimal == ',' ? "comma" : "point", sureness, why)),
        sureness == Sureness.CERTAIN || sureness == Sureness.SAID,
        Optional.empty());
  }

  /** What the columns show. */
  private record Seen(String file, List<DecimalEvidence> columns, char delimiter) {

    LogDecimals decide() {
      int points = columns.stream().mapToInt(column -> column.sure('.')).sum();
      int commas = columns.stream().mapToInt(column -> column.sure(',')).sum();
      if (points != commas) {
        return known(points > commas ? '.' : ',');
      }
      Optional<String> comma = doubtful(',');
      Optional<String> point = doubtful('.');
      if (points == 0 && comma.isEmpty() && point.isEmpty()) {
        return new LogDecimals(FigureForm.POINT, Optional.empty(), false, Optional.empty());
      }
      if (points == 0 && comma.isEmpty() && delimiter == ',') {
        return LogDecimals.of(
            '.',
            false,
            Sureness.LIKELY,
            "commas split the columns, and " + point.get() + " occurs");
      }
      return open(comma.or(() -> point).orElseGet(() -> example(',')));
    }

    /** The other mark, where it stands before three digits, must stand between thousands. */
    private LogDecimals known(char decimal) {
      char other = decimal == '.' ? ',' : '.';
      boolean grouped = false;
      boolean likely = false;
      for (DecimalEvidence column : columns) {
        if (column.doubtful(other) != null) {
          if (column.sure(decimal) == 0 && !column.hasWhole()) {
            return open(column.doubtful(other));
          }
          grouped = true;
          likely |= column.sure(decimal) == 0;
        }
      }
      String why =
          "as in "
              + example(decimal)
              + (grouped ? "; " + doubtful(other).orElseThrow() + " are thousands" : "");
      boolean thousands = grouped || columns.stream().anyMatch(each -> each.groupsBy(other));
      return LogDecimals.of(decimal, thousands, likely ? Sureness.LIKELY : Sureness.CERTAIN, why);
    }

    private Optional<String> doubtful(char mark) {
      return columns.stream()
          .map(column -> column.doubtful(mark))
          .filter(example -> example != null)
          .findFirst();
    }

    private String example(char mark) {
      return columns.stream()
          .map(column -> column.example(mark))
          .filter(example -> example != null)
          .findFirst()
          .orElse("");
    }

    private LogDecimals open(String example) {
      String digits = example.replaceAll("[.,]", "");
      return new LogDecimals(
          FigureForm.POINT,
          Optional.empty(),
          false,
          Optional.of(
              new Problem(
                  file,
                  "'%s' may be %s or %s".formatted(example, digits, example.replace(',', '.')),
                  "say " + FLAG + " point or " + FLAG + " comma")));
    }
  }
}
