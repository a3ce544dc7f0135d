package kelter.electrical.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.Map;
import kelter.core.diagnosis.FaultModel;
import kelter.core.job.Appliance;
import kelter.electrical.ElectricalModule;
import kelter.electrical.SampleMachines;
import org.junit.jupiter.api.Test;

class BenchTest {

  private static final int TRIALS = 20;

  /** The table in the documentation is the one that the code makes today. */
  @Test
  void theTableOfEffectsIsUpToDate() throws IOException {
    assertEquals(
        FaultEffects.table(),
        Files.readString(FaultEffects.FILE, StandardCharsets.UTF_8),
        "run kelter.electrical.bench.FaultEffects in the folder of the module");
  }

  /**
   * At severity 0.8 hardly a fault is named "healthy": at most one of 20 here, so that the build
   * stays quick. The main method of {@link ConfusionMatrix} tries more.
   */
  @Test
  void severeFaultsAreNotCalledHealthy() {
    for (Appliance appliance : SampleMachines.all()) {
      for (FaultModel model : new ElectricalModule().faultModels(appliance)) {
        Map<String, Map<String, Integer>> matrix =
            new ConfusionMatrix().of(appliance, model, 0.8, TRIALS);
        matrix.forEach(
            (fault, said) -> {
              if (!fault.equals(ConfusionMatrix.HEALTHY)) {
                int healthy = said.getOrDefault(ConfusionMatrix.HEALTHY, 0);
                assertTrue(healthy <= 1, fault + " " + said);
              }
            });
      }
    }
  }
}
