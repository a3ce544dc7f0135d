package kelter.cli.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import kelter.core.job.Market;
import org.junit.jupiter.api.Test;

class MarketWordsTest {

  @Test
  void northAmericaHasItsOwnWords() {
    var words = MarketWords.of(Market.NA);
    assertEquals(
        "Replace the cord: the ground is open and the GFCI trips.",
        words.apply("Renew the cord: the earth is open and the RCD trips."));
    assertEquals(
        "behind a ground-fault interrupter (GFCI)",
        words.apply("behind a residual-current device (RCD, GFCI)"));
  }

  @Test
  void wordsOfFilesStay() {
    var words = MarketWords.of(Market.NA);
    String told = "heater.renew-heater, supply-cord.earth-open, --why cord.renew";
    assertEquals(told, words.apply(told));
  }

  @Test
  void europeKeepsItsWords() {
    assertEquals("renew the earth", MarketWords.of(Market.EU).apply("renew the earth"));
    assertEquals("renew the earth", MarketWords.of(Market.UK).apply("renew the earth"));
  }
}
