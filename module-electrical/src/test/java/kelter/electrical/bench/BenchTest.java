package kelter.electrical.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Knowledge;
import kelter.core.diagnosis.simulation.Simulation;
import kelter.core.diagnosis.simulation.SimulationPlan;
import kelter.core.diagnosis.simulation.SimulationReport;
import kelter.core.diagnosis.simulation.World;
import kelter.core.job.Appliance;
import kelter.electrical.ElectricalModule;
import kelter.electrical.SampleMachines;
import org.junit.jupiter.api.Test;

class BenchTest {

  private static final SimulationPlan PLAN =
      new SimulationPlan(40, 0, 0, 6, 2, World.of(EngineSettings.USUAL));

  /** The table in the documentation is the one that the code makes today. */
  @Test
  void theTableOfEffectsIsUpToDate() throws IOException {
    assertEquals(
        FaultEffects.table(),
        Files.readString(FaultEffects.FILE, StandardCharsets.UTF_8),
        "run kelter.electrical.bench.FaultEffects in the folder of the module");
  }

  /**
   * Of single faults of severity 0.3 or more, at least 85 % come first and 97 % among three, all
   * machines together; few machines, so that the build stays quick.
   */
  @Test
  void clearFaultsAreFound() {
    double jobs = 0;
    double first = 0;
    double amongThree = 0;
    for (Appliance appliance : SampleMachines.all()) {
      List<FaultModel> models = new ElectricalModule().parts().faultModels(appliance);
      SimulationReport.Scores scores =
          Simulation.run(
                  appliance, Knowledge.of(models), models, EngineSettings.USUAL, PLAN, done -> {})
              .measured()
              .clearSingles();
      jobs += scores.jobs();
      first += scores.jobs() * scores.first();
      amongThree += scores.jobs() * scores.amongThree();
    }
    assertTrue(first >= 0.85 * jobs, first + " of " + jobs);
    assertTrue(amongThree >= 0.97 * jobs, amongThree + " of " + jobs);
  }
}
