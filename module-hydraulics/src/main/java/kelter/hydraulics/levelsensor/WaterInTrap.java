package kelter.hydraulics.levelsensor;

import kelter.core.diagnosis.model.Circumstances;
import kelter.core.diagnosis.model.State;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.law.Celsius;
import kelter.hydraulics.level.AirTrap;
import kelter.hydraulics.part.WaterSide;
import kelter.hydraulics.water.Water;

/**
 * The water outside an air trap, and what the sensor makes of its pressure.
 *
 * @param usualHeight the height of the water at which readings are taken, m, above 0
 * @param airColumn the volume of the shut-in air by the area of the bell, m, not negative
 * @param tripHeight the height of the water at which filling should stop, m, above 0; NaN if that
 *     is not known
 */
record WaterInTrap(double usualHeight, double airColumn, double tripHeight)
    implements Circumstances<WaterInTrap.Sensed> {

  /** What is taken where a job does not say: common practice, no source. */
  private static final double USUAL_HEIGHT = 0.1; // m

  private static final double USUAL_COLUMN = 0.1; // m

  /**
   * The trap of a level sensor.
   *
   * @throws IllegalArgumentException if a figure is not above 0
   */
  static WaterInTrap of(Component sensor) {
    return new WaterInTrap(
        sensor.si(LevelSensor.USUAL_HEIGHT, USUAL_HEIGHT),
        sensor.si(LevelSensor.AIR_COLUMN, USUAL_COLUMN),
        sensor.si(LevelSensor.TRIP_HEIGHT));
  }

  /** Checks the figures. */
  WaterInTrap {
    if (!(usualHeight > 0 && airColumn >= 0)) {
      throw new IllegalArgumentException(
          "usual-height lies above 0 m and air-column at 0 m or more, not at %s and %s"
              .formatted(usualHeight, airColumn));
    }
    if (tripHeight <= 0) {
      throw new IllegalArgumentException("trip-height lies above 0 m, not at " + tripHeight);
    }
  }

  @Override
  public Circumstances.Solver<Sensed> under(Conditions conditions) {
    double height = conditions.si(LevelSensor.AT_HEIGHT, usualHeight);
    Water water = Water.at(conditions.si(WaterSide.AT_TEMPERATURE, Celsius.TWENTY));
    double rise = AirTrap.rise(height, airColumn, water.head(Water.STANDARD_ATMOSPHERE));
    return new Standing(height, water.pressure(height - rise), tripHeight);
  }

  /** Water at a height. */
  private record Standing(double height, double pressure, double tripHeight)
      implements Circumstances.Solver<Sensed> {
    @Override
    public Sensed in(State state) {
      return new Sensed(this, state);
    }
  }

  /**
   * What comes of the water.
   *
   * @param water the water
   * @param state what faults have changed
   */
  record Sensed(Standing water, State state) {

    private static final double OVERFLOWS = 0.55; // m, where somebody stops it; judgement
    private static final double KEPT_IN_ORDER = 0.98; // ratio after a minute
    private static final double DECAY = 4; // exponent after a minute, if open to the air

    /** The pressure in the tube, Pa. */
    double pressure() {
      return water.pressure * state.of(LevelFigure.PASSED);
    }

    /** The height as the machine shows it, m. */
    double shown() {
      return water.height * state.of(LevelFigure.SHOWN);
    }

    /** The height at which filling stops, m: where the one shown reaches the one that was set. */
    double filled() {
      return Math.min(OVERFLOWS, water.tripHeight / state.of(LevelFigure.SHOWN));
    }

    /** What the closed tube keeps of its pressure for a minute, ratio. */
    double kept() {
      return KEPT_IN_ORDER * Math.exp(-DECAY * state.of(LevelFigure.LEAK));
    }
  }
}
