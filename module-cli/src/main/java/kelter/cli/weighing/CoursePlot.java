package kelter.cli.weighing;

import java.util.ArrayList;
import java.util.List;
import kelter.core.option.Option;
import kelter.core.option.Reasons;

/**
 * What an option costs over the years, in plain characters.
 *
 * @param title what stands above it
 * @param course what is paid by the end of each year
 * @param top the amount at the upper end of the scale, above zero
 */
record CoursePlot(String title, Reasons.Course course, double top) {

  private static final int ROWS = 8;
  private static final int CELL = 2;
  private static final int YEARS_APART = 5;

  /** The upper end of a scale that all courses fit on. */
  static double top(List<Reasons.Course> courses) {
    double top = 1;
    for (Reasons.Course each : courses) {
      for (Option.Spread paid : each.paid()) {
        top = Math.max(top, Math.max(paid.high(), paid.mean()));
      }
    }
    return top;
  }

  private String label(int row) {
    double amount = row == ROWS - 1 ? top : 0;
    return row == ROWS - 1 || row == 0 ? WeighingText.amount(amount) : "";
  }

  private int labelWidth() {
    return WeighingText.amount(top).length();
  }

  int width() {
    return labelWidth() + 1 + CELL * course.paid().size();
  }

  private List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(title.length() > width() ? title.substring(0, width()) : title);
    for (int row = ROWS - 1; row >= 0; row--) {
      lines.add(pad(label(row), labelWidth()) + "|" + cells(row));
    }
    StringBuilder years = new StringBuilder(" ".repeat(labelWidth() + 1));
    for (int year = 0; year < course.paid().size(); year += YEARS_APART) {
      String word = year == 0 ? "today" : String.valueOf(year);
      int place = labelWidth() + 1 + CELL * year;
      years.append(" ".repeat(Math.max(0, place - years.length()))).append(word);
    }
    lines.add(years.toString());
    return lines;
  }

  private String cells(int row) {
    StringBuilder cells = new StringBuilder();
    for (Option.Spread paid : course.paid()) {
      boolean band = at(paid.low()) <= row && row <= at(paid.high());
      char sign = at(paid.mean()) == row ? '*' : band ? ':' : ' ';
      cells.append(sign).append(sign == '*' || !band ? ' ' : sign);
    }
    return cells.toString().stripTrailing();
  }

  private int at(double amount) {
    return (int) Math.max(0, Math.min(ROWS - 1, Math.floor(ROWS * amount / top)));
  }

  private static String pad(String text, int width) {
    return " ".repeat(width - text.length()) + text;
  }

  /** Pictures beside each other. */
  static List<String> beside(List<CoursePlot> plots) {
    List<String> joined = new ArrayList<>();
    for (CoursePlot plot : plots) {
      List<String> lines = plot.lines();
      for (int i = 0; i < lines.size(); i++) {
        if (joined.size() <= i) {
          joined.add(lines.get(i));
        } else {
          int gap = Math.max(1, plot.width() + 2 - joined.get(i).length());
          joined.set(i, joined.get(i) + " ".repeat(gap) + lines.get(i));
        }
      }
    }
    return joined;
  }
}
