package kelter.costing.weigh;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.stream.DoubleStream;
import kelter.core.option.Option;
import org.apache.commons.rng.core.source64.SplitMix64;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SpreadsTest {

  /** Held against the sort of the Java library, with many equal values and without. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 20, 101, 5_000})
  void theQuantilesAreThoseOfTheSortedDraws(int count) {
    SplitMix64 random = new SplitMix64(count);
    for (int distinct : new int[] {1, 3, 1_000_000}) {
      double[] draws = DoubleStream.generate(() -> random.nextInt(distinct)).limit(count).toArray();
      double[] before = draws.clone();
      double[] sorted = draws.clone();
      Arrays.sort(sorted);
      Option.Spread spread = Spreads.of(draws);
      assertEquals(sorted[count / 20], spread.low());
      assertEquals(sorted[count / 2], spread.median());
      assertEquals(sorted[count * 19 / 20], spread.high());
      assertEquals(Arrays.stream(draws).average().orElseThrow(), spread.mean(), 1e-9);
      assertArrayEquals(before, draws);
    }
  }
}
