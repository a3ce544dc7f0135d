package kelter.core.shop;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import kelter.core.job.Instrument;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;

/**
 * An instrument of the shop.
 *
 * @param instrument what it measures, and how well
 * @param calibrated when it was last calibrated, if that is known
 * @param interval after what time it is to be calibrated again, if that is stated; an age above
 *     zero
 */
public record ShopInstrument(
    Instrument instrument, Optional<LocalDate> calibrated, Optional<Quantity> interval) {

  private static final double SECONDS_PER_DAY = 86_400;

  /** The longest interval, 100 years of 365.25 d, in s. */
  private static final double LONGEST = 100 * 365.25 * SECONDS_PER_DAY;

  /**
   * Checks the interval.
   *
   * @throws IllegalArgumentException if the interval is not an age above zero and at most 100 years
   */
  public ShopInstrument {
    Objects.requireNonNull(instrument);
    Objects.requireNonNull(calibrated);
    interval.ifPresent(ShopInstrument::check);
  }

  private static void check(Quantity interval) {
    boolean age = interval.kind().accepts(QuantityKind.AGE.unit());
    if (!age || !(interval.si() > 0 && interval.si() <= LONGEST)) {
      throw new IllegalArgumentException(
          "an interval of " + interval.display() + "; above 0 and up to 100 years is allowed");
    }
  }

  /**
   * The day on which it is to be calibrated again.
   *
   * @return the day, to a day; empty if the calibration or the interval is not known
   */
  public Optional<LocalDate> due() {
    return calibrated.flatMap(
        day -> interval.map(time -> day.plusDays(Math.round(time.si() / SECONDS_PER_DAY))));
  }
}
