package kelter.core.file.log.cell;

/**
 * What the cells of one column tell about the decimal sign. A single mark before exactly three
 * digits, with one to three digits in front that are not 0, may be a decimal sign or stand between
 * thousands; any other mark is plain.
 */
public final class DecimalEvidence {

  private final int[] sure = new int[2];
  private final int[] open = new int[2];
  private final String[] examples = new String[2];
  private final String[] doubtful = new String[2];
  private final boolean[] groups = new boolean[2];
  private int whole;

  /** Nothing seen yet. */
  public DecimalEvidence() {}

  /**
   * Takes in a cell.
   *
   * @param cell a cell that is no time
   */
  public void add(String cell) {
    int i = !cell.isEmpty() && "+-−".indexOf(cell.charAt(0)) >= 0 ? 1 : 0;
    int start = i;
    int points = 0;
    int commas = 0;
    int last = -1;
    boolean threes = true;
    boolean blanks = false;
    int since = 0;
    for (; i < cell.length(); i++) {
      char c = cell.charAt(i);
      if (c == '.' || c == ',') {
        threes &= last < 0 ? since >= 1 && since <= 3 : since == 3;
        points += c == '.' ? 1 : 0;
        commas += c == ',' ? 1 : 0;
        last = i;
        since = 0;
      } else if (c >= '0' && c <= '9') {
        since++;
      } else if (since > 0 && FigureForm.BLANKS.indexOf(c) >= 0 && isDigit(cell, i + 1)) {
        blanks = true;
      } else {
        break;
      }
    }
    if (i > start) {
      // Thousands with a blank or a power of ten behind leave the mark nothing but the decimals.
      boolean plain = blanks || (i < cell.length() && (cell.charAt(i) | ' ') == 'e');
      boolean mayGroup = since == 3 && threes && !plain;
      weigh(cell.substring(start, i), points, commas, last - start, mayGroup);
    }
  }

  private static boolean isDigit(String cell, int at) {
    return at < cell.length() && cell.charAt(at) >= '0' && cell.charAt(at) <= '9';
  }

  private void weigh(String figure, int points, int commas, int last, boolean threes) {
    if (points + commas == 0) {
      whole++;
      return;
    }
    int mark = figure.charAt(last) == '.' ? 0 : 1;
    if (points > 0 && commas > 0) {
      // 1,234.5: the last of the two is the decimal sign, if it stands there once.
      if ((mark == 0 ? points : commas) == 1) {
        sure(mark, figure);
        groups[1 - mark] = true;
      }
    } else if (points + commas > 1) {
      // 1,234,567: the mark stands between thousands.
      if (threes) {
        sure(1 - mark, figure);
        groups[mark] = true;
      }
    } else if (threes && figure.charAt(0) != '0') {
      open[mark]++;
      doubtful[mark] = doubtful[mark] == null ? figure : doubtful[mark];
    } else {
      sure(mark, figure);
    }
  }

  private void sure(int mark, String figure) {
    sure[mark]++;
    examples[mark] = examples[mark] == null ? figure : examples[mark];
  }

  private static int place(char mark) {
    return mark == '.' ? 0 : 1;
  }

  /**
   * How many cells show that a mark is the decimal sign.
   *
   * @param mark a point or a comma
   * @return the number
   */
  public int sure(char mark) {
    return sure[place(mark)];
  }

  /**
   * The first of the cells that show that a mark is the decimal sign.
   *
   * @param mark a point or a comma
   * @return the figure, null if there is none
   */
  public String example(char mark) {
    return examples[place(mark)];
  }

  /**
   * The first of the cells in which a mark may be a decimal sign or stand between thousands.
   *
   * @param mark a point or a comma
   * @return the figure, null if there is none
   */
  public String doubtful(char mark) {
    return doubtful[place(mark)];
  }

  /**
   * Whether a cell shows that a mark stands between thousands.
   *
   * @param mark a point or a comma
   * @return whether one does
   */
  public boolean groupsBy(char mark) {
    return groups[place(mark)];
  }

  /**
   * Whether there are figures without any mark beside those with one: then the mark stands between
   * thousands, since decimals are written in every row or in none.
   *
   * @return whether there are
   */
  public boolean hasWhole() {
    return whole > 0;
  }
}
