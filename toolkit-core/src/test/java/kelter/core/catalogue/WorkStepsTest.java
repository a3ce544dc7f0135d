package kelter.core.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import kelter.core.file.catalogue.KindFile;
import kelter.core.file.catalogue.WorkStepsFile;
import kelter.core.workshop.Workshop;
import org.junit.jupiter.api.Test;

/** What an owner is told fits the machine. */
class WorkStepsTest {

  private static final Workshop WORKSHOP = Workshop.of(List.of());

  private static List<String> owner(String kind, String part) {
    Optional<Kind> machine = KindFile.shipped(kind, WORKSHOP.vocabulary());
    WorkSteps steps = WorkStepsFile.shipped().on(machine);
    return steps.always().and(steps.of(kind, part, part)).owner();
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

  private static String all(String kind, String part, String component) {
    WorkSteps.Steps steps =
        WorkStepsFile.shipped()
            .on(KindFile.shipped(kind, WORKSHOP.vocabulary()))
            .of(kind, part, component);
    return String.join(
        " ",
        List.of(steps.bring(), steps.open(), steps.look(), steps.traps(), steps.close()).stream()
            .flatMap(List::stream)
            .toList());
  }

  /** Where a heater stands tells how it is got at; common practice, no source. */
  @Test
  void aHeaterIsRenewedAsThePlaceAsks() {
    assertTrue(all("refrigerator", "defrost-heater", "air-heater").contains("thaw the coil"));
    assertTrue(all("oven", "bake-element", "air-heater").contains("behind the wall"));
    assertTrue(all("storage-water-heater", "heater", "heater").contains("anode"));
    assertTrue(all("washing-machine", "heater", "heater").contains("retaining clip"));
    assertTrue(all("tumble-dryer", "air-heater", "air-heater").contains("lint"));
    for (String[] still :
        new String[][] {
          {"refrigerator", "defrost-heater"}, {"oven", "bake-element"}, {"oven", "grill-element"},
          {"hob", "ring-element"}, {"iron", "air-heater"}, {"toaster", "air-heater"}
        }) {
      String steps = all(still[0], still[1], "air-heater");
      assertFalse(steps.contains("lint") || steps.contains("airflow"), steps);
      assertFalse(steps.isEmpty(), still[0]);
    }
    String tank = all("storage-water-heater", "upper-heater", "heater");
    assertFalse(tank.contains("stud") || tank.contains("retaining clip"), tank);
  }
}
