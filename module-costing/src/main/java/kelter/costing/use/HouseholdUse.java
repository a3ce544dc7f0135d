package kelter.costing.use;

import java.util.Map;
import java.util.OptionalDouble;
import kelter.core.source.Source;
import kelter.costing.life.LifeStudies;

/**
 * How often households use machines that work in cycles: what the studies of lives saw, as far as
 * it is known. Machines that are always on, and ovens, have no cycles to count.
 */
public final class HouseholdUse {

  /** Where the figures come from. */
  public static final Source SOURCE =
      Source.fromMemory(
          "cycles a year of a household in the energy labels of the European Union: 220 of a washing"
              + " machine (1061/2010), 280 of a dishwasher (1059/2010), 160 of a tumble dryer"
              + " (392/2012)");

  private static final Map<String, Integer> CYCLES_PER_YEAR =
      Map.of(
          LifeStudies.WASHING_MACHINE, 220,
          LifeStudies.DISHWASHER, 280,
          LifeStudies.TUMBLE_DRYER, 160);

  private HouseholdUse() {}

  /**
   * How many cycles a week a household runs.
   *
   * @param kind a kind of appliance that was studied
   * @return the number, or empty if the kind has no cycles to count
   */
  public static OptionalDouble cyclesPerWeek(String kind) {
    Integer year = CYCLES_PER_YEAR.get(kind);
    return year == null
        ? OptionalDouble.empty()
        : OptionalDouble.of(year / RunningCost.WEEKS_PER_YEAR);
  }
}
