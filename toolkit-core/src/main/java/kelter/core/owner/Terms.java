package kelter.core.owner;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import kelter.core.quantity.Money;
import kelter.core.quantity.Quantity;

/**
 * The terms of repair and replacement. Nothing has to be stated.
 *
 * @param priceDate the day of the prices
 * @param callOutCredited whether the call-out is taken off again when the owner has the machine
 *     mended
 * @param leastWork how much work is charged at least where something is mended, in s, not negative
 * @param replacementAvailable whether a new machine can be had
 * @param partsDelivery the time until a part is there, in a, not negative
 * @param replacementDelivery the time until a new machine is there, in a, not negative
 * @param repairWarranty for how long the shop mends again for nothing, in a, not negative
 * @param newWarranty for how long a new machine is replaced for nothing, in a, not negative
 * @param dayWithout what a day without the machine costs the owner
 */
public record Terms(
    Optional<LocalDate> priceDate,
    Optional<Boolean> callOutCredited,
    Optional<Quantity> leastWork,
    Optional<Boolean> replacementAvailable,
    Optional<Quantity> partsDelivery,
    Optional<Quantity> replacementDelivery,
    Optional<Quantity> repairWarranty,
    Optional<Quantity> newWarranty,
    Optional<Money> dayWithout) {

  /** Terms of which nothing is stated. */
  public static final Terms NONE =
      new Terms(
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty());

  /**
   * Checks the times.
   *
   * @throws IllegalArgumentException if one is negative
   */
  public Terms {
    Objects.requireNonNull(priceDate);
    Objects.requireNonNull(callOutCredited);
    Objects.requireNonNull(replacementAvailable);
    Objects.requireNonNull(dayWithout);
    requireNotNegative("least work", leastWork);
    requireNotNegative("delivery of a part", partsDelivery);
    requireNotNegative("delivery of a new machine", replacementDelivery);
    requireNotNegative("warranty on a repair", repairWarranty);
    requireNotNegative("warranty on a new machine", newWarranty);
  }

  private static void requireNotNegative(String what, Optional<Quantity> time) {
    if (time.isPresent() && !(time.get().si() >= 0)) {
      throw new IllegalArgumentException(
          what + ": " + time.get().format() + "; a time must not be negative");
    }
  }
}
