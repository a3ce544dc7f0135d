package kelter.hydraulics.measuring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Ways of measuring water with errors of their own: arithmetic on the laws of JCGM 100:2008. */
class WaterInstrumentsTest {

  private static final double PER_MINUTE = 1 / 6e4;

  /**
   * JCGM 100:2008, 5.1.6, equation (12), with a rectangle over sqrt 3 (4.3.7): 10 L ± 0.2 L is
   * 1.1547 %; 40 s with ± 0.3 s at either end is 0.2449 s or 0.6124 %; together 1.3070 % of 15
   * L/min, 0.1961 L/min.
   */
  @Test
  void bucketAndWatch() {
    BucketAndWatch bucket = new BucketAndWatch(0.010, 0.0002, 0.3);
    assertEquals(0.1961, bucket.standardUncertainty(15 * PER_MINUTE) / PER_MINUTE, 5e-5);
    assertEquals(0, bucket.standardUncertainty(0), 0);
  }

  /** The same bucket at twice the flow takes half the time: the watch counts twice as much. */
  @Test
  void theWatchCountsMoreTheFasterItFills() {
    BucketAndWatch watchOnly = new BucketAndWatch(0.010, 0, 0.3);
    double once = watchOnly.standardUncertainty(10 * PER_MINUTE);
    assertEquals(4 * once, watchOnly.standardUncertainty(20 * PER_MINUTE), 1e-15);
  }

  /**
   * Half a division 0.5 mm, parallax 15 mm at 20 % 3 mm, origin 5 mm, all over sqrt 3: 3.379 mm;
   * swing 5 mm over sqrt 2: 3.5355 mm; together 4.8905 mm.
   */
  @Test
  void standpipe() {
    Standpipe pipe = new Standpipe(0.001, 0.015, 0.2, 0.005, 0.005);
    assertEquals(0.0048905, pipe.standardUncertainty(0.6), 5e-7);
    assertEquals(0.0048905, pipe.standardUncertainty(2), 5e-7);
  }

  @Test
  void errorsThatAreNoneAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> new BucketAndWatch(0, 0.1, 0.1));
    assertThrows(IllegalArgumentException.class, () -> new BucketAndWatch(1, -0.1, 0.1));
    assertThrows(IllegalArgumentException.class, () -> new BucketAndWatch(1, Double.NaN, 0.1));
    assertThrows(IllegalArgumentException.class, () -> new Standpipe(-1, 0, 0, 0, 0));
    assertThrows(IllegalArgumentException.class, () -> new Standpipe(0, 0, Double.NaN, 0, 0));
  }

  @Test
  void theInstrumentsAreInOrder() {
    for (var instrument : WaterInstruments.all()) {
      assertTrue(instrument.typical().isPresent(), instrument.id());
      assertTrue(!instrument.functions().isEmpty(), instrument.id());
      for (var function : instrument.functions()) {
        double atEnd = function.standardUncertainty(function.end());
        assertTrue(atEnd > 0 && atEnd < 0.1 * function.end(), instrument.id());
        assertTrue(function.resolution() < 0.05 * function.end(), instrument.id());
      }
    }
  }
}
