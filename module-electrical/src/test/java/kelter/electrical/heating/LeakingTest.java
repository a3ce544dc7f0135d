package kelter.electrical.heating;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.engine.DiagnosisEngine;
import kelter.core.job.Appliance;
import kelter.core.job.Complaint;
import kelter.core.job.Component;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.Reading;
import kelter.core.quantity.QuantityKind;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.electrical.ElectricalModule;
import kelter.electrical.Jobs;
import org.junit.jupiter.api.Test;

/**
 * Whatever insulation can be read has a fault that explains a low one, and a remedy. 0.1 MOhm is
 * below every limit of EN 50678 (0.25 MOhm of class III is the least, from memory).
 */
class LeakingTest {

  private static final ElectricalModule MODULE = new ElectricalModule();
  private static final String INSULATION = "insulation-resistance";

  private static Measurement low(String component) {
    Reading reading = Jobs.value(0.1, "MOhm", QuantityKind.INSULATION_RESISTANCE, 0.01);
    return Jobs.measurement(component, INSULATION, reading);
  }

  private static Diagnosis diagnose(Appliance machine, Measurement... measurements) {
    Job job =
        new Job(
            "job-1",
            "",
            machine,
            new Complaint("does not drain", ""),
            List.of(),
            List.of(measurements),
            Optional.empty());
    return new DiagnosisEngine(EngineSettings.USUAL)
        .diagnose(job, MODULE.parts().faultModels(machine));
  }

  private static String first(Diagnosis diagnosis) {
    return diagnosis.faults().get(0).fault().key();
  }

  @Test
  void anApplianceWithoutAHeaterLeaksByItself() {
    Appliance machine = Jobs.appliance(Jobs.motor(), Jobs.component("cord", "supply-cord"));
    Diagnosis diagnosis = diagnose(machine, low("cord"));
    assertEquals("cord.other-leak", first(diagnosis));
    Fault leak = diagnosis.faults().get(0).fault();
    assertEquals("find-leak", leak.remedies().get(0).id());
    assertTrue(leak.remedies().get(0).cautions().get(0).text().contains("Pull the plug"));
  }

  @Test
  void aHeaterWithoutARatingLeaks() {
    Appliance machine = Jobs.appliance(Jobs.component("heater", "heater"));
    assertEquals("heater.leaking", first(diagnose(machine, low("heater"))));
  }

  @Test
  void everyKindWhoseInsulationCanBeReadHasAFaultForIt() {
    for (ComponentKind kind : MODULE.parts().kinds()) {
      for (Observable observable : kind.observables()) {
        if (observable.kind().equals(QuantityKind.INSULATION_RESISTANCE)) {
          Component part = Jobs.component("part", kind.id());
          assertEquals("part", diagnosed(part), kind.id());
        }
      }
    }
  }

  /** The part to which the likeliest fault belongs. */
  private static String diagnosed(Component part) {
    return diagnose(Jobs.appliance(part), low("part")).faults().get(0).fault().component();
  }

  @Test
  void noReadingIsForecastTwice() {
    Appliance machine =
        Jobs.appliance(
            Jobs.heater(), Jobs.component("cord", "supply-cord"), Jobs.component("link", "relay"));
    long asked =
        MODULE.parts().faultModels(machine).stream()
            .map(FaultModel::questions)
            .flatMap(List::stream)
            .filter(question -> question.key().equals("cord." + INSULATION))
            .count();
    assertEquals(1, asked);
    assertEquals("heater", MODULE.parts().faultModels(machine).get(0).id());
  }
}
