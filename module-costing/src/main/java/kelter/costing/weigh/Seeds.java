package kelter.costing.weigh;

import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.core.source64.SplitMix64;
import org.apache.commons.rng.core.source64.XoRoShiRo128PlusPlus;

/** Makes the generator of a seed, the same one everywhere. */
final class Seeds {

  private Seeds() {}

  /** XoRoShiRo128++, its state filled by SplitMix64 as its authors advise. */
  static UniformRandomProvider generator(long seed) {
    SplitMix64 filler = new SplitMix64(seed);
    return new XoRoShiRo128PlusPlus(filler.nextLong(), filler.nextLong());
  }
}
