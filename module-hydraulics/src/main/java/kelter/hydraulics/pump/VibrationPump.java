package kelter.hydraulics.pump;

import java.util.List;
import kelter.core.law.Require;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.source.Source;

/**
 * The flow rate of a vibration pump falls in a straight line with the pressure: Q = Q0 (1 - p/p0).
 *
 * <p>It holds from 0 to p0 at the voltage and frequency of the nameplate. Source: from memory; at 9
 * bar a pump of 500 to 650 mL/min and 15 bar gives 200 to 260 mL/min by it, where workshops tell
 * 180 to 260.
 *
 * @param freeFlow the flow rate Q0 without pressure, m3/s, above 0
 * @param deadPressure the pressure p0 at which nothing flows, Pa, above 0
 */
public record VibrationPump(double freeFlow, double deadPressure) {

  private static final Parameter FREE =
      Parameter.required("free-flow", "flow rate without pressure", QuantityKind.FLOW, 1e-7, 1e-4);
  private static final Parameter DEAD =
      Parameter.required(
          "dead-pressure",
          "pressure at which nothing flows",
          QuantityKind.GAUGE_PRESSURE,
          1e5,
          5e6);
  private static final Parameter PRESSURE =
      Parameter.required(
          "pressure", "pressure behind the pump", QuantityKind.GAUGE_PRESSURE, 0, 5e6);

  /**
   * Checks the figures.
   *
   * @throws IllegalArgumentException if one is not above zero
   */
  public VibrationPump {
    Require.positive("flow rate without pressure", freeFlow, "m3/s");
    Require.positive("pressure at which nothing flows", deadPressure, "Pa");
  }

  /**
   * The pump by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "vibration-pump",
        "Flow rate of a vibration pump at a pressure",
        "flow = free-flow (1 - pressure / dead-pressure), 0 beyond",
        "From 0 to the dead pressure, at the voltage and frequency of the nameplate",
        Source.fromMemory("straight line between free flow and dead pressure of vibration pumps"),
        List.of(FREE.optional("575 mL/min"), DEAD.optional("15 bar"), PRESSURE.optional("9 bar")),
        List.of(new Output("flow", "flow rate", QuantityKind.FLOW)),
        List.of(Caution.HOT_WATER),
        p ->
            new double[] {
              new VibrationPump(FREE.check(p[0]), DEAD.check(p[1])).flow(PRESSURE.check(p[2]))
            });
  }

  /**
   * The flow rate at a pressure.
   *
   * @param pressure the pressure behind the pump, Pa, 0 or more
   * @return the flow rate, m3/s, 0 from the dead pressure on
   */
  public double flow(double pressure) {
    return freeFlow * Math.max(0, 1 - pressure / deadPressure);
  }

  /**
   * The flow rate through an opening that takes p = r Q².
   *
   * @param resistance r, Pa s2/m6, 0 or more
   * @return the flow rate, m3/s: the positive root of (r Q0/p0) Q² + Q - Q0 = 0
   */
  public double through(double resistance) {
    double steep = resistance * freeFlow / deadPressure;
    return 2 * freeFlow / (1 + Math.sqrt(1 + 4 * steep * freeFlow));
  }
}
