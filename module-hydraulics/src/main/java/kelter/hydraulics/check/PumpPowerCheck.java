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
import kelter.core.job.RatedRange;
import kelter.core.source.Source;
import kelter.core.vocabulary.Observable;
import kelter.hydraulics.part.DrainPumpKind;
import kelter.hydraulics.part.RatedSupply;
import kelter.hydraulics.part.WashPumpKind;

/**
 * Does a pump that runs take power, and no more than its nameplate allows?
 *
 * <p>IEC 60335-1 lets a motor-operated appliance take 20 % more up to 300 W (of 25 W and less too),
 * and 15 % or 60 W more, whichever is greater, above. Here the rule is applied to the pump by its
 * own nameplate, of a range of powers by the upper one. The standard sets no lower limit. One is
 * taken from common practice: a small motor takes about a quarter of its rated power without any
 * load, so that less says that the pump does not run; behind an inverter, which may turn it slowly,
 * a twentieth. Where no rated power is known only a least power is asked for, which any pump of an
 * appliance takes while it runs.
 */
public final class PumpPowerCheck implements Check {

  private static final String ID = "pump-power";
  private static final OnPump OBSERVED = new OnPump(DrainPumpKind.POWER, WashPumpKind.POWER);
  private static final String TITLE = "Electric power of the pump against its nameplate";
  private static final String TITLE_WITHOUT = "Electric power of the pump: does it take any";
  private static final double SMALL = 300; // W, IEC 60335-1, 10.1, Table 1
  private static final double SMALL_EXCESS = 0.2; // ratio, same
  private static final double EXCESS = 0.15; // ratio, same
  private static final double LEAST_EXCESS = 60; // W, same
  private static final double IDLE = 0.25; // ratio of the rated power; common practice, no source
  private static final double IDLE_ON_INVERTER = 0.05; // ratio of the rated power; same
  private static final double LEAST = 4; // W; common practice, no source
  private static final Source SOURCE =
      Source.commonPractice(
          "at most as IEC 335-1:1991, 10.1, Table 1 (published), motor-operated appliances, applied to"
              + " the pump's nameplate; at least what its motor takes without a load");
  private static final Source LEAST_SOURCE =
      Source.commonPractice("the least that a pump of an appliance takes while it runs");
  private static final String REMARK =
      "The standard sets no lower limit. Below the one taken here the pump does not run: no voltage, an"
          + " open winding, or not called for.";
  private static final String REMARK_WITHOUT =
      "No rated power is stated, so that only this much can be said; add the power of its nameplate.";

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
      Optional<Observable> power = OBSERVED.of(component);
      if (power.isPresent()) {
        findings.addAll(findings(job, component, power.get(), rule));
      }
    }
    return List.copyOf(findings);
  }

  private static List<Finding> findings(
      Job job, Component component, Observable power, DecisionRule rule) {
    Optional<RatedRange> rated = component.nameplate().power();
    if (rated.isEmpty()) {
      return new Told(ID, TITLE_WITHOUT, power, LEAST_SOURCE)
          .each(job, component, rule, REMARK_WITHOUT, Limits.atLeast(LEAST));
    }
    boolean onInverter = component.figure(RatedSupply.TORQUE_LIMIT).isPresent();
    return new Told(ID, TITLE, power, SOURCE)
        .each(job, component, rule, REMARK, limits(rated.get(), onInverter));
  }

  /**
   * What a pump that runs may take.
   *
   * @param rated the rated power input
   * @param onInverter whether an inverter feeds its motor
   * @return the limits in W
   */
  static Limits limits(RatedRange rated, boolean onInverter) {
    double idle = onInverter ? IDLE_ON_INVERTER : IDLE;
    return new Limits(idle * rated.low().si(), most(rated.high().si()));
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
