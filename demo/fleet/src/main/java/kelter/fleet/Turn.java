package kelter.fleet;

import java.io.Serializable;
import java.util.Comparator;
import org.apache.spark.Partitioner;

/**
 * When an entry is its turn to be read: after those of its group that were closed before; on one
 * day, jobs go in the order of their ids.
 *
 * @param group the job that its group is called after
 * @param closed the day of closing, year first
 * @param job the job
 */
record Turn(String group, String closed, String job) implements Comparable<Turn>, Serializable {

  private static final Comparator<Turn> ORDER =
      Comparator.comparing(Turn::group).thenComparing(Turn::closed).thenComparing(Turn::job);

  @Override
  public int compareTo(Turn other) {
    return ORDER.compare(this, other);
  }

  /** Keeps groups whole. */
  static final class Parts extends Partitioner {

    private static final long serialVersionUID = 1;

    private final int number;

    Parts(int number) {
      this.number = number;
    }

    @Override
    public int numPartitions() {
      return number;
    }

    @Override
    public int getPartition(Object turn) {
      return Math.floorMod(((Turn) turn).group().hashCode(), number);
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Parts same && same.number == number;
    }

    @Override
    public int hashCode() {
      return number;
    }
  }
}
