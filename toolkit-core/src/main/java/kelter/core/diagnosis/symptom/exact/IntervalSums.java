package kelter.core.diagnosis.symptom.exact;

import kelter.core.diagnosis.symptom.cases.SubsetSpace;

/**
 * The sums {@code I(L, U) = sum of f(B) over L <= B <= U} of a function f of sets of symptoms, and
 * the union product of f with others, {@code (f u g)(C) = sum of f(A) g(B) over A u B = C}: how the
 * symptoms are distributed that one cause or the other makes.
 *
 * <p>An interval is a number in base 3, one digit for each symptom: 0 where U lacks it, 2 where L
 * has it, 1 where it may be there or not. A digit 1 is the sum of what stands at 0 and at 2, so the
 * table is filled by additions. The product is then taken with the sets ordered by what was there
 * before, {@code (g u f)(C) = sum of g(B) I(C \ B, C) over B <= C}, without subtraction, at 3 to
 * the number of symptoms. The usual way, by zeta and Moebius transform (Bjoerklund, Husfeldt,
 * Kaski, Koivisto, Symposium on Theory of Computing 2007, from memory), is faster and loses digits.
 */
final class IntervalSums {

  private static final int[] NONE = {};

  private final SubsetSpace space;
  private final int[] made;
  private final int[][] ternary;
  private final double[][] sums;

  /**
   * Fills the table.
   *
   * @param space where the function lives
   * @param function the function f, 0 or more
   * @param made for each case the symptoms outside of which f is 0: f(B) = 0 unless B is a subset
   */
  IntervalSums(SubsetSpace space, double[] function, int[] made) {
    this.space = space;
    this.made = made;
    this.ternary = new int[space.cases()][];
    this.sums = new double[space.cases()][];
    for (int c = 0; c < sums.length; c++) {
      ternary[c] = made[c] == 0 ? NONE : space.ternary(c, made[c]);
      sums[c] =
          made[c] == 0
              ? new double[] {function[space.start(c)]}
              : filled(function, space.start(c), made[c], ternary[c]);
    }
  }

  private static double[] filled(double[] function, int start, int made, int[] ternary) {
    double[] table = new double[1 + 2 * ternary[made]];
    for (int set = made; ; set = set - 1 & made) {
      table[2 * ternary[set]] = function[start + set];
      if (set == 0) {
        break;
      }
    }
    for (int place = 1; place < table.length; place *= 3) {
      for (int block = 0; block < table.length; block += 3 * place) {
        for (int i = block; i < block + place; i++) {
          table[i + place] = table[i] + table[i + 2 * place];
        }
      }
    }
    return table;
  }

  /** The union product of this function and another. */
  double[] union(double[] other) {
    double[] union = space.zero();
    for (int c = 0; c < sums.length; c++) {
      if (made[c] == 0) {
        multiply(other, sums[c][0], c, union);
        continue;
      }
      int start = space.start(c);
      for (int set = 0; set < space.subsets(c); set++) {
        union[start + set] = union(other, start, set, c);
      }
    }
    return union;
  }

  /** In a case in which nothing is made, either product is one with a number. */
  private void multiply(double[] function, double factor, int number, double[] into) {
    for (int i = space.start(number); i < space.start(number + 1); i++) {
      into[i] = function[i] * factor;
    }
  }

  private double union(double[] other, int start, int set, int number) {
    double[] table = sums[number];
    int[] places = ternary[number];
    int own = set & made[number];
    double sum = 0;
    for (int added = own; ; added = added - 1 & own) {
      sum += other[start + (set ^ added)] * table[places[own ^ added] + 2 * places[added]];
      if (added == 0) {
        return sum;
      }
    }
  }

  /**
   * The transposed product: at C the sum over B of {@code f(B) v(C u B)}, which is what v comes to
   * if C is there already and this function adds to it.
   */
  double[] transposed(double[] value) {
    double[] transposed = space.zero();
    for (int c = 0; c < sums.length; c++) {
      if (made[c] == 0) {
        multiply(value, sums[c][0], c, transposed);
        continue;
      }
      int start = space.start(c);
      for (int set = 0; set < space.subsets(c); set++) {
        transposed[start + set] = transposed(value, start, set, c);
      }
    }
    return transposed;
  }

  private double transposed(double[] value, int start, int set, int number) {
    double[] table = sums[number];
    int[] places = ternary[number];
    int free = made[number] & ~set;
    int own = places[set];
    double sum = 0;
    for (int added = free; ; added = added - 1 & free) {
      sum += value[start + (set | added)] * table[own + 2 * places[added]];
      if (added == 0) {
        return sum;
      }
    }
  }
}
