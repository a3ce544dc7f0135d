package kelter.electrical.supply;

import java.util.List;
import kelter.core.law.Require;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityFormat;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.electrical.caution.ElectricalCautions;

/**
 * How weak a supply is, by its voltage with and without load, and what heat the weak place takes: Z
 * = (U₀ − U)/I, P = (U₀ − U) I.
 *
 * <p>A resistive load such as a heater; the voltage of the net is taken as unchanged between the
 * two readings, so read them within seconds and more than once. It says nothing of where the weak
 * place is.
 */
public final class SourceImpedance {

  /** Where the formula comes from. */
  public static final Source SOURCE = Source.published("Ohm's law (1827) and Joule's law (1841)");

  private SourceImpedance() {}

  /**
   * The impedance by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "source-impedance",
        "how weak a supply is by its voltage with and without load",
        "impedance = (idle - loaded) / current; heat = (idle - loaded) current",
        "resistive load, both voltages read within seconds",
        SOURCE,
        List.of(
            Parameter.required("idle", "voltage without load", QuantityKind.VOLTAGE, 1, 1000),
            Parameter.required("loaded", "voltage with load", QuantityKind.VOLTAGE, 1, 1000),
            Parameter.required("current", "current of the load", QuantityKind.CURRENT, 0.1, 100)),
        List.of(
            new Output("impedance", "impedance of supply and joints", QuantityKind.RESISTANCE),
            new Output("heat", "heat in supply and joints", QuantityKind.POWER)),
        List.of(ElectricalCautions.LIVE_PARTS, ElectricalCautions.FIXED_WIRING),
        x -> new double[] {impedance(x[0], x[1], x[2]), (x[0] - x[1]) * x[2]});
  }

  /**
   * The resistance of a joint by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation jointCalculation() {
    return new Calculation(
        "joint-heat",
        "what resistance a joint or contact has by the voltage across it, and its heat",
        "resistance = drop / current; heat = drop current",
        "the voltage across the joint alone, under load",
        SOURCE,
        List.of(
            Parameter.required("drop", "voltage across the joint", QuantityKind.VOLTAGE, 1e-4, 100),
            Parameter.required("current", "current through it", QuantityKind.CURRENT, 0.01, 100)),
        List.of(
            new Output("resistance", "resistance of the joint", QuantityKind.RESISTANCE),
            new Output("heat", "heat in the joint", QuantityKind.POWER)),
        List.of(ElectricalCautions.LIVE_PARTS, ElectricalCautions.FIXED_WIRING),
        x -> new double[] {impedance(x[0], 0, x[1]), x[0] * x[1]});
  }

  /**
   * The impedance of what lies between two voltages.
   *
   * @param idle the voltage without load, V
   * @param loaded the voltage with load, V, at most the one without
   * @param current the current of the load, A, above 0
   * @return the impedance, Ohm
   * @throws IllegalArgumentException if the loaded voltage is the higher one, which means that the
   *     net moved between the readings, or a figure is not finite
   */
  public static double impedance(double idle, double loaded, double current) {
    Require.positive("voltage without load", idle, "V");
    Require.notNegative("voltage with load", loaded, "V");
    if (loaded > idle) {
      throw new IllegalArgumentException(
          "the voltage is %s V with load and %s V without: the net moved, read both again"
              .formatted(QuantityFormat.plain(loaded), QuantityFormat.plain(idle)));
    }
    return (idle - loaded) / Require.positive("current", current, "A");
  }
}
