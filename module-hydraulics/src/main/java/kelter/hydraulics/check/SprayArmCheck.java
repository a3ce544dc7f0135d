package kelter.hydraulics.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.check.Check;
import kelter.core.check.DecisionRule;
import kelter.core.check.Finding;
import kelter.core.check.Limits;
import kelter.core.job.Component;
import kelter.core.job.Job;
import kelter.core.quantity.Quantity;
import kelter.core.source.Source;
import kelter.hydraulics.part.WashPumpKind;

/**
 * Are at least nine tenths of the jets open, and does the spray arm turn at 60 % of the speed of a
 * good machine, or, where that is not known, at five revolutions in a minute? All that is common
 * practice.
 */
public final class SprayArmCheck implements Check {

  private static final String ID = "spray-arm";
  private static final String TITLE = "Jets and speed of the spray arm";
  private static final double MOST_CLOSED = 0.1; // ratio
  private static final double LEAST_SHARE = 0.6; // ratio
  private static final double LEAST_SPEED = 5.0 / 60; // 1/s

  private static final Told JETS =
      new Told(
          ID + "-jets",
          "Share of the jets that are closed",
          WashPumpKind.JETS_CLOSED,
          Source.commonPractice("at most one jet in ten closed"));

  private static final Told SPEED =
      new Told(
          ID + "-speed",
          "Speed of the spray arm against that of a good machine",
          WashPumpKind.ARM_SPEED,
          Source.commonPractice(
              "at least 60 % of the speed of a good machine; 5 in a minute where it is not known"));

  /** A check without a memory. */
  public SprayArmCheck() {}

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
    for (Component pump : job.appliance().componentsOf(WashPumpKind.ID)) {
      if (JETS.isRead(job, pump)) {
        findings.addAll(JETS.each(job, pump, rule, "", new Limits(0, MOST_CLOSED)));
      }
      if (SPEED.isRead(job, pump)) {
        findings.addAll(speed(job, pump, rule));
      }
    }
    return List.copyOf(findings);
  }

  private static List<Finding> speed(Job job, Component pump, DecisionRule rule) {
    Optional<Quantity> rated = pump.figure(WashPumpKind.RATED_ARM_SPEED.id());
    String remark =
        rated.isPresent()
            ? "An arm that stands still: free its bearing first, then look at the pressure before it."
            : "Give the arm's speed on a good machine for a narrower limit.";
    double least = rated.isPresent() ? LEAST_SHARE * rated.get().si() : LEAST_SPEED;
    return SPEED.each(job, pump, rule, remark, Limits.atLeast(least));
  }
}
