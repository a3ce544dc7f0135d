package kelter.electrical.check;

import java.util.Optional;
import kelter.core.job.Nameplate;
import kelter.core.quantity.Quantity;

/**
 * Whether an appliance is built for a North American supply: 110 V to 127 V, unless 50 Hz is
 * stated, and 208 V or 240 V with 60 Hz stated (ANSI C84.1, from memory).
 */
final class NorthAmerica {

  private static final double ROUNDING = 1;

  private NorthAmerica() {}

  static boolean supplies(Nameplate nameplate) {
    Optional<Double> voltage = nameplate.voltage().map(Quantity::si);
    Optional<Double> frequency = nameplate.frequency().map(Quantity::si);
    if (voltage.isEmpty()) {
      return false;
    }
    boolean sixty = frequency.filter(f -> Math.abs(f - 60) < ROUNDING).isPresent();
    double volts = voltage.get();
    if (volts >= 110 && volts <= 127) {
      return sixty || frequency.isEmpty();
    }
    return sixty && (Math.abs(volts - 208) <= ROUNDING || Math.abs(volts - 240) <= ROUNDING);
  }
}
