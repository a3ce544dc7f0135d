package kelter.core.book.figures;

import kelter.core.source.Source;

/**
 * How many of some cases were so, with the score interval of Wilson: for x of n and z = 1.96, (x +
 * z^2/2 -+ z sqrt(x (n - x)/n + z^2/4)) / (n + z^2).
 *
 * @param cases how many were so, 0 or more
 * @param of of how many, at least as many
 */
public record Share(int cases, int of) {

  /** Where the interval comes from. */
  public static final Source SOURCE =
      Source.fromMemory("Wilson, J. Am. Stat. Assoc. 22 (1927) 209");

  /**
   * Checks the numbers.
   *
   * @throws IllegalArgumentException if there are more cases than there can be, or fewer than 0
   */
  public Share {
    if (cases < 0 || of < cases) {
      throw new IllegalArgumentException(cases + " of " + of + " cases; 0 to all are allowed");
    }
  }

  /**
   * The share that was so.
   *
   * @return 0 to 1; not a number of no case
   */
  public double rate() {
    return cases / (double) of;
  }

  /**
   * Where the share of all such cases lies with 95 %.
   *
   * @return the interval within 0 to 1; all of it of no case
   */
  public Interval interval() {
    if (of == 0) {
      return new Interval(0, 1);
    }
    double z2 = Interval.TWO_SIDED_95 * Interval.TWO_SIDED_95;
    double x = cases;
    double middle = (x + z2 / 2) / (of + z2);
    double half = Interval.TWO_SIDED_95 / (of + z2) * Math.sqrt(x * (of - x) / of + z2 / 4);
    return new Interval(
        cases == 0 ? 0 : Math.max(0, middle - half), cases == of ? 1 : Math.min(1, middle + half));
  }
}
