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

  /** By the serial number the machines that have one. */
  private final Map<String, Met> met = new HashMap<>();

  /**
   * How a machine was met so far.
   *
   * @param age its age the last time that it was told, years; NaN where it never was
   * @param lives by part how old it was then, of those that were not as old as the machine
   * @param over the parts whose lives were over then: they failed or were renewed
   * @param renewed by the kind of a part the last day on which it was renewed
   */
  private record Met(
      double age, Map<String, Double> lives, Set<String> over, Map<String, LocalDate> renewed) {

    static final Met NEVER = new Met(Double.NaN, Map.of(), Set.of(), Map.of());
  }

  LifeCounts counts() {
    return counts;
  }

  /** Counts the parts of a machine, whose age must be told. */
  void add(BookEntry entry, Kind kind) {
    String serial = entry.machine().serial().isEmpty() ? "" : serial(entry);
    Met last = met.getOrDefault(serial, Met.NEVER);
    Map<String, LocalDate> renewed = renewed(last.renewed(), entry);
    Met now = new Met(last.age(), last.lives(), last.over(), renewed);
    if (entry.machine().age().isPresent()) {
      double age = tenths(entry.machine().age().getAsDouble());
      if (last.age() <= age) {
        goOn(kind, last);
      }
      counts.lived(kind.id(), age);
      Map<String, Double> lives = lives(kind, last.renewed(), age, entry.closed());
      for (ConfirmedCause cause : entry.causes()) {
        if (kind.part(cause.component()).isPresent()) {
          counts.failed(
              kind.id() + "." + cause.component(), lives.getOrDefault(cause.component(), age));
        }
      }
      now = new Met(age, lives, over(entry, kind), renewed);
    }
    if (!serial.isEmpty()) {
      met.put(serial, now);
    }
  }

  private static Map<String, LocalDate> renewed(Map<String, LocalDate> before, BookEntry entry) {
    Map<String, LocalDate> renewed = new HashMap<>(2);
    for (WorkDone work : entry.work()) {
      if (work.renews()) {
        renewed.put(work.component(), entry.closed());
      }
    }
    if (renewed.isEmpty()) {
      return before;
    }
    before.forEach(renewed::putIfAbsent);
    return Map.copyOf(renewed);
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
