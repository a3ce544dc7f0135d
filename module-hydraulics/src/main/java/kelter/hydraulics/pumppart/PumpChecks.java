package kelter.hydraulics.pumppart;

import java.util.Optional;
import kelter.core.check.Allowed;
import kelter.core.check.LimitCheck;
import kelter.core.check.Limits;
import kelter.core.check.Measured;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.job.Curve;
import kelter.core.job.Evaluation;
import kelter.core.job.RatedRange;
import kelter.core.law.Celsius;
import kelter.core.law.PowerInputBand;
import kelter.core.source.Source;
import kelter.core.vocabulary.ComponentKind;
import kelter.hydraulics.pump.Iso9906Grade;

/**
 * What can be held against limits on any pump.
 *
 * @param kind its kind
 * @param words its words
 */
public record PumpChecks(ComponentKind kind, PumpWords words) {

  private static final String HEAD_TITLE = "Head of the pump against its curve";
  private static final Source HEAD_SOURCE =
      Source.fromMemory(
          "ISO 9906:2012, 4.4, Table 8, grade 3B: head ±7 %, by analogy, as no grade binds pumps below"
              + " 1 kW; about the component's own curve");

  private static final String POWER_TITLE = "Electric power of the pump against its nameplate";
  private static final double IDLE = 0.25; // ratio of the rated power; common practice, no source
  private static final double IDLE_ON_INVERTER = 0.05; // ratio of the rated power; same
  private static final Limits ANY_POWER = Limits.atLeast(4); // W; common practice, no source
  private static final Source POWER_SOURCE =
      Source.commonPractice(
          "at most as IEC 335-1:1991, 10.1, Table 1 (published), motor-operated appliances, applied to"
              + " the pump's nameplate; at least what its motor takes without a load");
  private static final Source LEAST_SOURCE =
      Source.commonPractice("the least that a pump of an appliance takes while it runs");

  private static final String WINDING_TITLE = "Resistance of the pump's winding";
  private static final double WITHIN = 0.1; // ratio; common practice, no source
  private static final double FACTOR = 6; // ratio; common practice, no source
  private static final double COLD = Celsius.ZERO + 10; // K
  private static final double WARM = Celsius.ZERO + 35; // K
  private static final Source OF_FIGURE =
      Source.commonPractice("within 10 % of the figure, copper by the coefficient of IEC 60028");
  private static final Source OF_TYPICAL =
      Source.commonPractice(
          "within a sixth and six times of a typical pump of this power, voltage");

  /**
   * Is the head, at no flow or at the flow stated, that of the curve, within the 7 % either way
   * that ISO 9906 allows in its widest grade? On another frequency the curve is taken at that
   * speed. That standard binds no pump of this size: an analogy.
   *
   * @return the row
   */
  public LimitCheck head() {
    return LimitCheck.named("pump-head-on-curve", HEAD_TITLE)
        .on(kind, words.head(), PumpChecks::headOnCurve);
  }

  private static Optional<Allowed> headOnCurve(Measured measured) {
    Optional<Curve> points = measured.component().curve(PumpWords.HEAD_CURVE);
    if (points.isEmpty()) {
      return Optional.empty();
    }
    double flow = measured.conditions().si(PumpWords.AT_FLOW, 0);
    RatedSupply supply = RatedSupply.of(measured.component(), measured.appliance().nameplate());
    Allowed allowed =
        Allowed.of(
            HEAD_TITLE,
            HEAD_SOURCE,
            () -> {
              double speed = supply.supply(measured.conditions()).frequency();
              return Iso9906Grade.GRADE_3B.head(
                  RatedPump.curve(points.get()).atSpeed(speed).head(flow));
            });
    String remark =
        allowed.limits().isEmpty() ? "" : remark(measured, allowed.limits().get(), flow);
    return Optional.of(allowed.resting(supply.remark(remark, measured.conditions())));
  }

  private static String remark(Measured measured, Limits limits, double flow) {
    Optional<Evaluation> read =
        Evaluation.of(measured.job(), measured.measurement(), measured.observable());
    if (read.isPresent() && read.get().estimate().value() > limits.high()) {
      return "A pump does not gain head with age: read it again, and see whether the curve is that of"
          + " this pump.";
    }
    return flow == 0
        ? "At no flow the hose plays no part: a low head is the pump's own, its speed's, or air's."
        : "";
  }

  /**
   * Does a pump that runs take power, and no more than its nameplate allows?
   *
   * <p>The rule of IEC 60335-1 for motor-operated appliances is applied to the pump by its own
   * nameplate, of a range of powers by the upper one. The standard sets no lower limit. One is
   * taken from common practice: a small motor takes about a quarter of its rated power without any
   * load, so that less says that the pump does not run; behind an inverter, which may turn it
   * slowly, a twentieth. Where no rated power is known only a least power is asked for, which any
   * pump of an appliance takes while it runs.
   *
   * @return the row
   */
  public LimitCheck power() {
    return LimitCheck.named("pump-power", POWER_TITLE)
        .on(kind, words.power(), PumpChecks::powerInput);
  }

  private static Optional<Allowed> powerInput(Measured measured) {
    Component pump = measured.component();
    Optional<RatedRange> rated = pump.nameplate().power();
    if (rated.isEmpty()) {
      return Optional.of(
          Allowed.of("Electric power of the pump: does it take any", LEAST_SOURCE, ANY_POWER)
              .resting(
                  "No rated power is stated, so that only this much can be said; add the power of its"
                      + " nameplate."));
    }
    double idle = pump.figure(PumpWords.TORQUE_LIMIT).isPresent() ? IDLE_ON_INVERTER : IDLE;
    double most = PowerInputBand.TABLE.motor(rated.get().high().si()).high();
    return Optional.of(
        Allowed.of(POWER_TITLE, POWER_SOURCE, new Limits(idle * rated.get().low().si(), most))
            .resting(
                "The standard sets no lower limit. Below the one taken here the pump does not run: no"
                    + " voltage, an open winding, or not called for."));
  }

  /**
   * Does the winding measure what it should? Within 10 % of its figure, copper brought to the
   * temperature of the reading, or to 10 °C to 35 °C where none is stated. Without a figure only an
   * open winding and a short between its terminals are told: within a sixth and six times of what
   * is typical for power and voltage. Both are common practice, no source.
   *
   * @return the row
   */
  public LimitCheck winding() {
    return LimitCheck.named("pump-winding", WINDING_TITLE)
        .on(kind, words.winding(), PumpChecks::windingResistance);
  }

  private static Optional<Allowed> windingResistance(Measured measured) {
    Component pump = measured.component();
    PumpWinding winding =
        PumpWinding.of(pump, RatedSupply.of(pump, measured.appliance().nameplate()));
    Conditions conditions = measured.conditions();
    double low = winding.at(conditions.si(PumpWords.OF_WINDING, COLD));
    double high = winding.at(conditions.si(PumpWords.OF_WINDING, WARM));
    return Optional.of(
        pump.figure(PumpWords.WINDING).isPresent()
            ? Allowed.of(
                WINDING_TITLE, OF_FIGURE, new Limits(low * (1 - WITHIN), high * (1 + WITHIN)))
            : Allowed.of(WINDING_TITLE, OF_TYPICAL, new Limits(low / FACTOR, high * FACTOR))
                .resting(
                    "The pump has no winding-resistance of its own, so that only an open winding or a"
                        + " short is told."));
  }
}
