package kelter.hydraulics.fault.level;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Forecaster;
import kelter.core.diagnosis.Question;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.problem.InputException;
import kelter.core.vocabulary.Observable;
import kelter.hydraulics.fault.Symptom;
import kelter.hydraulics.level.AirTrap;
import kelter.hydraulics.part.Given;
import kelter.hydraulics.part.LevelSensorKind;
import kelter.hydraulics.water.Water;

/**
 * What can be wrong with the measuring of the level, and how it would show: the pressure of the air
 * trap at the height of the water, and what the sensor makes of it.
 *
 * <p>At severity 1 a clogged trap passes 5 % of the pressure; a leaking tube keeps 5 % of it while
 * the water stands, and loses it within 15 s when closed; a drifting sensor shows half as much
 * again, or half. All that is judgement: common practice, no source.
 *
 * @param component the id of the level sensor
 * @param usualHeight the height of the water at which readings are taken, in m, above 0
 * @param airColumn the volume of the shut-in air by the area of the bell, in m, not negative
 * @param tripHeight the height of the water at which filling should stop, in m, above 0, or empty
 */
public record LevelModel(
    String component, double usualHeight, double airColumn, Optional<Double> tripHeight)
    implements FaultModel {

  /** What is taken where a job does not say: common practice, no source. */
  private static final double USUAL_HEIGHT = 0.1; // m

  private static final double USUAL_COLUMN = 0.1; // m

  private static final double LOST_PRESSURE = 0.95; // ratio at severity 1
  private static final double DRIFT = 0.5; // ratio at severity 1
  private static final double OVERFLOWS = 0.55; // m, where somebody stops it; judgement
  private static final double KEPT_IN_ORDER = 0.98; // ratio after a minute
  private static final double DECAY = 4; // exponent after a minute at severity 1
  private static final double PRESSURE_SHARE = 0.03; // ratio
  private static final double PRESSURE_FLOOR = 12; // Pa
  private static final double SHOWN_SHARE = 0.05; // ratio
  private static final double SHOWN_FLOOR = 0.003; // m
  private static final double OF_EFFECT = 0.1; // ratio of the effect of the fault
  private static final double KEPT_SPREAD = 0.03; // ratio
  private static final double GRADE_SPREAD = 0.13;
  private static final double NOTHING = 0.12;
  private static final double DEBRIS = 0.82;
  private static final double ROOM = Water.FREEZING + 20; // K

  /**
   * The model of a level sensor.
   *
   * @param component a level sensor
   * @return the model
   * @throws IllegalArgumentException if a figure is not above 0
   */
  public static FaultModel of(Component component) {
    return new LevelModel(
        component.id(),
        Given.si(component.figure(LevelSensorKind.USUAL_HEIGHT.id()), USUAL_HEIGHT),
        Given.si(component.figure(LevelSensorKind.AIR_COLUMN.id()), USUAL_COLUMN),
        Given.si(component.figure(LevelSensorKind.TRIP_HEIGHT.id())));
  }

  /** Checks the figures. */
  public LevelModel {
    if (!(usualHeight > 0 && airColumn >= 0)) {
      throw new IllegalArgumentException(
          "usual-height lies above 0 m and air-column at 0 m or more, not at %s and %s"
              .formatted(usualHeight, airColumn));
    }
    if (tripHeight.isPresent() && !(tripHeight.get() > 0)) {
      throw new IllegalArgumentException("trip-height lies above 0 m, not at " + tripHeight.get());
    }
  }

  @Override
  public String id() {
    return component + "-level";
  }

  @Override
  public List<Fault> faults() {
    List<Fault> faults = new ArrayList<>();
    for (LevelFault fault : LevelFault.values()) {
      faults.add(fault.on(component));
    }
    return List.copyOf(faults);
  }

  /** A sensor does not show too much and too little at once. */
  @Override
  public boolean mayMeet(int one, int other) {
    return one == other || !LevelFault.isDrift(one) || !LevelFault.isDrift(other);
  }

  @Override
  public List<Question> questions() {
    List<Question> questions = new ArrayList<>();
    for (Observable observable : LevelSensorKind.KIND.observables()) {
      if (tripHeight.isPresent() || !observable.id().equals(LevelSensorKind.FILLED_HEIGHT.id())) {
        questions.add(new Question(component, observable, Conditions.NONE));
      }
    }
    return List.copyOf(questions);
  }

  @Override
  public Forecaster forecaster(List<Question> questions) {
    List<Question> asked = List.copyOf(questions);
    Water[] water = asked.stream().map(this::water).toArray(Water[]::new);
    double[] height =
        asked.stream().mapToDouble(q -> q.conditions().si("height", usualHeight)).toArray();
    return (severity, value, spread) -> {
      for (int i = 0; i < value.length; i++) {
        String observable = asked.get(i).observable().id();
        answer(observable, i, severity, height[i], water[i], value, spread);
      }
    };
  }

  private Water water(Question question) {
    try {
      return Water.at(question.conditions().si("temperature", ROOM));
    } catch (IllegalArgumentException impossible) {
      throw new InputException(
          component, impossible.getMessage(), "correct the conditions of the reading");
    }
  }

  private void answer(
      String observable,
      int i,
      double[] severity,
      double height,
      Water water,
      double[] value,
      double[] spread) {
    spread[i] = GRADE_SPREAD;
    switch (observable) {
      case "trap-pressure" -> {
        double inOrder = inOrder(height, water);
        value[i] = inOrder * passed(severity);
        spread[i] = spread(value[i], inOrder, PRESSURE_SHARE, PRESSURE_FLOOR);
      }
      case "shown-level" -> {
        value[i] = height * shown(severity);
        spread[i] = spread(value[i], height, SHOWN_SHARE, SHOWN_FLOOR);
      }
      case "filled-height" -> {
        // Filling stops where the height that is shown reaches the one that was set.
        double trip = tripHeight.orElseThrow();
        value[i] = Math.min(OVERFLOWS, trip / shown(severity));
        spread[i] = spread(value[i], trip, SHOWN_SHARE, SHOWN_FLOOR);
      }
      case "pressure-kept" -> {
        value[i] = KEPT_IN_ORDER * Math.exp(-DECAY * LevelFault.TUBE_LEAKS.in(severity));
        spread[i] = spread(value[i], KEPT_IN_ORDER, 0, KEPT_SPREAD);
      }
      case "trap" ->
          value[i] = Symptom.grade(NOTHING + DEBRIS * LevelFault.TRAP_CLOGGED.in(severity));
      case "tube-damaged" ->
          value[i] = Symptom.noticed(LevelFault.TUBE_LEAKS.in(severity), 0.4, 0.1);
      case "overfills" -> value[i] = Symptom.noticed(shown(severity), 0.8, -0.05);
      case "underfills" -> value[i] = Symptom.noticed(shown(severity), 1.25, 0.05);
      default ->
          throw new IllegalArgumentException(
              observable + " is not one of the observables of a " + LevelSensorKind.ID);
    }
  }

  private double inOrder(double height, Water water) {
    double rise = AirTrap.rise(height, airColumn, water.head(Water.STANDARD_ATMOSPHERE));
    return water.pressure(height - rise);
  }

  private static double passed(double[] severity) {
    return (1 - LOST_PRESSURE * LevelFault.TRAP_CLOGGED.in(severity))
        * (1 - LOST_PRESSURE * LevelFault.TUBE_LEAKS.in(severity));
  }

  private static double shown(double[] severity) {
    return passed(severity)
        * (1 + DRIFT * LevelFault.DRIFTS_HIGH.in(severity))
        * (1 - DRIFT * LevelFault.DRIFTS_LOW.in(severity));
  }

  private static double spread(double value, double inOrder, double share, double floor) {
    double own = share * value;
    double effect = OF_EFFECT * (value - inOrder);
    return Math.sqrt(own * own + effect * effect + floor * floor);
  }
}
