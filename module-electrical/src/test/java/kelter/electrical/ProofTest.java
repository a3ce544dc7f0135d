package kelter.electrical;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.engine.DiagnosisEngine;
import kelter.core.job.Appliance;
import kelter.core.job.Complaint;
import kelter.core.job.Component;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.ReadingParser;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Vocabulary;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * One reading that by itself proves a fault, in a machine that somebody complains of and of which
 * nothing else was read. The machines are made up.
 */
class ProofTest {

  private static final ElectricalModule MODULE = new ElectricalModule();
  private static final Vocabulary WORDS = new Vocabulary(MODULE.parts().kinds());
  private static final DiagnosisEngine ENGINE = new DiagnosisEngine(EngineSettings.USUAL);

  /** A heating circuit, a motor with its capacitor, door switch and valve in one. */
  private static Appliance large() {
    List<Component> parts = new ArrayList<>(SampleMachines.WASHER.components());
    for (Component part : SampleMachines.MOTOR.components()) {
      if (!part.id().equals("cord")) {
        parts.add(part);
      }
    }
    return Jobs.appliance(parts.toArray(new Component[0]));
  }

  private static Diagnosis diagnose(Appliance machine, String... readings) {
    List<Measurement> measurements = new ArrayList<>();
    for (String reading : readings) {
      String[] words = reading.split(" ", 3);
      Component part = machine.component(words[0]).orElseThrow();
      Observable observable = WORDS.observable(part.kind(), words[1]).orElseThrow();
      measurements.add(
          Jobs.measurement(words[0], words[1], ReadingParser.parse(words[2], observable)));
    }
    Job job =
        new Job("job-1", "", machine, Complaint.UNSAID, List.of(), measurements, Optional.empty());
    return ENGINE.diagnose(job, MODULE.parts().faultModels(machine));
  }

  private static double probability(Diagnosis diagnosis, String fault) {
    return diagnosis.fault(fault).map(Diagnosis.FaultProbability::probability).orElse(0.0);
  }

  @ParameterizedTest
  @CsvSource({
    "relay.contact-welded, relay closed-when-off yes",
    "cord.earth-poor, cord protective-conductor-resistance 1.9 Ohm",
    "cord.hot-joint, cord plug-hot yes",
    "capacitor.burst, capacitor swollen yes",
    "heater.sheath-split, heater sheath-damaged yes"
  })
  void oneSignNamesItsFault(String fault, String reading) {
    String part = fault.substring(0, fault.indexOf('.'));
    for (Appliance machine : List.of(large(), SampleMachines.WASHER, SampleMachines.MOTOR)) {
      if (machine.component(part).isPresent()) {
        Diagnosis diagnosis = diagnose(machine, reading);
        double probability = probability(diagnosis, fault);
        assertTrue(probability > 0.9, fault + " " + probability);
        assertTrue(diagnosis.unexplained().probability() < 0.05, fault);
      }
    }
  }

  /** A fault that would have shown is out; what nobody knows is as likely as before. */
  @ParameterizedTest
  @CsvSource({
    "relay.contact-welded, relay closed-when-off no",
    "cord.earth-open, cord protective-conductor-resistance 0.08 Ohm",
    "cord.hot-joint, cord plug-hot no",
    "capacitor.burst, capacitor swollen no",
    "heater.sheath-split, heater sheath-damaged no"
  })
  void whereTheSignIsAbsentItsFaultIsOut(String fault, String reading) {
    Diagnosis diagnosis = diagnose(large(), reading);
    assertTrue(probability(diagnosis, fault) < 0.002, fault);
    double before = diagnose(large()).unexplained().probability();
    assertEquals(before, diagnosis.unexplained().probability(), 0.02, fault);
  }
}
