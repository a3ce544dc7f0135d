package kelter.hydraulics.fault.drain;

import java.util.List;
import kelter.core.diagnosis.Forecaster;
import kelter.core.diagnosis.Question;
import kelter.core.job.Conditions;
import kelter.hydraulics.circuit.OperatingPoint;
import kelter.hydraulics.circuit.PumpSet;
import kelter.hydraulics.circuit.Supply;
import kelter.hydraulics.drain.HoseBackflow;
import kelter.hydraulics.fault.ModelSpread;
import kelter.hydraulics.fault.PumpFaults;
import kelter.hydraulics.part.DrainPumpKind;

/** Answers questions about the way of the water out. */
final class DrainForecaster implements Forecaster {

  private static final double HEAD_FLOOR = 0.02; // m
  private static final double FLOW_FLOOR = 0.3 / 60_000; // m3/s
  private static final double TIME_FLOOR = 5; // s
  private static final double GIVEN_UP = 600; // s, when nobody waits any longer
  private static final double RETURNED_SHARE = 0.12; // ratio of the content of the hose; judgement
  private static final double CURRENT_FLOOR = 0.01; // A
  private static final double POWER_FLOOR = 0.7; // W
  private static final double LIFT_SPREAD = 0.04; // m
  private static final double FLOW_WITH_A_USUAL_HOSE = 0.15; // ratio; judgement
  private static final double LIFT_OF_A_USUAL_HOSE = 0.2; // m; judgement

  private final DrainPath path;
  private final List<Question> questions;
  private final double[] viscosity;
  private final Supply[] supply;
  private final double[] atFlow;
  private final double[] inOrder;

  DrainForecaster(DrainPath path, List<Question> questions) {
    this.path = path;
    this.questions = List.copyOf(questions);
    int count = questions.size();
    this.viscosity = new double[count];
    this.supply = new Supply[count];
    this.atFlow = new double[count];
    for (int i = 0; i < count; i++) {
      Conditions conditions = questions.get(i).conditions();
      viscosity[i] = DrainPath.water(conditions).kinematicViscosity();
      supply[i] = path.rated().supply(conditions);
      atFlow[i] = conditions.si("flow", 0);
    }
    this.inOrder = new double[count];
    values(new double[DrainFault.values().length], inOrder);
  }

  @Override
  public void forecast(double[] severity, double[] value, double[] spread) {
    values(severity, value);
    for (int i = 0; i < value.length; i++) {
      spread[i] = spread(questions.get(i).observable().id(), value[i], inOrder[i]);
    }
  }

  private void values(double[] severity, double[] value) {
    DrainState state = DrainState.of(path, severity);
    PumpSet pump = path.pump().in(state.condition());
    OperatingPoint point = null;
    for (int i = 0; i < value.length; i++) {
      if (i == 0 || viscosity[i] != viscosity[i - 1] || !same(supply[i], supply[i - 1])) {
        pump = pump.on(supply[i]);
        point = pump.against(state.circuit(), viscosity[i]);
      }
      value[i] = value(i, severity, state, pump, point);
    }
  }

  private static boolean same(Supply one, Supply other) {
    return one.frequency() == other.frequency() && one.voltage() == other.voltage();
  }

  private double value(
      int i, double[] severity, DrainState state, PumpSet pump, OperatingPoint point) {
    String observable = questions.get(i).observable().id();
    return switch (observable) {
      case "head" -> pump.atFlow(atFlow[i]).head();
      case "outlet-head" -> state.outletHead(point, path.hose());
      case "hose-head" -> state.hoseHead(point, path.hose());
      case "flow" -> point.flow() * DrainState.arriving(severity);
      case "drain-time" -> drainTime(point.flow());
      case "power" ->
          path.ratedPower().orElseThrow()
              * PumpFaults.electricPower(point.shaftPower(), point.turns());
      case "current" -> path.current().orElseThrow().at(point, supply[i]);
      case "returned-volume" -> content() * DrainLook.returnedShare(severity);
      case "lift" -> path.lift() + DrainState.extraLift(severity);
      default -> seen(observable, severity, point);
    };
  }

  private double drainTime(double flow) {
    double volume = path.drainVolume().orElseThrow();
    return Math.min(GIVEN_UP, volume / Math.max(flow, volume / GIVEN_UP));
  }

  private double content() {
    return HoseBackflow.volume(path.hose().bore(), path.hose().length());
  }

  private double spread(String observable, double value, double healthy) {
    return switch (observable) {
      case "head" -> ModelSpread.of(value, healthy, headShare(), headFloor());
      case "outlet-head", "hose-head" ->
          ModelSpread.of(value, healthy, headShare(), Math.hypot(headFloor(), liftFloor()));
      case "flow" -> ModelSpread.of(value, healthy, flowShare(), FLOW_FLOOR);
      case "drain-time" -> ModelSpread.of(value, healthy, flowShare(), TIME_FLOOR);
      case "power" -> ModelSpread.of(value, healthy, ModelSpread.POWER, POWER_FLOOR);
      case "current" -> ModelSpread.of(value, healthy, ModelSpread.CURRENT, CURRENT_FLOOR);
      case "returned-volume" -> RETURNED_SHARE * content();
      case "lift" -> LIFT_SPREAD;
      default -> ModelSpread.GRADE;
    };
  }

  private double liftFloor() {
    return path.hoseKnown() ? LIFT_SPREAD : LIFT_OF_A_USUAL_HOSE;
  }

  private double headShare() {
    return path.curveKnown() ? ModelSpread.HEAD : ModelSpread.HEAD_OF_A_TYPICAL_PUMP;
  }

  private double headFloor() {
    return Math.hypot(HEAD_FLOOR, path.pump().curve().scatter());
  }

  private double flowShare() {
    if (!path.curveKnown()) {
      return ModelSpread.FLOW_OF_A_TYPICAL_PUMP;
    }
    return path.hoseKnown() ? ModelSpread.FLOW : FLOW_WITH_A_USUAL_HOSE;
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
      case "water-outside" -> DrainLook.outside(severity);
      case "water-returns" -> DrainLook.returns(severity);
      case "drains-slowly" -> DrainLook.drainsSlowly(point.flow() / path.point().flow(), severity);
      default ->
          throw new IllegalArgumentException(
              observable + " is not one of the observables of a " + DrainPumpKind.ID);
    };
  }
}
