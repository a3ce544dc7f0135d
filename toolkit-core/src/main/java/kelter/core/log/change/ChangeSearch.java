package kelter.core.log.change;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import kelter.core.log.Series;
import kelter.core.source.Source;

/**
 * Finds the changes of a column that nobody pointed at.
 *
 * <p>Cumulative sums name candidates. Between each and its neighbours the way from level to level
 * is fitted, at once or along a line, and the level after is held against the level before with the
 * drift that the level before lets expect; lengths are counted in samples, which are taken as
 * equally far apart. The candidate with the greatest chance is dropped and its neighbours are
 * judged anew, until all that are left have a chance of {@value #LEAST_SURE} at most. Which of
 * these count is for {@link FalseDiscovery} to say, over all columns together.
 */
public final class ChangeSearch {

  /** Where the sums and the lines come from. */
  public static final List<Source> SOURCES = List.of(CumulativeSum.SOURCE, Transition.SOURCE);

  private static final double LEAST_SURE = 0.05;

  /** The fewest samples between two neighbours of a candidate. */
  private static final int LEAST = 2 * CumulativeSum.LEAST;

  private final Series series;
  private final double[] values;
  private final Series.Run run;
  private final double resolution;
  private final List<Place> places = new ArrayList<>();

  private ChangeSearch(Series series, double[] means, Series.Run run, double resolution) {
    this.series = series;
    this.values = Arrays.copyOfRange(means, run.from(), run.to());
    this.run = run;
    this.resolution = resolution;
    for (int split : CumulativeSum.candidates(values, resolution / Math.sqrt(12))) {
      places.add(Place.at(split));
    }
    judge(false);
  }

  /**
   * Searches the columns of a log.
   *
   * @param columns the samples of each column
   * @param gaps the gaps of the log: no change is found across one
   * @param resolutions the step in which the samples of each column are told, 0 if it is not known
   * @return the changes of each column, in order: of all that count, no more than {@link
   *     FalseDiscovery#RATE} are there by chance
   */
  public static List<List<LevelChange>> in(
      List<Series> columns, List<Series.Break> gaps, List<Double> resolutions) {
    List<List<ChangeSearch>> searches = new ArrayList<>();
    int candidates = 0;
    for (int i = 0; i < columns.size(); i++) {
      List<ChangeSearch> ofColumn = searches(columns.get(i), gaps, resolutions.get(i));
      for (ChangeSearch search : ofColumn) {
        candidates += search.places.size();
        search.drop(LEAST_SURE, false);
        search.judge(true);
      }
      searches.add(ofColumn);
    }
    double[] chances =
        searches.stream()
            .flatMap(List::stream)
            .flatMap(search -> search.places.stream())
            .mapToDouble(place -> place.comparison().chance())
            .toArray();
    double limit = FalseDiscovery.limit(chances, candidates, FalseDiscovery.RATE);
    return searches.stream().map(ofColumn -> changes(ofColumn, limit)).toList();
  }

  private static List<ChangeSearch> searches(
      Series series, List<Series.Break> gaps, double resolution) {
    double[] means = series.means();
    List<ChangeSearch> searches = new ArrayList<>();
    for (Series.Run run : series.runs(gaps)) {
      if (run.to() - run.from() >= LEAST) {
        searches.add(new ChangeSearch(series, means, run, resolution));
      }
    }
    return searches;
  }

  private static List<LevelChange> changes(List<ChangeSearch> searches, double limit) {
    List<LevelChange> changes = new ArrayList<>();
    for (ChangeSearch search : searches) {
      search.drop(limit, true);
      search.judge(true);
      search.places.forEach(place -> changes.add(search.change(place)));
    }
    return changes;
  }

  /**
   * A possible change.
   *
   * @param split where the cumulative sums put it
   * @param before behind the last sample of the level before
   * @param after the first sample of the level after
   * @param comparison what changed, or null as long as it was not judged
   */
  private record Place(int split, int before, int after, Comparison comparison) {

    static Place at(int split) {
      return new Place(split, split, split, null);
    }
  }

  private void judge(boolean trimmed) {
    for (int i = 0; i < places.size(); i++) {
      judge(i, trimmed);
    }
  }

  /** Drops what is less sure than a limit, the least sure first, and judges its neighbours anew. */
  private void drop(double limit, boolean trimmed) {
    int worst = worst();
    while (worst >= 0 && places.get(worst).comparison().chance() > limit) {
      places.remove(worst);
      judge(worst - 1, trimmed);
      judge(worst, trimmed);
      worst = worst();
    }
  }

  private int worst() {
    int worst = -1;
    for (int i = 0; i < places.size(); i++) {
      double chance = places.get(i).comparison().chance();
      if (worst < 0 || chance > places.get(worst).comparison().chance()) {
        worst = i;
      }
    }
    return worst;
  }

  /**
   * Judges a place between its neighbours.
   *
   * @param trimmed whether the ways of the neighbours from level to level are left out
   */
  private void judge(int i, boolean trimmed) {
    if (i < 0 || i >= places.size()) {
      return;
    }
    Place place = places.get(i);
    int from = i == 0 ? 0 : after(places.get(i - 1), trimmed);
    int to = i + 1 == places.size() ? values.length : before(places.get(i + 1), trimmed);
    if (to - from >= LEAST) {
      places.set(i, judged(place.split(), from, to));
    }
  }

  private static int after(Place place, boolean trimmed) {
    return trimmed ? place.after() : place.split();
  }

  private static int before(Place place, boolean trimmed) {
    return trimmed ? place.before() : place.split();
  }

  private Place judged(int split, int from, int to) {
    double[] inside = Arrays.copyOfRange(values, from, to);
    Transition way = Transition.of(inside);
    int before = from + way.before();
    int after = from + way.after();
    int head = Math.max(before, from + CumulativeSum.LEAST);
    int tail = Math.min(after, to - CumulativeSum.LEAST);
    LocalLevel healthy = LocalLevel.of(Arrays.copyOfRange(values, from, head), head - from);
    Comparison comparison =
        Comparison.of(side(from, head), tail - head, side(tail, to), healthy, resolution);
    return new Place(split, before, after, comparison);
  }

  /** A part of the column; its length is told in samples. */
  private Comparison.Side side(int from, int to) {
    double[] inside = Arrays.copyOfRange(values, from, to);
    double mean = Arrays.stream(inside).sum() / inside.length;
    double squares = Arrays.stream(inside).map(x -> (x - mean) * (x - mean)).sum();
    double least = Arrays.stream(inside).min().orElseThrow();
    double most = Arrays.stream(inside).max().orElseThrow();
    return new Comparison.Side(
        inside.length,
        mean,
        Math.sqrt(squares / (inside.length - 1)),
        most - least,
        LocalLevel.uncertaintyOfMean(inside));
  }

  private LevelChange change(Place place) {
    int before = run.from() + place.before();
    int after = run.from() + place.after();
    double last = series.to(before - 1);
    return new LevelChange(
        series.firstRow(before),
        last,
        series.firstRow(after),
        series.from(after) - last,
        place.after() > place.before(),
        place.comparison());
  }
}
