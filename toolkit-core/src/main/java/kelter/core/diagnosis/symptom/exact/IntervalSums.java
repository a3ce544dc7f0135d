package kelter.core.diagnosis.symptom.exact;

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

  private final SubsetSpace space;
  private final int made;
  private final int[] ternary;
  private final double[][] sums;

  /**
   * Fills the table.
   *
   * @param space where the function lives
   * @param function the function f, 0 or more
   * @param made the symptoms outside of which f is 0: f(B) = 0 unless B is a subset
   */
  IntervalSums(SubsetSpace space, double[] function, int made) {
    this.space = space;
    this.made = made;
    this.ternary = ternary(space.subsets(), made);
    this.sums = new double[space.cases()][];
    for (int c = 0; c < sums.length; c++) {
      sums[c] = filled(function, c << space.bits());
    }
  }

  /** For each subset the sum of the places of its symptoms in base 3; those not made count 0. */
  private static int[] ternary(int subsets, int made) {
    int[] ternary = new int[subsets];
    int place = 1;
    for (int bit = 1; bit < subsets; bit <<= 1) {
      int digit = (made & bit) == 0 ? 0 : place;
      for (int set = 0; set < bit; set++) {
        ternary[bit | set] = ternary[set] + digit;
      }
      place = digit == 0 ? place : 3 * place;
    }
    return ternary;
  }

  private double[] filled(double[] function, int start) {
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
      int start = c << space.bits();
      for (int set = 0; set < space.subsets(); set++) {
        union[start + set] = union(other, start, set, sums[c]);
      }
    }
    return union;
  }

  private double union(double[] other, int start, int set, double[] table) {
    int own = set & made;
    double sum = 0;
    for (int added = own; ; added = added - 1 & own) {
      sum += other[start + (set ^ added)] * table[ternary[own ^ added] + 2 * ternary[added]];
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
      int start = c << space.bits();
      for (int set = 0; set < space.subsets(); set++) {
        transposed[start + set] = transposed(value, start, set, sums[c]);
      }
    }
    return transposed;
  }

  private double transposed(double[] value, int start, int set, double[] table) {
    int free = made & ~set;
    int own = ternary[set];
    double sum = 0;
    for (int added = free; ; added = added - 1 & free) {
      sum += value[start + (set | added)] * table[own + 2 * ternary[added]];
      if (added == 0) {
        return sum;
      }
    }
  }
}
