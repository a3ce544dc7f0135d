package kelter.core.book.figures;

import java.util.Arrays;

/** Figures as they come in. */
final class Figures {

  private double[] values = new double[8];
  private int number;

  void add(double value) {
    if (number == values.length) {
      values = Arrays.copyOf(values, 2 * number);
    }
    values[number++] = value;
  }

  int number() {
    return number;
  }

  double[] all() {
    return Arrays.copyOf(values, number);
  }
}
