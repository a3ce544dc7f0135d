package kelter.hydraulics.inletvalve;

import java.util.List;
import java.util.Optional;
import kelter.core.check.Check;
import kelter.core.check.LimitCheck;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.SharedQuantity;
import kelter.core.diagnosis.model.Course;
import kelter.core.diagnosis.model.Look;
import kelter.core.diagnosis.model.PartModel;
import kelter.core.diagnosis.model.Spread;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.module.Part;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Span;
import kelter.hydraulics.leak.LeakHunt;
import kelter.hydraulics.leak.LeakHunt.Leak;
import kelter.hydraulics.part.WaterSide;

/**
 * The inlet valve with its screen, hose and supply; what is electric about it is another module's.
 */
public final class InletValve implements Part {

  static final Characteristic SUPPLY_PRESSURE =
      new Characteristic(
              "supply-pressure", "usual pressure of the supply", QuantityKind.GAUGE_PRESSURE)
          .within(new Span(0, 5e6));

  static final Characteristic USUAL_TAP_FLOW =
      new Characteristic("usual-tap-flow", "usual flow rate of the open tap", QuantityKind.FLOW)
          .within(new Span(0, 0.02));

  static final Characteristic RATED_FLOW =
      new Characteristic(
              "rated-flow", "flow rate that the valve's regulator holds", QuantityKind.FLOW)
          .within(new Span(1e-7, 0.02));

  static final Characteristic COEFFICIENT =
      new Characteristic("kv", "flow coefficient of the open valve", QuantityKind.FLOW)
          .within(new Span(1e-7, 0.1));

  static final Characteristic HOSE_LENGTH =
      new Characteristic("hose-length", "length of the fill hose", QuantityKind.DISTANCE)
          .within(new Span(0.01, 200));

  static final Characteristic HOSE_BORE =
      new Characteristic("hose-bore", "inner diameter of the fill hose", QuantityKind.LENGTH)
          .within(new Span(0.001, 0.5));

  static final Characteristic PIPE_LENGTH =
      new Characteristic(
              "pipe-length", "length of the pipe from the riser to the tap", QuantityKind.DISTANCE)
          .within(new Span(0.01, 1000));

  static final Characteristic PIPE_BORE =
      new Characteristic(
              "pipe-bore", "inner diameter of the pipe from riser to tap", QuantityKind.LENGTH)
          .within(new Span(0.001, 0.5));

  static final Observable FILL_FLOW =
      Observable.named("fill-flow", "flow rate while the machine fills")
          .quantity(QuantityKind.FLOW, 0, 40.0 / 60_000)
          .how(
              "Take the time from the opening of the valve to a known volume: by the water meter, or by the"
                  + " level in a machine of known plan area.")
          .by(Procedure.running(5, new Accuracy(0.05, 0.2 / 60_000), Caution.HOT_WATER));

  static final Observable STATIC_PRESSURE =
      Observable.named("static-pressure", "pressure of the supply with nothing drawn")
          .quantity(QuantityKind.GAUGE_PRESSURE, 0, 1_500_000)
          .how("Close the tap, take the hose off, screw a gauge on, open the tap, and read it.")
          .by(Procedure.dead(6, new Accuracy(0.016, 5000)));

  static final Observable DYNAMIC_PRESSURE =
      Observable.named("dynamic-pressure", "pressure of the supply while the machine fills")
          .quantity(QuantityKind.GAUGE_PRESSURE, 0, 1_500_000)
          .how(
              "Close the tap, set a tee with a gauge between tap and fill hose, open the tap as far as it"
                  + " was, let the machine fill, and read it.")
          .by(Procedure.running(10, new Accuracy(0.016, 5000), Caution.HOT_WATER));

  static final Observable TAP_FLOW =
      Observable.named("tap-flow", "flow rate of the open tap")
          .quantity(QuantityKind.FLOW, 0, 60.0 / 60_000)
          .how(
              "Take the hose off and time a bucket under the tap, opened as far as it was for the machine.")
          .by(Procedure.dead(4, new Accuracy(0.05, 0.2 / 60_000)));

  static final Observable SCREEN =
      Observable.named("screen", "screens in the hose end and the valve")
          .graded("clean", "partly", "clogged")
          .how("Close the tap, take the hose off and look at both screens.")
          .by(WaterSide.opened(6));

  static final Observable KINKED =
      Observable.named("hose-kinked", "the fill hose is kinked, or its stop valve has tripped")
          .asked(3, "Follow the fill hose from end to end and look at its stop valve.");

  static final Observable LEAKS_BY =
      Observable.named("leaks-by", "water runs in with the plug out")
          .how("Pull the plug, leave the tap open, and look whether water still runs in.")
          .by(Procedure.inside(5));

  static final Observable CREEPS =
      Observable.named(
              "water-creeps-in", "water stands in the machine after it has been off for hours")
          .asked(1, "Ask the owner, or look in before the first start of the day.");

  static final Observable BANGS =
      Observable.named("bangs", "the pipes bang when the valve closes")
          .asked(1, "Ask the owner, or listen at the end of a fill.");

  private static final LeakHunt HUNT =
      LeakHunt.at("the inlet valve and its connection", Procedure.inside(5));

