package kelter.electrical;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import kelter.core.check.DecisionRule;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Remedy;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Reading;
import kelter.core.module.Calculation;
import kelter.core.module.CalculationModule;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.core.source.Standing;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Vocabulary;
import org.junit.jupiter.api.Test;

class ElectricalModuleTest {

  private static final Pattern PROMISE =
      Pattern.compile(
          "\\b(un)?safe(r|st|ly|ty)?\\b|\\bcomplian(t|ce)\\b|\\bcompl(y|ies|ied|ying)\\b"
              + "|\\b(harmless|riskless|danger-free|without danger|no danger)\\b",
          Pattern.CASE_INSENSITIVE);

  /** Words by which a source says that it was seen in another work. */
  private static final Pattern SEEN_ELSEWHERE =
      Pattern.compile("\\b(cites?|cited|second-hand|summary)\\b|as [a-z -]+ print");

  private final ElectricalModule module = new ElectricalModule();

  @Test
  void theDescriptorProvidesIt() {
    assumeTrue(ElectricalModule.class.getModule().isNamed(), "a class path has no descriptors");
    assertTrue(
        ElectricalModule.class.getModule().getDescriptor().provides().stream()
            .filter(provides -> provides.service().equals(CalculationModule.class.getName()))
            .anyMatch(provides -> provides.providers().contains(ElectricalModule.class.getName())));
  }

  @Test
  void idsAreUnique() {
    Set<String> ids = new HashSet<>();
    for (Calculation calculation : module.calculations()) {
      assertTrue(ids.add(calculation.id()), calculation.id());
    }
    new Vocabulary(module.parts().kinds());
  }

  @Test
  void noTextPromisesAnything() {
    List<String> texts = new ArrayList<>();
    collect(module.about(), texts, 0);
    collect(module.calculations(), texts, 0);
    collect(module.parts().kinds(), texts, 0);
    for (FaultModel model : module.parts().faultModels(machine())) {
      collect(model.faults(), texts, 0);
    }
    module
        .parts()
        .checks()
        .forEach(
            check -> {
              texts.add(check.title());
              collect(check.apply(readings(), DecisionRule.USUAL), texts, 0);
            });
    for (FaultModel model : module.parts().faultModels(machine())) {
      collect(model.questions(), texts, 0);
    }
    assertTrue(texts.size() > 1500, "only " + texts.size() + " texts were read");
    for (String text : texts) {
      assertFalse(PROMISE.matcher(text).find(), text);
    }
  }

  @Test
  void theSearchForPromisesFindsThem() {
    assertTrue(PROMISE.matcher("The machine is safe.").find());
    assertTrue(PROMISE.matcher("Compliant with EN 50678").find());
    assertTrue(PROMISE.matcher("It is safer with the plug out, and harmless.").find());
    assertFalse(PROMISE.matcher("The value conforms to the limit.").find());
  }

  @Test
  void everyLiveOrDeadProcedureHasACaution() {
    module.parts().kinds().stream()
        .flatMap(kind -> kind.observables().stream())
        .filter(o -> o.procedure().hazard() != kelter.core.safety.Hazard.NONE)
        .forEach(o -> assertFalse(o.procedure().cautions().isEmpty(), o.id()));
  }

  /** A dryer has no water about its heater, and no capacitor of a microwave oven. */
  @Test
  void noCautionOfOneMachineOnAnother() {
    Appliance dryer =
        Jobs.appliance(
            Jobs.component(
                "air-heater",
                "air-heater",
                Optional.of(Quantity.of(2.4, "kW", QuantityKind.POWER)),
                Map.of()),
            Jobs.component("link", "thermal-link"),
            Jobs.sensor(),
            Jobs.motor(),
            Jobs.component("capacitor", "run-capacitor"),
            Jobs.component("cord", "supply-cord"));
    Vocabulary words = new Vocabulary(module.parts().kinds());
    List<Caution> all = new ArrayList<>();
    for (Component part : dryer.components()) {
      for (Observable observable : words.kind(part.kind()).orElseThrow().observables()) {
        all.addAll(observable.procedure().cautions());
      }
    }
    for (FaultModel model : module.parts().faultModels(dryer)) {
      for (Fault fault : model.faults()) {
        for (Remedy remedy : fault.remedies()) {
          all.addAll(remedy.cautions());
          assertFalse(remedy.title().contains("seal"), remedy.title());
        }
      }
    }
    for (Calculation calculation : module.calculations()) {
      if (calculation.id().equals("motor-slip")) {
        all.addAll(calculation.cautions());
      }
    }
    for (Caution caution : all) {
      assertFalse(caution.text().contains("water"), caution.text());
      assertFalse(caution.text().contains("microwave"), caution.text());
    }
  }

  @Test
  void everyPartHasARemedyWithACaution() {
    module.parts().faultModels(machine()).stream()
        .flatMap(model -> model.faults().stream())
        .flatMap(fault -> fault.remedies().stream())
        .forEach(remedy -> assertFalse(remedy.cautions().isEmpty(), remedy.id()));
  }

