package kelter.cli.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;
import kelter.cli.json.output.MadeBy;
import kelter.cli.wiring.Found;
import kelter.core.catalogue.Kind;
import kelter.core.catalogue.KindCause;
import kelter.core.catalogue.KindPart;
import kelter.core.check.Check;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.Remedy;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonText;
import kelter.core.module.Calculation;
import kelter.core.module.CalculationModule;
import kelter.core.quantity.Unit;
import kelter.core.safety.Caution;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.CurveKind;
import kelter.core.vocabulary.Meaning;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Symptom;
import kelter.core.workshop.Case;
import kelter.core.workshop.Workshop;
import org.junit.jupiter.api.Test;

/** What {@code kelter modules} tells as JSON, held against the vocabulary itself. */
class ModulesVocabularyTest {

  private static final Workshop WORKSHOP = Workshop.of(Found.usual().modules());
  private static final Json.Obj TOLD =
      (Json.Obj)
          JsonText.read(
              ModulesJson.of(WORKSHOP, List.of())
                  .text(new MadeBy("1", List.of()))
                  .getBytes(StandardCharsets.UTF_8),
              "modules",
              "");

  private static List<Json> array(Json object, String name) {
    return ((Json.Arr) ((Json.Obj) object).members().get(name)).items();
  }

  private static String text(Json object, String name) {
    return ((Json.Str) ((Json.Obj) object).members().get(name)).text();
  }

  private static List<String> ids(Json object, String name) {
    return array(object, name).stream().map(each -> text(each, "id")).toList();
  }

  private static <T> List<String> of(Collection<T> all, Function<T, String> id) {
    return all.stream().map(id).toList();
  }

  @Test
  void everyKindOfMachineHasItsPartsAndCauses() {
    List<String> kinds = List.copyOf(WORKSHOP.kinds().ids());
    assertEquals(kinds, ids(TOLD, "kinds"));
    for (Json told : array(TOLD, "kinds")) {
      Kind kind = WORKSHOP.kinds().kind(text(told, "id")).orElseThrow();
      assertEquals(of(kind.parts(), KindPart::id), ids(told, "parts"));
      assertEquals(of(kind.causes(), KindCause::fault), ids(told, "causes"));
    }
  }

  @Test
  void everyKindOfComponentHasAllThatCanBeStated() {
    List<ComponentKind> kinds = List.copyOf(WORKSHOP.vocabulary().kinds());
    assertEquals(of(kinds, ComponentKind::id), ids(TOLD, "components"));
    for (int i = 0; i < kinds.size(); i++) {
      Json told = array(TOLD, "components").get(i);
      assertEquals(of(kinds.get(i).figures(), Characteristic::id), ids(told, "figures"));
      assertEquals(of(kinds.get(i).curves(), CurveKind::id), ids(told, "curves"));
      assertEquals(of(kinds.get(i).observables(), Observable::id), ids(told, "observables"));
      for (int k = 0; k < kinds.get(i).observables().size(); k++) {
        Observable observable = kinds.get(i).observables().get(k);
        Json one = array(told, "observables").get(k);
        assertEquals(of(observable.conditions(), Characteristic::id), ids(one, "conditions"));
        assertEquals(
            observable.grades(),
            array(one, "grades").stream().map(each -> ((Json.Str) each).text()).toList());
      }
    }
  }

  @Test
  void everyWordOfComplaintsAndEveryUnitIsThere() {
    assertEquals(
        of(List.copyOf(WORKSHOP.vocabulary().symptoms()), Symptom::id), ids(TOLD, "symptoms"));
    assertEquals(of(List.of(Meaning.values()), Meaning::id), ids(TOLD, "meanings"));
    assertEquals(
        Unit.symbols(),
        array(TOLD, "units").stream().map(each -> ((Json.Str) each).text()).toList());
  }

  @Test
  void everyModuleHasItsCalculationsAndChecks() {
    for (int i = 0; i < WORKSHOP.modules().size(); i++) {
      CalculationModule module = WORKSHOP.modules().get(i);
      Json told = array(TOLD, "modules").get(i);
      assertEquals(of(module.calculations(), Calculation::id), ids(told, "calculations"));
      List<String> checks = module.parts().checks().stream().map(Check::id).distinct().toList();
      assertEquals(checks, ids(told, "checks"));
    }
  }

  @Test
  void everyCautionIsThereOnceAndHasItsLevel() {
    List<String> ids = ids(TOLD, "cautions");
    assertEquals(of(WORKSHOP.cautions(), Caution::id), ids);
    assertEquals(ids.size(), new HashSet<>(ids).size(), ids.toString());
    Map<String, String> levels = new TreeMap<>();
    array(TOLD, "cautions").forEach(each -> levels.put(text(each, "id"), text(each, "level")));
    assertEquals("danger", levels.get("unplug"));
    assertEquals("warning", levels.get("hot-water"));
    assertEquals("danger", levels.get("lock-out-gas-smell"));
  }

  /** Faults and remedies, as the demo's jobs and a bare machine of each kind have them. */
  @Test
  void everyFaultAndRemedyOfAnyMachineIsThere() throws IOException {
    Map<String, Set<String>> faults = new TreeMap<>();
    Map<String, Set<String>> remedies = new TreeMap<>();
    for (Json each : array(TOLD, "components")) {
      faults.put(text(each, "id"), new HashSet<>(ids(each, "faults")));
      remedies.put(text(each, "id"), new HashSet<>(ids(each, "remedies")));
    }
    int seen = 0;
    for (Case machine : machines()) {
      for (Fault fault : machine.faults()) {
        var part = machine.job().appliance().component(fault.component());
        if (part.isPresent()) {
          String kind = part.get().kind();
          assertTrue(faults.get(kind).contains(fault.id()), fault.key());
          for (Remedy remedy : fault.remedies()) {
            assertTrue(remedies.get(kind).contains(remedy.id()), remedy.key());
          }
          seen++;
        }
      }
    }
    assertFalse(seen < 1000, "faults seen: " + seen);
  }

  private static List<Case> machines() throws IOException {
    List<Case> machines = new ArrayList<>();
    for (String kind : WORKSHOP.kinds().ids()) {
      String job =
          "{\"format\": \"kelter-job/2\", \"id\": \"x\", \"appliance\": {\"kind\": \"%s\"}}"
              .formatted(kind);
      machines.add(
          WORKSHOP.open(
              WORKSHOP.read(JsonText.read(job.getBytes(StandardCharsets.UTF_8), "x", "")).job()));
    }
    try (Stream<Path> jobs = Files.list(Path.of("..", "demo", "jobs"))) {
      jobs.sorted().forEach(job -> machines.add(WORKSHOP.open(WORKSHOP.read(job))));
    }
    return machines;
  }

  @Test
  void idsOfResultsAreKebabCaseAndOnceInEachVocabulary() {
    for (Json words : array(TOLD, "words")) {
      List<String> ids = ids(words, "values");
      assertFalse(ids.isEmpty(), text(words, "member"));
      assertEquals(ids.size(), new HashSet<>(ids).size(), text(words, "member"));
      ids.forEach(id -> assertTrue(id.matches("[a-z0-9]+(-[a-z0-9]+)*"), id));
    }
  }
}
