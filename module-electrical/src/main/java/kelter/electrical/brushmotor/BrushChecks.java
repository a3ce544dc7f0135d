package kelter.electrical.brushmotor;

import java.util.Optional;
import kelter.core.check.Allowed;
import kelter.core.check.Limits;
import kelter.core.check.Measured;
import kelter.core.job.Reading;
import kelter.core.quantity.QuantityFormat;
import kelter.core.source.Source;
import kelter.electrical.drive.BrushLife;

/** What brushes and rotors may measure. */
final class BrushChecks {

  /** At which any brush is changed, and from which any brush stays, m. */
  private static final double SPENT = 6e-3;

  private static final double ENOUGH = 12e-3;

  /** The rotor reads lower or higher as it stands, as ratios. */
  private static final double LOWER = 0.7;

  private static final double HIGHER = 1.5;

  private BrushChecks() {}

  static Optional<Allowed> length(Measured measured) {
    double change = measured.component().si(BrushedMotor.CHANGE_LENGTH);
    Allowed allowed =
        change > 0
            ? Allowed.of(
                "brush length against the length of change",
                Source.commonPractice("brushes are changed, both, at the length that is stated"),
                Limits.atLeast(change))
            : Allowed.of(
                    "brush length",
                    Source.fromMemory("brushes are changed at 12 mm, at 6 mm at the latest"),
                    Limits.atLeast(SPENT))
                .orPerhaps(Limits.atLeast(ENOUGH));
    return Optional.of(allowed.resting(left(measured, change > 0 ? change : ENOUGH)));
  }

  /** How long they last, told to the next ten hours. */
  private static String left(Measured measured, double change) {
    Reading first = measured.measurement().readings().get(0);
    if (!(first instanceof Reading.Value value)) {
      return "";
    }
    double hours = BrushLife.left(value.quantity().si(), change, BrushLife.USUAL_RATE) / 3600;
    return "about %s h of running left at 0.04 mm an hour (from memory)"
        .formatted(QuantityFormat.plain(10 * Math.floor(hours / 10)));
  }

  static Optional<Allowed> rotor(Measured measured) {
    double figure = measured.component().si(BrushedMotor.ROTOR);
    return figure > 0
        ? Optional.of(
            Allowed.of(
                "resistance of the rotor against its figure",
                Source.commonPractice("0.7 to 1.5 of the figure, whatever bars the brushes touch"),
                new Limits(LOWER * figure, HIGHER * figure)))
        : Optional.empty();
  }
}
