package kelter.hydraulics.fault.drain;

import java.util.List;
import java.util.Set;
import kelter.core.diagnosis.Forecaster;
import kelter.core.diagnosis.Question;
import kelter.core.job.Conditions;
import kelter.hydraulics.circuit.OperatingPoint;
import kelter.hydraulics.circuit.PumpSet;
import kelter.hydraulics.circuit.Supply;
import kelter.hydraulics.drain.HoseBackflow;
import kelter.hydraulics.fault.ModelSpread;
import kelter.hydraulics.fault.PumpFaults;
import kelter.hydraulics.fault.PumpNoise;
import kelter.hydraulics.part.DrainPumpKind;

/** Answers questions about the way of the water out. */
final class DrainForecaster implements Forecaster {

  private static final double HEAD_FLOOR = 0.02; // m
  private static final double FLOW_FLOOR = 0.3 / 60_000; // m3/s
  private static final double TIME_FLOOR = 5; // s
  private static final double GIVEN_UP = 600; // s, when nobody waits any longer
  private static final double RETURNED_SHARE = 0.12; // ratio of the content of the hose; judgement
  private static final double CURRENT_FLOOR = 0.01; // A
  private static final double USUAL_POWER = 30; // W, of drain pumps; common practice, no source
  private static final double POWER_FLOOR = 0.7; // W
  private static final double LIFT_SPREAD = 0.04; // m
  private static final double FLOW_WITH_A_USUAL_HOSE = 0.15; // ratio; judgement
  private static final double LIFT_OF_A_USUAL_HOSE = 0.2; // m; judgement

  /** What can be told without solving the operating point. */
  private static final Set<String> ASIDE =
      Set.of(
          "head",
          "returned-volume",
          "lift",
          "winding-resistance",
          "debris",
          "strainer",
          "turns",
          "impeller-loose",
          "hose-narrowed",
          "valve-hangs",
          "water-outside",
          "water-returns");

  /** The place of the strength of the pump, behind the severities of the faults. */
  private static final int STRENGTH = DrainFault.values().length;

  private final DrainPath path;
  private final List<Question> questions;
  private final double[] viscosity;
  private final Supply[] supply;
  private final double[] atFlow;
  private final boolean[] atPoint;
  private final double headFloor;
  private final double headFloorOnHose;
  private final double strength;
  private final double[] inOrder;
  private final double[] share;

  DrainForecaster(DrainPath path, List<Question> questions) {
    this.path = path;
    this.questions = List.copyOf(questions);
    int count = questions.size();
    this.viscosity = new double[count];
    this.supply = new Supply[count];
    this.atFlow = new double[count];
    for (int i = 0; i < count; i++) {
      Conditions conditions = questions.get(i).conditions();
      boolean dry = isOfWinding(questions.get(i));
      viscosity[i] = DrainPath.water(dry ? Conditions.NONE : conditions).kinematicViscosity();
      supply[i] = path.rated().supply(dry ? Conditions.NONE : conditions);
      atFlow[i] = conditions.si("flow", 0);
    }
    this.atPoint = new boolean[count];
    for (int i = 0; i < count; i++) {
      atPoint[i] = !ASIDE.contains(questions.get(i).observable().id());
    }
    this.headFloor = Math.hypot(HEAD_FLOOR, path.pump().curve().scatter());
    this.headFloorOnHose = Math.hypot(headFloor, liftFloor());
    this.strength = strength(path);
    this.inOrder = new double[count];
    double[] state = new double[STRENGTH + 1];
    boolean[] turns = new boolean[count];
    values(state, inOrder, turns);
    state[STRENGTH] = 1;
    double[] stronger = new double[count];
    values(state, stronger, turns);
    double[] whole = new double[count];
    for (int i = 0; i < count; i++) {
      whole[i] = share(questions.get(i).observable().id());
    }
    this.share = ModelSpread.left(inOrder, stronger, whole);
  }

  /** How far pumps of this kind differ in strength, told as the head at no flow, ratio. */
  static double strength(DrainPath path) {
    return ModelSpread.ofThePump(headShare(path));
  }

  @Override
  public void forecast(double[] severity, double[] value, double[] spread) {
    boolean[] turns = new boolean[value.length];
    values(severity, value, turns);
    for (int i = 0; i < value.length; i++) {
      spread[i] = spread(i, value[i], turns[i]);
    }
  }

