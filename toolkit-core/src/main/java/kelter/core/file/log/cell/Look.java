package kelter.core.file.log.cell;

import java.util.List;

/** What a cell looks like. */
public enum Look {
  /** A time. */
  TIME,
  /** A figure, perhaps with its unit behind it. */
  FIGURE,
  /** A mark of a value beyond the range. */
  BEYOND,
  /** A mark of no value, or nothing. */
  NONE,
  /** Anything else. */
  WORDS;

  private static final int LONGEST_UNIT = 8;

  /** How figures may be written; which of them it is, is not asked yet. */
  private static final List<FigureForm> FORMS =
      List.of(new FigureForm('.', true), new FigureForm(',', true));

  /**
   * The look of a cell.
   *
   * @param cell a cell without blanks around it
   * @return what it looks like
   */
  public static Look of(String cell) {
    if (CellTime.of(cell).isTime()) {
      return TIME;
    }
    if (Marks.beyond(cell) != 0) {
      return BEYOND;
    }
    if (Marks.isNoValue(cell)) {
      return NONE;
    }
    return isFigure(cell) ? FIGURE : WORDS;
  }

  /**
   * Whether a cell is a figure, a time, or a mark in their place.
   *
   * @param cell a cell without blanks around it
   * @return whether it is
   */
  public static boolean isReading(String cell) {
    return of(cell) != WORDS;
  }

  /**
   * Whether a cell is a figure, perhaps with its unit behind it.
   *
   * @param cell a cell without blanks around it
   * @return whether it is
   */
  public static boolean isFigure(String cell) {
    for (FigureForm form : FORMS) {
      int end = form.end(cell);
      if (end > 0 && isUnitBehind(cell.substring(end).strip())) {
        return true;
      }
    }
    return false;
  }

  static boolean isUnitBehind(String rest) {
    if (rest.isEmpty()) {
      return true;
    }
    boolean plain =
        rest.length() <= LONGEST_UNIT
            && rest.chars().noneMatch(c -> Character.isDigit(c) || ",.:;|-".indexOf(c) >= 0);
    return plain || (rest.length() <= 2 * LONGEST_UNIT && Heading.isUnit(rest));
  }
}
