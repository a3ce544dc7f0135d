package kelter.core.file.log;

import java.util.Locale;
import java.util.Set;

/** Figures as instruments write them. */
final class LogCells {

  /** What instruments write where they have no value. */
  private static final Set<String> NO_VALUE =
      Set.of(
          "", "-", "--", "---", "----", "-----", "nan", "n/a", "na", "null", "none", "err", "error",
          "*", "?");

  /** What they write where a value lies beyond their range. */
  private static final Set<String> OVER_RANGE =
      Set.of(
          "ol",
          "o.l",
          "o.l.",
          "+ol",
          "-ol",
          "ofl",
          "+ofl",
          "-ofl",
          "over",
          "overload",
          "inf",
          "+inf",
          "-inf",
          "infinity",
          "open");

  private static final int LONGEST_WORD = 8;

  /** The powers of ten that a double holds exactly. */
  private static final double[] TENS = new double[23];

  /** Figures of no more digits fit into a double exactly. */
  private static final int EXACT_DIGITS = 15;

  static {
    double ten = 1;
    for (int i = 0; i < TENS.length; i++) {
      TENS[i] = ten;
      ten *= 10;
    }
  }

  private LogCells() {}

  /** Whether an instrument may write this in place of a figure. */
  static boolean isNoFigure(String cell) {
    return isNoValue(cell) || isOverRange(cell);
  }

  static boolean isNoValue(String cell) {
    return cell.length() <= LONGEST_WORD && NO_VALUE.contains(cell.toLowerCase(Locale.ROOT));
  }

  static boolean isOverRange(String cell) {
    return cell.length() <= LONGEST_WORD && OVER_RANGE.contains(cell.toLowerCase(Locale.ROOT));
  }

  /** How many characters of a cell are a figure; 0 if it does not start with one. */
  static int figureEnd(String cell, char point) {
    int i = 0;
    int n = cell.length();
    if (i < n && (cell.charAt(i) == '-' || cell.charAt(i) == '+' || cell.charAt(i) == '−')) {
      i++;
    }
    int digits = 0;
    boolean pointSeen = false;
    for (; i < n; i++) {
      char c = cell.charAt(i);
      if (c >= '0' && c <= '9') {
        digits++;
      } else if (c == point && !pointSeen) {
        pointSeen = true;
      } else {
        break;
      }
    }
    return digits == 0 ? 0 : exponentEnd(cell, i);
  }

  private static int exponentEnd(String cell, int end) {
    int i = end;
    int n = cell.length();
    if (i >= n || (cell.charAt(i) != 'e' && cell.charAt(i) != 'E')) {
      return end;
    }
    i++;
    if (i < n && (cell.charAt(i) == '-' || cell.charAt(i) == '+')) {
      i++;
    }
    int digits = i;
    while (i < n && Character.isDigit(cell.charAt(i))) {
      i++;
    }
    return i > digits ? i : end;
  }

  static boolean isFigure(String cell, char point) {
    return !cell.isEmpty() && figureEnd(cell, point) == cell.length();
  }

  /** The value of a figure. */
  static double value(String figure, char point) {
    long digits = 0;
    int count = 0;
    int decimals = 0;
    boolean negative = false;
    boolean pointSeen = false;
    for (int i = 0; i < figure.length(); i++) {
      char c = figure.charAt(i);
      if (c >= '0' && c <= '9') {
        digits = digits * 10 + (c - '0');
        count += digits == 0 ? 0 : 1;
        decimals += pointSeen ? 1 : 0;
      } else if (c == point) {
        pointSeen = true;
      } else if (c == '-' || c == '−') {
        negative = true;
      } else if (c != '+') {
        count = Integer.MAX_VALUE;
      }
      if (count > EXACT_DIGITS || decimals >= TENS.length) {
        return Double.parseDouble(figure.replace(point, '.').replace('−', '-'));
      }
    }
    // A quotient of two exact doubles is the double nearest to the figure.
    double value = digits / TENS[decimals];
    return negative ? -value : value;
  }

  /** How many digits stand behind the point; -1 if there is an exponent. */
  static int decimals(String figure, char point) {
    int at = -1;
    for (int i = 0; i < figure.length(); i++) {
      char c = figure.charAt(i);
      if (c == 'e' || c == 'E') {
        return -1;
      }
      if (c == point) {
        at = i;
      }
    }
    return at < 0 ? 0 : figure.length() - at - 1;
  }
}
