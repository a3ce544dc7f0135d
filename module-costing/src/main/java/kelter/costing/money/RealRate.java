package kelter.costing.money;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;

/**
 * The discount rate that goes with today's prices: {@code real = (1 + nominal) / (1 + inflation) -
 * 1}.
 *
 * <p>Any rates above -100 % a year. Source: NIST Handbook 135 (1995 edition), real and nominal
 * discount rates.
 */
public final class RealRate {

  private RealRate() {}

  /**
   * This law by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "real-rate",
        "The discount rate that goes with today's prices",
        "real = (1 + nominal) / (1 + inflation) - 1",
        "Rates from -50 % to 100 % a year.",
        SinglePresentValue.SOURCE,
        List.of(
            Parameter.required("nominal", "what money costs a year", QuantityKind.PERCENT, -0.5, 1),
            Parameter.required(
                "inflation", "what prices rise a year", QuantityKind.PERCENT, -0.5, 1)),
        List.of(new Output("real", "real discount rate a year", QuantityKind.PERCENT)),
        List.of(),
        x -> new double[] {of(x[0], x[1])});
  }

  /**
   * The real rate.
   *
   * @param nominal the rate in the money of each year, as a ratio a year, above -1
   * @param inflation the rise of prices, as a ratio a year, above -1
   * @return the rate in today's money, as a ratio a year
   * @throws IllegalArgumentException if a rate is outside its range
   */
  public static double of(double nominal, double inflation) {
    PriceTerms.requireRate(nominal);
    PriceTerms.requireRate(inflation);
    return (nominal - inflation) / (1 + inflation);
  }
}
