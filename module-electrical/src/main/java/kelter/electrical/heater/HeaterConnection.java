package kelter.electrical.heater;

import java.util.List;
import kelter.core.law.Require;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;

/**
 * Power and current of like heating elements by how they are connected: in series P = U²/(nR), in
 * parallel P = nU²/R, three in star P = U²/R and in delta P = 3U²/R, U being the voltage between
 * the lines.
 *
 * <p>Like elements of unchanged resistance. Star and delta always have three elements and symmetric
 * voltages. Heaters for two voltages have their elements in series for the higher and in parallel
 * for the lower one: the power is then the same, and a strap left in the wrong place gives a
 * quarter or four times of it.
 */
public final class HeaterConnection {

  /** Where the formulas come from. */
  public static final Source SOURCE =
      Source.published("Ohm's law (1827) and Kirchhoff's laws (1845)");

  /** How elements are connected. */
  public enum Connection {
    /** One after the other, on one phase. */
    SERIES,
    /** Side by side, on one phase. */
    PARALLEL,
    /** Three from the lines to a common point. */
    STAR,
    /** Three between the lines. */
    DELTA
  }

  private static final double SQRT_3 = Math.sqrt(3);

  private HeaterConnection() {}

  /**
   * Power and current by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "heater-connection",
        "what like elements take in series, in parallel, in star and in delta",
        "series voltage^2/(n r); parallel n voltage^2/r; star voltage^2/r; delta 3 voltage^2/r",
        "like elements; star and delta have three, and symmetric voltages between the lines; two"
            + " voltages: series on the higher, parallel on the lower",
        SOURCE,
        List.of(
            Parameter.required(
                "resistance", "resistance of one element", QuantityKind.RESISTANCE, 0.1, 1e5),
            Parameter.required(
                "voltage", "voltage between the lines", QuantityKind.VOLTAGE, 1, 1000),
            Parameter.choice(
                "connection",
                "how they are connected",
                List.of("series", "parallel", "star", "delta"),
                "parallel"),
            Parameter.optional("elements", "number of elements", QuantityKind.COUNT, 1, 24, "3")),
        List.of(
            new Output("power", "power", QuantityKind.POWER),
            new Output("current", "current in a line", QuantityKind.CURRENT)),
        List.of(),
        x -> {
          Connection connection = Connection.values()[(int) Math.round(x[2])];
          double power = power(x[0], x[1], connection, x[3]);
          return new double[] {power, lineCurrent(power, x[1], connection)};
        });
  }

  /**
   * The power of all elements.
   *
   * @param resistance the resistance of one element, Ohm, above 0
   * @param voltage the voltage between the lines, V, above 0
   * @param connection how they are connected
   * @param elements the number of elements, 1 or more; 3 in star and delta
   * @return the power, W
   * @throws IllegalArgumentException if a figure is out of its range, or star or delta do not have
   *     three elements
   */
  public static double power(
      double resistance, double voltage, Connection connection, double elements) {
    Require.positive("resistance", resistance, "ohm");
    Require.positive("voltage", voltage, "V");
    double one = voltage * voltage / resistance;
    if (connection == Connection.SERIES || connection == Connection.PARALLEL) {
      Require.within("number of elements", elements, 1, Double.MAX_VALUE, "");
      return connection == Connection.SERIES ? one / elements : one * elements;
    }
    if (elements != 3) {
      throw new IllegalArgumentException(
          "there are " + elements + " elements; star and delta have 3");
    }
    return connection == Connection.STAR ? one : 3 * one;
  }

  /**
   * The current in a line.
   *
   * @param power the power of all elements, W
   * @param voltage the voltage between the lines, V, above 0
   * @param connection how they are connected
   * @return the current, A
   * @throws IllegalArgumentException if a figure is not finite and above zero
   */
  public static double lineCurrent(double power, double voltage, Connection connection) {
    double single =
        Require.positive("power", power, "W") / Require.positive("voltage", voltage, "V");
    boolean threePhase = connection == Connection.STAR || connection == Connection.DELTA;
    return threePhase ? single / SQRT_3 : single;
  }
}
