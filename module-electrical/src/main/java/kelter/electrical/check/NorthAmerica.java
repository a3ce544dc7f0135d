package kelter.electrical.check;

import kelter.core.job.Nameplate;
import kelter.electrical.rating.Stated;

/**
 * Whether an appliance is built for a North American supply: 110 V to 127 V, unless 50 Hz is
 * stated, and 208 V or 240 V with 60 Hz stated (ANSI C84.1, from memory).
 */
final class NorthAmerica {

  private static final double ROUNDING = 1;

  private NorthAmerica() {}

  static boolean supplies(Nameplate nameplate) {
    double volts = Stated.si(nameplate.voltage());
    double hertz = Stated.si(nameplate.frequency());
    boolean sixty = Math.abs(hertz - 60) < ROUNDING;
    if (volts >= 110 && volts <= 127) {
      return sixty || Double.isNaN(hertz);
    }
    return sixty && (Math.abs(volts - 208) <= ROUNDING || Math.abs(volts - 240) <= ROUNDING);
  }
}
