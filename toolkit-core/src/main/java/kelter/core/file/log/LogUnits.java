package kelter.core.file.log;

import java.util.HashMap;
import java.util.Map;
import kelter.core.quantity.QuantityParser;
import kelter.core.quantity.Unit;

/**
 * Figures of one column that come in several units, as of a meter that chooses its range, told in
 * the unit of the column.
 */
final class LogUnits {

  private final String unit;
  private final Map<String, Change> changes = new HashMap<>();
  private final Map<Change, Integer> finest = new HashMap<>();
  private int finestOfOwn = Integer.MAX_VALUE;

  LogUnits(String unit) {
    this.unit = unit;
  }

  /** From a value in one unit to the same in another. */
  record Change(double factor, double shift) {
    private static final Change NONE = new Change(1, 0);

    double of(double value) {
      return value * factor + shift;
    }
  }

  /**
   * The change from a unit to that of the column.
   *
   * @throws IllegalArgumentException if they are units of two quantities, or one is not known
   */
  Change from(String written) {
    if (written.equals(unit) || written.isEmpty()) {
      return Change.NONE;
    }
    return changes.computeIfAbsent(written, this::change);
  }

  /** Notes the power of ten of the last digit of a figure, in the unit in which it was written. */
  void note(Change change, int lastDigit) {
    if (change == Change.NONE) {
      finestOfOwn = Math.min(finestOfOwn, lastDigit);
    } else {
      finest.merge(change, lastDigit, Math::min);
    }
  }

  /** The size of the last digit in the coarsest of the units; 0 if there was no figure. */
  double resolution() {
    double coarsest = finestOfOwn == Integer.MAX_VALUE ? 0 : Math.pow(10, finestOfOwn);
    for (Map.Entry<Change, Integer> each : finest.entrySet()) {
      coarsest = Math.max(coarsest, Math.pow(10, each.getValue()) * each.getKey().factor());
    }
    return coarsest;
  }

  private Change change(String written) {
    for (Unit to : QuantityParser.units(unit)) {
      for (Unit from : QuantityParser.units(written)) {
        if (from.isCompatibleWith(to)) {
          double factor = from.factor() / to.factor();
          return new Change(factor, (from.shift() - to.shift()) / to.factor());
        }
      }
    }
    throw new IllegalArgumentException(
        "the unit is %s where the column is in %s, and one cannot be told in the other"
            .formatted(written, unit.isEmpty() ? "no unit" : unit));
  }
}
