package kelter.hydraulics.fault.wash;

import java.util.List;
import java.util.Set;
import kelter.core.diagnosis.Forecaster;
import kelter.core.diagnosis.Question;
import kelter.core.job.Conditions;
import kelter.hydraulics.circuit.OperatingPoint;
import kelter.hydraulics.circuit.PumpSet;
import kelter.hydraulics.circuit.Supply;
import kelter.hydraulics.fault.ModelSpread;
import kelter.hydraulics.fault.PumpFaults;
import kelter.hydraulics.fault.PumpNoise;
import kelter.hydraulics.part.WashPumpKind;
import kelter.hydraulics.pipe.TorricelliJet;
import kelter.hydraulics.water.Water;

/** Answers questions about the circuit of the wash water. */
final class WashForecaster implements Forecaster {

  private static final double HEAD_FLOOR = 0.05; // m
  private static final double PRESSURE_FLOOR = 300; // Pa
  private static final double INLET_FLOOR = 250; // Pa
  private static final double CURRENT_FLOOR = 0.01; // A
  private static final double POWER_FLOOR = 2; // W
  private static final double SPEED_FLOOR = 0.2; // 1/s
  private static final double ARM_FLOOR = 0.03; // 1/s
  private static final double LEVEL_SPREAD = 0.008; // m
  private static final double COUNT_SPREAD = 0.04; // ratio
  private static final double INLET_SHARE = 0.2; // ratio; judgement
  private static final double ARM_SHARE = 0.15; // ratio; judgement
  private static final double ARM_DRIVE = 0.5; // share of its speed that all jets closed would cost

  /** What can be told without solving the operating point. */
  private static final Set<String> ASIDE =
      Set.of(
          "head",
          "level",
          "jets-closed",
          "winding-resistance",
          "pressure-swings",
          "filter",
          "debris",
          "turns",
          "impeller-loose",
          "passage-leaks");

  /** The place of the strength of the pump, behind the severities of the faults. */
  private static final int STRENGTH = WashFault.values().length;

  private final WashCircuit wash;
  private final List<Question> questions;
  private final Water[] water;
  private final Supply[] supply;
  private final double[] atFlow;
  private final boolean[] atPoint;
  private final double headFloor;
  private final double strength;
  private final double[] inOrder;
  private final double[] share;

