package kelter.core.owner;

import java.util.Objects;
import java.util.Optional;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityFormat;

/**
 * How a machine is used. Nothing has to be stated.
 *
 * @param cyclesPerWeek how many cycles a week it runs, a ratio, from 0.1 to 1000
 * @param builtForCycles how many cycles it is built for, a ratio, from 10 to 10 million
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

  private static final double LEAST_A_WEEK = 0.1;
  private static final double MOST_A_WEEK = 1000;
  private static final double LEAST_BUILT_FOR = 10;
  private static final double MOST_BUILT_FOR = 1e7;

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
   * @throws IllegalArgumentException if a number of cycles is outside its range
   */
  public Use {
    Objects.requireNonNull(now);
    Objects.requireNonNull(next);
    Objects.requireNonNull(carbon);
    if (cyclesPerWeek.isPresent()) {
      requireCyclesPerWeek(cyclesPerWeek.get());
    }
    if (builtForCycles.isPresent()) {
      requireBuiltForCycles(builtForCycles.get());
    }
  }

  /**
   * Checks a number of cycles a week.
   *
   * @param cycles the number
   * @return the same number
   * @throws IllegalArgumentException if it is outside its range
   */
  public static Quantity requireCyclesPerWeek(Quantity cycles) {
    return require(cycles, "cycles a week", LEAST_A_WEEK, MOST_A_WEEK);
  }

  /**
   * Checks how many cycles a machine is built for.
   *
   * @param cycles the number
   * @return the same number
   * @throws IllegalArgumentException if it is outside its range
   */
  public static Quantity requireBuiltForCycles(Quantity cycles) {
    return require(cycles, "cycles that a machine is built for", LEAST_BUILT_FOR, MOST_BUILT_FOR);
  }

  private static Quantity require(Quantity cycles, String what, double least, double most) {
    if (!(cycles.si() >= least && cycles.si() <= most)) {
      throw new IllegalArgumentException(
          "%s %s; the number must lie from %s to %s"
              .formatted(
                  cycles.format(), what, QuantityFormat.plain(least), QuantityFormat.plain(most)));
    }
    return cycles;
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
