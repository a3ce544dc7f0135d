package kelter.core.owner;

import java.util.Objects;
import java.util.Optional;
import kelter.core.quantity.Money;

/**
 * What supplies of a machine cost. Nothing has to be stated.
 *
 * @param energyPerKilowattHour the price of one kW.h
 * @param waterPerCubicMetre the price of one cubic metre of water, waste water included
 * @param detergentPerCycle the price of the detergent of a cycle
 */
public record Supplies(
    Optional<Money> energyPerKilowattHour,
    Optional<Money> waterPerCubicMetre,
    Optional<Money> detergentPerCycle) {

  /** Supplies of which nothing is stated. */
  public static final Supplies UNKNOWN =
      new Supplies(Optional.empty(), Optional.empty(), Optional.empty());

  public Supplies {
    Objects.requireNonNull(energyPerKilowattHour);
    Objects.requireNonNull(waterPerCubicMetre);
    Objects.requireNonNull(detergentPerCycle);
  }
}
