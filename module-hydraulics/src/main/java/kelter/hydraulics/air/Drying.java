package kelter.hydraulics.air;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;

/**
 * How fast a dryer takes water off: as much as its air carries away, or as its heat evaporates,
 * whichever is less: min(ρ Q Δw, η P/h).
 *
 * <p>It holds for the long middle of a cycle, not for warming up and the last damp. η 0.6 to 0.8
 * and h 2400 kJ/kg are from memory.
 *
 * <p>Source: balances of water and heat, as in any textbook of drying, from memory.
 */
public final class Drying {

  private static final double EVAPORATION = 2.4e6; // J/kg, about 40 °C, from memory
  private static final double MINUTE = 60; // s

  private static final Parameter WATER =
      Parameter.required("water", "water in the load", QuantityKind.MASS, 0.05, 30);
  private static final Parameter POWER =
      Parameter.required("power", "power of the heater", QuantityKind.POWER, 100, 10_000);
  private static final Parameter EFFICIENCY =
      Parameter.required("efficiency", "share that evaporates", QuantityKind.PERCENT, 0.2, 1);
  private static final Parameter FLOW =
      Parameter.required("flow", "flow rate of the air", QuantityKind.FLOW, 1e-3, 0.5);
  private static final Parameter TAKEN =
      Parameter.required(
          "moisture-gain", "water that dry air takes up", QuantityKind.RATIO, 1e-3, 0.1);

  private Drying() {}

  /**
   * The time by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "drying-time",
        "Time in which a dryer takes the water off",
        "rate = min(1.2 kg/m3 flow moisture-gain, efficiency power / 2400 kJ/kg); time = water /"
            + " rate",
        "The middle of a cycle, heater on; efficiency 60 to 80 %",
        Source.fromMemory("balances of water and heat, as in any textbook of drying"),
        List.of(
            WATER,
            POWER,
            EFFICIENCY.optional("75 %"),
            FLOW.optional("42 L/s"),
            TAKEN.optional("0.02")),
        List.of(
            new Output("time", "time", QuantityKind.TIME),
            new Output("water-a-minute", "water taken off in a minute", QuantityKind.MASS)),
        List.of(),
        p -> {
          double byHeat = EFFICIENCY.check(p[2]) * POWER.check(p[1]) / EVAPORATION;
          double byAir = Air.DENSITY * FLOW.check(p[3]) * TAKEN.check(p[4]);
          double rate = Math.min(byAir, byHeat);
          return new double[] {WATER.check(p[0]) / rate, MINUTE * rate};
        });
  }
}
