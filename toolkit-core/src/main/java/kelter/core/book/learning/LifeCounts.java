package kelter.core.book.learning;

import java.io.Serializable;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import kelter.core.book.learned.PartLife;
import kelter.core.diagnosis.learning.KaplanMeier;
import kelter.core.diagnosis.learning.Lives;
import kelter.core.diagnosis.learning.WeibullFit;

/**
 * How many parts were how old. While it is counted the maps have no order; what {@link #plus} makes
 * has that of the keys.
 *
 * @param lived by kind of machine and age in years how many machines were that old
 * @param failed by {@code kind.part} and age how many failed
 * @param moved by {@code kind.part} and age how many more, or fewer, there were of that age than
 *     machines
 */
record LifeCounts(
    Map<String, Map<Double, Double>> lived,
    Map<String, Map<Double, Double>> failed,
    Map<String, Map<Double, Double>> moved)
    implements Serializable {

  /** With fewer failures no life is fitted. */
  private static final double LEAST_FITTED = 2;

  static LifeCounts none() {
    return new LifeCounts(new HashMap<>(), new HashMap<>(), new HashMap<>());
  }

  void lived(String kind, double age) {
    count(lived, kind, age, 1);
  }

  /** A machine that was that old came again, so that its parts lived on. */
  void livesOn(String kind, double age) {
    count(lived, kind, age, -1);
  }

  /** A part of such a machine did not live on. */
  void stays(String part, double age) {
    count(moved, part, age, 1);
  }

  void failed(String part, double age) {
    count(failed, part, age, 1);
  }

  /** A part is not as old as its machine. */
  void moved(String part, double from, double to) {
    count(moved, part, from, -1);
    count(moved, part, to, 1);
  }

  private static void count(
      Map<String, Map<Double, Double>> counts, String of, double age, double number) {
    counts.computeIfAbsent(of, any -> new HashMap<>()).merge(age, number, Double::sum);
  }

  LifeCounts plus(LifeCounts other) {
    return new LifeCounts(
        together(lived, other.lived), together(failed, other.failed), together(moved, other.moved));
  }

  private static Map<String, Map<Double, Double>> together(
      Map<String, Map<Double, Double>> one, Map<String, Map<Double, Double>> other) {
    return MergedMaps.of(one, other, Map.of(), MergedMaps::sums);
  }

  Map<String, PartLife> lives() {
    Map<String, PartLife> lives = new TreeMap<>();
    failed.forEach(
        (key, ages) -> {
          String kind = key.substring(0, key.indexOf('.'));
          lives.put(key, life(new Lives(ages, lasted(lived.get(kind), moved.get(key), ages))));
        });
    return lives;
  }

  private static Map<Double, Double> lasted(
      Map<Double, Double> all, Map<Double, Double> moves, Map<Double, Double> failures) {
    Map<Double, Double> lasted = new TreeMap<>(all);
    if (moves != null) {
      moves.forEach((age, number) -> lasted.merge(age, number, Double::sum));
    }
    failures.forEach((age, number) -> lasted.merge(age, -number, Double::sum));
    lasted.replaceAll((age, number) -> Math.max(0, number));
    return lasted;
  }

  private static PartLife life(Lives lives) {
    OptionalDouble median = KaplanMeier.of(lives).median();
    return new PartLife(lives.failures(), lives.all() - lives.failures(), fitted(lives), median);
  }

  private static Optional<PartLife.Fitted> fitted(Lives lives) {
    if (lives.failures() < LEAST_FITTED) {
      return Optional.empty();
    }
    WeibullFit fit;
    try {
      fit = WeibullFit.of(lives);
    } catch (IllegalArgumentException noShape) {
      return Optional.empty();
    }
    boolean enough = lives.failures() >= WeibullFit.LEAST_FAILURES;
    return Optional.of(
        new PartLife.Fitted(
            enough ? OptionalDouble.of(fit.shape()) : OptionalDouble.empty(),
            fit.shapeInterval().low(),
            fit.shapeInterval().high(),
            enough ? OptionalDouble.of(fit.scale()) : OptionalDouble.empty(),
            fit.scaleInterval().low(),
            fit.scaleInterval().high()));
  }
}
