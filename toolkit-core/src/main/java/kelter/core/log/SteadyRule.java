package kelter.core.log;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import kelter.core.source.Source;

/**
 * When a column of a log counts as standing still: over enough samples it stays within a band about
 * its middle, and its trend takes it no farther than half the width of the band.
 *
 * <p>The half-width of the band is the greatest of the tolerance times the value in the middle, of
 * four standard deviations of the noise from sample to sample, and of {@value #RESOLUTION_BAND}
 * steps of the samples. A sample or two that stand out from their neighbours do not end a window:
 * they are told as outliers, and stay in its mean. More than that are a level of their own, which
 * is no outlier.
 *
 * @param tolerance the half-width of the band as a ratio of the value, above 0 and below 1
 * @param leastSamples the fewest samples, or blocks of samples, of a window; 5 or more
 */
public record SteadyRule(double tolerance, int leastSamples) {

  /** 1 % over 20 samples. */
  public static final SteadyRule USUAL = new SteadyRule(0.01, 20);

  /** Where the figures come from. */
  public static final Source SOURCE =
      Source.commonPractice("band and length of a window that counts as steady");

  /** The most windows that are told of a column. */
  public static final int WINDOWS = 50;

  private static final double NOISE_BAND = 4;
  private static final double RESOLUTION_BAND = 2;
  private static final int NEIGHBOURS = 3;
  private static final double EDGE = 3;
  private static final double TRIM = 0.1;

  /** More outliers than this share of the samples are none; common practice, no source. */
  private static final double FEW = 0.05;

  /**
   * Checks the figures.
   *
   * @throws IllegalArgumentException if one is out of its range
   */
  public SteadyRule {
    if (!(tolerance > 0 && tolerance < 1)) {
      throw new IllegalArgumentException(
          "a tolerance of " + tolerance + "; above 0 and below 1 is allowed");
    }
    if (leastSamples < 5) {
      throw new IllegalArgumentException(
          "a window of " + leastSamples + " samples; 5 or more are allowed");
    }
  }

  /**
   * A sample that stands out.
   *
   * @param row where it stands in the log
   * @param time when, in s
   * @param value its value
   * @param score its modified z-score, see {@link ModifiedZScore}
   */
  public record Outlier(long row, double time, double value, double score) {}

  /**
   * A steady window.
   *
   * @param window what it is worth
   * @param band the half-width of the band in which it stays
   * @param outliers samples that stand out, farthest first; of a block only its extremes are known
   */
  public record Steady(Window window, double band, List<Outlier> outliers) {

    public Steady {
      outliers = List.copyOf(outliers);
    }
  }

  /**
   * Finds the steady windows of a column.
   *
   * @param series the samples
   * @param breaks gaps of the log and changes of the column: no window spans one
   * @param resolution the step in which the samples are told, 0 if it is not known
   * @return the windows, the {@value #WINDOWS} longest at most, in the order of time
   */
  public List<Steady> windows(Series series, List<Series.Break> breaks, double resolution) {
    List<Block> blocks = series.blocks();
    List<Steady> found = new ArrayList<>();
    for (Series.Run run : series.runs(breaks)) {
      stretch(blocks.subList(run.from(), run.to()), resolution, found);
    }
    return found.stream()
        .sorted(Comparator.comparingDouble(steady -> -steady.window().seconds()))
        .limit(WINDOWS)
        .sorted(Comparator.comparingLong(steady -> steady.window().firstRow()))
        .toList();
  }

  private void stretch(List<Block> blocks, double resolution, List<Steady> found) {
    if (blocks.size() < leastSamples) {
      return;
    }
    double[] values = blocks.stream().mapToDouble(block -> block.mean).toArray();
    double floor = Math.max(NOISE_BAND * noise(values), RESOLUTION_BAND * resolution);
    new Search(this, blocks, withoutSpikes(values), floor, resolution, found)
        .between(0, values.length);
  }

