package kelter.hydraulics.levelsensor;

import java.util.Optional;
import java.util.function.DoubleFunction;
import kelter.core.check.Allowed;
import kelter.core.check.Limits;
import kelter.core.check.Measured;
import kelter.core.law.Celsius;
import kelter.core.source.Source;
import kelter.hydraulics.water.Water;

/**
 * What may be read on a level sensor: the pressure of the water follows from hydrostatics, the
 * bands are common practice.
 */
final class LevelChecks {

  private static final double PRESSURE_SHARE = 0.06; // ratio
  private static final double PRESSURE_MORE = 30; // Pa
  private static final double SHOWN_SHARE = 0.08; // ratio
  private static final double SHOWN_MORE = 0.005; // m

  /** Nearly all of the pressure left after a minute. */
  static final Allowed KEPT =
      Allowed.of(
          "Pressure that the closed tube keeps for a minute",
          Source.commonPractice("at least 90 % after a minute"),
          Limits.atLeast(0.9));

  private static final String DIP = "Dip the height of the water and state it as 'height'.";

  private LevelChecks() {}

  /** Within 6 % and 30 Pa of the pressure of the water outside. */
  static Optional<Allowed> pressure(Measured trap) {
    return by(
        "Pressure in the tube against the height of the water",
        "within 6 % and 30 Pa of the pressure of the water",
        height(trap),
        DIP,
        LevelChecks::pressureOf);
  }

  /** Within 8 % and 5 mm of the height that was dipped. */
  static Optional<Allowed> shown(Measured level) {
    return by(
        "Height as the machine shows it against the height that was dipped",
        "within 8 % and 5 mm of the height",
        height(level),
        DIP,
        LevelChecks::near);
  }

  /** Within 8 % and 5 mm of the height at which filling should stop. */
  static Optional<Allowed> filled(Measured stopped) {
    return by(
        "Height at which filling stops against where it should",
        "within 8 % and 5 mm of the height that the component gives",
        stopped.component().si(LevelSensor.TRIP_HEIGHT),
        "Give the 'trip-height' of the level sensor to have it judged.",
        LevelChecks::near);
  }

  private static Optional<Allowed> by(
      String title,
      String practice,
      double height,
      String otherwise,
      DoubleFunction<Limits> limits) {
    Source source = Source.commonPractice(practice);
    return Optional.of(
        height >= 0
            ? Allowed.of(title, source, limits.apply(height))
            : Allowed.without(title, source, otherwise));
  }

  /** The height of the water that was dipped, or the usual one, m; NaN if neither is known. */
  private static double height(Measured read) {
    return read.conditions()
        .si(LevelSensor.AT_HEIGHT, read.component().si(LevelSensor.USUAL_HEIGHT));
  }

  private static Limits pressureOf(double height) {
    double pressure = Water.at(Celsius.TWENTY).pressure(height);
    double band = PRESSURE_SHARE * pressure + PRESSURE_MORE;
    return new Limits(pressure - band, pressure + band);
  }

  private static Limits near(double height) {
    double band = SHOWN_SHARE * height + SHOWN_MORE;
    return new Limits(height - band, height + band);
  }
}
