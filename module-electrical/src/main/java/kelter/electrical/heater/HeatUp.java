package kelter.electrical.heater;

import java.util.List;
import kelter.core.law.Require;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.source.Source;

/**
 * How long water and machine take to heat, how fast they do, and from a measured rate back to the
 * power: P η = (m c + C) dT/dt, with the share η of the power that stays in water and machine.
 *
 * <p>Stirred water between 0 °C and 100 °C and a loss that is the same share of the power all the
 * time; outside, the water boils or freezes and the formula does not hold.
 */
public final class HeatUp {

  /** Where the formula comes from. */
  public static final Source SOURCE =
      Source.published("heat balance Q = m c dT with the heat capacity of water of IAPWS R6-95");

  /**
   * Specific heat capacity of water, J/(kg K): 4.18 kJ/(kg K) within 0.4 % from 10 °C to 80 °C
   * (IAPWS R6-95).
   */
  public static final double WATER_HEAT_CAPACITY = 4184;

  /** Heat capacity of air, J/(m³ K): 1.2 kg/m³ at 20 °C and 1005 J/(kg K), from memory. */
  public static final double AIR_HEAT_CAPACITY = 1206;

  private static final QuantityKind HEAT_CAPACITY = QuantityKind.of("heat capacity", "kJ/K");

  private static final Parameter MASS =
      Parameter.required("mass", "mass of the water", QuantityKind.MASS, 0.01, 1e4);
  private static final Parameter MACHINE =
      Parameter.optional(
          "machine", "heat capacity of what is heated along", HEAT_CAPACITY, 0, 1e6, "0 kJ/K");
  private static final Parameter EFFICIENCY =
      Parameter.optional(
          "efficiency", "share of the power that stays in", QuantityKind.RATIO, 0.05, 1, "1");

  private HeatUp() {}

  /**
   * The time by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation timeCalculation() {
    return new Calculation(
        "heat-up-time",
        "how long a heater takes to heat the water and the machine",
        "time = (mass c + machine) rise / (power efficiency), c = 4184 J/(kg K);"
            + " rate = rise / time",
        "stirred water between 0 °C and 100 °C",
        SOURCE,
        List.of(
            MASS,
            Parameter.required(
                "rise", "rise of temperature", QuantityKind.TEMPERATURE_DIFFERENCE, 0.1, 100),
            Parameter.required("power", "power of the heater", QuantityKind.POWER, 1, 1e5),
            MACHINE,
            EFFICIENCY),
        List.of(
            new Output("time", "time", QuantityKind.TIME),
            new Output("rate", "rate of heating", QuantityKind.HEATING_RATE)),
        List.of(Caution.HOT_WATER),
        x -> {
          double rate = rate(x[0], x[2], x[3], x[4]);
          return new double[] {x[1] / rate, rate};
        });
  }

  /**
   * The power by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation powerCalculation() {
    return new Calculation(
        "power-from-heating",
        "what power heats water as fast as was measured",
        "power = (mass c + machine) rate / efficiency, c = 4184 J/(kg K)",
        "stirred water between 0 °C and 100 °C",
        SOURCE,
        List.of(
            MASS,
            Parameter.required("rate", "rate of heating", QuantityKind.HEATING_RATE, 1e-5, 2),
            MACHINE,
            EFFICIENCY),
        List.of(new Output("power", "power", QuantityKind.POWER)),
        List.of(Caution.HOT_WATER),
        x -> new double[] {power(x[0], x[1], x[2], x[3])});
  }

  /**
   * The rate of heating.
   *
   * @param mass the mass of the water, kg, above 0
   * @param power the power of the heater, W, above 0
   * @param machine the heat capacity of what is heated along, J/K, 0 or above
   * @param efficiency the share of the power that stays in water and machine, as a ratio, above 0
   * @return the rate, K/s
   * @throws IllegalArgumentException if a figure is out of its range
   */
  public static double rate(double mass, double power, double machine, double efficiency) {
    Require.positive("power", power, "W");
    return power * Require.positive("efficiency", efficiency, "") / capacity(mass, machine);
  }

  /**
   * The power that heats at a rate.
   *
   * @param mass the mass of the water, kg, above 0
   * @param rate the rate of heating, K/s, above 0
   * @param machine the heat capacity of what is heated along, J/K, 0 or above
   * @param efficiency the share of the power that stays in water and machine, as a ratio, above 0
   * @return the power, W
   * @throws IllegalArgumentException if a figure is out of its range
   */
  public static double power(double mass, double rate, double machine, double efficiency) {
    Require.positive("rate of heating", rate, "K/s");
    return capacity(mass, machine) * rate / Require.positive("efficiency", efficiency, "");
  }

  private static double capacity(double mass, double machine) {
    Require.positive("mass of the water", mass, "kg");
    return mass * WATER_HEAT_CAPACITY + Require.notNegative("heat capacity", machine, "J/K");
  }
}
