package kelter.electrical;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.engine.DiagnosisEngine;
import kelter.core.job.Appliance;
import kelter.core.job.Complaint;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.ReadingParser;
import kelter.core.quantity.QuantityParser;
import kelter.core.safety.Hazard;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Vocabulary;
import org.junit.jupiter.api.Test;

/** What the engine makes of readings at a heating circuit. The machines are made up. */
class HeatingDiagnosisTest {

  private static final ElectricalModule MODULE = new ElectricalModule();
  private static final Vocabulary WORDS = new Vocabulary(MODULE.parts().kinds());
  private static final DiagnosisEngine ENGINE = new DiagnosisEngine(EngineSettings.USUAL);

  private static final Appliance WASHER =
      Jobs.appliance(
          Jobs.heater(),
          Jobs.component("link", "thermal-link"),
          Jobs.component("relay", "relay"),
          Jobs.sensor());

  private static Measurement read(String component, String observable, String reading) {
    Component part = WASHER.component(component).orElseThrow();
    Observable word = WORDS.observable(part.kind(), observable).orElseThrow();
    return Jobs.measurement(component, observable, ReadingParser.parse(reading, word));
  }

  private static Diagnosis diagnose(Measurement... measurements) {
    Job job =
        new Job(
            "job-1",
            "",
            WASHER,
            new Complaint("does not wash as it did", ""),
            List.of(),
            List.of(measurements),
            Optional.empty());
    return ENGINE.diagnose(job, MODULE.parts().faultModels(WASHER));
  }

  private static String first(Diagnosis diagnosis) {
    return diagnosis.faults().get(0).fault().key();
  }

  @Test
  void nothingLiveIsAskedAndALowInsulationIsALeak() {
    Diagnosis before = diagnose();
    assertTrue(
        before.next().stream()
            .allMatch(n -> n.question().observable().procedure().hazard() != Hazard.LIVE));

    Diagnosis after = diagnose(read("heater", "insulation-resistance", "40 kOhm"));
    assertEquals("heater.leaking", first(after));
    double leaks =
        after.faults().stream()
            .filter(f -> List.of("leaking", "sheath-split").contains(f.fault().id()))
            .mapToDouble(f -> f.probability())
            .sum();
    assertTrue(leaks > 0.75, "leaks " + leaks);
  }

  @Test
  void overRangeIsAnOpenHeater() {
    Diagnosis diagnosis = diagnose(read("heater", "resistance", "OL"));
    assertEquals("heater.open", first(diagnosis));
    assertTrue(diagnosis.faults().get(0).probability() > 0.85);
  }

  @Test
  void aGoodHeaterInAColdMachinePointsElsewhere() {
    Diagnosis diagnosis =
        diagnose(
            read("heater", "resistance", "26.1 ohm"),
            read("heater", "insulation-resistance", "> 200 MOhm"));
    assertTrue(
        diagnosis.faults().stream()
            .filter(f -> f.fault().key().equals("heater.open"))
            .allMatch(f -> f.probability() < 0.05));
    Diagnosis link =
        diagnose(read("heater", "resistance", "26.1 ohm"), read("link", "resistance", "open"));
    assertEquals("link.open", first(link));
    assertTrue(link.faults().get(0).probability() > 0.9);
  }

  @Test
  void aThirdOfAnOhmIsAShort() {
    Diagnosis diagnosis = diagnose(read("heater", "resistance", "0.3 ohm"));
    assertEquals("heater.shorted-turns", first(diagnosis));
  }

  @Test
  void thickScaleIsScale() {
    Diagnosis diagnosis =
        diagnose(read("heater", "resistance", "26.1 ohm"), read("heater", "scale", "thick"));
    assertEquals("heater.scaled", first(diagnosis));
  }

  @Test
  void aSensorThatReadsTooWarmIsFound() {
    Measurement sensor =
        Jobs.measurement(
            "sensor",
            "resistance",
            ReadingParser.parse(
                "8.6 kOhm", WORDS.observable("temperature-sensor", "resistance").orElseThrow()),
            new Conditions(
                Map.of(
                    "temperature",
                    QuantityParser.parse(
                        "20 Cel", kelter.core.quantity.QuantityKind.TEMPERATURE))));
    Diagnosis diagnosis = diagnose(sensor);
    assertEquals("sensor.reads-too-warm", first(diagnosis));
  }

  @Test
  void readingsOfAGoodMachineFindNothing() {
    Job job =
        Jobs.job(
            WASHER,
            read("heater", "resistance", "26.1 ohm"),
            read("heater", "insulation-resistance", "> 200 MOhm"),
            read("heater", "power", "1990 W"),
            read("heater", "heating-rate", "2.1 K/min"));
    Diagnosis diagnosis = ENGINE.diagnose(job, MODULE.parts().faultModels(WASHER));
    assertTrue(diagnosis.healthy() > 0.9, "healthy " + diagnosis.healthy());
  }

  @Test
  void oneReadingAgainstThreeDoesNotMakeAnOpenHeater() {
    Diagnosis diagnosis =
        diagnose(
            read("heater", "resistance", "OL"),
            read("heater", "power", "2000 W"),
            read("heater", "heating-rate", "2.1 K/min"));
    assertTrue(
        diagnosis.faults().stream()
            .filter(f -> f.fault().key().equals("heater.open"))
            .allMatch(f -> f.probability() < 0.05));
  }
}
