package kelter.hydraulics.fault.wash;

import java.util.List;
import kelter.core.diagnosis.Forecaster;
import kelter.core.diagnosis.Question;
import kelter.hydraulics.circuit.OperatingPoint;
import kelter.hydraulics.circuit.PumpSet;
import kelter.hydraulics.fault.ModelSpread;
import kelter.hydraulics.fault.PumpFaults;
import kelter.hydraulics.part.WashPumpKind;
import kelter.hydraulics.pipe.TorricelliJet;
import kelter.hydraulics.water.Water;

/** Answers questions about the circuit of the wash water. */
final class WashForecaster implements Forecaster {

  private static final double HEAD_FLOOR = 0.05; // m
  private static final double PRESSURE_FLOOR = 300; // Pa
  private static final double INLET_FLOOR = 250; // Pa
  private static final double POWER_FLOOR = 2; // W
  private static final double SPEED_FLOOR = 0.2; // 1/s
  private static final double ARM_FLOOR = 0.03; // 1/s
  private static final double LEVEL_SPREAD = 0.008; // m
  private static final double COUNT_SPREAD = 0.04; // ratio
  private static final double INLET_SHARE = 0.2; // ratio; judgement
  private static final double ARM_SHARE = 0.15; // ratio; judgement
  private static final double ARM_DRIVE = 0.5; // share of its speed that all jets closed would cost
  private static final double ROOM = Water.FREEZING + 20; // K

  private final WashCircuit wash;
  private final List<Question> questions;
  private final Water[] water;
  private final double[] atFlow;
  private final double[] inOrder;

  WashForecaster(WashCircuit wash, List<Question> questions) {
    this.wash = wash;
    this.questions = List.copyOf(questions);
    this.water =
        questions.stream()
            .map(q -> Water.at(q.conditions().si("temperature", ROOM)))
            .toArray(Water[]::new);
    this.atFlow = questions.stream().mapToDouble(q -> q.conditions().si("flow", 0)).toArray();
    this.inOrder = new double[questions.size()];
    for (int i = 0; i < inOrder.length; i++) {
      inOrder[i] = healthy(i, questions.get(i).observable().id());
    }
  }

  @Override
  public void forecast(double[] severity, double[] value, double[] spread) {
    WashState state = WashState.of(wash, severity);
    PumpSet pump = wash.pump().in(state.condition());
    double solvedFor = Double.NaN;
    OperatingPoint point = null;
    for (int i = 0; i < value.length; i++) {
      double viscosity = water[i].kinematicViscosity();
      if (viscosity != solvedFor) {
        solvedFor = viscosity;
        point = pump.against(state.circuit(), viscosity);
      }
      answer(i, severity, state, pump, point, value, spread);
    }
  }

  private void answer(
      int i,
      double[] severity,
      WashState state,
      PumpSet pump,
      OperatingPoint point,
      double[] value,
      double[] spread) {
    String observable = questions.get(i).observable().id();
    double healthy = inOrder[i];
    value[i] =
        switch (observable) {
          case "head" -> pump.atFlow(atFlow[i]).head();
          case "jet-pressure" -> water[i].pressure(jetHead(state, point));
          case "inlet-pressure" ->
              water[i].pressure(
                  Math.max(
                      -LEAST_PRESSURE_HEAD,
                      state.inletHead(point.flow(), water[i].kinematicViscosity())));
          case "power" -> healthy * PumpFaults.electricPower(point.shaftPower(), point.turns());
          case "speed" -> healthy * point.speed();
          case "arm-speed" -> healthy * armShare(severity, state, point);
          case "level" -> state.level();
          case "jets-closed" ->
              CLOSED_ANYWAY + (1 - CLOSED_ANYWAY) * (1 - WashState.openJets(severity));
          default -> seen(observable, severity, state, point);
        };
    spread[i] = spread(observable, value[i], healthy);
  }

  /** The greatest suction that a gauge at the inlet can show before the water boils, in m. */
  private static final double LEAST_PRESSURE_HEAD = 9;

  /** The share of closed jets on a machine in order; judgement. */
  private static final double CLOSED_ANYWAY = 0.03;

  private double healthy(int i, String observable) {
    return switch (observable) {
      case "head" -> wash.pump().atFlow(atFlow[i]).head();
      case "jet-pressure" -> wash.jetPressure(water[i]);
      case "inlet-pressure" -> water[i].pressure(wash.level());
      case "power" -> wash.ratedPower().orElseThrow();
      case "speed" -> wash.ratedSpeed().orElseThrow();
      case "arm-speed" -> wash.ratedArmSpeed().orElseThrow();
      default -> 0;
    };
  }

  private static double spread(String observable, double value, double healthy) {
    return switch (observable) {
      case "head" -> ModelSpread.of(value, healthy, ModelSpread.HEAD, HEAD_FLOOR);
      // The pressure before jets goes with the square of the flow rate.
      case "jet-pressure" -> ModelSpread.of(value, healthy, 2 * ModelSpread.FLOW, PRESSURE_FLOOR);
      case "inlet-pressure" -> ModelSpread.of(value, healthy, INLET_SHARE, INLET_FLOOR);
      case "power" -> ModelSpread.of(value, healthy, ModelSpread.POWER, POWER_FLOOR);
      case "speed" -> ModelSpread.of(value, healthy, ModelSpread.SPEED, SPEED_FLOOR);
      case "arm-speed" -> ModelSpread.of(value, healthy, ARM_SHARE, ARM_FLOOR);
      case "level" -> LEVEL_SPREAD;
      case "jets-closed" -> COUNT_SPREAD;
      default -> ModelSpread.GRADE;
    };
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
      case "noise" -> WashLook.noise(severity);
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
