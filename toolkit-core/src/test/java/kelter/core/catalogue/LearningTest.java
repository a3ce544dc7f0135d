package kelter.core.catalogue;

import static kelter.core.catalogue.Boats.STATED;
import static kelter.core.catalogue.Boats.boat;
import static kelter.core.catalogue.Boats.curve;
import static kelter.core.catalogue.Boats.flow;
import static kelter.core.catalogue.Boats.head;
import static kelter.core.catalogue.Boats.ohm;
import static kelter.core.catalogue.Boats.part;
import static kelter.core.catalogue.Boats.pump;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.job.Appliance;
import kelter.core.job.Complaint;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.Nameplate;
import kelter.core.job.Reading;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.QuantityParser;
import kelter.core.safety.Hazard;
import kelter.core.source.Source;
import kelter.core.source.Standing;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.CurveKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Vocabulary;
import org.junit.jupiter.api.Test;

/** What readings of a machine in order become. */
class LearningTest {

  private static final Procedure LOOK =
      new Procedure("Look.", 1, Hazard.NONE, new Accuracy(0.02, 0), List.of());

  private static final Characteristic WARMTH =
      new Characteristic("temperature", "temperature", QuantityKind.TEMPERATURE);

  private static final Vocabulary WORDS =
      new Vocabulary(
          List.of(
              new ComponentKind(
                  "bilge-pump",
                  "bilge pump",
                  List.of(
                      Observable.named("head", "head")
                          .quantity(QuantityKind.HEAD, 0, 20)
                          .at(new Characteristic("flow", "flow", QuantityKind.FLOW), WARMTH)
                          .by(LOOK),
                      Observable.named("winding-resistance", "winding")
                          .quantity(QuantityKind.RESISTANCE, 0, 1e4)
                          .at(WARMTH)
                          .by(LOOK),
                      Observable.named("lift", "lift").by(LOOK)),
                  List.of(
                      new Characteristic(
                          "winding-resistance", "winding at 20 °C", QuantityKind.RESISTANCE),
                      new Characteristic("lift", "lift", QuantityKind.HEAD)),
                  List.of(new CurveKind("head", "head", QuantityKind.FLOW, QuantityKind.HEAD))),
              new ComponentKind("horn", "horn", List.of(), List.of(), List.of())));

  private static Measurement read(String observable, Map<String, Quantity> at, Quantity... values) {
    List<Reading> readings = new ArrayList<>();
    for (Quantity value : values) {
      readings.add(new Reading.Value(value, 0));
    }
    return new Measurement("pump", observable, readings, new Conditions(at), Optional.empty(), "");
  }

  private static Map<String, Quantity> at(String celsius) {
    return Map.of("temperature", QuantityParser.parse(celsius, QuantityKind.TEMPERATURE));
  }

  private static MachineModel learned(Appliance stated, Measurement... measurements) {
    Job job =
        new Job(
            "b-18",
            "2026-03-02",
            stated,
            Complaint.NONE,
            List.of(),
            List.of(measurements),
            Optional.empty());
    return Learning.of(job, stated, WORDS);
  }

  private static Component learnedPump(Map<String, Quantity> own, Measurement... measurements) {
    return learned(
            boat("Ostvik", "B2", Nameplate.UNREADABLE, pump("pump", own, STATED)), measurements)
        .components()
        .get(0);
  }

  @Test
  void copperIsBroughtToTwentyDegreesOnlyWhereTheReadingTellsItsTemperature() {
    // 10 Ohm at 45 °C is 10 / (1 + 0.00393 * 25) = 9.105 Ohm at 20 °C.
    Component warm = learnedPump(Map.of(), read("winding-resistance", at("45 Cel"), ohm("10 Ohm")));
    Component untold = learnedPump(Map.of(), read("winding-resistance", Map.of(), ohm("10 Ohm")));

    assertEquals(9.105, warm.figure("winding-resistance").orElseThrow().value());
    assertEquals(10, untold.figure("winding-resistance").orElseThrow().value());
    assertEquals(
        new Source("measured on a machine in order, job b-18, 2026-03-02", Standing.MEASURED),
        warm.source());
  }

  @Test
  void severalReadingsCountAsTheirMeanAndWhatIsNoValueAsNothing() {
    Component mean =
        learnedPump(
            Map.of(),
            read("winding-resistance", Map.of(), ohm("10 Ohm"), ohm("11 Ohm")),
            read("winding-resistance", Map.of(), ohm("12 Ohm")));
    Measurement open =
        new Measurement(
            "pump",
            "winding-resistance",
            List.of(new Reading.OverRange()),
            Conditions.NONE,
            Optional.empty(),
            "");

    assertEquals(11, mean.figure("winding-resistance").orElseThrow().value());
    assertTrue(learnedPump(Map.of(), open).figures().isEmpty());
    assertTrue(
        learnedPump(Map.of(), read("winding-resistance", at("900 Cel"), ohm("1 Ohm")))
            .figures()
            .isEmpty());
  }

  @Test
  void aCurveNeedsTwoPointsThatTellWhereTheyStand() {
    Measurement shut = read("head", Map.of("flow", flow("0 L/min")), head("3.1 m"), head("2.9 m"));
    Measurement open = read("head", Map.of("flow", flow("20 L/min")), head("2 m"));
    Measurement untold = read("head", Map.of(), head("9 m"));

    assertEquals(
        curve("3 m", "2 m"), learnedPump(Map.of(), open, shut, untold).curve("head").orElseThrow());
    assertTrue(learnedPump(Map.of(), shut, untold).curves().isEmpty());
  }

  @Test
  void whatTheJobStatesIsCarriedOverWithItsSourceAndNotLearnedAnew() {
    Map<String, Quantity> own = Map.of("winding-resistance", ohm("12 Ohm"));
    Component both = learnedPump(own, read("winding-resistance", Map.of(), ohm("10 Ohm")));

    assertEquals(own, both.figures());
    assertEquals(STATED, both.source());
  }

  @Test
  void aComponentThatTheJobDoesNotStateIsLearnedOnlyFromReadings() {
    Appliance stated =
        boat(
            "Ostvik", "B2", Nameplate.UNREADABLE, part("horn", "horn", Map.of(), Map.of(), STATED));
    Job job =
        new Job(
            "b-18",
            "",
            boat(
                "Ostvik",
                "B2",
                Nameplate.UNREADABLE,
                part("horn", "horn", Map.of(), Map.of(), STATED),
                pump("pump", Map.of("lift", head("1 m")), Boats.KNOWN),
                pump("pump-2", Map.of("lift", head("1 m")), Boats.KNOWN)),
            Complaint.NONE,
            List.of(),
            List.of(read("winding-resistance", Map.of(), ohm("10 Ohm"))),
            Optional.empty());

    List<Component> learned = Learning.of(job, stated, WORDS).components();

    assertEquals(List.of("horn", "pump"), learned.stream().map(Component::id).toList());
    assertEquals(Map.of("winding-resistance", ohm("10 Ohm")), learned.get(1).figures());
  }

  @Test
  void aModelHasAName() {
    assertThrows(
        IllegalArgumentException.class, () -> learned(boat("", "B2", Nameplate.UNREADABLE)));
  }
}
