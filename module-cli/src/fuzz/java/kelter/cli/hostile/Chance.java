package kelter.cli.hostile;

import java.util.List;
import java.util.SplittableRandom;

/** Draws of one input. The same seed draws the same. */
record Chance(SplittableRandom random) {

  /** The draws of an input of a family. */
  static Chance of(long seed, String family, long number) {
    return new Chance(new SplittableRandom(seed ^ ((long) family.hashCode() << 32) ^ number));
  }

  /** From 0 to one less than the bound. */
  int below(int bound) {
    return random.nextInt(bound);
  }

  /** True once in so many. */
  boolean oneIn(int times) {
    return random.nextInt(times) == 0;
  }

  /** One of these, each as likely. */
  <T> T of(List<T> items) {
    return items.get(random.nextInt(items.size()));
  }

  /** One or more, fewer more often. */
  int few() {
    int count = 1;
    while (count < 12 && oneIn(2)) {
      count++;
    }
    return count;
  }
}
