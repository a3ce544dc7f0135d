package kelter.core.book.learning;

import java.io.Serializable;

/**
 * How often something was so and how often it was not, by the weights of the jobs.
 *
 * @param yes how often it was, 0 or more
 * @param no how often it was not, 0 or more
 */
record YesNo(double yes, double no) implements Serializable {

  static final YesNo NONE = new YesNo(0, 0);

  YesNo and(boolean so, double weight) {
    return so ? new YesNo(yes + weight, no) : new YesNo(yes, no + weight);
  }

  YesNo plus(YesNo other) {
    return new YesNo(yes + other.yes, no + other.no);
  }

  double all() {
    return yes + no;
  }

  double[] counts() {
    return new double[] {yes, no};
  }
}
