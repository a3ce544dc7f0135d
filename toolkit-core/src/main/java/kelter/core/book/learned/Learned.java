package kelter.core.book.learned;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import kelter.core.problem.Required;

/**
 * All that was learned from a book.
 *
 * @param asOf the day for which was learned
 * @param jobs how many entries were read
 * @param keptPerYear what a job still counts for after each year
 * @param strength as how many jobs a table of shares counts on average, estimated from the book; by
 *     kind it follows from the weight of its jobs
 * @param chanceStrength as how many answers a chance of a table counts, likewise
 * @param kinds by kind of machine what is behind calls
 * @param work by {@code component-kind.remedy} how long it takes, minutes
 * @param readings by {@code component-kind.observable} how long it takes, minutes
 * @param cures by {@code component-kind.remedy} how often it cures
 * @param callBacks by kind of machine how often a cured complaint comes back
 * @param blunders by instrument how often a reading misled
 * @param lives by {@code kind.part} how long it lasts
 * @param calibration how the shop's predictions held; empty if no entry has any
 */
public record Learned(
    LocalDate asOf,
    int jobs,
    double keptPerYear,
    double strength,
    double chanceStrength,
    Map<String, LearnedKind> kinds,
    Map<String, LearnedTime> work,
    Map<String, LearnedTime> readings,
    Map<String, LearnedRate> cures,
    Map<String, LearnedRate> callBacks,
    Map<String, LearnedRate> blunders,
    Map<String, PartLife> lives,
    Optional<Calibration> calibration) {

  /** Copies the maps, order kept. */
  public Learned {
    Required.value(asOf, "day of learning");
    kinds = Required.map(kinds, "kinds");
    work = Required.map(work, "work");
    readings = Required.map(readings, "readings");
    cures = Required.map(cures, "cures");
    callBacks = Required.map(callBacks, "call-backs");
    blunders = Required.map(blunders, "blunders");
    lives = Required.map(lives, "lives");
    Required.optional(calibration, "calibration");
  }
}
