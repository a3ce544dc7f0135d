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
import kelter.core.job.Measurement;
import kelter.core.job.RatedRange;
import kelter.core.source.Source;
import kelter.core.vocabulary.Observable;
import kelter.hydraulics.part.DrainPumpKind;
import kelter.hydraulics.part.WashPumpKind;

/**
 * Does a pump take no more than its nameplate allows? IEC 60335-1 lets a motor-operated appliance
 * take 20 % more up to 300 W (of 25 W and less too), and 15 % or 60 W more, whichever is greater,
 * above; it sets no lower limit. Here the rule is applied to the pump by its own nameplate, of a
 * range of powers by the upper one.
 */
public final class PumpPowerCheck implements Check {

  private static final String ID = "pump-power";
  private static final String TITLE = "Electric power of the pump against its nameplate";
  private static final double SMALL = 300; // W, IEC 60335-1, 10.1, Table 1
  private static final double SMALL_EXCESS = 0.2; // ratio, same
  private static final double EXCESS = 0.15; // ratio, same
  private static final double LEAST_EXCESS = 60; // W, same
  private static final Source SOURCE =
      Source.published(
          "IEC 335-1:1991, 10.1, Table 1, motor-operated appliances, applied to the pump's nameplate");

  /** A check without a memory. */
  public PumpPowerCheck() {}

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
    for (Component component : job.appliance().components()) {
      Optional<RatedRange> rated = component.nameplate().power();
      Optional<Observable> power = power(component.kind());
      if (rated.isPresent() && power.isPresent()) {
        Told told = new Told(ID, TITLE, power.get(), SOURCE);
        for (Measurement m : job.measurements(component.id(), power.get().id())) {
          double most = most(rated.get().high().si());
          findings.add(told.finding(job, m, Limits.atMost(most), rule, REMARK));
        }
      }
    }
    return List.copyOf(findings);
  }

  private static final String REMARK =
      "The standard sets no lower limit; a low power is held against the operating point by the"
          + " diagnosis.";

  private static Optional<Observable> power(String kind) {
    return switch (kind) {
      case DrainPumpKind.ID -> Optional.of(DrainPumpKind.POWER);
      case WashPumpKind.ID -> Optional.of(WashPumpKind.POWER);
      default -> Optional.empty();
    };
  }

  /**
   * The most that a motor-operated appliance may take.
   *
   * @param rated the rated power input in W, above 0
   * @return the limit in W
   */
  static double most(double rated) {
    return rated <= SMALL
        ? rated * (1 + SMALL_EXCESS)
        : rated + Math.max(LEAST_EXCESS, EXCESS * rated);
  }
}
