package kelter.core.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Causes that each can bring about an effect. */
class NoisyOrTest {

  @ParameterizedTest
  @DisplayName("AIMA, Russell and Norvig, table of fever by noisy-or: cold .6, flu .2, malaria .1")
  @CsvSource({
    "0, 0, 0, 0",
    "0, 0, 1, .9",
    "0, 1, 0, .8",
    "0, 1, 1, .98",
    "1, 0, 0, .4",
    "1, 0, 1, .94",
    "1, 1, 0, .88",
    "1, 1, 1, .988"
  })
  void fever(int cold, int flu, int malaria, double chance) {
    // The book gives the chance that each is inhibited.
    double[] causes = {cold * (1 - .6), flu * (1 - .2), malaria * (1 - .1)};

    assertEquals(chance, NoisyOr.chance(0, causes), 1e-15);
  }

  @Test
  void theLeakIsACauseThatIsAlwaysThere() {
    assertEquals(.25, NoisyOr.chance(.25), 0);
    assertEquals(NoisyOr.chance(0, .25, .5), NoisyOr.chance(.25, .5), 0);
  }

  @Test
  void whatIsNoChanceIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> NoisyOr.chance(-.1));
    assertThrows(IllegalArgumentException.class, () -> NoisyOr.chance(0, Double.NaN));
  }
}
