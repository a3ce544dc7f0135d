package kelter.hydraulics.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.check.Check;
import kelter.core.check.DecisionRule;
import kelter.core.check.Finding;
import kelter.core.check.Limits;
import kelter.core.job.Component;
import kelter.core.job.Evaluation;
import kelter.core.job.Job;
import kelter.core.quantity.Quantity;
import kelter.core.safety.Caution;
import kelter.core.safety.Caution.Signal;
import kelter.core.source.Source;
import kelter.hydraulics.fill.JoukowskySurge;
import kelter.hydraulics.part.InletValveKind;
import kelter.hydraulics.water.Water;

/**
 * Does the valve stop so little water that supply and surge together stay below 1.2 MPa, which an
 * appliance on the mains of water must stand? The pipe is taken as copper of 1 mm and the valve as
 * closing within 30 ms; length and bore of the pipe must be known.
 */
public final class SurgeCheck implements Check {

  private static final String ID = "fill-surge";
  private static final String TITLE = "Surge when the inlet valve closes";
  private static final double MOST_PRESSURE = 1.2e6; // Pa, IEC 60335-2-7, from memory
  private static final double CLOSING = 0.03; // s, the usual solenoid valve, from memory
  private static final double WALL = 1e-3; // m
  private static final double COPPER = 120e9; // Pa, Young's modulus, handbooks, from memory
  private static final Water COLD = Water.at(Water.FREEZING + 15);

  private static final Told TOLD =
      new Told(
              ID,
              "Flow rate that the closing valve stops, against the surge that it makes",
              InletValveKind.FILL_FLOW,
              Source.fromMemory(
                  "Joukowsky 1898 and Michaud 1878; supply and surge together at most 1.2 MPa, as appliances"
                      + " on the mains of water are tested, IEC 60335-2-7"))
          .minding(
              new Caution(
                  Signal.NOTICE,
                  "A surge can open joints and hoses. Close the tap when the machine is left alone."));

  /** A check without a memory. */
  public SurgeCheck() {}

  @Override
  public String id() {
    return ID;
  }

  @Override
  public String title() {
    return TITLE;
  }

  @Override
  public List<Finding> apply(Job job, DecisionRule rule) {
    List<Finding> findings = new ArrayList<>();
    for (Component valve : job.appliance().componentsOf(InletValveKind.ID)) {
      if (!TOLD.isRead(job, valve)) {
        continue;
      }
      Optional<Double> length = figure(valve, InletValveKind.PIPE_LENGTH.id());
      Optional<Double> bore = figure(valve, InletValveKind.PIPE_BORE.id());
      if (length.isPresent() && bore.isPresent()) {
        findings.addAll(
            TOLD.each(
                job, valve, rule, "", m -> limits(supply(job, valve), length.get(), bore.get())));
      }
    }
    return List.copyOf(findings);
  }

  private static Limits limits(double supply, double length, double bore) {
    if (!(length > 0 && bore > 0)) {
      throw new IllegalArgumentException("'pipe-length' and 'pipe-bore' lie above 0 m.");
    }
    double wave = JoukowskySurge.waveSpeed(COLD.density(), bore, WALL, COPPER);
    double share = Math.min(1, 2 * length / wave / CLOSING); // Michaud
    double perVelocity = JoukowskySurge.surge(COLD.density(), wave, 1) * share;
    double velocity = Math.max(0, MOST_PRESSURE - supply) / perVelocity;
    return Limits.atMost(velocity * Math.PI / 4 * bore * bore);
  }

  private static double supply(Job job, Component valve) {
    return job.measurements(valve.id(), InletValveKind.STATIC_PRESSURE.id()).stream()
        .map(m -> Evaluation.of(job, m, InletValveKind.STATIC_PRESSURE))
        .flatMap(Optional::stream)
        .map(evaluation -> evaluation.estimate().value())
        .findFirst()
        .or(() -> figure(valve, InletValveKind.SUPPLY_PRESSURE.id()))
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "Read the 'static-pressure' of the supply to have the surge judged."));
  }

  private static Optional<Double> figure(Component valve, String name) {
    return valve.figure(name).map(Quantity::si);
  }
}
