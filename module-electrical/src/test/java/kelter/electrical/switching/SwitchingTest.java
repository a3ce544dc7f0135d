package kelter.electrical.switching;

import static org.junit.jupiter.api.Assertions.assertTrue;

import kelter.core.job.Appliance;
import kelter.electrical.Forecasts;
import kelter.electrical.SampleMachines;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What conducts and what does not, against the bars of the trade: 0.5 Ohm closed, 1 MOhm open. */
class SwitchingTest {

  private static final Appliance MACHINE = SampleMachines.CONTROLS;

  @ParameterizedTest
  @CsvSource({
    "switch, contact-burnt",
    "switch, dead",
    "selector, contact-burnt",
    "tilt, open",
    "fuse, blown",
    "overload, open",
    "base, burnt",
    "harness, broken"
  })
  void aFaultyWayHasMoreThanASoundOne(String part, String fault) {
    String question = part + ".closed-resistance";
    assertTrue(Forecasts.of(MACHINE, question) < 0.5);
    assertTrue(Forecasts.of(MACHINE, question, 0.1, part + "." + fault) > 0.5, question);
    assertTrue(Forecasts.of(MACHINE, question, 1, part + "." + fault) > 50, question);
  }

  @ParameterizedTest
  @CsvSource({"switch", "selector"})
  void aWeldedContactConductsWhenOff(String part) {
    String question = part + ".open-resistance";
    assertTrue(Forecasts.of(MACHINE, question) > 1e6);
    assertTrue(Forecasts.of(MACHINE, question, 0.5, part + ".contact-welded") < 0.5);
  }

  @ParameterizedTest
  @CsvSource({
    "switch.burns, switch.contact-burnt, switch.dead",
    "selector.burns, selector.contact-burnt, selector.contact-welded"
  })
  void whatBurntIsSeen(String look, String burnt, String other) {
    assertTrue(Forecasts.of(MACHINE, look, 0.5, burnt) > 0.5);
    assertTrue(Forecasts.of(MACHINE, look, 0.5, other) < 0.2);
  }
}
