package kelter.core.owner;

import java.util.Objects;
import java.util.Optional;
import kelter.core.quantity.Quantity;

/**
 * How a machine is used. Nothing has to be stated.
 *
 * @param cyclesPerWeek how many cycles a week it runs, a ratio, above zero
 * @param builtForCycles how many cycles it is built for, a ratio, above zero
 * @param now what a cycle of the machine takes
 * @param next what a cycle of a new machine would take
 * @param carbon what making and running machines emits
 */
public record Use(
    Optional<Quantity> cyclesPerWeek,
    Optional<Quantity> builtForCycles,
    Consumption now,
    Consumption next,
    Carbon carbon) {

  /** A use of which nothing is stated. */
  public static final Use UNKNOWN =
      new Use(
          Optional.empty(),
          Optional.empty(),
          Consumption.UNKNOWN,
          Consumption.UNKNOWN,
          Carbon.NONE);

  /**
   * Checks the figures.
   *
   * @throws IllegalArgumentException if a number of cycles is not above zero
   */
  public Use {
    Objects.requireNonNull(now);
    Objects.requireNonNull(next);
    Objects.requireNonNull(carbon);
    requireAboveZero("cycles a week", cyclesPerWeek);
    requireAboveZero("cycles that a machine is built for", builtForCycles);
  }

  private static void requireAboveZero(String what, Optional<Quantity> figure) {
    if (figure.isPresent() && !(figure.get().si() > 0)) {
      throw new IllegalArgumentException(
          figure.get().format() + " " + what + "; the number must be above zero");
    }
  }

  private static void requireNotNegative(String what, Optional<Quantity> figure) {
    if (figure.isPresent() && !(figure.get().si() >= 0)) {
      throw new IllegalArgumentException(
          what + " of " + figure.get().format() + "; it must not be negative");
    }
  }

  /**
   * What a cycle takes.
   *
   * @param energy the energy, not negative
   * @param water the volume of water, not negative
   */
  public record Consumption(Optional<Quantity> energy, Optional<Quantity> water) {

    /** A consumption of which nothing is stated. */
    public static final Consumption UNKNOWN = new Consumption(Optional.empty(), Optional.empty());

    /**
     * Checks the figures.
     *
     * @throws IllegalArgumentException if one is negative
     */
    public Consumption {
      requireNotNegative("energy of a cycle", energy);
      requireNotNegative("water of a cycle", water);
    }
  }

  /**
   * What making and running machines emits, as a mass of carbon dioxide equivalent.
   *
   * @param newMachine by making, delivering and disposing of a machine, not negative
   * @param perKilowattHour by one kW.h of electricity, not negative
   */
  public record Carbon(Optional<Quantity> newMachine, Optional<Quantity> perKilowattHour) {

    /** Emissions of which nothing is stated. */
    public static final Carbon NONE = new Carbon(Optional.empty(), Optional.empty());

    /**
     * Checks the figures.
     *
     * @throws IllegalArgumentException if one is negative
     */
    public Carbon {
      requireNotNegative("carbon of a new machine", newMachine);
      requireNotNegative("carbon of one kW.h", perKilowattHour);
    }
  }
}
