package kelter.cli.kind;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import kelter.cli.program.Console;
import kelter.cli.safety.Call;
import kelter.core.catalogue.Kind;
import kelter.core.catalogue.Kinds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What people call machines, in the words of the trade; common practice, no source. */
class KindNamesTest {

  private static final Kinds KINDS = Call.WORKSHOP.kinds();

  @ParameterizedTest
  @CsvSource({
    "electric oven, oven",
    "electric water heater, storage-water-heater",
    "electric clothes dryer, tumble-dryer",
    "electric kettle, kettle"
  })
  void thatItIsElectricTellsNothing(String words, String kind) {
    assertEquals(List.of(kind), KINDS.meant(words).stream().map(Kind::id).toList());
  }

  /** What burns gas is asked for, and never taken. */
  @ParameterizedTest
  @CsvSource({
    "hot water heater, storage-water-heater",
    "pizza oven, oven",
    "gas oven, oven",
    "gas dryer, tumble-dryer",
    "robot vacuum, vacuum-cleaner"
  })
  void theLastWordsAreAskedFor(String words, String kind) {
    assertTrue(KINDS.meant(words).isEmpty(), words);
    assertEquals(Optional.of(kind), KINDS.likely(words));
    String refused = Console.run("new", words).err();
    assertTrue(refused.contains("did you mean '" + kind + "'?"), refused);
  }

  @Test
  void aMisspeltNameIsFoundAsBefore() {
    assertEquals(Optional.of("refrigerator"), KINDS.likely("refridgerator"));
    assertEquals(Optional.empty(), KINDS.likely("garbage disposal"));
  }

  /**
   * A heat pump dryer heats by its heat pump and lets no air out; common knowledge of the trade.
   */
  @Test
  void aBuildThatIsNamedLacksWhatItHasNot() {
    Console console = Console.run("new", "heat-pump dryer", "-s", "does-not-dry");

    assertEquals(0, console.code(), console.err());
    String job = console.out().replaceAll("\\s+", "");
    assertTrue(job.contains("\"lacks\":[\"air-heater\",\"duct\"]"), job);
    assertTrue(console.err().contains("it has no air-heater, duct"), console.err());
    for (String any : new String[] {"dryer", "tumble dryer", "clothes dryer", "tumble-dryer"}) {
      assertFalse(Console.run("new", any).out().contains("lacks"), any);
    }
  }

  /** Nobody thinks of quotation marks. */
  @Test
  void aNameOfSeveralWordsNeedsNoQuotes() {
    Console apart = Console.run("new", "heat", "pump", "dryer", "-s", "does-not-dry");

    assertEquals(0, apart.code(), apart.err());
    assertEquals(Console.run("new", "heat pump dryer", "-s", "does-not-dry").out(), apart.out());
  }

  /** What the owner says is offered, not taken. */
  @Test
  void aBuildThatTheOwnerSpeaksOfIsOffered() {
    Console console = Console.run("new", "dryer", "--said", "It is one with a heat pump, damp");

    assertFalse(console.out().contains("lacks"), console.out());
    assertTrue(console.err().contains("--lacks air-heater --lacks duct"), console.err());
    assertFalse(Console.run("new", "dryer", "--said", "too hot").err().contains("--lacks"));
  }

  @Test
  void aRangeIsAnOven() {
    assertTrue(Console.run("new", "range", "--market", "NA").out().contains("\"oven\""));
  }
}
