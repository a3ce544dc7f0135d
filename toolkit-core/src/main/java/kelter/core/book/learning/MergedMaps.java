package kelter.core.book.learning;

import java.util.Map;
import java.util.TreeMap;
import java.util.function.BinaryOperator;

/** Two maps as one, in which what stands under one key in both is put together. */
final class MergedMaps {

  private MergedMaps() {}

  /** A new map; what stands in one map alone is put together with {@code none}. */
  static <K extends Comparable<K>, V> Map<K, V> of(
      Map<K, V> one, Map<K, V> other, V none, BinaryOperator<V> together) {
    Map<K, V> all = new TreeMap<>();
    one.forEach((key, value) -> all.put(key, together.apply(value, other.getOrDefault(key, none))));
    other.forEach((key, value) -> all.computeIfAbsent(key, any -> together.apply(none, value)));
    return all;
  }

  /** Sums, of which a missing one is 0. */
  static <K extends Comparable<K>> Map<K, Double> sums(Map<K, Double> one, Map<K, Double> other) {
    return of(one, other, 0.0, Double::sum);
  }
}
