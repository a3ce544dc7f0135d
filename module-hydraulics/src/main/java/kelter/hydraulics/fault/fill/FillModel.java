package kelter.hydraulics.fault.fill;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Forecaster;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.SharedQuantity;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.source.Source;
import kelter.core.vocabulary.Observable;
import kelter.hydraulics.fault.ModelSpread;
import kelter.hydraulics.fault.Symptom;
import kelter.hydraulics.fill.FillPath;
import kelter.hydraulics.part.InletValveKind;
import kelter.hydraulics.water.Water;

/**
 * What can be wrong on the way of the water in, and how it would show: the flow rate from one
 * balance of pressures, the rest from what is in the way.
 *
 * @param component the id of the inlet valve
 * @param order the way in, in order
 */
public record FillModel(String component, FillState order) implements FaultModel {

  private static final double FLOW_FLOOR = 0.2 / 60_000; // m3/s
  private static final double PRESSURE_SHARE = 0.08; // ratio, from day to day; judgement
  private static final double HOUSE_SHARE = 0.25; // ratio, from house to house; judgement
  private static final double PRESSURE_FLOOR = 5000; // Pa
  private static final double WHILE_READING = 0.03; // ratio, others draw water; judgement
  private static final double TAP_SHARE = 0.15; // ratio; judgement
  private static final double REGULATOR_SHARE = 0.15 / Math.sqrt(3); // ratio; from memory
  private static final double NOTHING = 0.12; // place of a screen in order on a scale from 0 to 1
  private static final double DEBRIS = 0.82;
  private static final double BANGING = 650_000; // Pa at which half of all owners complain

  private static final SharedQuantity DAY =
      supply("8 % from day to day", "the pressure of one supply varies by 8 % from day to day");
  private static final SharedQuantity HOUSE =
      supply("25 % from house to house", "pressures of houses differ by 25 %");

  private static final Water COLD = Water.at(Water.FREEZING + 15);

  private static SharedQuantity supply(String spread, String rule) {
    return new SharedQuantity(
        "supply-pressure", "pressure of the water supply, " + spread, Source.commonPractice(rule));
  }

  /**
   * The model of an inlet valve.
   *
   * @param component an inlet valve
   * @return the model, or empty if neither the flow rate of its regulator nor its flow coefficient
   *     is known
   */
  public static Optional<FaultModel> of(Component component) {
    Optional<FillState> order = FillState.of(component);
    return order.isPresent()
        ? Optional.of(new FillModel(component.id(), order.get()))
        : Optional.empty();
  }

  @Override
  public String id() {
    return component + "-water-in";
  }

  @Override
  public List<Fault> faults() {
    List<Fault> faults = new ArrayList<>();
    for (FillFault fault : FillFault.values()) {
      faults.add(fault.on(component));
    }
    return List.copyOf(faults);
  }

  /** A supply is not too weak and too strong at once. */
  @Override
  public boolean mayMeet(int one, int other) {
    return one == other || !FillFault.isOfSupply(one) || !FillFault.isOfSupply(other);
  }

  @Override
  public List<Question> questions() {
    List<Question> questions = new ArrayList<>();
    for (Observable observable : InletValveKind.KIND.observables()) {
      questions.add(new Question(component, observable, Conditions.NONE));
    }
    return List.copyOf(questions);
  }

  /** The pressure of the supply moves pressure, tap and, without a regulator, filling together. */
  @Override
  public List<SharedQuantity> shared() {
    return List.of(order.pressureKnown() ? DAY : HOUSE);
  }

  private double pressureShare() {
    return order.pressureKnown() ? PRESSURE_SHARE : HOUSE_SHARE;
  }

  /** What is left of the spread of a tap: its flow goes with the root of the pressure. */
  private double tapShare() {
    double bySupply = pressureShare() / 2;
    return Math.sqrt(TAP_SHARE * TAP_SHARE - bySupply * bySupply);
  }

  @Override
  public Forecaster forecaster(List<Question> questions) {
    List<Question> asked = List.copyOf(questions);
    double usual = order.path().flow(COLD);
    double share = pressureShare();
    int deviate = FillFault.values().length;
    return (severity, value, spread) -> {
      FillPath path = order.with(severity, Math.pow(1 + share, severity[deviate]));
      double flow = path.flow(COLD);
      for (int i = 0; i < value.length; i++) {
        answer(asked.get(i).observable().id(), i, severity, path, flow, usual, value, spread);
      }
    };
  }

  private void answer(
      String observable,
      int i,
      double[] severity,
      FillPath path,
      double flow,
      double usual,
      double[] value,
      double[] spread) {
    spread[i] = ModelSpread.GRADE;
    switch (observable) {
      case "fill-flow" -> {
        value[i] = flow;
        spread[i] = ModelSpread.of(value[i], usual, REGULATOR_SHARE, FLOW_FLOOR);
      }
      case "static-pressure" -> {
        value[i] = path.staticPressure();
        spread[i] = PRESSURE_FLOOR + WHILE_READING * value[i];
      }
      case "tap-flow" -> {
        value[i] = path.tapFlow();
        spread[i] = FLOW_FLOOR + tapShare() * value[i];
      }
      case "screen" ->
          value[i] = Symptom.grade(NOTHING + DEBRIS * FillFault.SCREEN_CLOGGED.in(severity));
      case "hose-kinked" ->
          value[i] = Symptom.noticed(FillFault.HOSE_KINKED.in(severity), 0.35, 0.08);
      case "leaks-by" -> value[i] = Symptom.noticed(FillFault.LEAKS_BY.in(severity), 0.2, 0.05);
      case "water-creeps-in" ->
          value[i] = Symptom.noticed(FillFault.LEAKS_BY.in(severity), 0.3, 0.08);
      case "fills-slowly" -> value[i] = Symptom.noticed(flow / usual, 0.6, -0.07);
      case "bangs" -> value[i] = Symptom.noticed(path.staticPressure() / BANGING, 1, 0.12);
      default ->
          throw new IllegalArgumentException(
              observable + " is not one of the observables of an " + InletValveKind.ID);
    }
  }
}
