package kelter.electrical.supply;

import java.util.List;
import kelter.core.check.Limits;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.core.source.Standing;
import kelter.electrical.caution.ElectricalCautions;

/**
 * Between which voltages a supply may lie.
 *
 * <p>The ranges of EN 50160 hold in Europe at 50 Hz, those of ANSI C84.1 in North America at 60 Hz;
 * of other nets none is known here. They are meant for means over minutes: a single reading outside
 * is a hint, not a breach. What a range says of an appliance is only that it should work there.
 */
public final class SupplyRange {

  /** Which range. */
  public enum Range {
    /** 230 V ±10 %. */
    EN_50160_WEEK(
        207,
        253,
        new Source("EN 50160, 95 % of the ten-minute means of a week", Standing.SECOND_HAND)),
    /** 230 V +10 %/−15 %. */
    EN_50160_ALWAYS(195.5, 253, new Source("EN 50160, all ten-minute means", Standing.SECOND_HAND)),
    /** 400 V ±10 % between two phases. */
    EN_50160_BETWEEN_PHASES(
        360,
        440,
        new Source(
            "EN 50160, 95 % of the ten-minute means of a week, between two phases",
            Standing.SECOND_HAND)),
    /** 120 V at the service entrance, normal. */
    ANSI_SERVICE_A(114, 126, ansi("120 V, service voltage range A")),
    /** 120 V at the service entrance, short and seldom. */
    ANSI_SERVICE_B(110, 127, ansi("120 V, service voltage range B")),
    /** 120 V at the outlet, normal. */
    ANSI_UTILIZATION_A(108, 126, ansi("120 V, utilization voltage range A")),
    /** 120 V at the outlet, short and seldom. */
    ANSI_UTILIZATION_B(104, 127, ansi("120 V, utilization voltage range B")),
    /** 240 V of 120/240 V at the service entrance, normal. */
    ANSI_SERVICE_A_240(228, 252, ansi("120/240 V, service voltage range A")),
    /** 240 V of 120/240 V at the service entrance, short and seldom. */
    ANSI_SERVICE_B_240(220, 254, ansi("120/240 V, service voltage range B")),
    /** 240 V of 120/240 V at the outlet, normal. */
    ANSI_UTILIZATION_A_240(216, 252, ansi("120/240 V, utilization voltage range A")),
    /** 240 V of 120/240 V at the outlet, short and seldom. */
    ANSI_UTILIZATION_B_240(208, 254, ansi("120/240 V, utilization voltage range B")),
    /** 208 V of 208Y/120 V at the outlet, normal. */
    ANSI_UTILIZATION_A_208(187, 218, ansi("208Y/120 V, utilization voltage range A")),
    /** 208 V of 208Y/120 V at the outlet, short and seldom. */
    ANSI_UTILIZATION_B_208(180, 220, ansi("208Y/120 V, utilization voltage range B"));

    private final Limits limits;
    private final Source source;

    Range(double low, double high, Source source) {
      this.limits = new Limits(low, high);
      this.source = source;
    }

    private static Source ansi(String row) {
      return Source.fromMemory("ANSI C84.1-2020, Table 1, " + row);
    }

    /**
     * The voltages.
     *
     * @return least and greatest voltage, V
     */
    public Limits limits() {
      return limits;
    }

    /**
     * Where they stand.
     *
     * @return the source
     */
    public Source source() {
      return source;
    }
  }

  private SupplyRange() {}

  /**
   * The range by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "supply-range",
        "between which voltages a supply may lie",
        "voltage-low, voltage-high = limits of the range",
        "EN 50160: 230 V, between phases 400 V, 50 Hz, means over ten minutes; ANSI C84.1: 120 V, 208 V, 240 V, 60 Hz",
        new Source("EN 50160 (second-hand); ANSI C84.1-2020, Table 1", Standing.FROM_MEMORY),
        List.of(
            Parameter.choice(
                "range",
                "which range",
                List.of(
                    "en-50160-week",
                    "en-50160-always",
                    "en-50160-between-phases",
                    "ansi-service-a",
                    "ansi-service-b",
                    "ansi-utilization-a",
                    "ansi-utilization-b",
                    "ansi-service-a-240",
                    "ansi-service-b-240",
                    "ansi-utilization-a-240",
                    "ansi-utilization-b-240",
                    "ansi-utilization-a-208",
                    "ansi-utilization-b-208"),
                "en-50160-week")),
        List.of(
            new Output("voltage-low", "least voltage", QuantityKind.VOLTAGE),
            new Output("voltage-high", "greatest voltage", QuantityKind.VOLTAGE)),
        List.of(ElectricalCautions.FIXED_WIRING),
        x -> {
          Limits limits = Range.values()[(int) Math.round(x[0])].limits();
          return new double[] {limits.low(), limits.high()};
        });
  }
}
