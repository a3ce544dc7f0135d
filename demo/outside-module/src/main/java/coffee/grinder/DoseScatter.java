package coffee.grinder;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import org.apache.commons.statistics.descriptive.DoubleStatistics;
import org.apache.commons.statistics.descriptive.Statistic;

/**
 * How far the doses of a grinder differ: mean and standard deviation of three weighed doses, which
 * a library works out.
 */
final class DoseScatter {

  private static final double MOST = 1; // kg

  private DoseScatter() {}

  /** The calculation by name. */
  static Calculation calculation() {
    return new Calculation(
        "dose-scatter",
        "how far three doses of a coffee grinder differ",
        "mean = sum / 3, deviation = sqrt(sum of squares of differences from the mean / 2)",
        "doses weighed one after another at the same setting",
        Source.published("JCGM 100:2008, 4.2.1 and 4.2.2"),
        List.of(dose("first"), dose("second"), dose("third")),
        List.of(
            new Output("mean", "mean of the doses", QuantityKind.MASS),
            new Output("deviation", "standard deviation of a dose", QuantityKind.MASS)),
        List.of(),
        DoseScatter::of);
  }

  private static Parameter dose(String id) {
    return Parameter.required(id, id + " dose", QuantityKind.MASS, 0, MOST);
  }

  /**
   * Mean and standard deviation.
   *
   * @param doses two doses or more, in kg
   * @return both, in kg
   */
  static double[] of(double... doses) {
    DoubleStatistics all = DoubleStatistics.of(Statistic.MEAN, Statistic.STANDARD_DEVIATION);
    for (double dose : doses) {
      all.accept(dose);
    }
    return new double[] {
      all.getAsDouble(Statistic.MEAN), all.getAsDouble(Statistic.STANDARD_DEVIATION)
    };
  }
}
