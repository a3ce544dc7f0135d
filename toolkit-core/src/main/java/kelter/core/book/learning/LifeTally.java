package kelter.core.book.learning;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import kelter.core.book.BookEntry;
import kelter.core.book.ConfirmedCause;
import kelter.core.book.WorkDone;
import kelter.core.catalogue.Kind;
import kelter.core.catalogue.KindPart;

/**
 * At which ages parts of machines failed, and how old they were where they had not. A part that was
 * renewed before, in a machine whose serial number is told, is as old as that work, and where such
 * a machine comes again, a part that went on counts once, with its age at the last time.
 */
final class LifeTally {

  /** Ages are counted in tenths of a year. */
  private static final double PER_YEAR = 10;

  private static final double LEAST_AGE = 0.05;

  private final LifeCounts counts = LifeCounts.none();
  private final Map<String, Map<String, LocalDate>> renewed = new HashMap<>();
  private final Map<String, Met> met = new HashMap<>();

  /**
   * How a machine was met the last time.
   *
   * @param age its age, years
   * @param lives by part how old it was, of those that were not as old as the machine
   * @param over the parts whose lives were over: they failed or were renewed
   */
  private record Met(double age, Map<String, Double> lives, Set<String> over) {}

  LifeCounts counts() {
    return counts;
  }

  /** Counts the parts of a machine, whose age must be told. */
  void add(BookEntry entry, Kind kind) {
    String serial = entry.machine().serial().isEmpty() ? "" : serial(entry);
    Map<String, LocalDate> before = serial.isEmpty() ? Map.of() : renewedIn(serial);
    if (entry.machine().age().isPresent()) {
      double age = tenths(entry.machine().age().getAsDouble());
      Met last = met.get(serial);
      if (last != null && last.age() <= age) {
        goOn(kind, last);
      }
      counts.lived(kind.id(), age);
      Map<String, Double> lives = lives(kind, before, age, entry.closed());
      for (ConfirmedCause cause : entry.causes()) {
        if (kind.part(cause.component()).isPresent()) {
          counts.failed(
              kind.id() + "." + cause.component(), lives.getOrDefault(cause.component(), age));
        }
      }
      if (!serial.isEmpty()) {
        met.put(serial, new Met(age, lives, over(entry, kind)));
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

  /** Takes back what was counted the last time, but for lives that were over. */
  private void goOn(Kind kind, Met last) {
    counts.livesOn(kind.id(), last.age());
    for (String part : last.over()) {
      counts.stays(kind.id() + "." + part, last.age());
    }
    last.lives()
        .forEach(
            (part, life) -> {
              if (!last.over().contains(part)) {
                counts.moved(kind.id() + "." + part, life, last.age());
              }
            });
  }

  private static Set<String> over(BookEntry entry, Kind kind) {
    Set<String> over = new HashSet<>(2);
    for (ConfirmedCause cause : entry.causes()) {
      if (kind.part(cause.component()).isPresent()) {
        over.add(cause.component());
      }
    }
    for (WorkDone work : entry.work()) {
      for (KindPart part : work.renews() ? kind.parts() : List.<KindPart>of()) {
        if (part.kind().equals(work.component())) {
          over.add(part.id());
        }
      }
    }
    return Set.copyOf(over);
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
