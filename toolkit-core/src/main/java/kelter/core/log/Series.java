package kelter.core.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The samples of one column of a log, taken in as they come and held in little room: up to {@value
 * #BLOCKS} of them one by one, beyond that in blocks of twice, four times, eight times as many.
 * Means, standard deviations and trends stay exact; the ends of a window are exact to a block.
 *
 * <p>To be filled by one thread.
 */
public final class Series {

  /** The most blocks that are held. */
  public static final int BLOCKS = 4096;

  private final List<Block> blocks = new ArrayList<>();
  private final Quantisation quantisation = new Quantisation();
  private long perBlock = 1;

  /** A series without samples. */
  public Series() {}

  /**
   * Takes in a sample.
   *
   * @param row where it stands in the log, from 1
   * @param time when, in s, not before the last one
   * @param value the value, in the unit of the column
   * @throws IllegalArgumentException if a figure is not finite, or the time goes backwards
   */
  public void add(long row, double time, double value) {
    if (!Double.isFinite(time) || !Double.isFinite(value)) {
      throw new IllegalArgumentException(
          "row %s: time %s s and value %s; finite figures are allowed".formatted(row, time, value));
    }
    Block last = blocks.isEmpty() ? null : blocks.get(blocks.size() - 1);
    if (last != null && time < last.last.time()) {
      throw new IllegalArgumentException(
          "row %s: time %s s after %s s; times do not go backwards"
              .formatted(row, time, last.last.time()));
    }
    quantisation.add(value);
    put(row, time, value);
  }

  private void put(long row, double time, double value) {
    Block last = blocks.isEmpty() ? null : blocks.get(blocks.size() - 1);
    if (last != null && last.count < perBlock) {
      last.add(row, time, value);
      return;
    }
    if (blocks.size() == BLOCKS) {
      halve();
      put(row, time, value);
      return;
    }
    blocks.add(new Block(row, time, value));
  }

  private void halve() {
    List<Block> pairs = new ArrayList<>(BLOCKS);
    for (int i = 0; i < blocks.size(); i += 2) {
      Block pair = blocks.get(i);
      if (i + 1 < blocks.size()) {
        pair.append(blocks.get(i + 1));
      }
      pairs.add(pair);
    }
    blocks.clear();
    blocks.addAll(pairs);
    perBlock *= 2;
  }

  /**
   * How many samples there are.
   *
   * @return the number
   */
  public long count() {
    return blocks.stream().mapToLong(block -> block.count).sum();
  }

  /**
   * How many samples there are between two times.
   *
   * @param from the first time, in s
   * @param to the last time, in s
   * @return the number, of blocks those that reach into the time
   */
  public long count(double from, double to) {
    return blocks.stream()
        .filter(block -> block.last.time() >= from && block.first.time() <= to)
        .mapToLong(block -> block.count)
        .sum();
  }

  /**
   * How many samples a block holds.
   *
   * @return 1 as long as every sample is held by itself
   */
  public long perBlock() {
    return perBlock;
  }

  /**
   * All samples as one window.
   *
   * @return the window; empty if there are fewer than two samples
   */
  public Optional<Window> whole() {
    return blocks.size() < 2 ? Optional.empty() : Optional.of(Window.of(blocks));
  }

  /**
   * The samples between two times as a window.
   *
   * @param from the first time, in s
   * @param to the last time, in s
   * @return the blocks that lie wholly between; empty if there are fewer than two
   */
  public Optional<Window> between(double from, double to) {
    List<Block> inside =
        blocks.stream()
            .filter(block -> block.first.time() >= from && block.last.time() <= to)
            .toList();
    return inside.size() < 2 ? Optional.empty() : Optional.of(Window.of(inside));
  }

  /**
   * What the column looks like: the least and the greatest value in so many equal parts of its
   * time.
   *
   * @param parts how many parts, 1 or more
   * @return for each part the least and the greatest value, or NaN twice where there is no sample
   */
  public List<double[]> outline(int parts) {
    List<double[]> outline = new ArrayList<>();
    for (int i = 0; i < parts; i++) {
      outline.add(new double[] {Double.NaN, Double.NaN});
    }
    if (blocks.isEmpty()) {
      return outline;
    }
    double start = blocks.get(0).first.time();
    double length = blocks.get(blocks.size() - 1).last.time() - start;
    for (Block block : blocks) {
      int first = part(block.first.time() - start, length, parts);
      int last = part(block.last.time() - start, length, parts);
      for (int i = first; i <= last; i++) {
        double[] range = outline.get(i);
        range[0] =
            Double.isNaN(range[0]) ? block.least.value() : Math.min(range[0], block.least.value());
        range[1] =
            Double.isNaN(range[1]) ? block.most.value() : Math.max(range[1], block.most.value());
      }
    }
    return outline;
  }

  private static int part(double time, double length, int parts) {
    return length == 0 ? 0 : (int) Math.min(parts - 1, parts * time / length);
  }

  /**
   * The step in which the samples are told, see {@link Quantisation}.
   *
   * @param digit the last digit of the samples, in the unit of the column; 0 if it is not known
   * @return the step, in that unit; the digit itself where no greater step shows
   */
  public double resolution(double digit) {
    return quantisation.step(digit);
  }

  /**
   * The samples, or the means of the blocks in which they are held.
   *
   * @return the values in order
   */
  public double[] means() {
    return means(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
  }

  /**
   * The samples, or the means of the blocks, that lie wholly between two times.
   *
   * @param from the first time, in s
   * @param to the last time, in s
   * @return the values in order
   */
  public double[] means(double from, double to) {
    return blocks.stream()
        .filter(block -> block.first.time() >= from && block.last.time() <= to)
        .mapToDouble(block -> block.mean)
        .toArray();
  }

  /**
   * The first row of a block.
   *
   * @param block its place among {@link #means()}, from 0
   * @return the row
   */
  public long firstRow(int block) {
    return blocks.get(block).first.row();
  }

  /**
   * When a block begins.
   *
   * @param block its place among {@link #means()}, from 0
   * @return the time of its first sample, in s
   */
  public double from(int block) {
    return blocks.get(block).first.time();
  }

  /**
   * When a block ends.
   *
   * @param block its place among {@link #means()}, from 0
   * @return the time of its last sample, in s
   */
  public double to(int block) {
    return blocks.get(block).last.time();
  }

  /**
   * A place in a log that nothing is to be found across.
   *
   * @param lastRow the last row before it
   * @param nextRow the first row after it; rows between belong to neither side
   */
  public record Break(long lastRow, long nextRow) {}

  /**
   * A run of blocks without a break.
   *
   * @param from the place of the first among {@link #means()}, from 0
   * @param to the place behind the last
   */
  public record Run(int from, int to) {}

  /**
   * The runs of blocks between breaks; a block that reaches over a break is in none.
   *
   * @param breaks the breaks, in the order of rows
   * @return the runs in order, some may be empty
   */
  public List<Run> runs(List<Break> breaks) {
    List<Run> runs = new ArrayList<>();
    int start = 0;
    for (Break each : breaks) {
      int end = start;
      while (end < blocks.size() && blocks.get(end).last.row() <= each.lastRow()) {
        end++;
      }
      runs.add(new Run(start, end));
      start = end;
      while (start < blocks.size() && blocks.get(start).first.row() < each.nextRow()) {
        start++;
      }
    }
    runs.add(new Run(start, blocks.size()));
    return runs;
  }

  List<Block> blocks() {
    return blocks;
  }
}
