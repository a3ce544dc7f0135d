package kelter.hydraulics.suction;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.hydraulics.drain.SiphonFlow;
import kelter.hydraulics.pipe.Hose;
import kelter.hydraulics.water.Water;

/**
 * The net positive suction head that an installation offers a pump: NPSH = (p_air + p − p_vapour) /
 * (ρ g) + z − h_loss, z being the height of the water above the pump and h_loss what filter and
 * passage take.
 *
 * <p>It holds for water from 0 to 100 °C. At or below zero the water boils at the inlet; a pump
 * needs some tenths of a metre to some metres more than that, by its own NPSH curve; small pumps in
 * appliances about 0.5 to 2 m (from memory).
 *
 * <p>Source: ISO 9906:2012, 3.2.18; Crane TP-410, problem 7.32; both from memory.
 */
public final class NpshAvailable {

  /** Neither of the two was seen. */
  private static final Source SOURCE =
      Source.fromMemory("Crane TP-410, chapter 7, problem 7.32; ISO 9906:2012, 3.2.18");

  private static final Parameter SURFACE =
      Parameter.required(
          "surface-pressure",
          "gauge pressure on the water; 0 for an open sump",
          QuantityKind.GAUGE_PRESSURE,
          0,
          1e6);
  private static final Parameter AIR =
      Parameter.required(
          "air-pressure", "pressure of the air", QuantityKind.ABSOLUTE_PRESSURE, 50_000, 110_000);
  private static final Parameter LEVEL =
      Parameter.required(
          "level", "water above the pump, below 0 for a lift", QuantityKind.HEAD, -12, 20);
  private static final Parameter LOSS =
      Parameter.required("head-loss", "loss of filter and passage", QuantityKind.HEAD, 0, 50);

  private static final Parameter LOSS_COEFFICIENT =
      Parameter.required(
          "loss-coefficient", "filter, entrance and bends", QuantityKind.RATIO, 0.1, 1e5);

  private static final Parameter REQUIRED =
      Parameter.required("npsh-required", "what the pump needs", QuantityKind.HEAD, 0, 20);

  private NpshAvailable() {}

  /**
   * The head by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "npsh-available",
        "Head that keeps water from boiling at the inlet of a pump",
        "npsh = (air-pressure + surface-pressure - vapour-pressure) / (density g) + level - head-loss",
        "Water of 0 to 100 Cel; at or below 0 it boils at the inlet; the pump needs its own NPSH more",
        SOURCE,
        List.of(
            LEVEL,
            LOSS.optional("0 m"),
            Water.TEMPERATURE,
            SURFACE.optional("0 kPa"),
            AIR.optional("101.325 kPa")),
        List.of(
            new Output("npsh", "net positive suction head available", QuantityKind.HEAD),
            new Output("vapour-head", "part that the vapour takes", QuantityKind.HEAD)),
        List.of(Caution.HOT_WATER),
        p -> {
          Water water = Water.at(p[2]);
          double pressure = AIR.check(p[4]) + SURFACE.check(p[3]);
          double npsh = of(water, pressure, LEVEL.check(p[0]), LOSS.check(p[1]));
          return new double[] {npsh, water.head(water.vapourPressure())};
        });
  }

  /**
   * The flow rate at which cavitation begins, by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation onsetCalculation() {
    return new Calculation(
        "cavitation-onset",
        "Flow rate at which a pump begins to cavitate behind a filter or passage",
        "npsh-available(level, temperature) - (f length/bore + loss-coefficient) v^2/(2 g) ="
            + " npsh-required; flow = v pi/4 bore^2",
        "Water of 0 to 100 Cel in an open sump; npsh-required as at that flow; flow 0 where it cavitates"
            + " without any",
        SOURCE,
        List.of(
            REQUIRED,
            LEVEL,
            Water.TEMPERATURE,
            Hose.LENGTH.optional("0.3 m"),
            Hose.BORE,
            LOSS_COEFFICIENT.optional("5"),
            AIR.optional("101.325 kPa")),
        List.of(new Output("flow", "flow rate at which it begins", QuantityKind.FLOW)),
        List.of(Caution.HOT_WATER),
        NpshAvailable::onset);
  }

  private static double[] onset(double[] p) {
    Hose passage = new Hose(p[3], p[4], 0, LOSS_COEFFICIENT.check(p[5]));
    return new double[] {
      onsetOfCavitation(
          Water.at(p[2]), AIR.check(p[6]), LEVEL.check(p[1]), passage, REQUIRED.check(p[0]))
    };
  }

  /**
   * The head available.
   *
   * @param water the water
   * @param surfacePressure the absolute pressure on the water in Pa
   * @param level the height of the water above the pump in m, below 0 for a lift
   * @param headLoss the loss on the way in m, not negative
   * @return the head in m; at or below 0 the water boils
   */
  public static double of(Water water, double surfacePressure, double level, double headLoss) {
    return water.head(surfacePressure - water.vapourPressure()) + level - headLoss;
  }

  /**
   * The flow rate at which a pump begins to cavitate behind a passage or filter: where what is
   * available has fallen to what it needs.
   *
   * @param water the water
   * @param surfacePressure the absolute pressure on the water in Pa
   * @param level the height of the water above the pump in m
   * @param passage the passage with its filter, with a length or a loss coefficient above 0
   * @param required the NPSH that the pump needs in m, not negative
   * @return the flow rate in m3/s; 0 if it cavitates without any flow
   */
  public static double onsetOfCavitation(
      Water water, double surfacePressure, double level, Hose passage, double required) {
    double spare = of(water, surfacePressure, level, 0) - required;
    return spare <= 0 ? 0 : SiphonFlow.flow(spare, passage, water.kinematicViscosity());
  }
}
