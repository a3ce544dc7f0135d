package kelter.core.catalogue;

import static kelter.core.catalogue.Boats.KNOWN;
import static kelter.core.catalogue.Boats.STATED;
import static kelter.core.catalogue.Boats.boat;
import static kelter.core.catalogue.Boats.curve;
import static kelter.core.catalogue.Boats.head;
import static kelter.core.catalogue.Boats.model;
import static kelter.core.catalogue.Boats.part;
import static kelter.core.catalogue.Boats.plate;
import static kelter.core.catalogue.Boats.pump;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Nameplate;
import kelter.core.source.Source;
import kelter.core.source.Standing;
import kelter.core.vocabulary.Meaning;
import org.junit.jupiter.api.Test;

/** What a model fits, and how it fills a machine where the job is silent. */
class MachineModelTest {

  private static final Nameplate NONE = Nameplate.UNREADABLE;

  private static final Component KNOWN_PUMP =
      part(
          "pump",
          "bilge-pump",
          Map.of("lift", head("1 m"), "bore", head("2 cm")),
          Map.of("head", curve("3 m", "2 m")),
          KNOWN);

  @Test
  void caseSpacesAndHyphensDoNotMatterInNames() {
    MachineModel model = model(NONE);

    assertTrue(model.fits(boat("OSTVIK", "b-2", NONE)));
    assertTrue(model.fits(boat("ost vik", "B\u00a02", NONE)));
    assertTrue(model.fits(boat("Ost\u2011Vik", "bilgeboy", NONE)));
    assertFalse(model.fits(boat("Ostvik", "B2a", NONE)));
    assertFalse(model.fits(boat("", "B2", NONE)));
    assertFalse(model.fits(boat("Ostvik", "", NONE)));
  }

  @Test
  void anotherKindOrAnotherMainsIsAnotherMachine() {
    MachineModel model = model(plate("220-240 V", ""));

    assertTrue(model.fits(boat("Ostvik", "B2", plate("230 V", ""))));
    assertTrue(model.fits(boat("Ostvik", "B2", plate("208 V", ""))));
    assertTrue(model.fits(boat("Ostvik", "B2", NONE)));
    assertFalse(model.fits(boat("Ostvik", "B2", plate("120 V", ""))));
    Appliance other = new Appliance("winch", "Ostvik", "B2", "", Optional.empty(), NONE, List.of());
    assertFalse(model.fits(other));
    assertSame(other, model.complete(other));
    assertEquals(1, new Models(List.of(model)).complete(other).notes().size());
  }

  @Test
  void whatTheJobStatesWinsFigureByFigure() {
    Component own = pump("pump", Map.of("lift", head("0.8 m")), STATED);

    Component filled =
        model(NONE, KNOWN_PUMP)
            .complete(boat("Ostvik", "B2", NONE, own))
            .component("pump")
            .orElseThrow();

    assertEquals(head("0.8 m"), filled.figure("lift").orElseThrow());
    assertEquals(head("2 cm"), filled.figure("bore").orElseThrow());
    assertEquals(curve("3 m", "2 m"), filled.curve("head").orElseThrow());
    assertEquals(
        new Source("service sheet 3; further figures: measured at the quay", Standing.MEASURED),
        filled.source());
  }

  @Test
  void aComponentWithoutFiguresHasTheSourceOfTheModelAndAFullOneItsOwn() {
    MachineModel model = model(NONE, KNOWN_PUMP);
    Component bare = pump("pump", Map.of(), STATED);
    Component full =
        part(
            "pump",
            "bilge-pump",
            Map.of("lift", head("2 m"), "bore", head("3 cm")),
            Map.of("head", curve("4 m", "3 m")),
            STATED);

    assertEquals(
        List.of(KNOWN_PUMP), model.complete(boat("Ostvik", "B2", NONE, bare)).components());
    Appliance stated = boat("Ostvik", "B2", NONE, full);
    assertEquals(stated, model.complete(stated));
  }

  @Test
  void aComponentThatTheJobLacksIsAddedUnlessItMayBeThereUnderAnotherName() {
    MachineModel one = model(NONE, KNOWN_PUMP);
    MachineModel two = model(NONE, KNOWN_PUMP, pump("pump-2", Map.of(), KNOWN));

    assertEquals(List.of(KNOWN_PUMP), one.complete(boat("Ostvik", "B2", NONE)).components());

    Appliance other = boat("Ostvik", "B2", NONE, pump("aft", Map.of(), STATED));
    List<Component> onlyOne = one.complete(other).components();
    assertEquals(1, onlyOne.size());
    assertEquals("aft", onlyOne.get(0).id());
    assertEquals(head("1 m"), onlyOne.get(0).figure("lift").orElseThrow());

    assertEquals(other, two.complete(other));
    assertEquals(
        List.of("pump", "pump-2"),
        two
            .complete(boat("Ostvik", "B2", NONE, pump("pump", Map.of(), STATED)))
            .components()
            .stream()
            .map(Component::id)
            .toList());
    Appliance taken = boat("Ostvik", "B2", NONE, part("pump", "horn", Map.of(), Map.of(), STATED));
    assertEquals(taken, one.complete(taken));
  }

  @Test
  void ratingsAreNotTakenToAnotherVoltage() {
    MachineModel model = model(plate("220-240 V", "400 W"));

    assertEquals(
        plate("220-240 V", "400 W"), model.complete(boat("Ostvik", "B2", NONE)).nameplate());
    assertEquals(
        plate("230 V", ""), model.complete(boat("Ostvik", "B2", plate("230 V", ""))).nameplate());
    assertEquals(
        plate("220-240 V", "380 W"),
        model.complete(boat("Ostvik", "B2", plate("", "380 W"))).nameplate());
  }

  @Test
  void aCodeMeansWhatTheModelSays() {
    MachineModel model =
        new MachineModel(
            "bilge-unit",
            "Ostvik",
            "B2",
            List.of(),
            NONE,
            List.of(),
            Map.of("F-12", Meaning.HEAT),
            KNOWN);

    assertEquals(Optional.of(Meaning.HEAT), model.meaning("f 12"));
    assertEquals(Optional.empty(), model.meaning("F-1"));
  }

  @Test
  void twoModelsOfOneMachineMeet() {
    MachineModel model = model(plate("230 V", ""));
    assertTrue(model.meets(model));
    assertTrue(model.meets(named("B2", List.of("Boy"), "")));
    assertTrue(model.meets(named("Boy", List.of("Bilge-Boy"), "")));
    assertFalse(model.meets(named("Boy", List.of(), "")));
    assertFalse(model.meets(named("B2", List.of(), "120 V")));
  }

  private static MachineModel named(String name, List<String> also, String voltage) {
    return new MachineModel(
        "bilge-unit", "Ostvik", name, also, plate(voltage, ""), List.of(), Map.of(), KNOWN);
  }

  @Test
  void aNameHasALetterOrADigit() {
    for (String name : new String[] {"", " ", " - "}) {
      assertThrows(IllegalArgumentException.class, () -> named(name, List.of(), ""), name);
      assertThrows(IllegalArgumentException.class, () -> named("B2", List.of(name), ""), name);
    }
  }
}
