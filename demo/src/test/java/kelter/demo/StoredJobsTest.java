package kelter.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.ServiceLoader;
import kelter.core.module.CalculationModule;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import kelter.core.workshop.Workshop;
import org.junit.jupiter.api.Test;

class StoredJobsTest {

  private static final String ROW =
      """
      {"format": "kelter-job/2", "id": "row-17",
       "appliance": {"kind": "tumble-dryer", "age": "9 years"},
       "symptoms": {"stays-cold": "yes"}}
      """;

  private final StoredJobs jobs =
      new StoredJobs(Workshop.of(ServiceLoader.load(CalculationModule.class)));

  /** The job lists no part: the heater is one that such dryers have. */
  @Test
  void aReadingIsEntered() {
    String told = jobs.entered(ROW, "air-heater", "lint", "thick");
    assertTrue(told.contains("\"id\": \"row-17\""), told);
    assertTrue(told.contains("\"observable\": \"lint\""), told);
    assertNotEquals(jobs.next(ROW), jobs.next(told));
  }

  private static List<Problem> refused(Runnable asked) {
    return assertThrows(InputException.class, asked::run).problems();
  }

  @Test
  void mistakesHaveTheirPlace() {
    Problem unit = refused(() -> jobs.entered(ROW, "air-heater", "resistance", "3 kg")).get(0);
    assertEquals("/measurements/0/reading", unit.where());
    Problem part = refused(() -> jobs.entered(ROW, "burner", "lint", "thick")).get(0);
    assertEquals("/measurements/0/of", part.where());
    Problem row = refused(() -> jobs.next("{\"format\":")).get(0);
    assertEquals("not-json", row.mistake().id());
    assertEquals(1, row.place().line());
  }

  @Test
  void aRowThatIsTooLongIsRefused() {
    Problem told = refused(() -> jobs.next(" ".repeat((4 << 20) + 1))).get(0);
    assertEquals("is larger than 4 MB", told.what());
  }

  /** No list of parts to choose from, where a machine has none. */
  @Test
  void aMachineOfNoKnownKindHasNoParts() {
    Problem told =
        refused(() -> jobs.entered(ROW.replace("tumble-dryer", "loom"), "heater", "lint", "none"))
            .get(0);
    assertEquals("known: none", told.remedy());
  }
}
