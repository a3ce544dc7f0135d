package kelter.core.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import kelter.core.file.KindFile;
import kelter.core.file.WorkStepsFile;
import kelter.core.workshop.Workshop;
import org.junit.jupiter.api.Test;

/** What an owner is told fits the machine. */
class WorkStepsTest {

  private static final Workshop WORKSHOP = Workshop.of(List.of());

  private static List<String> owner(String kind, String part) {
    Optional<Kind> machine = KindFile.shipped(kind, WORKSHOP.vocabulary());
    WorkSteps steps = WorkStepsFile.shipped().on(machine);
    return steps.always().and(steps.of(part)).owner();
  }

  @Test
  void nobodyIsToldToPullAPlugThatIsNotThere() {
    String oven = String.join(" ", owner("oven", "supply-cord"));

    assertFalse(oven.contains("plug"), oven);
    assertTrue(oven.contains("switch its circuit off at the board, call"), oven);
  }

  @Test
  void aPlugIsPulledWhereThereIsOne() {
    String dryer = String.join(" ", owner("tumble-dryer", "supply-cord"));

    assertTrue(dryer.contains("pull the plug, call"), dryer);
    assertTrue(dryer.contains("Use no extension cord"), dryer);
    assertFalse(dryer.contains("{"), dryer);
  }

  @Test
  void lintIsForDryers() {
    assertTrue(String.join(" ", owner("tumble-dryer", "air-heater")).contains("lint"));
    assertEquals(
        List.of(), owner("oven", "air-heater").stream().filter(t -> t.contains("int")).toList());
  }
}
