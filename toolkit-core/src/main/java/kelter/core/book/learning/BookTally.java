package kelter.core.book.learning;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import kelter.core.book.learned.KindTable;
import kelter.core.book.learned.Learned;
import kelter.core.book.learned.LearnedKind;
import kelter.core.book.learned.LearnedTime;
import kelter.core.catalogue.Kind;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.learning.LogNormalTimes;
import kelter.core.diagnosis.learning.LogNormalTimes.Timed;
import kelter.core.diagnosis.learning.SpikeAndSlab;
import kelter.core.diagnosis.learning.Strength;
import kelter.core.problem.Required;

/**
 * What was counted in some entries. It names no job and no machine, and the tallies of two parts of
 * a book make the tally of both, so that many machines can learn from one book: each from a part of
 * it in which all is that {@link BookLearning#ties} ties together. In which order tallies are put
 * together, and from how many parts they come, changes figures by rounding alone.
 *
 * <p>It is serializable so that it can be sent from one machine to another of the same version.
 */
public final class BookTally implements Serializable {

  private static final long serialVersionUID = 1;

  /** A remedy usually cures; common practice, no source. */
  private static final double USUALLY_CURES = 0.85;

  /** A cured complaint comes back so often; common practice, no source. */
  private static final double USUALLY_COMES_BACK = 0.05;

  /** As many readings the usual rate of blunders counts; own choice. */
  private static final Strength.Guess BLUNDERS = new Strength.Guess(100, 0.7, 40, 1000);

  /** Of a normal distribution, for the one in twenty that is greater. */
  private static final double ONE_IN_TWENTY = 1.6448536269514722;

  /** No table is told to count as more jobs than this. */
  private static final double MOST_JOBS = 1e6;

  private final LearningRule rule;
  private final Counts counts;

  /** All that is counted. */
  record Counts(
      int jobs,
      Map<String, KindCounts> kinds,
      Map<String, Timed> work,
      Map<String, Timed> readings,
      RateTally cures,
      RateTally callBacks,
      RateTally blunders,
      LifeCounts lives,
      CalibrationTally calibration)
      implements Serializable {

    static Counts none() {
      return new Counts(
          0,
          Map.of(),
          Map.of(),
          Map.of(),
          new RateTally(),
          new RateTally(),
          new RateTally(),
          LifeCounts.none(),
          new CalibrationTally());
    }

    /** Shares nothing that changes with either. */
    Counts plus(Counts other) {
      return new Counts(
          Math.addExact(jobs, other.jobs),
          MergedMaps.of(kinds, other.kinds, KindCounts.none(), KindCounts::plus),
          MergedMaps.of(work, other.work, Timed.NONE, Timed::plus),
          MergedMaps.of(readings, other.readings, Timed.NONE, Timed::plus),
          cures.plus(other.cures),
          callBacks.plus(other.callBacks),
          blunders.plus(other.blunders),
          lives.plus(other.lives),
          calibration.plus(other.calibration));
    }
  }

  BookTally(LearningRule rule, Counts counts) {
    this.rule = rule;
    this.counts = counts;
  }

  /**
   * The tally of no entry.
   *
   * @param rule how entries count
   * @return nothing was counted
   */
  public static BookTally none(LearningRule rule) {
    return new BookTally(Required.value(rule, "rule of learning"), Counts.none());
  }

  /**
   * How many entries were counted.
   *
   * @return the number
   */
  public int jobs() {
    return counts.jobs();
  }

  /**
   * The tally of two parts of a book.
   *
   * @param other the tally of other entries, none of which is tied to one of these
   * @return what was counted in both
   * @throws IllegalArgumentException if the other entries were counted by another rule
   * @throws ArithmeticException if both have more than 2,147,483,647 jobs
   */
  public BookTally plus(BookTally other) {
    if (!rule.equals(other.rule)) {
      throw new IllegalArgumentException(
          "counted by %s and by %s; count all parts of a book by one rule"
              .formatted(rule, other.rule));
    }
    return new BookTally(rule, counts.plus(other.counts));
  }

  /**
   * What the counts teach.
   *
   * @param kindOf the same tables of kinds of machines as when they were counted
   * @return figures of all that was counted
   * @throws IllegalArgumentException if one of the kinds that were counted is not there any more
   */
  public Learned learned(Function<String, Optional<Kind>> kindOf) {
    List<KindTally> known = known(kindOf);
    List<Strength.Sample> samples = known.stream().map(KindTally::sample).toList();
    SpikeAndSlab tables = SpikeAndSlab.of(samples, LearningRule.RIGHT, LearningRule.SHARES);
    double chanceStrength =
        Strength.of(
            known.stream()
                .flatMap(kind -> kind.cells().stream())
                .map(SymptomTally.Cell::sample)
                .toList(),
            LearningRule.CHANCES);
    List<Strength.Sample> groups = new ArrayList<>();
    for (int i = 0; i < known.size(); i++) {
      KindTally kind = known.get(i);
      groups.addAll(kind.groupSamples(kind.shares(tables.weight(i))));
    }
    double groupStrength = Strength.of(groups, LearningRule.GROUPS);
    Map<String, LearnedKind> ofKinds = new TreeMap<>();
    for (int i = 0; i < known.size(); i++) {
      KindTally kind = known.get(i);
      ofKinds.put(
          kind.table().kind().id(), kind.learned(tables.weight(i), chanceStrength, groupStrength));
    }
    return new Learned(
        rule.asOf(),
        counts.jobs(),
        rule.keptPerYear(),
        strength(samples, tables),
        chanceStrength,
        ofKinds,
        times(counts.work()),
        times(counts.readings()),
        counts.cures().about(USUALLY_CURES),
        counts.callBacks().about(USUALLY_COMES_BACK),
        counts.blunders().about(EngineSettings.USUAL.blunder(), BLUNDERS),
        counts.lives().lives(),
        counts.calibration().calibration());
  }

  /** As how many jobs the tables count, from {@code w = N / (N + s)} over all kinds together. */
  private static double strength(List<Strength.Sample> samples, SpikeAndSlab tables) {
    double jobs = 0;
    double weights = 0;
    for (int i = 0; i < samples.size(); i++) {
      jobs += samples.get(i).number() * (1 - tables.weight(i));
      weights += tables.weight(i);
    }
    if (samples.isEmpty()) {
      return LearningRule.SHARES.usual();
    }
    return jobs < MOST_JOBS * weights ? jobs / weights : MOST_JOBS;
  }

  private List<KindTally> known(Function<String, Optional<Kind>> kindOf) {
    List<KindTally> known = new ArrayList<>();
    counts
        .kinds()
        .forEach(
            (id, each) -> {
              if (each.all().jobs() > 0) {
                known.add(new KindTally(new KindTable(kind(id, kindOf)), each));
              }
            });
    return known;
  }

  private static Kind kind(String id, Function<String, Optional<Kind>> kindOf) {
    return kindOf
        .apply(id)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "jobs of the kind '" + id + "' were counted, and there is no such kind"));
  }

  private static Map<String, LearnedTime> times(Map<String, Timed> timed) {
    Map<String, LearnedTime> times = new TreeMap<>();
    LogNormalTimes.of(timed)
        .forEach(
            (key, each) ->
                times.put(
                    key,
                    new LearnedTime(
                        each.number(),
                        each.weight(),
                        each.median(),
                        each.mean(),
                        each.median() * Math.exp(ONE_IN_TWENTY * each.sdLog()))));
    return times;
  }
}
