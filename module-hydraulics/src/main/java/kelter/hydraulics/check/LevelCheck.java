package kelter.hydraulics.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import kelter.core.check.Check;
import kelter.core.check.DecisionRule;
import kelter.core.check.Finding;
import kelter.core.check.Limits;
import kelter.core.job.Component;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.quantity.Quantity;
import kelter.core.source.Source;
import kelter.hydraulics.part.LevelSensorKind;
import kelter.hydraulics.water.Water;

/**
 * Does the air trap pass the pressure of the water, does the machine show the height that was
 * dipped, does filling stop where it should, and does the closed tube keep its pressure? The trap
 * may be 6 % and 30 Pa off, the showing 8 % and 5 mm, and at least 90 % of the pressure must be
 * left after a minute. The pressure of the water follows from hydrostatics; the bands are common
 * practice.
 */
public final class LevelCheck implements Check {

  private static final String ID = "level";
  private static final String TITLE = "Air trap and level sensor against the height of the water";
  private static final double PRESSURE_SHARE = 0.06; // ratio
  private static final double PRESSURE_MORE = 30; // Pa
  private static final double SHOWN_SHARE = 0.08; // ratio
  private static final double SHOWN_MORE = 0.005; // m
  private static final double LEAST_KEPT = 0.9; // ratio
  private static final double ROOM = Water.FREEZING + 20; // K

  private static final Told PRESSURE =
      new Told(
          ID + "-pressure",
          "Pressure in the tube against the height of the water",
          LevelSensorKind.TRAP_PRESSURE,
          Source.commonPractice("within 6 % and 30 Pa of the pressure of the water"));

  private static final Told SHOWN =
      new Told(
          ID + "-shown",
          "Height as the machine shows it against the height that was dipped",
          LevelSensorKind.SHOWN_LEVEL,
          Source.commonPractice("within 8 % and 5 mm of the height"));

  private static final Told FILLED =
      new Told(
          ID + "-filled",
          "Height at which filling stops against where it should",
          LevelSensorKind.FILLED_HEIGHT,
          Source.commonPractice("within 8 % and 5 mm of the height that the component gives"));

  private static final Told KEPT =
      new Told(
          ID + "-tightness",
          "Pressure that the closed tube keeps for a minute",
          LevelSensorKind.KEPT,
          Source.commonPractice("at least 90 % after a minute"));

  /** A check without a memory. */
  public LevelCheck() {}

  @Override
  public String id() {
    return ID;
  }

  @Override
  public String title() {
    return TITLE;
  }

  @Override
  public List<Finding> apply(Job job, DecisionRule rule) {
    List<Finding> findings = new ArrayList<>();
    for (Component component : job.appliance().components()) {
      if (component.kind().equals(LevelSensorKind.ID)) {
        findings.addAll(byHeight(job, component, PRESSURE, rule, LevelCheck::pressureLimits));
        findings.addAll(byHeight(job, component, SHOWN, rule, LevelCheck::shownLimits));
        if (FILLED.isRead(job, component)) {
          findings.addAll(FILLED.each(job, component, rule, "", m -> filled(component)));
        }
        job.measurements(component.id(), LevelSensorKind.KEPT.id())
            .forEach(m -> findings.add(KEPT.finding(job, m, Limits.atLeast(LEAST_KEPT), rule, "")));
      }
    }
    return List.copyOf(findings);
  }

  private static Limits pressureLimits(double height) {
    double pressure = Water.at(ROOM).pressure(height);
    double band = PRESSURE_SHARE * pressure + PRESSURE_MORE;
    return new Limits(pressure - band, pressure + band);
  }

  private static Limits shownLimits(double height) {
    double band = SHOWN_SHARE * height + SHOWN_MORE;
    return new Limits(height - band, height + band);
  }

  private static Limits filled(Component component) {
    return component
        .figure(LevelSensorKind.TRIP_HEIGHT.id())
        .map(height -> shownLimits(height.si()))
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "Give the 'trip-height' of the level sensor to have it judged."));
  }

  private static List<Finding> byHeight(
      Job job, Component component, Told told, DecisionRule rule, DoubleFunction<Limits> limits) {
    return job.measurements(component.id(), told.observable().id()).stream()
        .map(measurement -> byHeight(job, component, measurement, told, rule, limits))
        .toList();
  }

  private static Finding byHeight(
      Job job,
      Component component,
      Measurement measurement,
      Told told,
      DecisionRule rule,
      DoubleFunction<Limits> limits) {
    Optional<Quantity> height =
        measurement
            .conditions()
            .figure("height")
            .or(() -> component.figure(LevelSensorKind.USUAL_HEIGHT.id()));
    return height
        .map(known -> told.finding(job, measurement, limits.apply(known.si()), rule, ""))
        .orElseGet(
            () ->
                told.without(
                    job, measurement, "Dip the height of the water and state it as 'height'."));
  }
}
