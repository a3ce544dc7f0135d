package kelter.core.file.log.cell;

/**
 * How figures are written. Apostrophes and blanks may always stand between thousands (ISO 80000-1,
 * 7.3.1, has the blank; from memory), the comma or the point only where that is told.
 *
 * @param decimal the decimal sign, a point or a comma
 * @param grouped whether the other of the two stands between thousands
 */
public record FigureForm(char decimal, boolean grouped) {

  /** Decimals follow a point. */
  public static final FigureForm POINT = new FigureForm('.', false);

  static final String BLANKS = "'’ \u00a0\u2009\u202f";

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

  /**
   * The other of point and comma.
   *
   * @return the sign that is not the decimal one
   */
  public char other() {
    return decimal == '.' ? ',' : '.';
  }

  private boolean groups(char c) {
    return BLANKS.indexOf(c) >= 0 || (grouped && c == other());
  }

  /**
   * How much of a cell is a figure.
   *
   * @param cell a cell
   * @return how many characters, 0 if it does not start with a figure
   */
  public int end(String cell) {
    int i = 0;
    int n = cell.length();
    if (i < n && isSign(cell.charAt(i))) {
      i++;
    }
    int start = i;
    while (i < n && isDigit(cell.charAt(i))) {
      i++;
    }
    int digits = i - start;
    if (digits >= 1 && digits <= 3 && i < n) {
      int grouped = groupsEnd(cell, i);
      digits += grouped - i;
      i = grouped;
    }
    if (i < n && cell.charAt(i) == decimal) {
      i++;
      int from = i;
      while (i < n && isDigit(cell.charAt(i))) {
        i++;
      }
      digits += i - from;
    }
    return digits == 0 ? 0 : exponentEnd(cell, i);
  }

  /**
   * The figure that a cell starts with.
   *
   * @param cell a cell
   * @return the figure
   * @throws IllegalArgumentException if there is none
   */
  public String leading(String cell) {
    int end = end(cell);
    if (end == 0) {
      throw refusal(cell);
    }
    return cell.substring(0, end);
  }

  /** Says that a cell is no figure, and why if it is one in the other form. */
  IllegalArgumentException refusal(String cell) {
    FigureForm other = new FigureForm(other(), false);
    boolean fits = !cell.isEmpty() && other.end(cell) == cell.length();
    String why = fits ? "; the others have a decimal " + (decimal == '.' ? "point" : "comma") : "";
    return new IllegalArgumentException("'" + cell + "' is not a figure" + why);
  }

  private static boolean isSign(char c) {
    return c == '-' || c == '+' || c == '−';
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  /** Behind groups of three digits, each with the same sign in front. */
  private int groupsEnd(String cell, int from) {
    char sign = cell.charAt(from);
    int i = from;
    while (groups(sign) && i + 3 < cell.length() && cell.charAt(i) == sign) {
      boolean three =
          isDigit(cell.charAt(i + 1)) && isDigit(cell.charAt(i + 2)) && isDigit(cell.charAt(i + 3));
      boolean more = i + 4 < cell.length() && isDigit(cell.charAt(i + 4));
      if (!three || more) {
        break;
      }
      i += 4;
    }
    return i;
  }

  private static int exponentEnd(String cell, int end) {
    int i = end;
    int n = cell.length();
    if (i >= n || (cell.charAt(i) != 'e' && cell.charAt(i) != 'E')) {
      return end;
    }
    i++;
    if (i < n && isSign(cell.charAt(i))) {
      i++;
    }
    int digits = i;
    while (i < n && isDigit(cell.charAt(i))) {
      i++;
    }
    return i > digits ? i : end;
  }

  /**
   * The value of a figure.
   *
   * @param figure a whole figure, as {@link #end} finds it
   * @return the double nearest to it, infinite if it is too large for one
   */
  public double value(String figure) {
    long digits = 0;
    int count = 0;
    int decimals = 0;
    boolean negative = false;
    boolean behind = false;
    for (int i = 0; i < figure.length(); i++) {
      char c = figure.charAt(i);
      if (isDigit(c)) {
        digits = digits * 10 + (c - '0');
        count += digits == 0 ? 0 : 1;
        decimals += behind ? 1 : 0;
      } else if (c == decimal) {
        behind = true;
      } else if (c == '-' || c == '−') {
        negative = true;
      } else if (c == 'e' || c == 'E') {
        count = Integer.MAX_VALUE;
      }
      if (count > EXACT_DIGITS || decimals >= TENS.length) {
        return Double.parseDouble(plain(figure));
      }
    }
    // A quotient of two exact doubles is the double nearest to the figure.
    double value = digits / TENS[decimals];
    return negative ? -value : value;
  }

  private String plain(String figure) {
    StringBuilder plain = new StringBuilder(figure.length());
    for (int i = 0; i < figure.length(); i++) {
      char c = figure.charAt(i);
      if (!groups(c)) {
        plain.append(c == decimal ? '.' : c == '−' ? '-' : c);
      }
    }
    return plain.toString();
  }

  /**
   * The place of the last digit of a figure.
   *
   * @param figure a whole figure, as {@link #end} finds it
   * @return the power of ten of its last digit: -1 for 26.4, 2 for 26.4e3
   */
  public int lastDigit(String figure) {
    int e = Math.max(figure.indexOf('e'), figure.indexOf('E'));
    int end = e < 0 ? figure.length() : e;
    int at = figure.indexOf(decimal);
    int decimals = at < 0 ? 0 : end - at - 1;
    if (e < 0) {
      return -decimals;
    }
    double exponent = POINT.value(figure.substring(e + 1));
    return (int) Math.max(-999, Math.min(999, exponent)) - decimals;
  }
}