  private static final ComponentKind KIND =
      new ComponentKind(
          "inlet-valve",
          "inlet valve",
          List.of(
              FILL_FLOW,
              STATIC_PRESSURE,
              DYNAMIC_PRESSURE,
              TAP_FLOW,
              SCREEN,
              KINKED,
              LEAKS_BY,
              CREEPS,
              BANGS,
              HUNT.tracks(),
              HUNT.wet()),
          List.of(
              SUPPLY_PRESSURE,
              USUAL_TAP_FLOW,
              RATED_FLOW,
              COEFFICIENT,
              HOSE_LENGTH,
              HOSE_BORE,
              PIPE_LENGTH,
              PIPE_BORE),
          List.of());

  private static final double FLOW_FLOOR = 0.2 / 60_000; // m3/s
  private static final double REGULATOR_SHARE = 0.15 / Math.sqrt(3); // ratio; from memory
  private static final double OF_EFFECT = 0.12; // ratio of the effect of the fault; judgement
  private static final double TAP_SHARE = 0.15; // ratio; judgement
  private static final double PRESSURE_FLOOR = 5000; // Pa
  private static final double WHILE_READING = 0.03; // ratio, others draw water; judgement
  private static final double FROM_DAY_TO_DAY = 0.08; // ratio; judgement
  private static final double FROM_HOUSE_TO_HOUSE = 0.25; // ratio; judgement

  @Override
  public List<ComponentKind> kinds() {
    return List.of(KIND);
  }

  @Override
  public List<Check> checks() {
    return List.of(
        LimitCheck.named("fill-supply-pressure", "Supply against what inlet valves are made for")
            .on(KIND, STATIC_PRESSURE, InletChecks.SUPPLY),
        LimitCheck.named("fill-supply-flow", "Fill flow against the inlet valve")
            .on(KIND, FILL_FLOW, InletChecks::flow),
        LimitCheck.named("fill-supply-tap", "Tap against the inlet valve")
            .on(KIND, TAP_FLOW, InletChecks::tap),
        LimitCheck.named("fill-surge", "Surge when the inlet valve closes")
            .on(KIND, FILL_FLOW, InletChecks::surge));
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component valve) {
    Optional<WayIn> way = WayIn.of(valve);
    return way.isPresent() ? Optional.of(model(valve, way.get())) : Optional.empty();
  }

  /** The pressure of the supply moves pressure, tap and, without a regulator, filling together. */
  private static FaultModel model(Component valve, WayIn way) {
    boolean known = valve.figure(SUPPLY_PRESSURE).isPresent();
    double supply = known ? FROM_DAY_TO_DAY : FROM_HOUSE_TO_HOUSE;
    PartModel model =
        PartModel.of(valve.id() + "-water-in", WaterSide.PRIORS, InletFigure.ALL)
            .on(valve, KIND, Leak.ALL);
    return HUNT.seen(model)
        .faults(InletFaults.ALL)
        .moves(known ? day() : house(), InletFigure.PRESSURE.times(Course.power(1, 1 + supply)))
        .looks(SCREEN, InletFigure.SCREEN)
        .looks(KINKED, new Look.Noticed(InletFigure.KINK, 0.35, 0.08))
        .looks(LEAKS_BY, new Look.Noticed(InletFigure.LEAK, 0.2, 0.05))
        .looks(CREEPS, new Look.Noticed(InletFigure.LEAK, 0.3, 0.08))
        .under(way)
        .observe(
            FILL_FLOW,
            WayIn.Filling::flow,
            Spread.relative(REGULATOR_SHARE).atLeast(FLOW_FLOOR).andOfEffect(OF_EFFECT))
        .observe(STATIC_PRESSURE, WayIn.Filling::pressure, new Sum(WHILE_READING, PRESSURE_FLOOR))
        .observe(DYNAMIC_PRESSURE, WayIn.Filling::flowing, new Flowing())
        .observe(TAP_FLOW, WayIn.Filling::tapFlow, new Sum(tapShare(supply), FLOW_FLOOR))
        .observe(BANGS, WayIn.Filling::bangs)
        .build();
  }

  /** What is left of the spread of a tap: its flow goes with the root of the pressure. */
  private static double tapShare(double supply) {
    double bySupply = supply / 2;
    return Math.sqrt(TAP_SHARE * TAP_SHARE - bySupply * bySupply);
  }

  private static SharedQuantity day() {
    return supply(
        "8 % from day to day", "the pressure of one supply varies by 8 % from day to day");
  }

  private static SharedQuantity house() {
    return supply("25 % from house to house", "pressures of houses differ by 25 %");
  }

  private static SharedQuantity supply(String spread, String rule) {
    return new SharedQuantity(
        "supply-pressure", "pressure of the water supply, " + spread, Source.commonPractice(rule));
  }

  /** A share of the forecast and a floor, one after the other. */
  private record Sum(double share, double floor) implements Spread<Object> {
    @Override
    public double of(double value, InOrder order, Object solved) {
      return floor + share * value;
    }
  }

  /**
   * Of the pressure that is left behind a tap: as without flow, and what taps differ, whose drop
   * goes with the square of the flow rate by that of the tap; less where the tap alone sets that.
   */
  private record Flowing() implements Spread<WayIn.Filling> {
    @Override
    public double of(double value, InOrder order, WayIn.Filling filling) {
      double left = filling.pressure() > 0 ? value / filling.pressure() : 0;
      double drop = (filling.pressure() - value) * left;
      return Math.hypot(PRESSURE_FLOOR + WHILE_READING * value, 2 * TAP_SHARE * drop);
    }
  }
}
