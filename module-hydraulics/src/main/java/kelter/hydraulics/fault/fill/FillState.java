package kelter.hydraulics.fault.fill;

import java.util.Optional;
import kelter.core.job.Component;
import kelter.hydraulics.fill.FillPath;
import kelter.hydraulics.part.Given;
import kelter.hydraulics.part.InletValveKind;
import kelter.hydraulics.pipe.BlockedBore;
import kelter.hydraulics.pipe.Hose;

/**
 * The way of the water in, in order, and what the severities of its faults make of it.
 *
 * <p>A clogged screen and a kinked hose leave (1 − s)² of the bore, at least 1 %; a weak valve
 * keeps 5 % of its flow coefficient at severity 1, a weak supply 8 % of its pressure; a strong one
 * has three times the pressure. All that is judgement: common practice, no source.
 *
 * @param path the way of the water in
 * @param pressureKnown whether the pressure of the supply is that of the job
 */
public record FillState(FillPath path, boolean pressureKnown) {

  /** What is taken where a job does not say: common practice, no source. */
  private static final double USUAL_PRESSURE = 300_000; // Pa

  private static final double USUAL_TAP_FLOW = 20.0 / 60_000; // m3/s
  private static final double USUAL_COEFFICIENT = 12.0 / 60_000; // m3/s at 1 bar
  private static final double USUAL_LENGTH = 1.5; // m
  private static final double USUAL_BORE = 0.010; // m

  /** Entrance 0.5, two screens 1 each, two bends 0.3, outlet 1; handbook figures, from memory. */
  private static final double FITTINGS = 4.1;

  private static final double LEAST_OPEN = 0.01; // ratio
  private static final double LOST_COEFFICIENT = 0.95; // ratio
  private static final double LOST_PRESSURE = 0.92; // ratio
  private static final double EXCESS_PRESSURE = 2; // ratio of the usual pressure

  /**
   * The way in, in order.
   *
   * @param component an inlet valve
   * @return the way, or empty if neither the flow rate of its regulator nor its flow coefficient is
   *     known
   * @throws IllegalArgumentException if a figure is impossible
   */
  public static Optional<FillState> of(Component component) {
    Optional<Double> rated = figure(component, InletValveKind.RATED_FLOW.id());
    Optional<Double> coefficient = figure(component, InletValveKind.COEFFICIENT.id());
    if (rated.isEmpty() && coefficient.isEmpty()) {
      return Optional.empty();
    }
    Hose hose =
        new Hose(
            figure(component, InletValveKind.HOSE_LENGTH.id()).orElse(USUAL_LENGTH),
            figure(component, InletValveKind.HOSE_BORE.id()).orElse(USUAL_BORE),
            0,
            FITTINGS);
    return Optional.of(
        new FillState(
            new FillPath(
                figure(component, InletValveKind.SUPPLY_PRESSURE.id()).orElse(USUAL_PRESSURE),
                figure(component, InletValveKind.USUAL_TAP_FLOW.id()).orElse(USUAL_TAP_FLOW),
                hose,
                coefficient.orElse(USUAL_COEFFICIENT),
                rated.orElse(Double.POSITIVE_INFINITY)),
            component.figure(InletValveKind.SUPPLY_PRESSURE.id()).isPresent()));
  }

  private static Optional<Double> figure(Component component, String id) {
    return Given.si(component.figure(id));
  }

  /**
   * This way with its faults.
   *
   * @param severity the severities in the order of the faults
   * @param supply the pressure of a supply in order that day by the usual one, ratio
   * @return the way in that state
   */
  FillPath with(double[] severity, double supply) {
    double pressure = supply * pressureShare(severity);
    double loss =
        clogged(FillFault.SCREEN_CLOGGED.in(severity))
            + clogged(FillFault.HOSE_KINKED.in(severity));
    return new FillPath(
        path.staticPressure() * pressure,
        path.tapFlow() * Math.sqrt(pressure),
        path.hose().plus(loss),
        path.coefficient() * (1 - LOST_COEFFICIENT * FillFault.VALVE_WEAK.in(severity)),
        path.regulatedFlow());
  }

  private static double pressureShare(double[] severity) {
    return (1 - LOST_PRESSURE * FillFault.SUPPLY_WEAK.in(severity))
        * (1 + EXCESS_PRESSURE * FillFault.SUPPLY_STRONG.in(severity));
  }

  private static double clogged(double severity) {
    if (severity == 0) {
      return 0;
    }
    double open = Math.max(LEAST_OPEN, (1 - severity) * (1 - severity));
    return BlockedBore.lossCoefficient(open);
  }
}
