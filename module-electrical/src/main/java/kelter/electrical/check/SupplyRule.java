package kelter.electrical.check;

import java.util.Optional;
import kelter.core.job.Component;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.electrical.caution.Cautions;
import kelter.electrical.rating.Stated;
import kelter.electrical.supply.SupplyRange.Range;

/**
 * The voltage at the outlet against the range of the net: EN 50160 for appliances rated 220 V to
 * 240 V, ANSI C84.1 (utilization, range B) for those rated 110 V to 127 V; none for others.
 */
final class SupplyRule {

  private SupplyRule() {}

  static Optional<LimitCheck.Allowed> of(Job job, Component supply, Measurement measurement) {
    double rated = Stated.si(job.appliance().nameplate().voltage());
    if (rated >= 220 && rated <= 240) {
      return Optional.of(allowed(Range.EN_50160_ALWAYS));
    }
    if (rated >= 110 && rated <= 127) {
      return Optional.of(allowed(Range.ANSI_UTILIZATION_B));
    }
    return Optional.empty();
  }

  private static LimitCheck.Allowed allowed(Range range) {
    return new LimitCheck.Allowed(
        range.limits(),
        range.source(),
        "supply voltage against the range of the net",
        "one reading is a hint only: the range holds for means over ten minutes",
        Optional.of(Cautions.FIXED_WIRING));
  }
}
