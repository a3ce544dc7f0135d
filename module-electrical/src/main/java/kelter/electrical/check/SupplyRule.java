package kelter.electrical.check;

import java.util.Optional;
import kelter.core.job.Component;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.RatedRange;
import kelter.core.source.Source;
import kelter.electrical.caution.Cautions;
import kelter.electrical.rating.MainsRange;
import kelter.electrical.supply.SupplyRange.Range;

/**
 * The voltage at the outlet against the range of the net: EN 50160 for appliances rated 220 V to
 * 240 V, ANSI C84.1 (utilization, range B) for those rated 110 V to 127 V. Of another rated range
 * 10 % below its lower to 10 % above its upper limit; none for other voltages.
 */
final class SupplyRule {

  private SupplyRule() {}

  static Optional<LimitCheck.Allowed> of(Job job, Component supply, Measurement measurement) {
    Optional<RatedRange> rated = job.appliance().nameplate().voltage();
    if (rated.isEmpty()) {
      return Optional.empty();
    }
    double low = rated.get().low().si();
    double high = rated.get().high().si();
    if (low >= 220 && high <= 240) {
      return Optional.of(ofTheNet(Range.EN_50160_ALWAYS));
    }
    if (low >= 110 && high <= 127) {
      return Optional.of(ofTheNet(Range.ANSI_UTILIZATION_B));
    }
    return rated.get().isRange() ? Optional.of(ofTheNameplate(rated.get())) : Optional.empty();
  }

  private static LimitCheck.Allowed ofTheNet(Range range) {
    return new LimitCheck.Allowed(
        range.limits(),
        range.source(),
        "supply voltage against the range of the net",
        "one reading is a hint only: the range holds for means over ten minutes",
        Optional.of(Cautions.FIXED_WIRING));
  }

  private static LimitCheck.Allowed ofTheNameplate(RatedRange rated) {
    return new LimitCheck.Allowed(
        MainsRange.of(rated),
        Source.commonPractice(
            "the mains range of 10 % below and above the limits of a rated range"),
        "supply voltage against the rated range",
        "rated " + rated.display() + ", which may stand on more than one net",
        Optional.of(Cautions.FIXED_WIRING));
  }
}
