package kelter.hydraulics.bench;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Knowledge;
import kelter.core.diagnosis.simulation.Simulation;
import kelter.core.diagnosis.simulation.SimulationPlan;
import kelter.core.diagnosis.simulation.SimulationReport;
import kelter.core.diagnosis.simulation.World;
import kelter.core.job.Appliance;
import kelter.hydraulics.HydraulicsModule;
import kelter.hydraulics.SampleWaterParts;
import org.junit.jupiter.api.Test;

/** The diagnosis on machines of small parts that are drawn. No reading of them is live work. */
class WaterPartsSimulationTest {

  private static final SimulationPlan PLAN =
      new SimulationPlan(60, 0, 0, 5, 2, World.of(EngineSettings.USUAL));

  /**
   * Of single faults of severity 0.3 or more, at least 85 % come first and 97 % among three, all
   * machines together.
   */
  @Test
  void clearFaultsAreFound() {
    double jobs = 0;
    double first = 0;
    double amongThree = 0;
    for (Appliance appliance : SampleWaterParts.all()) {
      List<FaultModel> models = new HydraulicsModule().parts().faultModels(appliance);
      SimulationReport.Scores scores =
          Simulation.run(
                  appliance, Knowledge.of(models), models, EngineSettings.USUAL, PLAN, done -> {})
              .measured()
              .clearSingles();
      if (scores.jobs() > 0) {
        jobs += scores.jobs();
        first += scores.jobs() * scores.first();
        amongThree += scores.jobs() * scores.amongThree();
      }
    }
    assertTrue(first >= 0.85 * jobs, first + " of " + jobs);
    assertTrue(amongThree >= 0.97 * jobs, amongThree + " of " + jobs);
  }
}
