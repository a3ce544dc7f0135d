package kelter.electrical.outofreach;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.check.Check;
import kelter.core.check.DecisionRule;
import kelter.core.check.Finding;
import kelter.core.check.Judgement;
import kelter.core.check.Limits;
import kelter.core.check.Verdict;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Job;
import kelter.core.job.RatedRange;
import kelter.core.module.Part;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.core.vocabulary.ComponentKind;
import kelter.electrical.caution.ElectricalCautions;
import kelter.electrical.motor.Motor;

/**
 * Parts at which this toolkit stops: gas, refrigerant, fixed wiring, high-voltage capacitors, and
 * what a job calls a motor capacitor but states more than 1000 V for or has in a microwave oven. A
 * job may name them, nothing is measured on them, and the check answers with a caution and never
 * with a verdict.
 */
public final class OutOfReach implements Part, Check {

  /** Motor capacitors have less, V; common practice, no source. */
  private static final double HIGH_VOLTAGE = 1000;

  private static final Source SOURCE =
      Source.commonPractice("what this toolkit leaves to licensed or specially trained people");

  /**
   * A kind of part and what to say at it.
   *
   * @param kind the kind, on which nothing can be observed
   * @param caution what can happen, and the stop
   */
  private record Stop(ComponentKind kind, Caution caution) {

    Stop(String id, String title, Caution caution) {
      this(new ComponentKind(id, title, List.of(), List.of(), List.of()), caution);
    }
  }

  private static final Stop CAPACITOR =
      new Stop(
          "high-voltage-capacitor",
          "high-voltage capacitor of a microwave oven",
          ElectricalCautions.HIGH_VOLTAGE);

  private static final List<Stop> STOPS =
      List.of(
          CAPACITOR,
          new Stop("gas-part", "gas valve, burner or pipe", ElectricalCautions.GAS),
          new Stop("refrigerant-circuit", "refrigerant circuit", ElectricalCautions.REFRIGERANT),
          new Stop("fixed-wiring", "outlet and fixed wiring", ElectricalCautions.FIXED_WIRING));

  @Override
  public List<ComponentKind> kinds() {
    List<ComponentKind> kinds = new ArrayList<>();
    for (Stop stop : STOPS) {
      kinds.add(stop.kind);
    }
    kinds.add(Motor.RUN_CAPACITOR);
    return kinds;
  }

  @Override
  public List<Check> checks() {
    return List.of(this);
  }

  @Override
  public String id() {
    return "out-of-reach";
  }

  @Override
  public String title() {
    return "Which parts does this toolkit leave to others?";
  }

  @Override
  public List<Finding> apply(Job job, DecisionRule rule) {
    List<Finding> findings = new ArrayList<>();
    for (Component part : job.appliance().components()) {
      stop(job.appliance(), part).ifPresent(stop -> findings.add(finding(part, stop)));
    }
    return findings;
  }

  private static Optional<Stop> stop(Appliance appliance, Component part) {
    if (part.kind().equals(Motor.RUN_CAPACITOR.id())) {
      Optional<RatedRange> voltage = part.nameplate().voltage();
      boolean high = voltage.isPresent() && voltage.get().high().si() > HIGH_VOLTAGE;
      return high || appliance.kind().contains("microwave")
          ? Optional.of(CAPACITOR)
          : Optional.empty();
    }
    for (Stop stop : STOPS) {
      if (stop.kind.id().equals(part.kind())) {
        return Optional.of(stop);
      }
    }
    return Optional.empty();
  }

  private Finding finding(Component part, Stop stop) {
    return new Finding(
        id() + "." + part.id(),
        part.id(),
        "none",
        "out of reach, stop here: " + stop.kind.title(),
        "nothing is measured here",
        QuantityKind.RATIO,
        QuantityKind.RATIO.unit(),
        new Judgement(Optional.empty(), Double.NaN, Verdict.NOT_MEASURED, false),
        new Limits(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY),
        SOURCE,
        List.of(stop.caution),
        "no procedure is given: it is for people licensed or trained for it");
  }
}
