package kelter.core.book.learning;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import kelter.core.book.BookEntry;
import kelter.core.book.ConfirmedCause;
import kelter.core.book.WorkDone;
import kelter.core.book.learned.PartLife;
import kelter.core.catalogue.Kind;
import kelter.core.catalogue.KindPart;
import kelter.core.diagnosis.learning.KaplanMeier;
import kelter.core.diagnosis.learning.Lives;
import kelter.core.diagnosis.learning.WeibullFit;

/**
 * At which ages parts of machines failed, and how old they were where they had not. A part that was
 * renewed before, in a machine whose serial number is told, is as old as that work.
 */
final class LifeTally {

  /** Ages are counted in tenths of a year. */
  private static final double PER_YEAR = 10;

  private static final double LEAST_AGE = 0.05;

  /** With fewer failures no life is fitted. */
  private static final double LEAST_FITTED = 2;

  private final Map<String, Map<Double, Double>> machines = new HashMap<>();
  private final Map<String, Map<Double, Double>> failed = new TreeMap<>();
  private final Map<String, Map<Double, Double>> moved = new HashMap<>();
  private final Map<String, Map<String, LocalDate>> renewed = new HashMap<>();

  /** Counts the parts of a machine, whose age must be told. */
  void add(BookEntry entry, Kind kind) {
    String serial = entry.machine().serial().isEmpty() ? "" : serial(entry);
    Map<String, LocalDate> before = serial.isEmpty() ? Map.of() : renewedIn(serial);
    if (entry.machine().age().isPresent()) {
      double age = tenths(entry.machine().age().getAsDouble());
      machines.computeIfAbsent(kind.id(), any -> new TreeMap<>()).merge(age, 1.0, Double::sum);
      Map<String, Double> lives = lives(kind, before, age, entry.closed());
      for (ConfirmedCause cause : entry.causes()) {
        if (kind.part(cause.component()).isPresent()) {
          failed
              .computeIfAbsent(kind.id() + "." + cause.component(), any -> new TreeMap<>())
              .merge(lives.getOrDefault(cause.component(), age), 1.0, Double::sum);
        }
      }
    }
    for (WorkDone work : entry.work()) {
      if (work.renews() && !serial.isEmpty()) {
        renewed
            .computeIfAbsent(serial, any -> new HashMap<>(2))
            .put(work.component(), entry.closed());
      }
    }
  }

  private Map<String, LocalDate> renewedIn(String serial) {
    return renewed.getOrDefault(serial, Map.of());
  }

  /** By part how old it is, of those that were renewed before; they are not as old as the rest. */
  private Map<String, Double> lives(
      Kind kind, Map<String, LocalDate> before, double age, LocalDate closed) {
    if (before.isEmpty()) {
      return Map.of();
    }
    Map<String, Double> lives = new HashMap<>();
    for (KindPart part : kind.parts()) {
      LocalDate since = before.get(part.kind());
      if (since != null) {
        double life = Math.min(age, tenths(LearningRule.years(since, closed)));
        lives.put(part.id(), life);
        Map<Double, Double> ofPart =
            moved.computeIfAbsent(kind.id() + "." + part.id(), any -> new TreeMap<>());
        ofPart.merge(age, -1.0, Double::sum);
        ofPart.merge(life, 1.0, Double::sum);
      }
    }
    return lives;
  }

  private static String serial(BookEntry entry) {
    return entry.machine().kind()
        + " "
        + entry.machine().sameModel()
        + " "
        + entry.machine().serial();
  }

  private static double tenths(double years) {
    return Math.max(LEAST_AGE, Math.round(years * PER_YEAR) / PER_YEAR);
  }

  Map<String, PartLife> lives() {
    Map<String, PartLife> lives = new TreeMap<>();
    failed.forEach(
        (key, ages) -> {
          String kind = key.substring(0, key.indexOf('.'));
          lives.put(key, life(new Lives(ages, lasted(machines.get(kind), moved.get(key), ages))));
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
