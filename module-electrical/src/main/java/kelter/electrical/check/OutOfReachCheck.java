package kelter.electrical.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.check.Check;
import kelter.core.check.DecisionRule;
import kelter.core.check.Finding;
import kelter.core.check.Judgement;
import kelter.core.check.Limits;
import kelter.core.check.Verdict;
import kelter.core.job.Component;
import kelter.core.job.Job;
import kelter.core.job.RatedRange;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.core.vocabulary.ComponentKind;
import kelter.electrical.component.MotorKinds;
import kelter.electrical.component.OutOfReach;

/**
 * Says stop at every part that is out of reach: gas, refrigerant, fixed wiring, high-voltage
 * capacitors, and what a job calls a motor capacitor but states more than 1000 V for or has in a
 * microwave oven. Nothing is measured there, so that there is never a verdict.
 */
final class OutOfReachCheck implements Check {

  /** Motor capacitors have less, V; common practice, no source. */
  private static final double HIGH_VOLTAGE = 1000;

  private static final Source SOURCE =
      Source.commonPractice("what this toolkit leaves to licensed or specially trained people");

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
      Optional<ComponentKind> kind =
          isOfMicrowaveOven(job, part) ? Optional.of(OutOfReach.HIGH_VOLTAGE) : kind(part);
      if (kind.isPresent()) {
        findings.add(stop(part, kind.get()));
      }
    }
    return findings;
  }

  private static Optional<ComponentKind> kind(Component part) {
    if (!part.kind().equals(MotorKinds.RUN_CAPACITOR.id())) {
      return OutOfReach.of(part.kind());
    }
    Optional<RatedRange> voltage = part.nameplate().voltage();
    return voltage.isPresent() && voltage.get().high().si() > HIGH_VOLTAGE
        ? Optional.of(OutOfReach.HIGH_VOLTAGE)
        : Optional.empty();
  }

  private Finding stop(Component part, ComponentKind kind) {
    return new Finding(
        id() + "." + part.id(),
        part.id(),
        "none",
        "out of reach, stop here: " + kind.title(),
        "nothing is measured here",
        QuantityKind.RATIO,
        QuantityKind.RATIO.unit(),
        new Judgement(Optional.empty(), Double.NaN, Verdict.NOT_MEASURED, false),
        new Limits(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY),
        SOURCE,
        List.of(OutOfReach.caution(kind)),
        "no procedure is given: it is for people licensed or trained for it");
  }

  private static boolean isOfMicrowaveOven(Job job, Component part) {
    return part.kind().equals(MotorKinds.RUN_CAPACITOR.id())
        && job.appliance().kind().contains("microwave");
  }
}