  private static Appliance machine() {
    return Jobs.appliance(
        Jobs.heater(),
        Jobs.component(
            "dryer-heater",
            "air-heater",
            Optional.of(Quantity.of(2.4, "kW", QuantityKind.POWER)),
            Map.of("elements", Quantity.of(2, "1", QuantityKind.RATIO))),
        Jobs.component("link", "thermal-link"),
        Jobs.component("relay", "relay"),
        Jobs.sensor(),
        Jobs.component("cord", "supply-cord"),
        Jobs.component("supply", "supply"),
        Jobs.component("door", "door-switch"),
        Jobs.motor(),
        Jobs.component(
            "capacitor",
            "run-capacitor",
            Optional.empty(),
            Map.of("capacitance", Quantity.of(16, "uF", QuantityKind.CAPACITANCE))),
        Jobs.component(
            "valve",
            "solenoid",
            Optional.empty(),
            Map.of("coil-resistance", Quantity.of(3800, "Ohm", QuantityKind.RESISTANCE))),
        Jobs.component("tube", "high-voltage-capacitor"),
        Jobs.component("burner", "gas-part"),
        Jobs.component("pipes", "refrigerant-circuit"),
        Jobs.component("outlet", "fixed-wiring"));
  }

  private static kelter.core.job.Job readings() {
    Reading open = new Reading.OverRange();
    Reading shorted = Jobs.value(0.3, "Ohm", QuantityKind.RESISTANCE, 0.1);
    return Jobs.job(
        machine(),
        Jobs.measurement("heater", "resistance", open),
        Jobs.measurement("heater", "resistance", shorted),
        Jobs.measurement("heater", "insulation-resistance", shorted),
        Jobs.measurement("motor", "insulation-resistance", shorted),
        Jobs.measurement("cord", "insulation-resistance", shorted),
        Jobs.measurement("cord", "protective-conductor-resistance", open),
        Jobs.measurement("link", "resistance", open),
        Jobs.measurement("door", "closed-resistance", open),
        Jobs.measurement("sensor", "resistance", open),
        Jobs.measurement("heater", "power", open),
        Jobs.measurement("heater", "current", open),
        Jobs.measurement("motor", "winding-resistance", open),
        Jobs.measurement("capacitor", "capacitance", shortedCapacitor()),
        Jobs.measurement("supply", "voltage-idle", open),
        Jobs.measurement("supply", "voltage-loaded", open),
        Jobs.measurement("cord", "protective-conductor-current", open),
        Jobs.measurement("cord", "touch-current", open),
        Jobs.measurement("heater", "voltage", open),
        Jobs.measurement("heater", "heating-rate", open),
        Jobs.measurement("dryer-heater", "air-temperature-rise", open),
        Jobs.measurement("sensor", "shown-error", open),
        Jobs.measurement("relay", "voltage-drop", open),
        Jobs.measurement("heater", "joint-drop", open),
        Jobs.measurement("cord", "voltage-drop", open),
        Jobs.measurement("motor", "current", open),
        Jobs.measurement("motor", "auxiliary-resistance", open),
        Jobs.measurement("valve", "coil-resistance", open));
  }

  private static Reading shortedCapacitor() {
    return Jobs.value(0.1, "uF", QuantityKind.CAPACITANCE, 0.1);
  }

  /** Every text in a record, a list, a map or an optional, whatever their depth. */
  private static void collect(Object value, List<String> texts, int depth) {
    assertTrue(depth < 20);
    if (value instanceof String text) {
      texts.add(text);
    } else if (value instanceof Collection<?> all) {
      all.forEach(one -> collect(one, texts, depth + 1));
    } else if (value instanceof Optional<?> optional) {
      optional.ifPresent(one -> collect(one, texts, depth + 1));
    } else if (value instanceof Record) {
      for (RecordComponent part : value.getClass().getRecordComponents()) {
        collect(read(value, part), texts, depth + 1);
      }
    }
  }

  private static Object read(Object value, RecordComponent part) {
    try {
      return part.getAccessor().invoke(value);
    } catch (ReflectiveOperationException hidden) {
      throw new AssertionError(value.getClass() + "." + part.getName(), hidden);
    }
  }

  @Test
  void aboutNamesTheModule() {
    assertEquals("electrical", module.about().id());
  }

  /** What a source says of itself is not stronger than its words. */
  @Test
  void noSourceIsMarkedStrongerThanItsWords() {
    for (Calculation calculation : module.calculations()) {
      Source source = calculation.source();
      if (source.document().contains("from memory")) {
        assertEquals(Standing.FROM_MEMORY, source.standing(), calculation.id());
      }
      if (SEEN_ELSEWHERE.matcher(source.document()).find()) {
        assertNotEquals(Standing.PUBLISHED, source.standing(), calculation.id());
      }
    }
  }
}
