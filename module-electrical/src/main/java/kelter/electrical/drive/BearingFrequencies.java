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
 * At which frequencies a rolling bearing knocks, by what is damaged. With k = d/D · cos α of ball
 * and pitch diameter and contact angle, N balls and the shaft at f: cage f (1 − k) / 2, outer ring
 * N f (1 − k) / 2, inner ring N f (1 + k) / 2, ball f (1 − k²) D / (2 d).
 *
 * <p>The outer ring stands, the balls roll. Real bearings slip 1 % to 3 % (from memory), so that a
 * peak lies that much below.
 *
 * @param cage of the cage, Hz
 * @param outer of damage in the outer ring, Hz
 * @param inner of damage in the inner ring, Hz
 * @param ball of the spin of a ball, Hz; damage in it knocks twice as often
 */
public record BearingFrequencies(double cage, double outer, double inner, double ball) {

  /** Where the formulas come from. */
  public static final Source SOURCE =
      Source.fromMemory("kinematics of rolling bearings, defect frequencies");

  /**
   * The frequencies by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "bearing-frequencies",
        "at which frequencies a damaged rolling bearing knocks",
        "k = ratio cosine; cage = speed (1-k)/2; outer = balls speed (1-k)/2;"
            + " inner = balls speed (1+k)/2; ball = speed (1-k^2)/(2 ratio)",
        "outer ring stands, balls roll; real ones slip 1 % to 3 %",
        SOURCE,
        List.of(
            Parameter.required(
                "speed", "speed of the shaft", QuantityKind.ROTATIONAL_SPEED, 0, 1000),
            Parameter.required("balls", "number of balls", QuantityKind.COUNT, 3, 60),
            Parameter.required(
                "ratio", "ball diameter over pitch diameter", QuantityKind.RATIO, 0.05, 0.5),
            Parameter.optional(
                "cosine", "cosine of the contact angle", QuantityKind.RATIO, 0.5, 1, "1")),
        List.of(
            new Output("cage", "cage", QuantityKind.FREQUENCY),
            new Output("outer", "outer ring", QuantityKind.FREQUENCY),
            new Output("inner", "inner ring", QuantityKind.FREQUENCY),
            new Output("ball", "spin of a ball", QuantityKind.FREQUENCY)),
        List.of(ElectricalCautions.TURNING),
        x -> {
          BearingFrequencies all = of(x[0], x[1], x[2], x[3]);
          return new double[] {all.cage, all.outer, all.inner, all.ball};
        });
  }

  /**
   * The frequencies.
   *
   * @param speed the speed of the shaft, 1/s, 0 or more
   * @param balls the number of balls, above 0
   * @param ratio ball diameter over pitch diameter, above 0 and below 1
   * @param cosine the cosine of the contact angle, 0 to 1
   * @return the frequencies, Hz
   * @throws IllegalArgumentException if a figure is out of its range
   */
  public static BearingFrequencies of(double speed, double balls, double ratio, double cosine) {
    Require.notNegative("speed", speed, "1/s");
    Require.positive("number of balls", balls, "");
    Require.within("ratio of the diameters", Require.positive("ratio", ratio, ""), 0, 1, "");
    double k = ratio * Require.within("cosine", cosine, 0, 1, "");
    double half = speed / 2;
    return new BearingFrequencies(
        half * (1 - k), balls * half * (1 - k), balls * half * (1 + k), half * (1 - k * k) / ratio);
  }
}
