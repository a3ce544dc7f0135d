package kelter.core.book.learning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import kelter.core.book.BookEntry;
import kelter.core.book.ConfirmedCause;
import kelter.core.book.Outcome;
import kelter.core.book.ReadingTaken;
import kelter.core.book.WorkDone;
import kelter.core.book.learned.KindTable;
import kelter.core.book.learned.Learned;
import kelter.core.catalogue.Kind;
import kelter.core.diagnosis.learning.LogNormalTimes.Timed;
import kelter.core.problem.Required;

/**
 * Learns from the entries of a book, which are given in the order of their closing and not kept.
 */
public final class BookLearning {

  private final Function<String, Optional<Kind>> kindOf;
  private final LearningRule rule;
  private final Map<String, Optional<KindTally>> kinds = new HashMap<>();
  private final Map<String, Timed> work = new HashMap<>();
  private final Map<String, Timed> readings = new HashMap<>();
  private final RateTally cures = new RateTally();
  private final RateTally blunders = new RateTally();
  private final LifeTally lives = new LifeTally();
  private final CalibrationTally calibration = new CalibrationTally();

  /** By a job the job that its complaint came up with first. */
  private final Map<String, String> firstOf = new HashMap<>();

  /** By such a first job the causes that were confirmed since. */
  private final Map<String, Set<String>> taughtBy = new HashMap<>();

  /** Each of these sets once. */
  private final Map<Set<String>, Set<String>> sets = new HashMap<>();

  /** By a cured job, its kind and whether its complaint came back. */
  private final Map<String, CuredJob> cured = new LinkedHashMap<>();

  private int jobs;

  private record CuredJob(String kind, double weight, boolean cameBack) {}

  private BookLearning(Function<String, Optional<Kind>> kindOf, LearningRule rule) {
    this.kindOf = Required.value(kindOf, "kinds of machines");
    this.rule = Required.value(rule, "rule of learning");
  }

  /**
   * Begins to learn.
   *
   * @param kindOf the tables of kinds of machines by their ids
   * @param rule how entries count
   * @return what takes entries, one after the other
   */
  public static BookLearning begin(Function<String, Optional<Kind>> kindOf, LearningRule rule) {
    return new BookLearning(kindOf, rule);
  }

  /**
   * Learns from some entries.
   *
   * @param entries each job once, in the order of their closing
   * @param kindOf the tables of kinds of machines by their ids
   * @param rule how entries count
   * @return what they teach
   */
  public static Learned of(
      Iterable<BookEntry> entries, Function<String, Optional<Kind>> kindOf, LearningRule rule) {
    BookLearning learning = begin(kindOf, rule);
    entries.forEach(learning::read);
    return learning.learned();
  }

  /**
   * Takes the next entry.
   *
   * @param entry an entry that was closed on the day of the one before or later; one of a day that
   *     is not learned for yet is left out
   */
  public void read(BookEntry entry) {
    if (entry.closed().isAfter(rule.asOf())) {
      return;
    }
    jobs++;
    double weight = rule.weight(entry.closed());
    String first =
        entry.callBackOf().map(before -> firstOf.getOrDefault(before, before)).orElse(entry.job());
    if (!first.equals(entry.job())) {
      firstOf.put(entry.job(), first);
    }
    Optional<KindTally> kind = kind(entry.machine().kind());
    if (kind.isPresent()) {
      Set<String> taught = taughtBy.getOrDefault(first, Set.of());
      boolean isRepeated =
          !entry.causes().isEmpty()
              && !taught.isEmpty()
              && entry.causes().stream().allMatch(cause -> taught.contains(cause.key()));
      kind.get().add(entry, first, taught, weight);
      if (!isRepeated) {
        lives.add(entry, kind.get().table().kind());
      }
    }
    taught(first, entry.causes());
    calibration.add(entry);
    times(entry, weight);
    comesBack(entry, weight);
  }

  /** Kept in little room: there is one set for nearly every job, and few that differ. */
  private void taught(String first, List<ConfirmedCause> causes) {
    if (causes.isEmpty()) {
      return;
    }
    Set<String> taught = new HashSet<>(taughtBy.getOrDefault(first, Set.of()));
    causes.forEach(cause -> taught.add(cause.key()));
    taughtBy.put(first, sets.computeIfAbsent(taught, Set::copyOf));
  }

  private Optional<KindTally> kind(String id) {
    return kinds.computeIfAbsent(
        id, any -> kindOf.apply(id).map(kind -> new KindTally(new KindTable(kind))));
  }

  private void times(BookEntry entry, double weight) {
    for (WorkDone each : entry.work()) {
      if (each.minutes().isPresent() && each.minutes().getAsDouble() > 0) {
        timed(work, each.key(), each.minutes().getAsDouble(), weight);
      }
      if (each.cured().isPresent()) {
        cures.add(each.key(), each.cured().get(), weight);
      }
    }
    for (ReadingTaken each : entry.readings()) {
      if (each.minutes().isPresent() && each.minutes().getAsDouble() > 0) {
        timed(readings, each.key(), each.minutes().getAsDouble(), weight);
      }
      if (!each.instrument().isEmpty()) {
        blunders.add(each.instrument(), each.misled(), weight);
      }
    }
  }

  private static void timed(Map<String, Timed> times, String of, double minutes, double weight) {
    times.put(of, times.getOrDefault(of, Timed.NONE).and(minutes, weight));
  }

  private void comesBack(BookEntry entry, double weight) {
    entry
        .callBackOf()
        .ifPresent(
            before ->
                cured.computeIfPresent(
                    before, (job, was) -> new CuredJob(was.kind(), was.weight(), true)));
    boolean hadItsTime =
        !entry.closed().plusDays(LearningRule.DAYS_TO_COME_BACK).isAfter(rule.asOf());
    if (entry.outcome() == Outcome.CURED && hadItsTime) {
      cured.put(entry.job(), new CuredJob(entry.machine().kind(), weight, false));
    }
  }

  /**
   * What the entries so far teach.
   *
   * @return figures of all that was in them
   */
  public Learned learned() {
    return tally().learned(kindOf);
  }

  /**
   * What was counted in the entries so far.
   *
   * @return counts that stay as they are when more entries are read
   */
  public BookTally tally() {
    Map<String, KindCounts> counts = new TreeMap<>();
    kinds.forEach((id, each) -> each.ifPresent(kind -> counts.put(id, kind.counts())));
    RateTally callBacks = new RateTally();
    for (CuredJob each : cured.values()) {
      callBacks.add(each.kind(), each.cameBack(), each.weight());
    }
    BookTally.Counts read =
        new BookTally.Counts(
            jobs, counts, work, readings, cures, callBacks, blunders, lives.counts(), calibration);
    return new BookTally(rule, BookTally.Counts.none().plus(read));
  }

  /**
   * What an entry is tied to others by: its complaint came up again, or its machine was met again.
   * Entries of which two share one of these teach together; those that are not tied, not even by
   * others between them, can be learned from apart.
   *
   * @param entry an entry
   * @return words that stand for its job, for the job that it is a call-back of, and for its
   *     machine if the serial number is told
   */
  public static List<String> ties(BookEntry entry) {
    List<String> ties = new ArrayList<>(List.of("job " + entry.job()));
    entry.callBackOf().ifPresent(before -> ties.add("job " + before));
    if (!entry.machine().serial().isEmpty()) {
      ties.add("machine " + LifeTally.serial(entry));
    }
    return ties;
  }
}
