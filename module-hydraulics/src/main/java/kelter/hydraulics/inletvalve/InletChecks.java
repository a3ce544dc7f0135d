package kelter.hydraulics.inletvalve;

import java.util.Optional;
import kelter.core.check.Allowed;
import kelter.core.check.Limits;
import kelter.core.check.Measured;
import kelter.core.job.Component;
import kelter.core.job.Evaluation;
import kelter.core.job.Measurement;
import kelter.core.source.Source;
import kelter.hydraulics.caution.HydraulicCautions;
import kelter.hydraulics.fill.JoukowskySurge;

/** What may be read on an inlet valve and its supply. */
final class InletChecks {

  /** The range for which most inlet valves are made. */
  static final Allowed SUPPLY =
      Allowed.of(
          "Pressure of the supply against what inlet valves are made for",
          Source.commonPractice("50 to 1000 kPa, as most inlet valves are marked"),
          new Limits(50_000, 1_000_000));

  private static final double LEAST_SHARE = 0.75;
  private static final double LEAST_TAP = 1.5; // ratio
  private static final double MOST_PRESSURE = 1.2e6; // Pa, IEC 60335-2-7, from memory
  private static final double CLOSING = 0.03; // s, the usual solenoid valve, from memory
  private static final double WALL = 1e-3; // m
  private static final double COPPER = 120e9; // Pa, Young's modulus, handbooks, from memory

  private InletChecks() {}

  /** At least 75 % of the flow rate of the valve, where that is known; common practice. */
  static Optional<Allowed> flow(Measured fill) {
    Component valve = fill.component();
    if (!WayIn.isKnown(valve)) {
      return Optional.empty();
    }
    return Optional.of(
        Allowed.of(
            "Flow rate while it fills against that of the valve",
            Source.commonPractice(
                "at least 75 % of the flow rate of the valve at the usual supply"),
            () -> atLeast(LEAST_SHARE, valve)));
  }

  /** At least one and a half times the flow rate of the valve; common practice. */
  static Optional<Allowed> tap(Measured tap) {
    return Optional.of(
        Allowed.of(
            "Flow rate of the open tap against what the machine takes",
            Source.commonPractice("at least one and a half times the flow rate of the valve"),
            () -> atLeast(LEAST_TAP, tap.component())));
  }

  private static Limits atLeast(double ratio, Component valve) {
    Optional<WayIn> order = WayIn.of(valve);
    if (order.isEmpty()) {
      throw new IllegalArgumentException(
          "Give the 'rated-flow' or 'kv' of the inlet valve to have it judged.");
    }
    return Limits.atLeast(ratio * order.get().usual());
  }

  /**
   * Supply and surge together stay below 1.2 MPa, which an appliance on the mains of water must
   * stand. The pipe is taken as copper of 1 mm and the valve as closing within 30 ms; there is no
   * finding unless length and bore of the pipe are known.
   */
  static Optional<Allowed> surge(Measured fill) {
    double length = fill.component().si(InletValve.PIPE_LENGTH);
    double bore = fill.component().si(InletValve.PIPE_BORE);
    if (Double.isNaN(length + bore)) {
      return Optional.empty();
    }
    return Optional.of(
        Allowed.of(
                "Flow rate that the closing valve stops, against the surge that it makes",
                Source.fromMemory(
                    "Joukowsky 1898 and Michaud 1878; supply and surge together at most 1.2 MPa, as appliances"
                        + " on the mains of water are tested, IEC 60335-2-7"),
                () -> stopped(supply(fill), length, bore))
            .minding(HydraulicCautions.SURGE));
  }

  private static Limits stopped(double supply, double length, double bore) {
    if (!(length > 0 && bore > 0)) {
      throw new IllegalArgumentException("'pipe-length' and 'pipe-bore' lie above 0 m.");
    }
    double density = WayIn.COLD.density();
    double wave = JoukowskySurge.waveSpeed(density, bore, WALL, COPPER);
    double share = Math.min(1, 2 * length / wave / CLOSING); // Michaud
    double perVelocity = JoukowskySurge.surge(density, wave, 1) * share;
    double velocity = Math.max(0, MOST_PRESSURE - supply) / perVelocity;
    return Limits.atMost(velocity * Math.PI / 4 * bore * bore);
  }

  /** The pressure of the supply as it was read, else as it usually is, Pa. */
  private static double supply(Measured fill) {
    Component valve = fill.component();
    for (Measurement read : fill.job().measurements(valve.id(), InletValve.STATIC_PRESSURE.id())) {
      Optional<Evaluation> pressure = Evaluation.of(fill.job(), read, InletValve.STATIC_PRESSURE);
      if (pressure.isPresent()) {
        return pressure.get().estimate().value();
      }
    }
    double usual = valve.si(InletValve.SUPPLY_PRESSURE);
    if (Double.isNaN(usual)) {
      throw new IllegalArgumentException(
          "Read the 'static-pressure' of the supply to have the surge judged.");
    }
    return usual;
  }
}
