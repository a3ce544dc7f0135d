package kelter.electrical.heater;

import java.util.List;
import kelter.core.law.Require;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;

/**
 * What a heater takes at the voltage that is really there: P = P_rated (U / U_rated)², I = P / U,
 * its resistance taken as unchanged.
 *
 * <p>Holds for heating wire within about 3 %; not for elements of positive temperature coefficient,
 * whose power hardly depends on the voltage.
 */
public final class ResistivePower {

  /** Where the formula comes from. */
  public static final Source SOURCE = Source.published("Ohm's law (1827) and Joule's law (1841)");

  private ResistivePower() {}

  /**
   * Power and current by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "power-at-voltage",
        "what a heater takes at the voltage that is really there",
        "at-voltage = power (actual / voltage)^2; current = at-voltage / actual",
        "heating wire, within about 3 %; not elements of positive temperature coefficient",
        SOURCE,
        List.of(
            Parameter.required("power", "rated power", QuantityKind.POWER, 0.1, 1e5),
            Parameter.required("voltage", "rated voltage", QuantityKind.VOLTAGE, 1, 1000),
            Parameter.required("actual", "voltage at the heater", QuantityKind.VOLTAGE, 1, 1000)),
        List.of(
            new Output("at-voltage", "power", QuantityKind.POWER),
            new Output("current", "current", QuantityKind.CURRENT)),
        List.of(),
        x -> {
          double power = power(x[0], x[1], x[2]);
          return new double[] {power, power / x[2]};
        });
  }

  /**
   * The power at a voltage.
   *
   * @param rated the rated power, W, above 0
   * @param ratedVoltage the rated voltage, V, above 0
   * @param voltage the voltage at the heater, V, above 0
   * @return the power, W
   * @throws IllegalArgumentException if a figure is not finite and above zero
   */
  public static double power(double rated, double ratedVoltage, double voltage) {
    Require.positive("rated power", rated, "W");
    Require.positive("rated voltage", ratedVoltage, "V");
    Require.positive("voltage at the heater", voltage, "V");
    double ratio = voltage / ratedVoltage;
    return rated * ratio * ratio;
  }
}
