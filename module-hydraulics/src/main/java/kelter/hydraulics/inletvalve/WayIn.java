package kelter.hydraulics.inletvalve;

import java.util.Optional;
import kelter.core.diagnosis.model.Circumstances;
import kelter.core.diagnosis.model.Look;
import kelter.core.diagnosis.model.State;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.hydraulics.fill.FillPath;
import kelter.hydraulics.pipe.Hose;
import kelter.hydraulics.water.Water;

/**
 * The way of cold water in. What is taken where a job does not say is common practice, no source.
 *
 * @param order the way in order
 * @param usual the flow rate in order, m3/s
 */
record WayIn(FillPath order, double usual)
    implements Circumstances<WayIn.Filling>, Circumstances.Solver<WayIn.Filling> {

  private static final double USUAL_PRESSURE = 300_000; // Pa
  private static final double USUAL_TAP_FLOW = 20.0 / 60_000; // m3/s
  private static final double USUAL_COEFFICIENT = 12.0 / 60_000; // m3/s at 1 bar
  private static final double USUAL_LENGTH = 1.5; // m
  private static final double USUAL_BORE = 0.010; // m

  /** Entrance 0.5, two screens 1 each, two bends 0.3, outlet 1; handbook figures, from memory. */
  private static final double FITTINGS = 4.1;

  /** Water as it comes from the main, 15 °C. */
  static final Water COLD = Water.at(Water.FREEZING + 15);

  /**
   * The way in of a valve.
   *
   * @param valve an inlet valve
   * @return the way, or empty if neither the flow rate of its regulator nor its flow coefficient is
   *     known
   * @throws IllegalArgumentException if a figure is impossible
   */
  static Optional<WayIn> of(Component valve) {
    if (!isKnown(valve)) {
      return Optional.empty();
    }
    Hose hose =
        new Hose(
            valve.si(InletValve.HOSE_LENGTH, USUAL_LENGTH),
            valve.si(InletValve.HOSE_BORE, USUAL_BORE),
            0,
            FITTINGS);
    FillPath order =
        new FillPath(
            valve.si(InletValve.SUPPLY_PRESSURE, USUAL_PRESSURE),
            valve.si(InletValve.USUAL_TAP_FLOW, USUAL_TAP_FLOW),
            hose,
            valve.si(InletValve.COEFFICIENT, USUAL_COEFFICIENT),
            valve.si(InletValve.RATED_FLOW, Double.POSITIVE_INFINITY));
    return Optional.of(new WayIn(order, order.flow(COLD)));
  }

  /** Whether the flow rate of its regulator or its flow coefficient is known. */
  static boolean isKnown(Component valve) {
    return valve.figure(InletValve.RATED_FLOW).isPresent()
        || valve.figure(InletValve.COEFFICIENT).isPresent();
  }

  @Override
  public Circumstances.Solver<Filling> under(Conditions conditions) {
    return this;
  }

  @Override
  public Filling in(State state) {
    double pressure = state.of(InletFigure.PRESSURE);
    FillPath path =
        new FillPath(
            order.staticPressure() * pressure,
            order.tapFlow() * state.of(InletFigure.TAP) * Math.sqrt(pressure),
            order.hose().plus(state.of(InletFigure.LOSS)),
            order.coefficient() * state.of(InletFigure.OPENING),
            order.regulatedFlow());
    return new Filling(path, path.flow(COLD));
  }

  /**
   * A machine that fills.
   *
   * @param path the way of the water in
   * @param flow the flow rate, m3/s
   */
  record Filling(FillPath path, double flow) {

    private static final double BANGING = 650_000; // Pa at which half of all owners complain

    double pressure() {
      return path.staticPressure();
    }

    /** The pressure behind the tap while it fills, Pa. */
    double flowing() {
      return path.tapPressure(flow);
    }

    double tapFlow() {
      return path.tapFlow();
    }

    double bangs() {
      return Look.probability(path.staticPressure() / BANGING, 1, 0.12);
    }
  }
}
