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
 * How much a belt slips: s = 1 − n₂ d₂ / (n₁ d₁), with the speeds and the diameters of the driving
 * and the driven pulley where the belt runs.
 *
 * <p>Flat and V belts; a toothed belt does not slip. Up to 2 % is creep of a belt in order, from 5
 * % on it is worn or slack (common practice, no source). A negative figure says that a speed or a
 * diameter is wrong.
 */
public final class BeltSlip {

  /** Where the formula comes from. */
  public static final Source SOURCE = Source.fromMemory("definition of slip of a belt drive");

  private BeltSlip() {}

  /**
   * The slip by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "belt-slip",
        "how much a belt slips, from speeds and pulleys",
        "slip = 1 - driven-speed driven-diameter / (driving-speed driving-diameter)",
        "flat and V belts; from 5 % on worn or slack",
        SOURCE,
        List.of(
            Parameter.required(
                "driving-speed",
                "speed of the driving pulley",
                QuantityKind.ROTATIONAL_SPEED,
                0.1,
                1000),
            Parameter.required(
                "driving-diameter", "its diameter at the belt", QuantityKind.LENGTH, 1e-3, 1),
            Parameter.required(
                "driven-speed",
                "speed of the driven pulley",
                QuantityKind.ROTATIONAL_SPEED,
                0,
                1000),
            Parameter.required(
                "driven-diameter", "its diameter at the belt", QuantityKind.LENGTH, 1e-3, 2)),
        List.of(new Output("slip", "slip", QuantityKind.PERCENT)),
        List.of(ElectricalCautions.TURNING),
        x -> new double[] {slip(x[0], x[1], x[2], x[3])});
  }

  /**
   * The slip.
   *
   * @param drivingSpeed the speed of the driving pulley, 1/s, above 0
   * @param drivingDiameter its diameter at the belt, m, above 0
   * @param drivenSpeed the speed of the driven pulley, 1/s, 0 or more
   * @param drivenDiameter its diameter at the belt, m, above 0
   * @return the slip, as a ratio; negative if the driven pulley runs ahead
   * @throws IllegalArgumentException if a figure is out of its range
   */
  public static double slip(
      double drivingSpeed, double drivingDiameter, double drivenSpeed, double drivenDiameter) {
    double arrives =
        Require.notNegative("driven speed", drivenSpeed, "1/s")
            * Require.positive("driven diameter", drivenDiameter, "m");
    double given =
        Require.positive("driving speed", drivingSpeed, "1/s")
            * Require.positive("driving diameter", drivingDiameter, "m");
    return 1 - arrives / given;
  }
}
