package kelter.electrical.rating;

import java.util.Optional;
import kelter.core.job.Nameplate;
import kelter.core.job.RatedRange;
import kelter.core.quantity.Quantity;

/**
 * Whether an appliance is built for a North American supply: 110 V to 127 V, unless 50 Hz is
 * stated, and 208 V or 240 V with 60 Hz stated (ANSI C84.1, from memory). Of a range both limits
 * count; 50/60 Hz tells nothing at 208 V and 240 V and is no reason against 110 V to 127 V.
 */
public final class NorthAmerica {

  private static final double ROUNDING = 1;

  private NorthAmerica() {}

  /**
   * Whether it is.
   *
   * @param nameplate the nameplate of the appliance
   * @return true if it is; false if the nameplate states no voltage
   */
  public static boolean supplies(Nameplate nameplate) {
    Optional<RatedRange> volts = nameplate.voltage();
    if (volts.isEmpty()) {
      return false;
    }
    double low = volts.get().low().si();
    double high = volts.get().high().si();
    Optional<RatedRange> hertz = nameplate.frequency();
    if (low >= 110 && high <= 127) {
      return hertz.isEmpty() || isSixty(hertz.get().high());
    }
    return hertz.isPresent() && isSixty(hertz.get().low()) && is208Or240(low) && is208Or240(high);
  }

  private static boolean isSixty(Quantity frequency) {
    return Math.abs(frequency.si() - 60) < ROUNDING;
  }

  private static boolean is208Or240(double volts) {
    return Math.abs(volts - 208) <= ROUNDING || Math.abs(volts - 240) <= ROUNDING;
  }
}
