package kelter.core.file.log.cell;

import java.util.HashMap;
import java.util.Map;
import kelter.core.quantity.QuantityFormat;
import kelter.core.quantity.QuantityParser;
import kelter.core.quantity.Unit;

/**
 * Figures of one column, told in its unit, also where they come in several, as of a meter that
 * chooses its range.
 */
public final class FigureColumn {

  /** Beyond this a figure is no reading; within it, squares and their sums stay finite. */
  public static final double LARGEST = 1e30;

  private static final int FINEST = -12;

  private final FigureForm form;
  private final String unit;
  private final Map<String, Change> changes = new HashMap<>();
  private final Map<Change, Integer> finest = new HashMap<>();
  private int finestOfOwn = Integer.MAX_VALUE;

  /**
   * An empty column.
   *
   * @param form how its figures are written
   * @param unit its unit
   */
  public FigureColumn(FigureForm form, String unit) {
    this.form = form;
    this.unit = unit;
  }

  /** From a value in one unit to the same in another. */
  private record Change(double factor, double shift) {
    private static final Change NONE = new Change(1, 0);

    double of(double value) {
      return value * factor + shift;
    }
  }

  /**
   * Reads a cell.
   *
   * @param cell a figure, perhaps with its unit behind it, or a mark in its place
   * @param beside the unit of a figure without one behind it; empty for that of the column
   * @return the value in the unit of the column; infinite beyond the range, NaN without a value
   * @throws IllegalArgumentException if it is none of these, or in a unit of another quantity
   */
  public double value(String cell, String beside) {
    String figure = form.leading(cell);
    String behind = cell.substring(figure.length()).strip();
    if (!Look.isUnitBehind(behind)) {
      throw form.refusal(cell);
    }
    Change change = from(behind.isEmpty() ? beside : behind);
    double read = form.value(figure);
    double value = Marks.meant(read);
    if (Double.isFinite(value)) {
      value = change.of(value);
      note(change, Math.max(FINEST, form.lastDigit(figure)));
    }
    if (Double.isInfinite(read) || (Double.isFinite(value) && Math.abs(value) > LARGEST)) {
      throw new IllegalArgumentException(
          "'%s' is beyond any reading; figures up to %s are read"
              .formatted(cell, QuantityFormat.plain(LARGEST)));
    }
    return value;
  }

  private Change from(String written) {
    boolean own = written.equals(unit) || written.isEmpty();
    return own ? Change.NONE : changes.computeIfAbsent(written, this::change);
  }

  private void note(Change change, int lastDigit) {
    if (change == Change.NONE) {
      finestOfOwn = Math.min(finestOfOwn, lastDigit);
    } else {
      finest.merge(change, lastDigit, Math::min);
    }
  }

  /**
   * The size of the last digit in the coarsest of the units.
   *
   * @return the size in the unit of the column; 0 if there was no figure
   */
  public double resolution() {
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
