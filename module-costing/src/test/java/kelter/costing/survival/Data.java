package kelter.costing.survival;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/** Published lives. */
final class Data {

  private Data() {}

  /**
   * NIST/SEMATECH e-Handbook 8.4.1.3, in hours: ten failures, and ten units still alive at 500 h.
   */
  static List<Observed> nist() {
    List<Observed> lives = new ArrayList<>();
    DoubleStream.of(54, 187, 216, 240, 244, 335, 361, 373, 375, 386)
        .forEach(hours -> lives.add(Observed.failedAt(hours)));
    IntStream.range(0, 10).forEach(i -> lives.add(Observed.aliveAt(500)));
    return lives;
  }

  /**
   * Remission under 6-mercaptopurine, in weeks, a plus for those still in remission: Freireich et
   * al. (1963), as in Gehan (1965) and in the data set gehan of R's MASS. From memory; its summary
   * (42 patients, median 10.5, mean 12.88, 71.43 % events) was compared with a published one.
   */
  static List<Observed> treated() {
    return lives("6 6 6 6+ 7 9+ 10 10+ 11+ 13 16 17+ 19+ 20+ 22 23 25+ 32+ 32+ 34+ 35+");
  }

  /** The other group of the same trial. */
  static List<Observed> placebo() {
    return lives("1 1 2 2 3 4 4 5 5 8 8 8 8 11 11 12 12 15 17 22 23");
  }

  private static List<Observed> lives(String text) {
    return Arrays.stream(text.split(" "))
        .map(word -> new Observed(Double.parseDouble(word.replace("+", "")), !word.endsWith("+")))
        .toList();
  }
}