  private static boolean isOfWinding(Question question) {
    return question.observable().id().equals("winding-resistance");
  }

  private void values(double[] severity, double[] value, boolean[] turns) {
    DrainState state = DrainState.of(path, severity);
    PumpSet pump = pump(severity[STRENGTH]).in(state.condition());
    OperatingPoint point = null;
    for (int i = 0; i < value.length; i++) {
      if (i == 0 || viscosity[i] != viscosity[i - 1] || !same(supply[i], supply[i - 1])) {
        pump = pump.on(supply[i]);
        point = null;
      }
      if (point == null && atPoint[i]) {
        point = pump.against(state.circuit(), viscosity[i]);
      }
      value[i] = value(i, severity, state, pump, point);
      turns[i] = atPoint[i] ? point.turns() : value[i] > 0 || pump.atFlow(atFlow[i]).turns();
    }
  }

  private PumpSet pump(double deviate) {
    PumpSet usual = path.pump();
    return deviate == 0 ? usual : usual.stronger(Math.pow(1 + strength, deviate));
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
          state.dead()
              ? 0
              : ratedPower() * PumpFaults.electricPower(point.shaftPower(), point.turns());
      case "current" -> state.dead() ? 0 : path.current().orElseThrow().at(point, supply[i]);
      case "winding-resistance" ->
          path.winding()
              .resistance(DrainFault.WINDING_OPEN.isThere(severity), questions.get(i).conditions());
      case "noise" -> DrainLook.noise(severity, state.dead(), point.turns());
      case "returned-volume" -> content() * DrainLook.returnedShare(severity);
      case "lift" -> path.lift() + DrainState.extraLift(severity);
      default -> seen(observable, severity, point);
    };
  }

  private double ratedPower() {
    return path.ratedPower().isPresent() ? path.ratedPower().get() : USUAL_POWER;
  }

  private double drainTime(double flow) {
    double volume = path.drainVolume().orElseThrow();
    return Math.min(GIVEN_UP, volume / Math.max(flow, volume / GIVEN_UP));
  }

  private double content() {
    return HoseBackflow.volume(path.hose().bore(), path.hose().length());
  }

  /** The whole spread of machines in order, as a ratio of the figure. */
  private double share(String observable) {
    return switch (observable) {
      case "head", "outlet-head", "hose-head" -> headShare(path);
      case "flow", "drain-time" -> flowShare();
      case "power" ->
          path.ratedPower().isPresent() ? ModelSpread.POWER : ModelSpread.POWER_OF_A_TYPICAL_PUMP;
      case "current" -> ModelSpread.CURRENT;
      default -> 0;
    };
  }

  private double spread(int i, double value, boolean turns) {
    return switch (questions.get(i).observable().id()) {
      case "head" -> figure(i, value, turns, headFloor);
      case "outlet-head", "hose-head" -> figure(i, value, turns, headFloorOnHose);
      case "flow" -> figure(i, value, turns, FLOW_FLOOR);
      case "drain-time" -> figure(i, value, true, TIME_FLOOR);
      case "power" -> figure(i, value, turns, POWER_FLOOR);
      case "current" -> figure(i, value, turns, CURRENT_FLOOR);
      case "winding-resistance" -> path.winding().spreadAt(value);
      case "noise" -> PumpNoise.spread(value);
      case "returned-volume" -> RETURNED_SHARE * content();
      case "lift" -> LIFT_SPREAD;
      default -> ModelSpread.GRADE;
    };
  }

  private double figure(int i, double value, boolean turns, double floor) {
    return turns
        ? ModelSpread.of(value, inOrder[i], share[i], floor)
        : ModelSpread.standing(value, floor);
  }

  private double liftFloor() {
    return path.hoseKnown() ? LIFT_SPREAD : LIFT_OF_A_USUAL_HOSE;
  }

  private static double headShare(DrainPath path) {
    return path.curveKnown() ? ModelSpread.HEAD : ModelSpread.HEAD_OF_A_TYPICAL_PUMP;
  }

  private double flowShare() {
    if (!path.curveKnown()) {
      return ModelSpread.FLOW_OF_A_TYPICAL_PUMP;
    }
    return path.hoseKnown() ? ModelSpread.FLOW : FLOW_WITH_A_USUAL_HOSE;
  }

  private double seen(String observable, double[] severity, OperatingPoint point) {
    return switch (observable) {
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
