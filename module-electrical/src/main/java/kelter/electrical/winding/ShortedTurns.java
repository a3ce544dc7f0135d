package kelter.electrical.winding;

import java.util.List;
import kelter.core.law.Celsius;
import kelter.core.law.CopperResistance;
import kelter.core.law.Require;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.electrical.caution.ElectricalCautions;

/**
 * Which share of a winding is missing from its resistance: 1 − R / R₀, both at 20 °C. Turns that
 * are shorted no longer count.
 *
 * <p>Copper. The share is below zero where the winding measures more than it should, which points
 * to a bad joint or a hot winding and not to shorted turns. A few shorted turns of many do not show
 * here: they show in heat, current and impedance.
 */
public final class ShortedTurns {

  /** Where the formula comes from. */
  public static final Source SOURCE =
      Source.commonPractice("resistance of a winding against its service figure, both at 20 °C");

  /** Where the comparison of impedances comes from. */
  public static final Source IMPEDANCE_SOURCE =
      Source.published(
          "law of induction: the inductance of a coil grows with the square of its turns");

  private ShortedTurns() {}

  /**
   * The share by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "shorted-turns",
        "which share of a winding is missing from its resistance",
        "missing = 1 - at-20 / expected; at-20 = resistance brought to 20 °C",
        "copper from -50 °C to 200 °C; few shorted turns of many do not show here",
        SOURCE,
        List.of(
            Parameter.required(
                "resistance", "resistance measured", QuantityKind.RESISTANCE, 1e-3, 1e6),
            Parameter.required(
                "expected", "what it should have at 20 °C", QuantityKind.RESISTANCE, 1e-3, 1e6),
            CopperResistance.temperature("temperature", "temperature of the winding")
                .optional("20 Cel")),
        List.of(
            new Output("missing", "share that is missing", QuantityKind.PERCENT),
            new Output("at-20", "resistance at 20 °C", QuantityKind.RESISTANCE)),
        List.of(Caution.UNPLUG),
        x -> {
          double cold = CopperResistance.at(x[0], x[2], Celsius.TWENTY);
          return new double[] {missing(cold, x[1]), cold};
        });
  }

  /**
   * The share by impedance by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation byImpedanceCalculation() {
    return new Calculation(
        "shorted-turns-by-impedance",
        "which share of its turns a coil lacks by its reactance beside one in order",
        "turns = 1 - sqrt(reactance / expected); reactance of coil-impedance",
        "the same position of the plunger or rotor; turns shorted in themselves count double or"
            + " more, so that it is the most that can be missing",
        IMPEDANCE_SOURCE,
        List.of(
            Parameter.required(
                "reactance", "reactance of the coil", QuantityKind.RESISTANCE, 1e-3, 1e6),
            Parameter.required(
                "expected",
                "reactance of one in order, at the same frequency",
                QuantityKind.RESISTANCE,
                1e-3,
                1e6)),
        List.of(new Output("turns", "share of its turns that is missing", QuantityKind.PERCENT)),
        List.of(ElectricalCautions.LIVE_PARTS),
        x -> new double[] {missingByReactance(x[0], x[1])});
  }

  /**
   * The share of its turns that a coil lacks at most.
   *
   * @param reactance its reactance, Ohm, above 0
   * @param expected the reactance of one in order at the same frequency, Ohm, above 0
   * @return the share, as a ratio, below 1; negative if it has more than it should
   * @throws IllegalArgumentException if a figure is not finite and above zero
   */
  public static double missingByReactance(double reactance, double expected) {
    Require.positive("reactance", reactance, "ohm");
    return 1 - Math.sqrt(reactance / Require.positive("reactance expected", expected, "ohm"));
  }

  /**
   * The share that is missing.
   *
   * @param cold the resistance at 20 °C, Ohm, above 0
   * @param expected what it should have, Ohm, above 0
   * @return the share, as a ratio, below 1; negative if it has more than it should
   * @throws IllegalArgumentException if a figure is not finite and above zero
   */
  public static double missing(double cold, double expected) {
    Require.positive("resistance", cold, "ohm");
    return 1 - cold / Require.positive("resistance expected", expected, "ohm");
  }
}
