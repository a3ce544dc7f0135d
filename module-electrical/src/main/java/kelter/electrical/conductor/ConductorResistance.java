package kelter.electrical.conductor;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import kelter.core.law.CopperResistance;
import kelter.core.law.Require;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityFormat;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.core.source.Standing;

/**
 * The greatest resistance that a copper conductor of a nominal section may have, by its length (IEC
 * 60228, Tables 1 to 3, plain copper, 20 °C), and at another temperature by {@link
 * CopperResistance}.
 *
 * <p>Solid and stranded conductors (classes 1 and 2) and flexible ones (classes 5 and 6) from 0.5
 * mm² to 10 mm². A section that is not in the table is refused.
 */
public final class ConductorResistance {

  /** Where the table stands. */
  public static final Source SOURCE =
      new Source(
          "IEC 60228, Tables 1, 2 and 3, plain copper, as cable makers print them",
          Standing.SECOND_HAND);

  /** How the conductor is built. */
  public enum Build {
    /** Classes 1 and 2: in walls and machines. */
    SOLID(
        Map.of(
            0.5, 36.0, 0.75, 24.5, 1.0, 18.1, 1.5, 12.1, 2.5, 7.41, 4.0, 4.61, 6.0, 3.08, 10.0,
            1.83)),
    /** Classes 5 and 6: in cords. */
    FLEXIBLE(
        Map.of(
            0.5, 39.0, 0.75, 26.0, 1.0, 19.5, 1.5, 13.3, 2.5, 7.98, 4.0, 4.95, 6.0, 3.30, 10.0,
            1.91));

    /** Ohm per kilometre at 20 °C by section in mm². */
    private final TreeMap<Double, Double> ohmPerKilometre;

    Build(Map<Double, Double> table) {
      this.ohmPerKilometre = new TreeMap<>(table);
    }
  }

  private static final double PER_SQUARE_MILLIMETRE = 1e6;
  private static final double METRES_PER_KILOMETRE = 1000;

  private ConductorResistance() {}

  /**
   * The resistance by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "conductor-resistance",
        "what a copper conductor of a length and section may have at most",
        "resistance = table value by section * length * (1 + 0.00393 (temperature - 20)), °C",
        "sections of the tables from 0.5 mm2 to 10 mm2; others are refused",
        SOURCE,
        List.of(
            Parameter.required("length", "length", QuantityKind.DISTANCE, 0.01, 1e4),
            Parameter.required("section", "nominal section", QuantityKind.AREA, 0.5e-6, 10e-6),
            Parameter.choice("build", "how it is built", List.of("solid", "flexible"), "flexible"),
            Parameter.optional(
                "temperature",
                "temperature of the conductor",
                QuantityKind.TEMPERATURE,
                223.15,
                473.15,
                "20 Cel")),
        List.of(new Output("resistance", "greatest resistance", QuantityKind.RESISTANCE)),
        List.of(Caution.UNPLUG),
        x -> {
          Build build = Build.values()[(int) Math.round(x[2])];
          return new double[] {at20(x[0], x[1], build) * CopperResistance.factor(x[3])};
        });
  }

  /**
   * The greatest resistance at 20 °C.
   *
   * @param length the length, m, above 0
   * @param section the nominal section, m²
   * @param build how the conductor is built
   * @return the resistance, Ohm
   * @throws IllegalArgumentException if the length is not above zero or the section not in the
   *     table
   */
  public static double at20(double length, double section, Build build) {
    Require.positive("length", length, "m");
    double millimetres = section * PER_SQUARE_MILLIMETRE;
    return length * perKilometre(millimetres, build) / METRES_PER_KILOMETRE;
  }

  private static double perKilometre(double millimetres, Build build) {
    for (Map.Entry<Double, Double> row : build.ohmPerKilometre.entrySet()) {
      if (Math.abs(row.getKey() - millimetres) < 1e-6 * row.getKey()) {
        return row.getValue();
      }
    }
    throw new IllegalArgumentException(
        "the section is %s mm2; the table has %s mm2"
            .formatted(QuantityFormat.plain(millimetres), build.ohmPerKilometre.keySet()));
  }
}
