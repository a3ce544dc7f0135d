package kelter.core.book.learning;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import kelter.core.book.BookEntry;
import kelter.core.book.ConfirmedCause;
import kelter.core.book.WorkDone;
import kelter.core.catalogue.Kind;
import kelter.core.catalogue.KindPart;

/**
 * At which ages parts of machines failed, and how old they were where they had not. A part that was
 * renewed before, in a machine whose serial number is told, is as old as that work.
 */
final class LifeTally {

  /** Ages are counted in tenths of a year. */
  private static final double PER_YEAR = 10;

  private static final double LEAST_AGE = 0.05;

  private final LifeCounts counts = LifeCounts.none();
  private final Map<String, Map<String, LocalDate>> renewed = new HashMap<>();

  LifeCounts counts() {
    return counts;
  }

  /** Counts the parts of a machine, whose age must be told. */
  void add(BookEntry entry, Kind kind) {
    String serial = entry.machine().serial().isEmpty() ? "" : serial(entry);
    Map<String, LocalDate> before = serial.isEmpty() ? Map.of() : renewedIn(serial);
    if (entry.machine().age().isPresent()) {
      double age = tenths(entry.machine().age().getAsDouble());
      counts.lived(kind.id(), age);
      Map<String, Double> lives = lives(kind, before, age, entry.closed());
      for (ConfirmedCause cause : entry.causes()) {
        if (kind.part(cause.component()).isPresent()) {
          counts.failed(
              kind.id() + "." + cause.component(), lives.getOrDefault(cause.component(), age));
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
        counts.moved(kind.id() + "." + part.id(), age, life);
      }
    }
    return lives;
  }

  /** The same for all entries of one machine. */
  static String serial(BookEntry entry) {
    return entry.machine().kind()
        + " "
        + entry.machine().sameModel()
        + " "
        + entry.machine().serial();
  }

  private static double tenths(double years) {
    return Math.max(LEAST_AGE, Math.round(years * PER_YEAR) / PER_YEAR);
  }
}
