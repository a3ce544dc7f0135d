package kelter.core.file.log.cell;

import java.util.Locale;
import java.util.Set;

/** What instruments write in place of a figure. */
public final class Marks {

  private static final Set<String> NO_VALUE =
      Set.of("nan", "n/a", "n.a.", "na", "null", "none", "err", "error", "*", "?");

  /** Beyond the range; the letter O and the digit 0 look alike on a display and are one here. */
  private static final Set<String> BEYOND =
      Set.of(
          "0l",
          "0fl",
          "0vl",
          "0vld",
          "0vfl",
          "0ver",
          "0verl0ad",
          "0verfl0w",
          "0verrange",
          "0ut0frange",
          "inf",
          "infinity",
          "∞",
          "0pen",
          "hi");

  private static final Set<String> BELOW =
      Set.of("ul", "ufl", "under", "underl0ad", "underfl0w", "underrange", "l0");

  /**
   * What programmable instruments send for an infinite value and for none: SCPI-1999, volume 1,
   * 7.2.1.4 and 7.2.1.5 (from memory).
   */
  private static final double SCPI_INFINITY = 9.9e37;

  private static final double SCPI_NO_VALUE = 9.91e37;

  private static final int LONGEST = 24;

  private Marks() {}

  /**
   * Whether an instrument may write this in place of a figure.
   *
   * @param cell a cell without blanks around it
   * @return whether it is a mark of no value or of a value beyond the range
   */
  public static boolean isAny(String cell) {
    return !isFigureLike(cell) && (isNoValue(cell) || beyond(cell) != 0);
  }

  /** Most cells start with a digit and are no mark; they shall cost no more than this look. */
  private static boolean isFigureLike(String cell) {
    return !cell.isEmpty() && cell.charAt(0) >= '1' && cell.charAt(0) <= '9';
  }

  /**
   * Whether a cell says that there is no value.
   *
   * @param cell a cell without blanks around it
   * @return whether it is empty, dashes only, or a word for no value
   */
  public static boolean isNoValue(String cell) {
    if (isFigureLike(cell) || cell.length() > LONGEST) {
      return false;
    }
    for (int i = 0; i < cell.length(); i++) {
      if (cell.charAt(i) != '-' && cell.charAt(i) != '–') {
        return NO_VALUE.contains(cell.toLowerCase(Locale.ROOT));
      }
    }
    return true;
  }

  /**
   * Whether a cell says that the value lies beyond the range of the instrument.
   *
   * @param cell a cell without blanks around it
   * @return 1 above the range, -1 below it, 0 if the cell does not say so
   */
  public static int beyond(String cell) {
    if (cell.isEmpty() || isFigureLike(cell) || cell.length() > LONGEST) {
      return 0;
    }
    char first = cell.charAt(0);
    if (first == '>' || first == '<' || first == '≥' || first == '≤') {
      boolean figure = FigureForm.POINT.end(cell.substring(1).strip()) > 0;
      return !figure ? 0 : first == '>' || first == '≥' ? 1 : -1;
    }
    return ofWord(cell, first);
  }

  private static int ofWord(String cell, char first) {
    StringBuilder word = new StringBuilder();
    for (int i = 0; i < cell.length(); i++) {
      char c = Character.toLowerCase(cell.charAt(i));
      if (c == ' ' && word.length() > 0 && isBeyond(word.toString())) {
        break;
      }
      if (" .-_+!*".indexOf(c) < 0) {
        word.append(c == 'o' ? '0' : c);
      }
    }
    String text = word.toString();
    if (BELOW.contains(text)) {
      return -1;
    }
    return !BEYOND.contains(text) ? 0 : first == '-' && !cell.endsWith("-") ? -1 : 1;
  }

  private static boolean isBeyond(String word) {
    return BEYOND.contains(word) || BELOW.contains(word);
  }

  /**
   * A figure with those taken out that stand for no figure.
   *
   * @param value a figure as it was read
   * @return the figure; infinite where it stands for a value beyond the range, NaN for none
   */
  public static double meant(double value) {
    if (Math.abs(value) == SCPI_INFINITY) {
      return Math.copySign(Double.POSITIVE_INFINITY, value);
    }
    return value == SCPI_NO_VALUE ? Double.NaN : value;
  }
}
