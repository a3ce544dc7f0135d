package kelter.hydraulics.air;

import java.util.List;
import kelter.core.law.Celsius;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.hydraulics.water.StandardGravity;

/**
 * What comes into a cold cabinet by its door: through a tight gasket q = u L ΔT with u 0.04 to 0.1
 * W/(m K); through a gap air, Q = (Cd A/3) √(g H ΔT/T), driven by the weight of the cold air.
 *
 * <p>It holds for cabinets of 0.3 to 2 m and gaps small against them. The moisture of the air that
 * comes in, not its heat, ices the coil.
 *
 * <p>Source: linear heat loss and buoyant exchange through an opening, from memory.
 */
public final class GasketLeak {

  private static final double DISCHARGE = 0.6; // sharp-edged gap, from memory

  private static final Parameter LENGTH =
      Parameter.required("length", "length of the gasket", QuantityKind.DISTANCE, 0.5, 20);
  private static final Parameter COLDER =
      Parameter.required(
          "difference", "room warmer than the cabinet", QuantityKind.TEMPERATURE_DIFFERENCE, 1, 60);
  private static final Parameter LOSS =
      Parameter.required("loss", "heat for 1 m of gasket at 1 K", QuantityKind.POWER, 0.02, 0.3);
  private static final Parameter GAP =
      Parameter.required("gap", "width of the gap", QuantityKind.LENGTH, 0, 0.05);
  private static final Parameter GAP_LENGTH =
      Parameter.required("gap-length", "length of the gap", QuantityKind.DISTANCE, 0, 5);
  private static final Parameter HEIGHT =
      Parameter.required("height", "height of the door", QuantityKind.DISTANCE, 0.2, 3);

  private GasketLeak() {}

  /**
   * The leak by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "gasket-leak",
        "Heat and air that come in by the door of a cold cabinet",
        "heat = loss length difference; air = 0.6 gap gap-length / 3 sqrt(g height difference / T);"
            + " heat-of-air = 1.2 kg/m3 1006 J/(kg K) air difference",
        "Cabinet of 0.2 to 3 m, T 285 K in the mean; loss 0.04 to 0.1 W for each m and K",
        Source.fromMemory("linear heat loss; buoyant exchange of air through an opening"),
        List.of(
            LENGTH,
            COLDER,
            LOSS.optional("0.07 W"),
            GAP.optional("0 mm"),
            GAP_LENGTH.optional("0.3 m"),
            HEIGHT.optional("1 m")),
        List.of(
            new Output("heat", "heat through the gasket", QuantityKind.POWER),
            new Output("air", "air through the gap", QuantityKind.FLOW),
            new Output("heat-of-air", "heat of that air", QuantityKind.POWER)),
        List.of(),
        p -> {
          double colder = COLDER.check(p[1]);
          double area = Math.max(0, GAP.check(p[3])) * Math.max(0, GAP_LENGTH.check(p[4]));
          double air = air(area, HEIGHT.check(p[5]), colder);
          double heat = LOSS.check(p[2]) * LENGTH.check(p[0]) * colder;
          return new double[] {heat, air, AirHeat.power(colder, air, Air.DENSITY)};
        });
  }

  /**
   * The air through a gap.
   *
   * @param area the area of the gap, m2
   * @param height the height of the door, m
   * @param colder how much the room is warmer, K
   * @return the flow rate in m3/s
   */
  public static double air(double area, double height, double colder) {
    double mean = Celsius.ZERO + 12; // between room and cabinet, K
    return DISCHARGE * area / 3 * Math.sqrt(StandardGravity.G * height * colder / mean);
  }
}
