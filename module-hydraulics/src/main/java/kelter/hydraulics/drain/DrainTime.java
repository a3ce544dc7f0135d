package kelter.hydraulics.drain;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityFormat;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.hydraulics.circuit.Circuit;
import kelter.hydraulics.circuit.PumpAgainstCircuit;
import kelter.hydraulics.pipe.Hose;
import kelter.hydraulics.pump.PumpCurve;
import kelter.hydraulics.water.Water;

/**
 * How long a drain pump takes to empty a sump, and how much it leaves: at each level the operating
 * point against what the outlet lies above that level, integrated over the falling level.
 *
 * <p>It holds for a vessel of constant plan area with an outlet above the water. The pump stops to
 * deliver at the cut-off level, at which the outlet lies as far above the water as the pump can
 * lift; when it draws air before that, the level is that of its inlet, which is for the caller to
 * give.
 *
 * <p>Source: {@link EmptyingTime} and {@link PumpAgainstCircuit}.
 */
public final class DrainTime {

  private static final Parameter START =
      Parameter.required(
          "start-level", "water above the pump inlet at the start", QuantityKind.HEAD, 0.01, 5);
  private static final Parameter END =
      Parameter.required(
          "end-level", "water at which the pump draws air", QuantityKind.HEAD, 0, 4.9);
  private static final Parameter OUTLET =
      Parameter.required(
          "outlet-height",
          "highest point of the hose, or its outlet, above the pump inlet",
          QuantityKind.HEAD,
          0.02,
          20);

  /** How near to the cut-off the integral goes, in m of level: the rest takes for ever. */
  private static final double NEAR_CUT_OFF = 1e-3;

  private DrainTime() {}

  /**
   * The time by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "drain-time",
        "Time to empty, and what is left",
        "time = water-area * integral of dh / flow(h) from end-level to start-level; flow(h) where the"
            + " pump's curve meets outlet-height - h, hose and fittings",
        "Constant plan area; the outlet above the water throughout (lower it siphons, see siphon-flow);"
            + " stops 1 mm before the level from which the pump cannot lift any more",
        Source.fromMemory(
            "Continuity, Cengel and Cimbala, Fluid Mechanics, chapter 5; operating point as in"
                + " operating-point"),
        parameters(),
        List.of(
            new Output("time", "time to empty", QuantityKind.TIME),
            new Output("left", "level that is left", QuantityKind.HEAD),
            new Output("volume", "volume that is pumped", QuantityKind.VOLUME),
            new Output("mean-flow", "mean flow rate", QuantityKind.FLOW)),
        List.of(Caution.HOT_WATER),
        DrainTime::compute);
  }

  private static List<Parameter> parameters() {
    return List.of(
        PumpAgainstCircuit.SHUT_OFF,
        PumpAgainstCircuit.FLOW_1,
        PumpAgainstCircuit.HEAD_1,
        PumpAgainstCircuit.FLOW_2,
        PumpAgainstCircuit.HEAD_2,
        OUTLET,
        Hose.LENGTH,
        Hose.BORE,
        Hose.LOSS.optional("4"),
        HoseBackflow.AREA,
        START,
        END.optional("0 m"),
        Water.TEMPERATURE.optional("20 Cel"));
  }

  private static double[] compute(double[] p) {
    PumpCurve curve = PumpAgainstCircuit.curve(p);
    double outlet = OUTLET.check(p[5]);
    Hose hose = new Hose(p[6], p[7], 0, p[8]);
    double area = HoseBackflow.AREA.check(p[9]);
    double start = START.check(p[10]);
    double end = END.check(p[11]);
    if (start >= outlet) {
      throw new IllegalArgumentException(
          "start-level: the water stands above the outlet and runs out by itself; see siphon-flow");
    }
    double left = Math.max(end, outlet - curve.shutOffHead() + NEAR_CUT_OFF);
    if (left >= start) {
      throw new IllegalArgumentException(
          "start-level: the pump lifts %s m at most and cannot move water that stands %s m below the"
                  .formatted(
                      QuantityFormat.plain(curve.shutOffHead()),
                      QuantityFormat.plain(outlet - start))
              + " outlet");
    }
    double viscosity = Water.at(p[12]).kinematicViscosity();
    double time = time(curve, hose, outlet, area, start, left, viscosity);
    double volume = area * (start - left);
    return new double[] {time, left, volume, volume / time};
  }

  /**
   * The time to empty.
   *
   * @param curve the pump's curve
   * @param hose the hose with its fittings
   * @param outlet the height of the outlet above the pump inlet, in m, above the level at the start
   * @param area the plan area of the water in m2, above 0
   * @param from the level at the start above the pump inlet, in m
   * @param to the level at the end, in m, from which the pump can still lift
   * @param kinematicViscosity the kinematic viscosity in m2/s
   * @return the time in s
   * @throws IllegalArgumentException if the levels are not in order or a figure is impossible
   */
  public static double time(
      PumpCurve curve,
      Hose hose,
      double outlet,
      double area,
      double from,
      double to,
      double kinematicViscosity) {
    List<Hose> hoses = List.of(hose);
    return EmptyingTime.of(
        level ->
            PumpAgainstCircuit.solve(
                    curve,
                    new Circuit(outlet - level, hoses, Double.POSITIVE_INFINITY),
                    kinematicViscosity)
                .flow(),
        area,
        from,
        to);
  }
}
