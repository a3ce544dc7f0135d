package kelter.hydraulics.circuit;

/**
 * The condition of a pump in the figures that change its curve.
 *
 * @param openPassages the share of the vane passages that is open, as a ratio above 0, at most 1:
 *     the open ones carry the whole flow
 * @param grip the speed of the impeller as a ratio of that of the shaft, above 0, at most 1; a worn
 *     impeller counts as a slower one
 * @param headShare the head as a ratio of that of water without air, with all vanes at work, above
 *     0, at most 1
 * @param densityShare the density as a ratio of that of water without air, above 0, at most 1
 * @param leakArea the discharge coefficient times the area through which water runs back inside the
 *     pump, in m2, not negative
 * @param drag the torque of bearings, seals and rubbing beyond that of a good pump, as a ratio of
 *     the torque at the rated point, not negative
 * @param speed the speed that the motor has without a load on it, as a ratio of what it should be,
 *     above 0, at most 1
 */
public record PumpCondition(
    double openPassages,
    double grip,
    double headShare,
    double densityShare,
    double leakArea,
    double drag,
    double speed) {

  /** A pump in order. */
  public static final PumpCondition GOOD = new PumpCondition(1, 1, 1, 1, 0, 0, 1);

  /**
   * Checks the figures.
   *
   * @throws IllegalArgumentException if a ratio is not above 0 and at most 1, or the area or drag
   *     negative or not finite
   */
  public PumpCondition {
    requireShare("openPassages", openPassages);
    requireShare("grip", grip);
    requireShare("headShare", headShare);
    requireShare("densityShare", densityShare);
    requireShare("speed", speed);
    if (!(leakArea >= 0 && drag >= 0 && Double.isFinite(leakArea + drag))) {
      throw new IllegalArgumentException(
          "a leak and a drag are not negative: %s m2, %s".formatted(leakArea, drag));
    }
  }

  private static void requireShare(String name, double share) {
    if (!(share > 0 && share <= 1)) {
      throw new IllegalArgumentException(name + " lies above 0 and at most at 1, not at " + share);
    }
  }
}
