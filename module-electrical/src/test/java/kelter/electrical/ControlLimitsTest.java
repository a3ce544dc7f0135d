package kelter.electrical;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import kelter.core.check.Checker;
import kelter.core.check.DecisionRule;
import kelter.core.check.Finding;
import kelter.core.check.Verdict;
import kelter.core.job.Component;
import kelter.core.job.ReadingParser;
import kelter.core.module.Parts;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Vocabulary;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What readings of switches, boards and regulators may be, by the bars of the trade: closed at most
 * 0.5 Ohm, open more than 1 MOhm; times and temperatures from memory.
 */
class ControlLimitsTest {

  private static Verdict verdict(String part, String word, String reading) {
    Parts parts = new ElectricalModule().parts();
    Vocabulary words = new Vocabulary(parts.kinds());
    Component component = SampleMachines.CONTROLS.component(part).orElseThrow();
    Observable observable = words.observable(component.kind(), word).orElseThrow();
    List<Finding> findings =
        new Checker(parts.checks(), words, List.of(), DecisionRule.USUAL)
            .findings(
                Jobs.job(
                    SampleMachines.CONTROLS,
                    Jobs.measurement(part, word, ReadingParser.parse(reading, observable))));
    assertEquals(1, findings.size());
    return findings.get(0).verdict();
  }

  @ParameterizedTest
  @CsvSource({
    "switch, closed-resistance, 0.1 Ohm, 4 Ohm",
    "switch, open-resistance, 20 MOhm, 0.3 Ohm",
    "selector, closed-resistance, 0.1 Ohm, 4 Ohm",
    "tilt, closed-resistance, 0.1 Ohm, OL",
    "fuse, closed-resistance, 0.1 Ohm, OL",
    "overload, closed-resistance, 0.1 Ohm, OL",
    "base, closed-resistance, 0.1 Ohm, 3 Ohm",
    "harness, closed-resistance, 0.1 Ohm, 50 Ohm",
    "cord, conductor-resistance, 0.1 Ohm, 8 Ohm",
    "float, closed-resistance, 0.1 Ohm, OL",
    "board, output-resistance, 5 MOhm, 2 Ohm",
    "thermostat, closed-resistance, 0.1 Ohm, OL",
    "thermostat, open-resistance, 20 MOhm, 0.2 Ohm",
    "thermostat, overshoot, 5 K, 40 K",
    "thermostat, overshoot, -8 K, -35 K",
    "steam, boil-off-time, 10 s, 90 s",
    "steam, boil-off-time, 6 s, 0 s",
    "regulator, on-share, 0.4, 0.9",
    "regulator, period, 30 s, 200 s",
    "regulator, open-resistance, 20 MOhm, 0.2 Ohm",
    "starter, cold-resistance, 22 Ohm, 2 kOhm",
    "ice, ice-water-ratio, 1.02, 1.4",
    "link, opens-below, 2 K, 40 K",
    "timer, over-setting, 1.05, 1.8",
    "humidity, off-by, 3 %, 25 %"
  })
  void oneInOrderConformsAndOneThatIsNotDoesNot(
      String part, String word, String inOrder, String faulty) {
    assertEquals(Verdict.CONFORMS, verdict(part, word, inOrder));
    assertEquals(Verdict.DOES_NOT_CONFORM, verdict(part, word, faulty));
  }
}
