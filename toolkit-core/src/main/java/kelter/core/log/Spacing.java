package kelter.core.log;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/**
 * How the samples of a log follow each other in time: the usual step, the gaps, and samples with
 * the same time. To be filled by one thread.
 */
public final class Spacing {

  /** A step so many times the usual one is a gap; common practice, no source. */
  public static final double GAP = 3;

  /** The most gaps that are held. */
  public static final int GAPS = 1000;

  /** The most steps that are held to find the usual one. */
  private static final int STEPS = 1024;

  private final double[] steps = new double[STEPS];
  private int held;
  private long every = 1;
  private long count;
  private long repeated;
  private long lastRow;
  private double lastTime = Double.NaN;
  private final PriorityQueue<Gap> longest =
      new PriorityQueue<>(Comparator.comparingDouble(Gap::seconds).thenComparing(g -> -g.row()));

  /** Nothing yet. */
  public Spacing() {}

  /**
   * A step that is much longer than the usual one.
   *
   * @param row the row of the last sample before it
   * @param time the time of that sample, in s
   * @param seconds how long the step is
   */
  public record Gap(long row, double time, double seconds) {}

  /**
   * Takes in the time of a sample.
   *
   * @param row where it stands in the log, from 1
   * @param time when, in s, not before the last one
   */
  public void add(long row, double time) {
    if (!Double.isNaN(lastTime)) {
      step(time - lastTime);
    }
    lastRow = row;
    lastTime = time;
  }

  private void step(double seconds) {
    if (seconds == 0) {
      repeated++;
    }
    if (count++ % every == 0) {
      if (held == STEPS) {
        thinOut();
      }
      steps[held++] = seconds;
    }
    if (longest.size() < GAPS || seconds > longest.peek().seconds()) {
      longest.add(new Gap(lastRow, lastTime, seconds));
      if (longest.size() > GAPS) {
        longest.remove();
      }
    }
  }

  private void thinOut() {
    held = STEPS / 2;
    for (int i = 0; i < held; i++) {
      steps[i] = steps[2 * i];
    }
    every *= 2;
  }

  /**
   * The usual step.
   *
   * @return the median, in s; 0 with fewer than two samples
   */
  public double usual() {
    return held == 0 ? 0 : ModifiedZScore.median(Arrays.copyOf(steps, held));
  }

  /**
   * How many samples have the time of the one before.
   *
   * @return the number
   */
  public long repeated() {
    return repeated;
  }

  /**
   * The gaps.
   *
   * @return the longest {@value #GAPS} at most, in the order of time
   */
  public List<Gap> gaps() {
    double limit = GAP * usual();
    return limit == 0
        ? List.of()
        : longest.stream()
            .filter(gap -> gap.seconds() > limit)
            .sorted(Comparator.comparingLong(Gap::row))
            .toList();
  }

  /**
   * The gaps as breaks.
   *
   * @return the breaks, in the order of rows
   */
  public List<Series.Break> breaks() {
    return gaps().stream().map(gap -> new Series.Break(gap.row(), gap.row() + 1)).toList();
  }
}
