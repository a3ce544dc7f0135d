package kelter.cli.trial;

/**
 * How the log loss of the same calls, or of books of calls, differs with a book, paired.
 *
 * @param number how many pairs
 * @param mean the mean difference, nats; above 0 it is worse with the book
 * @param error the standard error of that mean, nats
 */
record Difference(int number, double mean, double error) {

  /**
   * The difference of pairs.
   *
   * @param without the log loss of each without a book, nats
   * @param with the same with it, as many
   */
  static Difference of(double[] without, double[] with) {
    int number = without.length;
    double sum = 0;
    for (int i = 0; i < number; i++) {
      sum += with[i] - without[i];
    }
    double mean = sum / number;
    double squares = 0;
    for (int i = 0; i < number; i++) {
      double deviation = with[i] - without[i] - mean;
      squares += deviation * deviation;
    }
    return new Difference(number, mean, Math.sqrt(squares / (number - 1.0) / number));
  }
}
