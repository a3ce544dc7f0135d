package kelter.hydraulics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.engine.DiagnosisEngine;
import kelter.core.job.Appliance;
import kelter.core.job.Complaint;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.testkit.Aging;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which faults exclude each other, and which come with age. */
class FaultPairsTest {

  private static Stream<FaultModel> models(Appliance appliance) {
    return new HydraulicsModule().parts().faultModels(appliance).stream();
  }

  /** What is stuck open is not stuck shut; one pressure or reading is not too high and too low. */
  @Test
  void oppositesAreNeverThereTogetherAndAllElseMayBe() {
    Set<String> apart = new TreeSet<>();
    for (Appliance machine : SampleMachines.all()) {
      models(machine)
          .forEach(
              model -> {
                List<Fault> faults = model.faults();
                for (int i = 0; i < faults.size(); i++) {
                  for (int j = 0; j <= i; j++) {
                    assertEquals(model.mayMeet(i, j), model.mayMeet(j, i));
                    if (!model.mayMeet(i, j)) {
                      apart.add(faults.get(j).id() + " " + faults.get(i).id());
                    }
                  }
                }
              });
    }
    assertEquals(
        Set.of("valve-shut valve-open", "supply-weak supply-strong", "drifts-high drifts-low"),
        apart);
  }

  /** What wears is likelier on an old machine beside what happens to machines of any age. */
  @ParameterizedTest
  @CsvSource({
    "drain-pump.impeller-slips, drain-pump.lift-too-high",
    "drain-pump.drag, drain-pump.passages-blocked",
    "drain-pump.hose-leaks, drain-pump.strainer-clogged",
    "inlet-valve.screen-clogged, inlet-valve.hose-kinked",
    "inlet-valve.leaks-by, inlet-valve.supply-weak",
    "wash-pump.drag, wash-pump.inlet-clogged",
    "wash-pump.jets-clogged, wash-pump.low-water"
  })
  void wearComesWithAgeAndMishapsDoNot(String wears, String ageless) {
    new Aging(SampleMachines.all(), machine -> models(machine).toList())
        .assertComesWithAge(wears, ageless);
  }

  static Diagnosis diagnose(
      Appliance machine, EngineSettings settings, Measurement... measurements) {
    Job job =
        new Job(
            "job-1",
            "",
            machine,
            new Complaint("something is wrong", ""),
            List.of(),
            List.of(measurements),
            Optional.empty());
    return new DiagnosisEngine(settings).diagnose(job, models(machine).toList());
  }
}
