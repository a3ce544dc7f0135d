package kelter.electrical.heater;

import java.util.List;
import kelter.core.law.Require;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.electrical.caution.ElectricalCautions;

/**
 * How much hotter scale makes the sheath of a heater: ΔT = P d / (λ A) (Fourier's law of heat
 * conduction), with the thickness d, the surface A and the conductivity λ of the scale.
 *
 * <p>An even layer that is thin beside the radius of the sheath. Compact limestone conducts 2.2
 * W/(m K), the porous scale of a heater half of it or less. Scale hardly takes power from the
 * water: it makes the element hotter until it, its seal or the thermal link gives way.
 */
public final class ScaleOnHeater {

  /** Where law and conductivity stand. */
  public static final Source SOURCE =
      Source.fromMemory(
          "Fourier's law of heat conduction; compact calcium carbonate 2.2 W/(m K) (Pezzin and"
              + " others, Influence of Limescale on Heating Elements Efficiency, 2013, seen in a"
              + " summary only); porous scale 1 W/(m K)");

  private static final QuantityKind CONDUCTIVITY =
      QuantityKind.of("thermal conductivity", "W/(m.K)");

  private ScaleOnHeater() {}

  /**
   * The rise by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "scale-on-heater",
        "how much hotter scale makes the sheath of a heater",
        "rise = power thickness / (conductivity surface); load = power / surface",
        "an even layer, thin beside the radius of the sheath; conductivity 0.5 to 2.2 W/(m K)",
        SOURCE,
        List.of(
            Parameter.required("power", "power of the heater", QuantityKind.POWER, 1, 1e5),
            Parameter.required(
                "surface", "surface of the sheath in water", QuantityKind.AREA, 1e-5, 10),
            Parameter.required(
                "thickness", "thickness of the scale", QuantityKind.DISTANCE, 0, 0.05),
            Parameter.optional(
                "conductivity",
                "thermal conductivity of the scale",
                CONDUCTIVITY,
                0.05,
                10,
                "1 W/(m.K)")),
        List.of(
            new Output(
                "rise", "how much hotter the sheath is", QuantityKind.TEMPERATURE_DIFFERENCE),
            new Output("load", "load of the surface", QuantityKind.of("surface load", "W/cm2"))),
        List.of(Caution.HOT_WATER, ElectricalCautions.HOT_PART),
        x -> new double[] {rise(x[0], x[1], x[2], x[3]), x[0] / x[1]});
  }

  /**
   * How much hotter the sheath is.
   *
   * @param power the power of the heater, W, above 0
   * @param surface the surface of the sheath in water, m², above 0
   * @param thickness the thickness of the scale, m, 0 or above
   * @param conductivity the thermal conductivity of the scale, W/(m K), above 0
   * @return the rise, K
   * @throws IllegalArgumentException if a figure is out of its range
   */
  public static double rise(double power, double surface, double thickness, double conductivity) {
    Require.positive("power of the heater", power, "W");
    Require.positive("surface of the sheath", surface, "m2");
    Require.notNegative("thickness of the scale", thickness, "m");
    return power
        * thickness
        / (Require.positive("thermal conductivity", conductivity, "W/(m K)") * surface);
  }
}
