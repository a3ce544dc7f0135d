package kelter.electrical.heating;

import java.util.Optional;
import kelter.core.check.Allowed;
import kelter.core.check.Measured;
import kelter.core.job.Component;
import kelter.core.job.Nameplate;
import kelter.core.job.RatedRange;
import kelter.core.job.Reading;
import kelter.electrical.supply.SupplyRange.Range;

/**
 * The two voltages of a European supply of several phases: 230 V of each to neutral, 400 V between
 * two of them. A machine has several by its nameplate, by that of one of its parts, or by what is
 * stated or usual of its supply.
 */
final class Phases {

  /** What stands on nameplates for machines between two phases, V; common practice, no source. */
  private static final double LEAST_RATED = 380;

  private static final double MOST_RATED = 415;

  /** Above this a reading is one between two phases, V: midway from 230 V to 400 V. */
  private static final double BETWEEN = 315;

  /** Beyond this frequency no net has 400 V between phases, Hz. */
  private static final double MOST_HERTZ = 55;

  private Phases() {}

  /** Whether a rated voltage is one between two phases. */
  static boolean isBetween(RatedRange rated) {
    return rated.low().si() >= LEAST_RATED && rated.high().si() <= MOST_RATED;
  }

  /** Whether the supply at which a reading was taken has several phases. */
  static boolean areSeveral(Measured measured) {
    Nameplate plate = measured.appliance().nameplate();
    if (plate.frequency().filter(hertz -> hertz.low().si() > MOST_HERTZ).isPresent()) {
      return false;
    }
    boolean told = measured.component().si(MainsSupply.PHASES, 1) > 1;
    for (Component part : measured.appliance().components()) {
      Optional<RatedRange> own = part.nameplate().voltage();
      if (own.filter(Phases::isBetween).isPresent()) {
        return true;
      }
      told &= !Heater.isOne(part) || own.isPresent(); // else it has the voltage of the machine
    }
    return told || plate.voltage().filter(Phases::isBetween).isPresent();
  }

  /** What a reading at such a supply may be. */
  static Allowed allowed(Measured measured, String title) {
    Reading reading = measured.measurement().readings().get(0);
    Range range = reading.least() > BETWEEN ? Range.EN_50160_BETWEEN_PHASES : Range.EN_50160_ALWAYS;
    return Allowed.of(title, range.source(), range.limits())
        .resting(
            range == Range.EN_50160_BETWEEN_PHASES
                ? "taken as read between two phases; one reading is a hint only"
                : "taken as read from a phase to neutral: between two phases it is 360 V to 440 V;"
                    + " one reading is a hint only");
  }
}