  WashForecaster(WashCircuit wash, List<Question> questions) {
    this.wash = wash;
    this.questions = List.copyOf(questions);
    int count = questions.size();
    this.water = new Water[count];
    this.supply = new Supply[count];
    this.atFlow = new double[count];
    for (int i = 0; i < count; i++) {
      Conditions conditions = questions.get(i).conditions();
      boolean dry = isOfWinding(questions.get(i));
      water[i] = WashCircuit.water(dry ? Conditions.NONE : conditions);
      supply[i] = wash.rated().supply(dry ? Conditions.NONE : conditions);
      atFlow[i] = conditions.si("flow", 0);
    }
    this.atPoint = new boolean[count];
    for (int i = 0; i < count; i++) {
      atPoint[i] = !ASIDE.contains(questions.get(i).observable().id());
    }
    this.headFloor = Math.hypot(HEAD_FLOOR, wash.pump().curve().scatter());
    this.strength = strength(wash);
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
  static double strength(WashCircuit wash) {
    return ModelSpread.ofThePump(headShare(wash));
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
    WashState state = WashState.of(wash, severity);
    PumpSet pump = pump(severity[STRENGTH]).in(state.condition());
    OperatingPoint point = null;
    for (int i = 0; i < value.length; i++) {
      if (i == 0 || !sameAsBefore(i)) {
        pump = pump.on(supply[i]);
        point = null;
      }
      if (point == null && atPoint[i]) {
        point = pump.against(state.circuit(), water[i].kinematicViscosity());
      }
      value[i] = value(i, severity, state, pump, point);
      turns[i] = atPoint[i] ? point.turns() : value[i] > 0 || pump.atFlow(atFlow[i]).turns();
    }
  }

  private PumpSet pump(double deviate) {
    PumpSet usual = wash.pump();
    return deviate == 0 ? usual : usual.stronger(Math.pow(1 + strength, deviate));
  }

  private boolean sameAsBefore(int i) {
    return water[i].temperature() == water[i - 1].temperature()
        && supply[i].frequency() == supply[i - 1].frequency()
        && supply[i].voltage() == supply[i - 1].voltage();
  }

  private double value(
      int i, double[] severity, WashState state, PumpSet pump, OperatingPoint point) {
    String observable = questions.get(i).observable().id();
    return switch (observable) {
      case "head" -> pump.atFlow(atFlow[i]).head();
      case "jet-pressure" -> water[i].pressure(jetHead(state, point));
      case "inlet-pressure" ->
          water[i].pressure(
              Math.max(
                  -LEAST_PRESSURE_HEAD,
                  state.inletHead(point.flow(), water[i].kinematicViscosity())));
      case "power" ->
          state.dead()
              ? 0
              : wash.ratedPower().orElseThrow()
                  * PumpFaults.electricPower(point.shaftPower(), point.turns());
      case "current" -> state.dead() ? 0 : wash.current().orElseThrow().at(point, supply[i]);
      case "winding-resistance" ->
          wash.winding()
              .resistance(WashFault.WINDING_OPEN.isThere(severity), questions.get(i).conditions());
      case "noise" -> WashLook.noise(severity, state.dead(), point.turns());
      case "speed" -> wash.ratedSpeed().orElseThrow() * point.speed();
      case "arm-speed" -> wash.ratedArmSpeed().orElseThrow() * armShare(severity, state, point);
      case "level" -> state.level();
      case "jets-closed" ->
          CLOSED_ANYWAY + (1 - CLOSED_ANYWAY) * (1 - WashState.openJets(severity));
      default -> seen(observable, severity, state, point);
    };
  }

  /** The greatest suction that a gauge at the inlet can show before the water boils, in m. */
  private static final double LEAST_PRESSURE_HEAD = 9;

  /** The share of closed jets on a machine in order; judgement. */
  private static final double CLOSED_ANYWAY = 0.03;

  /** The whole spread of machines in order, as a ratio of the figure. */
  private double share(String observable) {
    return switch (observable) {
      case "head" -> headShare(wash);
      // The pressure before jets goes with the square of the flow rate.
      case "jet-pressure" -> 2 * flowShare();
      case "inlet-pressure" -> INLET_SHARE;
      case "power" -> ModelSpread.POWER;
      case "current" -> ModelSpread.CURRENT;
      case "speed" -> ModelSpread.SPEED;
      case "arm-speed" -> ARM_SHARE;
      default -> 0;
    };
  }

  private double spread(int i, double value, boolean turns) {
    return switch (questions.get(i).observable().id()) {
      case "head" -> figure(i, value, turns, headFloor);
      case "jet-pressure" -> figure(i, value, turns, PRESSURE_FLOOR);
      case "inlet-pressure" -> figure(i, value, true, INLET_FLOOR);
      case "power" -> figure(i, value, turns, POWER_FLOOR);
      case "current" -> figure(i, value, turns, CURRENT_FLOOR);
      case "speed" -> figure(i, value, turns, SPEED_FLOOR);
      case "arm-speed" -> figure(i, value, turns, ARM_FLOOR);
      case "winding-resistance" -> wash.winding().spreadAt(value);
      case "noise" -> PumpNoise.spread(value);
      case "level" -> LEVEL_SPREAD;
      case "jets-closed" -> COUNT_SPREAD;
      default -> ModelSpread.GRADE;
    };
  }

  private double figure(int i, double value, boolean turns, double floor) {
    return turns
        ? ModelSpread.of(value, inOrder[i], share[i], floor)
        : ModelSpread.standing(value, floor);
  }

  private static double headShare(WashCircuit wash) {
    return wash.known() ? ModelSpread.HEAD : ModelSpread.HEAD_OF_A_TYPICAL_PUMP;
  }

  private double flowShare() {
    return wash.known() ? ModelSpread.FLOW : ModelSpread.FLOW_OF_A_TYPICAL_PUMP;
  }

  private static double jetHead(WashState state, OperatingPoint point) {
    return TorricelliJet.head(state.circuit().jetArea(), point.flow());
  }

  private double jetShare(WashState state, OperatingPoint point) {
    return jetHead(state, point) / TorricelliJet.head(wash.jetArea(), wash.point().flow());
  }

  private double armShare(double[] severity, WashState state, OperatingPoint point) {
    double drive = 1 - ARM_DRIVE * (1 - WashState.openJets(severity));
    return Math.sqrt(jetShare(state, point)) * drive;
  }

  private double seen(String observable, double[] severity, WashState state, OperatingPoint point) {
    return switch (observable) {
      case "pressure-swings" -> WashLook.swings(severity);
      case "filter" -> WashLook.filter(severity);
      case "debris" -> WashLook.debris(severity);
      case "turns" -> WashLook.turns(severity);
      case "impeller-loose" -> WashLook.loose(severity);
      case "passage-leaks" -> WashLook.leaks(severity);
      case "weak-jets" -> WashLook.weakJets(jetShare(state, point), severity);
      default ->
          throw new IllegalArgumentException(
              observable + " is not one of the observables of a " + WashPumpKind.ID);
    };
  }
}