  /** The standard deviation from sample to sample, by the median of the differences. */
  private static double noise(double[] values) {
    double[] differences = new double[values.length - 1];
    for (int i = 0; i < differences.length; i++) {
      differences[i] = values[i + 1] - values[i];
    }
    return ModifiedZScore.scale(differences) / Math.sqrt(2);
  }

  /** Each value that stands out from its neighbours replaced by their median. */
  private static double[] withoutSpikes(double[] values) {
    double[] smooth = values.clone();
    for (int i = 0; i < values.length; i++) {
      int from = Math.max(0, Math.min(i - NEIGHBOURS, values.length - 2 * NEIGHBOURS - 1));
      int to = Math.min(values.length, from + 2 * NEIGHBOURS + 1);
      double[] near = new double[to - from];
      System.arraycopy(values, from, near, 0, near.length);
      double middle = ModifiedZScore.median(near);
      if (Math.abs(values[i] - middle) > ModifiedZScore.LIMIT * ModifiedZScore.scale(near)) {
        smooth[i] = middle;
      }
    }
    return smooth;
  }

  /** The search for the longest windows, one after another, in a stretch without gaps. */
  private record Search(
      SteadyRule rule,
      List<Block> blocks,
      double[] values,
      double floor,
      double resolution,
      List<Steady> found) {

    /** Finds the longest window between two places, then those to the left and right of it. */
    void between(int from, int to) {
      List<int[]> open = new ArrayList<>(List.of(new int[] {from, to}));
      while (!open.isEmpty()) {
        int[] range = open.remove(open.size() - 1);
        int[] longest = longest(range[0], range[1]);
        if (longest[1] - longest[0] < rule.leastSamples) {
          continue;
        }
        int[] kept = trimmed(longest);
        if (kept[1] - kept[0] >= rule.leastSamples) {
          found.add(steady(kept[0], kept[1]));
          open.add(new int[] {range[0], kept[0]});
          open.add(new int[] {kept[1], range[1]});
        } else {
          open.add(new int[] {range[0], longest[0]});
          open.add(new int[] {longest[1], range[1]});
        }
      }
    }

    /** The longest run whose values stay within the band, by two places that only move forward. */
    private int[] longest(int from, int to) {
      int[] rising = new int[to - from];
      int[] falling = new int[to - from];
      int leastAt = 0;
      int leastEnd = 0;
      int mostAt = 0;
      int mostEnd = 0;
      int start = from;
      int[] best = {from, from};
      for (int i = from; i < to; i++) {
        while (leastEnd > leastAt && values[rising[leastEnd - 1]] >= values[i]) {
          leastEnd--;
        }
        rising[leastEnd++] = i;
        while (mostEnd > mostAt && values[falling[mostEnd - 1]] <= values[i]) {
          mostEnd--;
        }
        falling[mostEnd++] = i;
        while (values[falling[mostAt]] - values[rising[leastAt]]
            > 2 * band((values[falling[mostAt]] + values[rising[leastAt]]) / 2)) {
          start++;
          leastAt += rising[leastAt] < start ? 1 : 0;
          mostAt += falling[mostAt] < start ? 1 : 0;
        }
        if (i + 1 - start > best[1] - best[0]) {
          best = new int[] {start, i + 1};
        }
      }
      return best;
    }

    private double band(double level) {
      return Math.max(floor, rule.tolerance * Math.abs(level));
    }

    /** A run without what leads into it and out of it; too short if it is nothing but a trend. */
    private int[] trimmed(int[] run) {
      int from = run[0];
      int to = run[1];
      while (to - from >= rule.leastSamples) {
        double[] inside = new double[to - from];
        System.arraycopy(values, from, inside, 0, inside.length);
        double middle = ModifiedZScore.median(inside);
        double edge = Math.max(EDGE * ModifiedZScore.scale(inside), resolution);
        int step = Math.max(1, (int) (TRIM * (to - from)));
        double first = Math.abs(values[from] - middle);
        double last = Math.abs(values[to - 1] - middle);
        if (first > edge || last > edge) {
          from += first > edge ? 1 : 0;
          to -= last > edge ? 1 : 0;
        } else if (drift(from, to) > band(middle)) {
          double head = Math.abs(mean(from, from + step) - middle);
          double tail = Math.abs(mean(to - step, to) - middle);
          from += head >= tail ? step : 0;
          to -= head >= tail ? 0 : step;
        } else {
          break;
        }
      }
      return new int[] {from, to};
    }

    private double mean(int from, int to) {
      double sum = 0;
      for (int i = from; i < to; i++) {
        sum += values[i];
      }
      return sum / (to - from);
    }

    /** How far the trend by least squares goes from the first value to the last. */
    private double drift(int from, int to) {
      double middle = (from + to - 1) / 2.0;
      double mean = mean(from, to);
      double products = 0;
      double squares = 0;
      for (int i = from; i < to; i++) {
        products += (i - middle) * (values[i] - mean);
        squares += (i - middle) * (i - middle);
      }
      return Math.abs(products / squares) * (to - from - 1);
    }

    private Steady steady(int from, int to) {
      List<Block> inside = blocks.subList(from, to);
      Window window = Window.of(inside);
      double[] means = inside.stream().mapToDouble(block -> block.mean).toArray();
      double middle = ModifiedZScore.median(means);
      return new Steady(window, band(middle), outliers(inside, middle, means));
    }

    /**
     * The samples that stand out. Where more than a few do, they are part of how the column
     * scatters, in steps for instance, and the mean deviation is its scale.
     */
    private List<Outlier> outliers(List<Block> inside, double middle, double[] means) {
      long samples = inside.stream().mapToLong(block -> block.count).sum();
      double scale = scale(inside, ModifiedZScore.scale(means));
      List<Outlier> outliers = outliers(inside, middle, scale, samples);
      if (outliers.size() <= FEW * samples) {
        return outliers;
      }
      double wider = scale(inside, ModifiedZScore.scaleByMean(means));
      return outliers(inside, middle, Math.max(scale, wider), samples);
    }

    /**
     * The scale of single samples: within blocks where there are blocks. A display in digits shows
     * a median deviation that may be too small by half a digit.
     */
    private double scale(List<Block> inside, double ofMeans) {
      double between = ofMeans + resolution / 2 / ModifiedZScore.QUARTILE;
      double[] within = inside.stream().mapToDouble(Block::standardDeviation).toArray();
      return Math.hypot(between, ModifiedZScore.median(within));
    }

    private List<Outlier> outliers(List<Block> inside, double middle, double scale, long samples) {
      double limit = scale * ModifiedZScore.limit(samples);
      List<Outlier> outliers = new ArrayList<>();
      int start = 0;
      while (start < inside.size()) {
        int end = start;
        while (end < inside.size() && farthest(inside.get(end), middle) > limit) {
          end++;
        }
        if (end - start <= NEIGHBOURS) {
          inside.subList(start, end).forEach(block -> note(block, middle, scale, limit, outliers));
        }
        start = Math.max(end, start + 1);
      }
      outliers.sort(
          Comparator.<Outlier>comparingDouble(outlier -> -Math.abs(outlier.score()))
              .thenComparingLong(Outlier::row));
      return outliers;
    }

    private static double farthest(Block block, double middle) {
      return Math.max(block.most.value() - middle, middle - block.least.value());
    }

    private static void note(
        Block block, double middle, double scale, double limit, List<Outlier> outliers) {
      if (block.most.value() - middle > limit) {
        outliers.add(outlier(block.most, middle, scale));
      }
      if (middle - block.least.value() > limit) {
        outliers.add(outlier(block.least, middle, scale));
      }
    }

    private static Outlier outlier(Block.Sample sample, double middle, double scale) {
      double score = (sample.value() - middle) / scale;
      return new Outlier(sample.row(), sample.time(), sample.value(), score);
    }
  }
}
