package kelter.core.diagnosis.symptom.cases;

/**
 * Where functions of a set of symptoms live: arrays with one entry for each case of {@link
 * Tracking} and each subset of the symptoms that are tracked in it. A subset is a number, one bit
 * for each symptom; the entries of a case stand together. One thread at a time may ask.
 */
public final class SubsetSpace {

  private final int[] bits;
  private final int[] start;

  /** By the number of bits and what is made of them. */
  private final int[][][] ternary;

  /**
   * A space.
   *
   * @param bits for each case how many symptoms are tracked
   */
  public SubsetSpace(int... bits) {
    this.bits = bits.clone();
    this.start = new int[bits.length + 1];
    int most = 0;
    for (int c = 0; c < bits.length; c++) {
      start[c + 1] = start[c] + (1 << bits[c]);
      most = Math.max(most, bits[c]);
    }
    this.ternary = new int[most + 1][][];
  }

  public int cases() {
    return bits.length;
  }

  /** Where the entries of a case begin; those of the case after the last at the end of all. */
  public int start(int number) {
    return start[number];
  }

  /** How many subsets there are in a case. */
  public int subsets(int number) {
    return 1 << bits[number];
  }

  /** A function that is 0 everywhere. */
  public double[] zero() {
    return new double[start[bits.length]];
  }

  /** Sum over all cases and subsets of the product of two functions. */
  public static double dot(double[] one, double[] other) {
    double sum = 0;
    for (int i = 0; i < one.length; i++) {
      sum += one[i] * other[i];
    }
    return sum;
  }

  /** Adds a multiple of a function to another. */
  public static void add(double factor, double[] function, double[] to) {
    for (int i = 0; i < to.length; i++) {
      to[i] += factor * function[i];
    }
  }

  /** Adds a number to a function at the empty set, in each case. */
  public void addAtNone(double number, double[] to) {
    for (int c = 0; c < bits.length; c++) {
      to[start[c]] += number;
    }
  }

  /** The sum over all cases of a function at the empty set. */
  public double atNone(double[] function) {
    double sum = 0;
    for (int c = 0; c < bits.length; c++) {
      sum += function[start[c]];
    }
    return sum;
  }

  /**
   * For each subset in a case the sum of the places of its symptoms in base 3.
   *
   * @param made the symptoms that have a place; the others count 0
   */
  public int[] ternary(int number, int made) {
    int size = bits[number];
    if (ternary[size] == null) {
      ternary[size] = new int[1 << size][];
    }
    if (ternary[size][made] == null) {
      ternary[size][made] = places(1 << size, made);
    }
    return ternary[size][made];
  }

  private static int[] places(int subsets, int made) {
    int[] places = new int[subsets];
    int place = 1;
    for (int bit = 1; bit < subsets; bit <<= 1) {
      int digit = (made & bit) == 0 ? 0 : place;
      for (int set = 0; set < bit; set++) {
        places[bit | set] = places[set] + digit;
      }
      place = digit == 0 ? place : 3 * place;
    }
    return places;
  }
}
