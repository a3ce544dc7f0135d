package kelter.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;

import kelter.core.check.Verdict;
import org.junit.jupiter.api.Test;

class IncomingGoodsTest {

  /**
   * 26.45 ohm within 25.19 and 29.39 ohm is the band of a 2 kW, 230 V heater (arithmetic on IEC
   * 60335-1, clause 10); near a limit the meter decides how sure one can be.
   */
  @Test
  void heatersAreJudgedWithTheAccuracyOfTheMeter() {
    IncomingGoods test = new IncomingGoods("25.19 ohm", "29.39 ohm", "0.8 % + 3 counts", "0.1 ohm");

    assertEquals(Verdict.CONFORMS, test.judge("26.5 ohm").verdict());
    assertEquals(Verdict.UNDECIDED, test.judge("29.4 ohm").verdict());
    assertEquals(Verdict.DOES_NOT_CONFORM, test.judge("31 ohm").verdict());
  }
}
