package kelter.electrical.sensor;

import java.util.List;
import kelter.core.law.Require;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;

/**
 * What a sensor that gives pulses tells: a tacho coil n = f / k with k pulses a turn, a flow sensor
 * Q = f / k with k pulses a litre.
 *
 * <p>Holds from the least speed or flow at which the sensor counts every pulse; below it tells too
 * little, which no computation can see.
 */
public final class PulseSensor {

  /** Where the formula comes from. */
  public static final Source SOURCE =
      Source.commonPractice("frequency of pulses over pulses for each turn or litre");

  private static final QuantityKind PER_LITRE = QuantityKind.of("pulses per volume", "1/L");

  private PulseSensor() {}

  /**
   * Speed by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation speedCalculation() {
    return new Calculation(
        "tacho-speed",
        "what speed a tacho coil tells",
        "speed = frequency / pulses",
        "from the least speed at which every pulse is counted",
        SOURCE,
        List.of(
            Parameter.required(
                "frequency", "frequency of the pulses", QuantityKind.FREQUENCY, 0, 1e5),
            Parameter.required("pulses", "pulses for each turn", QuantityKind.RATIO, 0.5, 1000)),
        List.of(new Output("speed", "speed", QuantityKind.ROTATIONAL_SPEED)),
        List.of(),
        x -> new double[] {rate(x[0], x[1])});
  }

  /**
   * Flow by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation flowCalculation() {
    return new Calculation(
        "flow-sensor",
        "what flow a sensor with a turbine tells",
        "flow = frequency / pulses",
        "from the least flow at which every pulse is counted",
        SOURCE,
        List.of(
            Parameter.required(
                "frequency", "frequency of the pulses", QuantityKind.FREQUENCY, 0, 1e5),
            Parameter.required("pulses", "pulses for each litre", PER_LITRE, 1e3, 1e8)),
        List.of(new Output("flow", "flow rate", QuantityKind.FLOW)),
        List.of(),
        x -> new double[] {rate(x[0], x[1])});
  }

  /**
   * What is counted.
   *
   * @param frequency the frequency of the pulses, Hz, 0 or above
   * @param pulses the pulses for each turn, or for each m³, above 0
   * @return turns or m³, for each second
   * @throws IllegalArgumentException if a figure is out of its range
   */
  public static double rate(double frequency, double pulses) {
    Require.notNegative("frequency of the pulses", frequency, "Hz");
    return frequency / Require.positive("number of pulses", pulses, "");
  }
}
