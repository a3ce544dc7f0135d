package kelter.electrical.rating;

import java.util.Optional;
import kelter.core.check.Limits;
import kelter.core.job.RatedRange;
import kelter.core.source.Source;
import kelter.electrical.supply.SupplyRange.Range;

/**
 * On which public net an appliance runs, by the voltage and the frequency on its nameplate: 220 V
 * to 240 V at 50 Hz on that of EN 50160, and at 60 Hz 110 V to 125 V, 208 V and 240 V on one of
 * ANSI C84.1, range B at the outlet. Where two nets are possible, as for 240 V without a frequency,
 * both count. Other voltages and frequencies are on no net whose range is known here, such as 220 V
 * at 60 Hz.
 *
 * @param limits least and greatest voltage of any net that is possible, V
 * @param onEach what lies in the range of each of them, V; empty if there is only one
 * @param source where the ranges stand
 */
public record SupplyNet(Limits limits, Optional<Limits> onEach, Source source) {

  private static final double ROUNDING = 1;

  /**
   * Finds the net.
   *
   * @param volts the rated voltage
   * @param hertz the rated frequency, if it is stated
   * @return the net, or empty if none is known
   */
  public static Optional<SupplyNet> of(RatedRange volts, Optional<RatedRange> hertz) {
    Optional<SupplyNet> net = Optional.empty();
    if (mayBe(hertz, 50) && volts.low().si() >= 220 && volts.high().si() <= 240) {
      net = with(net, Range.EN_50160_ALWAYS);
    }
    if (mayBe(hertz, 60)) {
      if (volts.low().si() >= 110 && volts.low().si() <= 125 && volts.high().si() <= 127) {
        net = with(net, Range.ANSI_UTILIZATION_B);
      }
      if (isFromTo(volts, 208, 208) || isFromTo(volts, 208, 240)) {
        net = with(net, Range.ANSI_UTILIZATION_B_208);
      }
      if (isFromTo(volts, 240, 240) || isFromTo(volts, 208, 240)) {
        net = with(net, Range.ANSI_UTILIZATION_B_240);
      }
    }
    return net;
  }

  private static boolean mayBe(Optional<RatedRange> hertz, double frequency) {
    return hertz.isEmpty()
        || hertz.get().low().si() - ROUNDING < frequency
            && frequency < hertz.get().high().si() + ROUNDING;
  }

  private static boolean isFromTo(RatedRange volts, double low, double high) {
    return Math.abs(volts.low().si() - low) <= ROUNDING
        && Math.abs(volts.high().si() - high) <= ROUNDING;
  }

  private static Optional<SupplyNet> with(Optional<SupplyNet> first, Range range) {
    return Optional.of(
        first.isEmpty()
            ? new SupplyNet(range.limits(), Optional.empty(), range.source())
            : first.get().or(range));
  }

  private SupplyNet or(Range range) {
    Limits other = range.limits();
    return new SupplyNet(
        new Limits(Math.min(limits.low(), other.low()), Math.max(limits.high(), other.high())),
        Optional.of(
            new Limits(Math.max(limits.low(), other.low()), Math.min(limits.high(), other.high()))),
        Source.fromMemory(source.document() + "; " + range.source().document()));
  }
}
