package kelter.core.log;

import java.util.List;

/**
 * Samples that stand beside each other, condensed into what means, spreads and trends can be made
 * of. Two blocks are put together without loss (Chan, Golub and LeVeque, Algorithms for computing
 * the sample variance, The American Statistician 37 (1983) 242; from memory).
 */
final class Block {

  /**
   * A sample.
   *
   * @param row where it stands in the log
   * @param time when, in s
   * @param value its value
   */
  record Sample(long row, double time, double value) {}

  final Sample first;
  Sample last;
  Sample least;
  Sample most;
  long count = 1;
  double meanTime;
  double mean;

  /** Sums of squared deviations, and of products of deviations. */
  double timeSquares;

  double products;
  double squares;

  Block(long row, double time, double value) {
    first = new Sample(row, time, value);
    last = first;
    least = first;
    most = first;
    meanTime = time;
    mean = value;
  }

  /** Blocks in order, one or more, put together. */
  static Block of(List<Block> blocks) {
    Block start = blocks.get(0);
    Block all = new Block(start.first.row(), start.first.time(), start.first.value());
    all.count = 0;
    all.meanTime = start.meanTime;
    all.mean = start.mean;
    blocks.forEach(all::append);
    return all;
  }

  void add(long row, double time, double value) {
    count++;
    double aside = value - mean;
    double asideTime = time - meanTime;
    mean += aside / count;
    meanTime += asideTime / count;
    squares += aside * (value - mean);
    timeSquares += asideTime * (time - meanTime);
    products += asideTime * (value - mean);
    Sample sample = new Sample(row, time, value);
    end(sample, sample, sample);
  }

  /** Takes in the block that follows. */
  void append(Block next) {
    double total = (double) count + next.count;
    double aside = next.mean - mean;
    double asideTime = next.meanTime - meanTime;
    double weight = count * (next.count / total);
    squares += next.squares + aside * aside * weight;
    timeSquares += next.timeSquares + asideTime * asideTime * weight;
    products += next.products + aside * asideTime * weight;
    mean += aside * (next.count / total);
    meanTime += asideTime * (next.count / total);
    count += next.count;
    end(next.last, next.least, next.most);
  }

  private void end(Sample next, Sample low, Sample high) {
    last = next;
    least = low.value() < least.value() ? low : least;
    most = high.value() > most.value() ? high : most;
  }

  double standardDeviation() {
    return count < 2 ? 0 : Math.sqrt(Math.max(0, squares) / (count - 1));
  }
}
