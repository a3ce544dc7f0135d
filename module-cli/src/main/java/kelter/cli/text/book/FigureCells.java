package kelter.cli.text.book;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.DoubleFunction;
import kelter.cli.text.Figures;
import kelter.core.book.figures.Interval;
import kelter.core.book.figures.Quantile;
import kelter.core.quantity.QuantityFormat;

/** Figures of a job book as the cells of a table. */
final class FigureCells {

  /** Stands where there are too few jobs for a figure. */
  static final String TOO_FEW = "too few";

  /** Stands where a figure is not known for another reason. */
  static final String NONE = "-";

  private static final double LARGE = 9.95;
  private static final int CENTS = 2;

  private FigureCells() {}

  static String whole(double value) {
    return QuantityFormat.fixed(value, value < LARGE && value != Math.rint(value) ? 1 : 0);
  }

  static String amount(double value) {
    return QuantityFormat.fixed(value, CENTS);
  }

  static String between(Interval interval, DoubleFunction<String> figure) {
    return figure.apply(interval.low()) + " to " + figure.apply(interval.high());
  }

  static String percents(Interval interval) {
    return between(interval, Figures::percent);
  }

  static String with(String figure, String interval) {
    return figure + " (" + interval + ")";
  }

  /** A quantile with its interval, of which an end may be open. */
  static String quantile(Optional<Quantile> quantile, DoubleFunction<String> figure) {
    return quantile
        .map(
            each ->
                with(
                    figure.apply(each.value()),
                    end(each.low(), figure) + " to " + end(each.high(), figure)))
        .orElse(TOO_FEW);
  }

  private static String end(OptionalDouble end, DoubleFunction<String> figure) {
    return end.isPresent() ? figure.apply(end.getAsDouble()) : "?";
  }

  static String number(OptionalInt number) {
    return number.isPresent() ? Integer.toString(number.getAsInt()) : TOO_FEW;
  }
}
