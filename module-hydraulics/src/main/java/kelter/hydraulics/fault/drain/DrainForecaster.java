package kelter.hydraulics.fault.drain;

import java.util.Arrays;
import java.util.List;
import kelter.core.diagnosis.Forecaster;
import kelter.core.diagnosis.Question;
import kelter.hydraulics.circuit.OperatingPoint;
import kelter.hydraulics.circuit.PumpSet;
import kelter.hydraulics.fault.ModelSpread;
import kelter.hydraulics.fault.PumpFaults;
import kelter.hydraulics.part.DrainPumpKind;
import kelter.hydraulics.water.Water;

/** Answers questions about the way of the water out. */
final class DrainForecaster implements Forecaster {

  private static final double HEAD_FLOOR = 0.02; // m
  private static final double FLOW_FLOOR = 0.3 / 60_000; // m3/s
  private static final double TIME_FLOOR = 5; // s
  private static final double GIVEN_UP = 600; // s, when nobody waits any longer
  private static final double POWER_FLOOR = 0.7; // W
  private static final double LIFT_SPREAD = 0.04; // m
  private static final double FLOW_WITH_A_USUAL_HOSE = 0.15; // ratio; judgement
  private static final double ROOM = Water.FREEZING + 20; // K

  private final DrainPath path;
  private final List<Question> questions;
  private final double[] viscosity;
  private final double[] atFlow;
  private final double[] headInOrder;

  DrainForecaster(DrainPath path, List<Question> questions) {
    this.path = path;
    this.questions = List.copyOf(questions);
    this.viscosity =
        questions.stream()
            .mapToDouble(q -> Water.at(q.conditions().si("temperature", ROOM)).kinematicViscosity())
            .toArray();
    this.atFlow = questions.stream().mapToDouble(q -> q.conditions().si("flow", 0)).toArray();
    this.headInOrder = Arrays.stream(atFlow).map(flow -> path.pump().atFlow(flow).head()).toArray();
  }

  @Override
  public void forecast(double[] severity, double[] value, double[] spread) {
    DrainState state = DrainState.of(path, severity);
    PumpSet pump = path.pump().in(state.condition());
    double solvedFor = Double.NaN;
    OperatingPoint point = null;
    for (int i = 0; i < value.length; i++) {
      if (viscosity[i] != solvedFor) {
        solvedFor = viscosity[i];
        point = pump.against(state.circuit(), solvedFor);
      }
      answer(i, severity, pump, point, value, spread);
    }
  }

  private void answer(
      int i,
      double[] severity,
      PumpSet pump,
      OperatingPoint point,
      double[] value,
      double[] spread) {
    spread[i] = ModelSpread.GRADE;
    switch (questions.get(i).observable().id()) {
      case "head" -> {
        value[i] = pump.atFlow(atFlow[i]).head();
        spread[i] = ModelSpread.of(value[i], headInOrder[i], ModelSpread.HEAD, HEAD_FLOOR);
      }
      case "flow" -> {
        value[i] = point.flow();
        double share = path.hoseKnown() ? ModelSpread.FLOW : FLOW_WITH_A_USUAL_HOSE;
        spread[i] = ModelSpread.of(value[i], path.point().flow(), share, FLOW_FLOOR);
      }
      case "drain-time" -> {
        double volume = path.drainVolume().orElseThrow();
        double share = path.hoseKnown() ? ModelSpread.FLOW : FLOW_WITH_A_USUAL_HOSE;
        value[i] = Math.min(GIVEN_UP, volume / Math.max(point.flow(), volume / GIVEN_UP));
        spread[i] = ModelSpread.of(value[i], volume / path.point().flow(), share, TIME_FLOOR);
      }
      case "power" -> {
        double rated = path.ratedPower().orElseThrow();
        value[i] = rated * PumpFaults.electricPower(point.shaftPower(), point.turns());
        spread[i] = ModelSpread.of(value[i], rated, ModelSpread.POWER, POWER_FLOOR);
      }
      case "lift" -> {
        value[i] = path.lift() + DrainState.extraLift(severity);
        spread[i] = LIFT_SPREAD;
      }
      default -> value[i] = seen(questions.get(i).observable().id(), severity, point);
    }
  }

  private double seen(String observable, double[] severity, OperatingPoint point) {
    return switch (observable) {
      case "noise" -> DrainLook.noise(severity);
      case "debris" -> DrainLook.debris(severity);
      case "strainer" -> DrainLook.strainer(severity);
      case "turns" -> DrainLook.turns(severity);
      case "impeller-loose" -> DrainLook.loose(severity);
      case "hose-narrowed" -> DrainLook.narrowed(severity);
      case "valve-hangs" -> DrainLook.valveHangs(severity);
      case "water-returns" -> DrainLook.returns(severity);
      case "drains-slowly" -> DrainLook.drainsSlowly(point.flow() / path.point().flow(), severity);
      default ->
          throw new IllegalArgumentException(
              observable + " is not one of the observables of a " + DrainPumpKind.ID);
    };
  }
}
