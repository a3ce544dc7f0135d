package coffee.grinder;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;

/**
 * How much of the life of burrs is used: their makers rate them by the coffee that goes through
 * them, worn = throughput / rated. Beyond their rating burrs count as worn out.
 */
final class BurrLife {

  private static final double MOST = 1e6; // kg

  private BurrLife() {}

  /** The calculation by name. */
  static Calculation calculation() {
    return new Calculation(
        "burr-life",
        "how much of the life of burrs is used",
        "worn = least of throughput / rated and 1",
        "burrs that saw no stone",
        Source.commonPractice("burrs are rated by the coffee that goes through them"),
        List.of(
            Parameter.required("throughput", "coffee ground so far", QuantityKind.MASS, 0, MOST),
            Parameter.required(
                "rated", "coffee for which the burrs are made", QuantityKind.MASS, 1, MOST)),
        List.of(new Output("worn", "share of the life that is used", QuantityKind.PERCENT)),
        List.of(),
        x -> new double[] {worn(x[0], x[1])});
  }

  /**
   * The share of the life that is used.
   *
   * @param throughput the coffee ground so far, in kg
   * @param rated the coffee for which the burrs are made, in kg, above 0
   * @return a ratio from 0 to 1
   */
  static double worn(double throughput, double rated) {
    return Math.min(1, throughput / rated);
  }
}
