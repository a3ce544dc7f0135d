package kelter.demo;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.source.Source;

/**
 * The speed of a pulley that another drives by a belt: the belt runs equally fast round both, less
 * what it slips, so that n2 = n1 d1 / d2 (1 - s).
 *
 * <p>Flat and V-belts; a toothed belt does not slip. Diameters are those on which the belt runs.
 */
public final class BeltDrive {

  private static final double SMALLEST = 0.005; // m
  private static final double LARGEST = 2; // m
  private static final double FASTEST = 400; // revolutions per second
  private static final double MOST_SLIP = 0.5;

  /** The calculation by name. */
  static final Calculation CALCULATION =
      new Calculation(
          "belt-drive",
          "how fast a pulley turns that another drives by a belt",
          "driven-speed = speed * diameter / driven-diameter * (1 - slip)",
          "flat and V-belts in order; slip from 0 to 50 %",
          Source.commonPractice("kinematics of a belt, slip of a V-belt in order about 1 to 2 %"),
          List.of(
              Parameter.required(
                  "speed",
                  "speed of the driving pulley",
                  QuantityKind.ROTATIONAL_SPEED,
                  0,
                  FASTEST),
              Parameter.required(
                  "diameter", "driving pulley", QuantityKind.LENGTH, SMALLEST, LARGEST),
              Parameter.required(
                  "driven-diameter", "driven pulley", QuantityKind.LENGTH, SMALLEST, LARGEST),
              Parameter.optional(
                  "slip", "slip of the belt", QuantityKind.PERCENT, 0, MOST_SLIP, "1.5 %")),
          List.of(
              new Output(
                  "driven-speed", "speed of the driven pulley", QuantityKind.ROTATIONAL_SPEED)),
          List.of(
              new Caution(
                  Caution.Signal.WARNING,
                  "Moving parts. Measure speed without touching, with the guard on.")),
          x -> new double[] {drivenSpeed(x[0], x[1], x[2], x[3])});

  private BeltDrive() {}

  /**
   * The speed of the driven pulley.
   *
   * @param speed the speed of the driving pulley, in revolutions per second
   * @param diameter the diameter of the driving pulley, in m
   * @param drivenDiameter the diameter of the driven pulley, in m
   * @param slip the slip, as a ratio
   * @return the speed of the driven pulley, in revolutions per second
   */
  public static double drivenSpeed(
      double speed, double diameter, double drivenDiameter, double slip) {
    return speed * diameter / drivenDiameter * (1 - slip);
  }
}
