package kelter.electrical.drive;

import java.util.List;
import kelter.core.law.Require;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.electrical.caution.ElectricalCautions;

/**
 * How tight a belt is, from the note of its free span: T = 4 m L² f², with the mass m of a metre of
 * belt, the free span L between two pulleys and the frequency f of the plucked span.
 *
 * <p>The law of the stretched string. It holds for thin belts plucked at rest, from 10 Hz to 300
 * Hz; a stiff or short span sounds higher than its tension tells.
 */
public final class BeltTension {

  /** Where the formula comes from. */
  public static final Source SOURCE =
      Source.fromMemory("law of the stretched string (Mersenne), first mode");

  private BeltTension() {}

  /**
   * The tension by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "belt-tension",
        "how tight a belt is, from the frequency of its plucked span",
        "tension = 4 mass span^2 frequency^2",
        "thin belts at rest, 10 Hz to 300 Hz",
        SOURCE,
        List.of(
            Parameter.required(
                "mass",
                "mass of a metre of belt",
                QuantityKind.of("mass of a length", "kg/m"),
                1e-3,
                2),
            Parameter.required(
                "span", "free span between two pulleys", QuantityKind.DISTANCE, 0.02, 3),
            Parameter.required(
                "frequency", "frequency of the plucked span", QuantityKind.FREQUENCY, 1, 1000)),
        List.of(new Output("tension", "tension", QuantityKind.of("force", "N"))),
        List.of(ElectricalCautions.TURNING),
        x -> new double[] {tension(x[0], x[1], x[2])});
  }

  /**
   * The tension.
   *
   * @param mass the mass of a metre of belt, kg/m, above 0
   * @param span the free span, m, above 0
   * @param frequency the frequency of the plucked span, Hz, above 0
   * @return the tension, N
   * @throws IllegalArgumentException if a figure is not finite and above zero
   */
  public static double tension(double mass, double span, double frequency) {
    double wave = 2 * Require.positive("span", span, "m");
    double speed = wave * Require.positive("frequency", frequency, "Hz");
    return Require.positive("mass of a length", mass, "kg/m") * speed * speed;
  }

  /**
   * What the note of a span becomes with its tension.
   *
   * @param tension the tension, as a ratio of that in order, 0 or more
   * @return the frequency, as a ratio of that in order
   * @throws IllegalArgumentException if the ratio is negative or not finite
   */
  public static double note(double tension) {
    return Math.sqrt(Require.notNegative("ratio of the tension", tension, ""));
  }
}
