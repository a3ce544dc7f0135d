package kelter.hydraulics.pump;

import java.util.List;
import kelter.core.check.Limits;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;

/**
 * What a pump may differ from its guarantee point in the two-sided grades of ISO 9906.
 *
 * <p>The standard binds pumps of 10 kW and more, by agreement those from 1 kW, and none below: for
 * the pumps of an appliance it is an analogy. The guarantee is met if the measured curve cuts or
 * touches either the bar of head or the bar of flow rate.
 *
 * <p>Source: ISO 9906:2012, 4.4, Table 8; the figures are from memory.
 */
public enum Iso9906Grade {
  /** Grade 1B: flow rate ±5 %, head ±3 %, power +4 %. */
  GRADE_1B(0.05, 0.03, 0.04),
  /** Grade 2B: flow rate ±8 %, head ±5 %, power +8 %. */
  GRADE_2B(0.08, 0.05, 0.08),
  /** Grade 3B: flow rate ±9 %, head ±7 %, power +9 %. */
  GRADE_3B(0.09, 0.07, 0.09);

  private static final Parameter FLOW =
      Parameter.required("flow", "guaranteed flow rate", QuantityKind.FLOW, 0, 1);
  private static final Parameter HEAD =
      Parameter.required("head", "guaranteed head", QuantityKind.HEAD, 0, 1000);
  private static final Parameter POWER =
      Parameter.required("power", "guaranteed power", QuantityKind.POWER, 0, 1e6);

  /**
   * The bands by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "pump-acceptance",
        "What a pump may differ from its guarantee point (ISO 9906 grades 1B, 2B, 3B)",
        "flow +-5, 8, 9 %; head +-3, 5, 7 %; power at most +4, 8, 9 % for grades 1B, 2B, 3B",
        "Binds pumps of 10 kW and more, by agreement from 1 kW; for appliances an analogy",
        Source.fromMemory("ISO 9906:2012, 4.4, Table 8"),
        List.of(
            FLOW,
            HEAD,
            POWER.optional("0 W"),
            Parameter.choice("grade", "acceptance grade", List.of("1b", "2b", "3b"), "3b")),
        List.of(
            new Output("flow-low", "least flow rate", QuantityKind.FLOW),
            new Output("flow-high", "greatest flow rate", QuantityKind.FLOW),
            new Output("head-low", "least head", QuantityKind.HEAD),
            new Output("head-high", "greatest head", QuantityKind.HEAD),
            new Output("power-high", "greatest power", QuantityKind.POWER)),
        List.of(),
        Iso9906Grade::compute);
  }

  private final double flow;
  private final double head;
  private final double power;

  Iso9906Grade(double flow, double head, double power) {
    this.flow = flow;
    this.head = head;
    this.power = power;
  }

  private static double[] compute(double[] p) {
    Iso9906Grade grade = values()[(int) Math.round(p[3])];
    Limits flow = grade.flow(Math.max(0, FLOW.check(p[0])));
    Limits head = grade.head(Math.max(0, HEAD.check(p[1])));
    Limits power = grade.power(Math.max(0, POWER.check(p[2])));
    return new double[] {flow.low(), flow.high(), head.low(), head.high(), power.high()};
  }

  /**
   * What the head may be.
   *
   * @param guaranteed the guaranteed head, not negative, in any unit
   * @return the limits in the same unit
   */
  public Limits head(double guaranteed) {
    return new Limits(guaranteed * (1 - head), guaranteed * (1 + head));
  }

  /**
   * What the flow rate may be.
   *
   * @param guaranteed the guaranteed flow rate, not negative, in any unit
   * @return the limits in the same unit
   */
  public Limits flow(double guaranteed) {
    return new Limits(guaranteed * (1 - flow), guaranteed * (1 + flow));
  }

  /**
   * What the power may be; there is no lower limit.
   *
   * @param guaranteed the guaranteed power, not negative, in any unit
   * @return the limit in the same unit
   */
  public Limits power(double guaranteed) {
    return Limits.atMost(guaranteed * (1 + power));
  }

  /**
   * Whether a measured curve meets a guarantee point: it cuts or touches the cross of the two bars.
   *
   * @param measured the measured curve
   * @param guaranteedFlow the flow rate of the guarantee point in m3/s, above 0
   * @param guaranteedHead the head of the guarantee point in m, above 0
   * @return true if it does
   */
  public boolean isMet(PumpCurve measured, double guaranteedFlow, double guaranteedHead) {
    if (head(guaranteedHead).contain(measured.headUnchecked(guaranteedFlow))) {
      return true;
    }
    // The curve falls, so it crosses the bar of flow rate if it is above it at the left end and
    // below
    // it at the right.
    Limits bar = flow(guaranteedFlow);
    return measured.headUnchecked(bar.low()) >= guaranteedHead
        && measured.headUnchecked(bar.high()) <= guaranteedHead;
  }
}
