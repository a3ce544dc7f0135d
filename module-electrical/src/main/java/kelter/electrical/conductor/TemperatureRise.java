package kelter.electrical.conductor;

import java.util.List;
import kelter.core.law.Require;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.core.source.Standing;

/**
 * How much warmer than the surrounding air a winding became, by its resistance before and after
 * (IEC 60335-1, 11.8): Δt = (R₂ − R₁)/R₁ · (k + t₁) − (t₂ − t₁), t in °C, k = 234.5 for copper and
 * 225 for aluminium.
 *
 * <p>R₁ is read at the start with the winding at room temperature t₁, R₂ straight after switching
 * off with the room at t₂. IEC 60034-1 takes k = 235 for copper: the rise is then up to 0.2 % more.
 */
public final class TemperatureRise {

  /** Where the formula stands. */
  public static final Source SOURCE =
      new Source(
          "IEC 60335-1, 11.8 (constants in a text that cites it, clause number not looked up)",
          Standing.SECOND_HAND);

  /** The metal of a winding. */
  public enum Metal {
    /** Copper, k = 234.5. */
    COPPER(234.5),
    /** Aluminium, k = 225. */
    ALUMINIUM(225);

    private final double k;

    Metal(double k) {
      this.k = k;
    }
  }

  private static final double KELVIN = 273.15;

  private TemperatureRise() {}

  /**
   * The rise by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "temperature-rise",
        "how much warmer than the room a winding became, by its resistance",
        "rise = (after - before) / before * (k + room-before) - (room-after - room-before), °C",
        "copper (k = 234.5) or aluminium (k = 225), room from -20 °C to 60 °C",
        SOURCE,
        List.of(
            resistance("before", "resistance at the start"),
            resistance("after", "resistance at the end"),
            room("room-before", "temperature of winding and room at the start"),
            room("room-after", "temperature of the room at the end"),
            Parameter.choice(
                "metal", "metal of the winding", List.of("copper", "aluminium"), "copper")),
        List.of(
            new Output("rise", "temperature rise", QuantityKind.TEMPERATURE_DIFFERENCE),
            new Output("winding", "temperature of the winding", QuantityKind.TEMPERATURE)),
        List.of(Caution.UNPLUG),
        x -> {
          Metal metal = Metal.values()[(int) Math.round(x[4])];
          double rise = rise(x[0], x[1], x[2], x[3], metal);
          return new double[] {rise, x[3] + rise};
        });
  }

  private static Parameter resistance(String id, String title) {
    return Parameter.required(id, title, QuantityKind.RESISTANCE, 1e-4, 1e6);
  }

  private static Parameter room(String id, String title) {
    return Parameter.optional(id, title, QuantityKind.TEMPERATURE, 253.15, 333.15, "20 Cel");
  }

  /**
   * The temperature rise.
   *
   * @param before the resistance at the start, Ohm, above 0
   * @param after the resistance at the end, Ohm, above 0
   * @param roomBefore the temperature of winding and room at the start, K
   * @param roomAfter the temperature of the room at the end, K
   * @param metal the metal of the winding
   * @return the rise above the room at the end, K
   * @throws IllegalArgumentException if a resistance is not above zero or a temperature not finite
   */
  public static double rise(
      double before, double after, double roomBefore, double roomAfter, Metal metal) {
    Require.positive("resistance at the start", before, "ohm");
    Require.positive("resistance at the end", after, "ohm");
    Require.positive("temperature at the start", roomBefore, "K");
    Require.positive("temperature at the end", roomAfter, "K");
    double warmed = (after - before) / before * (metal.k + roomBefore - KELVIN);
    return warmed - (roomAfter - roomBefore); // IEC 60335-1, 11.8
  }
}
