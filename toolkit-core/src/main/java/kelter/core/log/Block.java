package kelter.core.log;

/**
 * Samples that stand beside each other, condensed into what means, spreads and trends can be made
 * of. Two blocks are put together without loss (Chan, Golub and LeVeque, Algorithms for computing
 * the sample variance, The American Statistician 37 (1983) 242; from memory).
 */
final class Block {

  long firstRow;
  long lastRow;
  double firstTime;
  double lastTime;
  long count;
  double meanTime;
  double mean;

  /** Sums of squared deviations, and of products of deviations. */
  double timeSquares;

  double products;
  double squares;

  double least;
  long leastRow;
  double leastTime;
  double most;
  long mostRow;
  double mostTime;

  Block(long row, double time, double value) {
    firstRow = row;
    lastRow = row;
    firstTime = time;
    lastTime = time;
    count = 1;
    meanTime = time;
    mean = value;
    least = value;
    leastRow = row;
    leastTime = time;
    most = value;
    mostRow = row;
    mostTime = time;
  }

  Block(Block other) {
    firstRow = other.firstRow;
    firstTime = other.firstTime;
    meanTime = other.meanTime;
    mean = other.mean;
    least = Double.POSITIVE_INFINITY;
    most = Double.NEGATIVE_INFINITY;
    append(other);
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
    lastRow = row;
    lastTime = time;
    if (value < least) {
      least = value;
      leastRow = row;
      leastTime = time;
    }
    if (value > most) {
      most = value;
      mostRow = row;
      mostTime = time;
    }
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
    lastRow = next.lastRow;
    lastTime = next.lastTime;
    if (next.least < least) {
      least = next.least;
      leastRow = next.leastRow;
      leastTime = next.leastTime;
    }
    if (next.most > most) {
      most = next.most;
      mostRow = next.mostRow;
      mostTime = next.mostTime;
    }
  }

  double standardDeviation() {
    return count < 2 ? 0 : Math.sqrt(Math.max(0, squares) / (count - 1));
  }
}
