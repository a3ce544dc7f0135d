package kelter.electrical;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.FaultSymptom;
import kelter.core.job.Appliance;
import kelter.core.vocabulary.Symptom;
import kelter.core.vocabulary.Symptoms;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which symptoms of the whole machine each electrical fault makes, and how often. */
class FaultSymptomsTest {

  /** Faults that no owner notices, with the reason. */
  private static final Map<String, String> UNNOTICED = Map.of();

  /** How far a chance may lie from one of another table of the same trade. */
  private static final double NEAR = 0.1;

  private static List<Fault> faults(Appliance appliance) {
    List<Fault> all = new ArrayList<>();
    for (FaultModel model : new ElectricalModule().parts().faultModels(appliance)) {
      all.addAll(model.faults());
    }
    return all;
  }

  private static List<Fault> faults() {
    List<Fault> all = new ArrayList<>();
    SampleMachines.all().forEach(machine -> all.addAll(faults(machine)));
    all.addAll(
        faults(
            Jobs.appliance(
                Jobs.component("heater", "heater"), Jobs.component("cord", "supply-cord"))));
    return all;
  }

  @Test
  void everyFaultMakesASymptomOrItIsSaidWhyNot() {
    for (Fault fault : faults()) {
      assertEquals(
          UNNOTICED.containsKey(fault.id()),
          fault.symptoms().isEmpty(),
          fault.key() + " is silent");
    }
  }

  @Test
  void symptomsAreKnownAndTheirChancesAreChances() {
    Set<String> known = Symptoms.ALL.stream().map(Symptom::id).collect(Collectors.toSet());
    for (Fault fault : faults()) {
      Set<String> made = new HashSet<>();
      for (FaultSymptom symptom : fault.symptoms()) {
        String where = fault.key() + " " + symptom.symptom();
        assertTrue(known.contains(symptom.symptom()), where);
        assertTrue(made.add(symptom.symptom()), where + " stands twice");
        double most = 0;
        for (int i = 0; i <= 100; i++) {
          double chance = symptom.at(Math.max(1e-9, i / 100.0));
          assertTrue(chance >= 0 && chance <= 1, where + " " + chance);
          most = Math.max(most, chance);
        }
        assertTrue(most > 0, where + " is never made");
      }
    }
  }

  private static double middle(Appliance machine, String fault, String symptom) {
    return faults(machine).stream()
        .filter(f -> f.key().equals(fault))
        .flatMap(f -> f.symptoms().stream())
        .filter(s -> s.symptom().equals(symptom))
        .mapToDouble(s -> s.at(FaultSymptom.MIDDLE))
        .findFirst()
        .orElseThrow();
  }

  /** Chances at mid severity: kinds of machines, from memory. */
  @ParameterizedTest
  @CsvSource({
    "air-heater.open, stays-cold, 0.95",
    "air-heater.open, does-not-dry, 0.95",
    "air-heater.open, runs-without-end, 0.60",
    "air-heater.leaking, trips-rcd, 0.90",
    "air-heater.leaking, trips-breaker, 0.20",
    "air-heater.element-open, heats-slowly, 0.75",
    "air-heater.lint, does-not-dry, 0.85",
    "air-heater.lint, weak-air, 0.80",
    "air-heater.lint, runs-without-end, 0.50",
    "air-heater.lint, stops-in-cycle, 0.45",
    "air-heater.lint, too-hot, 0.30",
    "link.open, stays-cold, 0.70",
    "link.open, does-not-dry, 0.75",
    "link.open, does-not-start, 0.30"
  })
  void aDryerShowsWhatDryersShow(String fault, String symptom, double chance) {
    assertEquals(chance, middle(SampleMachines.DRYER, fault, symptom), NEAR);
  }

  /** Chances at mid severity: kinds of machines, from memory. */
  @ParameterizedTest
  @CsvSource({
    "heater.leaking, trips-rcd, 0.85",
    "heater.leaking, trips-breaker, 0.25",
    "heater.hot-joint, stays-cold, 0.50",
    "heater.hot-joint, smells-burnt, 0.40",
    "heater.hot-joint, trips-breaker, 0.20",
    "heater.aged, heats-slowly, 0.15",
    "supply.wrong-frequency, loud, 0.40",
    "supply.wrong-frequency, does-not-spin, 0.15",
    "supply.wrong-frequency, too-hot, 0.05",
    "heater.scaled, heats-slowly, 0.25",
    "heater.scaled, runs-out-early, 0.40",
    "heater.scaled, weak-flow, 0.30",
    "heater.scaled, temperature-swings, 0.15",
    "relay.contact-burnt, stays-cold, 0.40",
    "relay.contact-burnt, heats-slowly, 0.30",
    "relay.contact-burnt, smells-burnt, 0.35",
    "relay.contact-welded, too-hot, 0.80",
    "sensor.reads-too-warm, stays-cold, 0.30",
    "sensor.reads-too-warm, heats-slowly, 0.20",
    "sensor.reads-too-cold, too-hot, 0.40",
    "cord.hot-joint, smells-burnt, 0.60",
    "cord.hot-joint, does-not-start, 0.45",
    "cord.hot-joint, trips-breaker, 0.35"
  })
  void aMachineThatHeatsWaterShowsWhatSuchShow(String fault, String symptom, double chance) {
    assertEquals(chance, middle(SampleMachines.WASHER, fault, symptom), NEAR);
  }

  /** Chances at mid severity: kinds of machines, from memory. */
  @ParameterizedTest
  @CsvSource({
    "capacitor.weak, hums-only, 0.70",
    "capacitor.weak, does-not-turn, 0.65",
    "capacitor.weak, does-not-start, 0.40",
    "motor.shorted-turns, hums-only, 0.40",
    "motor.shorted-turns, stops-in-cycle, 0.40",
    "motor.shorted-turns, smells-burnt, 0.30",
    "motor.shorted-turns, trips-breaker, 0.10",
    "motor.seized, loud, 0.80",
    "motor.seized, vibrates, 0.45",
    "motor.seized, smells-burnt, 0.15",
    "door.contact-open, does-not-start, 0.85",
    "door.contact-open, light-out, 0.25",
    "door.contact-open, stops-in-cycle, 0.20"
  })
  void motorsAndDoorsShowWhatSuchShow(String fault, String symptom, double chance) {
    assertEquals(chance, middle(SampleMachines.MOTOR, fault, symptom), NEAR);
  }

  /** A fuse acts once a short draws four times the current, which is at a third of the severity. */
  @Test
  void aShortTripsTheBreakerOnceItIsBad() {
    Fault shorted =
        faults(SampleMachines.WASHER).stream()
            .filter(f -> f.key().equals("heater.shorted-turns"))
            .findFirst()
            .orElseThrow();
    FaultSymptom trips =
        shorted.symptoms().stream()
            .filter(s -> s.symptom().equals("trips-breaker"))
            .findFirst()
            .orElseThrow();
    assertTrue(trips.at(0.01) < 0.05);
    assertTrue(trips.at(0.3) > 0.4 && trips.at(0.8) > 0.85);
  }
}
