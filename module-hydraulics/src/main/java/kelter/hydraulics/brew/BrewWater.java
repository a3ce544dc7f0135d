package kelter.hydraulics.brew;

import static kelter.hydraulics.brew.BrewWords.BAR;
import static kelter.hydraulics.brew.BrewWords.ML_PER_MIN;

import java.util.List;
import java.util.Optional;
import kelter.core.check.Allowed;
import kelter.core.check.Check;
import kelter.core.check.LimitCheck;
import kelter.core.check.Limits;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.model.Look;
import kelter.core.diagnosis.model.PartModel;
import kelter.core.diagnosis.model.Spread;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.module.Part;
import kelter.core.source.Source;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.ComponentKind;
import kelter.hydraulics.part.WaterSide;
import kelter.hydraulics.pump.VibrationPump;

/**
 * The way of the brewing water as one circuit: what is read at the group depends on pump, valves,
 * jet and screen together. Parts that a machine does not list are taken as in order.
 */
public final class BrewWater implements Part {

  private static final List<ComponentKind> KINDS =
      List.of(
          BrewWords.PUMP,
          BrewWords.TANK_VALVE_KIND,
          BrewWords.OVER_PRESSURE,
          BrewWords.JET_KIND,
          BrewWords.SCREEN_KIND,
          BrewWords.THREE_WAY);

  private static final double FREE_FLOW = 575 * ML_PER_MIN; // m3/s; from memory
  private static final double DEAD_PRESSURE = 15 * BAR; // Pa; from memory
  private static final double OPENING = 10 * BAR; // Pa; from memory
  private static final Spread<Object> FLOW = Spread.relative(0.12).atLeast(15 * ML_PER_MIN);
  private static final Spread<Object> PRESSURE = Spread.relative(0.08).atLeast(0.4 * BAR);

  @Override
  public List<ComponentKind> kinds() {
    return KINDS;
  }

  @Override
  public List<Check> checks() {
    return List.of(
        LimitCheck.named("brew-pump-flow", "Does the brew pump give enough water?")
            .on(
                BrewWords.PUMP,
                BrewWords.FREE_FLOW,
                Allowed.of(
                    "flow rate of the pump without pressure",
                    Source.commonPractice("a vibration pump gives at least 400 mL/min freely"),
                    Limits.atLeast(400 * ML_PER_MIN))),
        LimitCheck.named("brew-pressure", "Is the pressure at the brew head right?")
            .on(
                BrewWords.PUMP,
                BrewWords.BLIND_PRESSURE,
                Allowed.of(
                    "pressure at the brew head against a blind gauge",
                    Source.commonPractice("8 bar to 13 bar against a blind gauge"),
                    new Limits(8 * BAR, 13 * BAR))),
        LimitCheck.named("over-pressure-valve-opens", "Does the over-pressure valve open in time?")
            .on(
                BrewWords.OVER_PRESSURE,
                BrewWords.OPENS_AT,
                Allowed.of(
                    "pressure at which the over-pressure valve opens",
                    Source.commonPractice("it opens between 8 bar and 13 bar"),
                    new Limits(8 * BAR, 13 * BAR))));
  }

  @Override
  public List<FaultModel> faultModels(Appliance appliance) {
    Optional<Component> pump = first(appliance, BrewWords.PUMP);
    Optional<Component> valve = first(appliance, BrewWords.OVER_PRESSURE);
    BrewPath path =
        new BrewPath(
            new VibrationPump(
                si(pump, BrewWords.FREE_FLOW_FIGURE, FREE_FLOW),
                si(pump, BrewWords.DEAD_PRESSURE, DEAD_PRESSURE)),
            si(valve, BrewWords.SET_PRESSURE, OPENING));
    PartModel model = PartModel.of("brew-water", WaterSide.PRIORS, BrewFigure.ALL);
    boolean any = false;
    for (ComponentKind kind : KINDS) {
      Optional<Component> component = first(appliance, kind);
      if (component.isPresent()) {
        add(model.on(component.get(), kind), kind, path);
        any = true;
      }
    }
    return any ? List.of(model.build()) : List.of();
  }

  private static Optional<Component> first(Appliance appliance, ComponentKind kind) {
    List<Component> all = appliance.componentsOf(kind.id());
    return all.isEmpty() ? Optional.empty() : Optional.of(all.get(0));
  }

  private static double si(Optional<Component> part, Characteristic figure, double usual) {
    return part.isPresent() ? part.get().si(figure, usual) : usual;
  }

  private static void add(PartModel model, ComponentKind kind, BrewPath path) {
    switch (kind.id()) {
      case "brew-pump" ->
          model
              .faults(BrewFaults.pump())
              .looks(BrewWords.SOUND, BrewFigure.SOUND)
              .looks(BrewWords.PRIMES, BrewFigure.WANTS_PRIMING)
              .looks(BrewWords.COIL_OPEN, BrewFigure.COIL_OPEN)
              .under(path)
              .observe(BrewWords.FREE_FLOW, BrewPath.Brewing::freeFlow, FLOW)
              .observe(BrewWords.BLIND_PRESSURE, BrewPath.Brewing::blind, PRESSURE);
      case "tank-valve" ->
          model
              .faults(BrewFaults.tankValve())
              .looks(BrewWords.TANK_VALVE, state -> 0.95 * (1 - state.of(BrewFigure.SUCTION)));
      case "over-pressure-valve" ->
          model
              .faults(BrewFaults.overPressure())
              .looks(BrewWords.RETURNS, new Look.Noticed(BrewFigure.OPENS_AT, 0.8, -0.05))
              .under(path)
              .observe(BrewWords.OPENS_AT, BrewPath.Brewing::opensAt, PRESSURE);
      case "jet" ->
          model
              .faults(BrewFaults.jet())
              .looks(BrewWords.JET, state -> 0.95 - 0.85 * state.of(BrewFigure.JET));
      case "group-screen" ->
          model
              .faults(BrewFaults.screen())
              .looks(BrewWords.SCREEN, state -> 0.95 - 0.85 * state.of(BrewFigure.SCREEN))
              .under(path)
              .observe(BrewWords.WITH_SCREEN, BrewPath.Brewing::withScreen, FLOW)
              .observe(BrewWords.WITHOUT_SCREEN, BrewPath.Brewing::withoutScreen, FLOW);
      default ->
          model
              .faults(BrewFaults.threeWay())
              .looks(BrewWords.EXHAUST, new Look.Noticed(BrewFigure.EXHAUST, 0.15, 0.04));
    }
  }
}
