package kelter.core.diagnosis.engine;

import java.util.Comparator;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import kelter.core.numeric.Rounding;

/**
 * Orders by a figure, the greatest first, and by name where figures are equal but for rounding. The
 * comparators that Java puts together from such functions can be serialized, and therefore each
 * costs a millisecond at the first start; these do not.
 */
final class GreatestFirst {

  private GreatestFirst() {}

  static <T> Comparator<T> by(
      ToDoubleFunction<? super T> figure, Function<? super T, String> name) {
    return (one, other) -> {
      int byFigure =
          Double.compare(
              Rounding.toCompare(figure.applyAsDouble(other)),
              Rounding.toCompare(figure.applyAsDouble(one)));
      return byFigure != 0 ? byFigure : name.apply(one).compareTo(name.apply(other));
    };
  }
}
