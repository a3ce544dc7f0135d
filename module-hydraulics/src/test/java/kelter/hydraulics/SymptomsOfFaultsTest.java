package kelter.hydraulics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultSymptom;
import kelter.core.vocabulary.Symptom;
import kelter.core.vocabulary.Symptoms;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the whole machine does when something is wrong with its water. */
class SymptomsOfFaultsTest {

  static Stream<Fault> faults() {
    return SampleMachines.all().stream()
        .flatMap(machine -> new HydraulicsModule().parts().faultModels(machine).stream())
        .flatMap(model -> model.faults().stream());
  }

  private static Fault fault(String key) {
    return faults().filter(fault -> fault.key().equals(key)).findFirst().orElseThrow();
  }

  private static double chance(String fault, String symptom, double severity) {
    return fault(fault).symptoms().stream()
        .filter(made -> made.symptom().equals(symptom))
        .findFirst()
        .orElseThrow(() -> new AssertionError(fault + " does not make " + symptom))
        .at(severity);
  }

  @ParameterizedTest
  @MethodSource("faults")
  void everyFaultIsNoticedByTheOwnerAndSaidOnceOfEachSymptom(Fault fault) {
    List<String> made = fault.symptoms().stream().map(FaultSymptom::symptom).toList();
    Set<String> known = Symptoms.ALL.stream().map(Symptom::id).collect(Collectors.toSet());
    assertFalse(made.isEmpty(), fault.key());
    assertEquals(made.size(), Set.copyOf(made).size(), fault.key() + ": " + made);
    assertTrue(known.containsAll(made), fault.key() + ": " + made);
  }

  /** A fault that has hardly begun makes hardly anything, unless it is there wholly or not. */
  @ParameterizedTest
  @MethodSource("faults")
  void everyChanceIsOneAndTheWorseTheFaultTheMoreItShows(Fault fault) {
    boolean wholly = Set.of("jammed", "winding-open", "no-voltage").contains(fault.id());
    double none = 1;
    double worst = 1;
    for (FaultSymptom made : fault.symptoms()) {
      for (double severity = 1e-6; severity <= 1; severity += 0.01) {
        double chance = made.at(severity);
        assertTrue(chance >= 0 && chance <= 1, fault.key() + " " + made.symptom());
      }
      assertEquals(wholly, made.at(1e-6) > 0.1 + 1e-4, fault.key() + " " + made.symptom());
      none *= 1 - made.at(1e-6);
      worst *= 1 - made.at(1);
    }
    assertTrue(wholly ? worst == none : worst < 0.6 * none, fault.key());
    assertTrue(1 - worst > 0.7, fault.key() + " shows at its worst with " + (1 - worst));
  }

  /**
   * How often a cause shows at a middle severity, after "kinds of water-using machines, from
   * memory": on washing machines filter or pump, a stalled or worn drain pump, a loose hose, an air
   * tube; on washer-extractors strainer and diaphragm; on dishwashers a tripped stop valve, a wash
   * pump with its capacitor and its bearing, jets and filter; on glasswashers an air trap.
   */
  @ParameterizedTest
  @CsvSource({
    "drain-pump.passages-blocked, does-not-drain, 0.50",
    "drain-pump.passages-blocked, drains-slowly, 0.50",
    "drain-pump.passages-blocked, water-left, 0.60",
    "drain-pump.passages-blocked, shows-drain, 0.55",
    "drain-pump.strainer-clogged, does-not-spin, 0.40",
    "drain-pump.strainer-clogged, loud, 0.40",
    "drain-pump.impeller-slips, does-not-drain, 0.55",
    "drain-pump.drag, drains-slowly, 0.40",
    "drain-pump.drag, water-left, 0.70",
    "drain-pump.drag, shows-drain, 0.60",
    "drain-pump.drag, does-not-spin, 0.50",
    "drain-pump.drag, stops-in-cycle, 0.40",
    "drain-pump.hose-leaks, leaks, 0.90",
    "drain-pump.hose-leaks, shows-leak, 0.30",
    "inlet-valve.screen-clogged, fills-slowly, 0.50",
    "inlet-valve.screen-clogged, does-not-fill, 0.35",
    "inlet-valve.valve-weak, shows-fill, 0.50",
    "inlet-valve.hose-kinked, does-not-fill, 0.60",
    "inlet-valve.hose-kinked, fills-slowly, 0.25",
    "inlet-valve.hose-kinked, shows-fill, 0.60",
    "level-sensor.trap-clogged, fills-without-end, 0.40",
    "level-sensor.trap-clogged, shows-fill, 0.35",
    "level-sensor.tube-leaks, poor-result, 0.25",
    "level-sensor.tube-leaks, stops-in-cycle, 0.40",
    "level-sensor.tube-leaks, water-left, 0.15",
    "wash-pump.slow, poor-result, 0.60",
    "wash-pump.slow, shows-motor, 0.35",
    "wash-pump.slow, stops-in-cycle, 0.35",
    "wash-pump.drag, loud, 0.50",
    "wash-pump.drag, leaks, 0.15",
    "wash-pump.jets-clogged, poor-result, 0.90",
    "wash-pump.jets-clogged, loud, 0.10",
    "wash-pump.inlet-clogged, poor-result, 0.90"
  })
  void shownAtAMiddleSeverity(String fault, String symptom, double expected) {
    assertEquals(expected, chance(fault, symptom, 0.5), 0.01);
  }

  /** What lets no water out at its worst is told as not draining, hardly as draining slowly. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "passages-blocked",
        "impeller-slips",
        "internal-leak",
        "drag",
        "strainer-clogged",
        "hose-clogged",
        "valve-shut"
      })
  void slowDrainingGivesWayToNone(String id) {
    String fault = "drain-pump." + id;
    assertTrue(chance(fault, "does-not-drain", 1) >= 0.9, fault);
    assertTrue(chance(fault, "drains-slowly", 1) < chance(fault, "drains-slowly", 0.5), fault);
  }

  /** Rows that both pumps share make of a drain pump no dirty load and of a wash pump no puddle. */
  @Test
  void eachPumpMakesWhatItsWaterIsFor() {
    faults()
        .filter(fault -> fault.component().equals("wash-pump"))
        .forEach(fault -> assertFalse(makes(fault, "does-not-drain"), fault.key()));
    faults()
        .filter(fault -> Set.of("passages-blocked", "drag", "jammed").contains(fault.id()))
        .forEach(
            fault ->
                assertEquals(
                    fault.component().equals("wash-pump"),
                    makes(fault, "poor-result"),
                    fault.key()));
  }

  private static boolean makes(Fault fault, String symptom) {
    return fault.symptoms().stream().anyMatch(made -> made.symptom().equals(symptom));
  }
}
