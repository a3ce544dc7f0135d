package kelter.hydraulics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import kelter.core.check.Check;
import kelter.core.check.DecisionRule;
import kelter.core.check.Finding;
import kelter.core.check.LimitCheck;
import kelter.core.check.Verdict;
import kelter.core.diagnosis.FaultModel;
import kelter.core.job.Complaint;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.Reading;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What may be read on the way of air and condensate. */
class AirChecksTest {

  private static final Component BODY =
      AirSamples.part(
          "housing",
          Map.of("rated-suction", Quantity.of(20, "kPa", QuantityKind.PRESSURE_DIFFERENCE)));

  static Stream<Component> parts() {
    return Stream.concat(
        AirSamples.all().stream().flatMap(machine -> machine.components().stream()),
        Stream.of(BODY));
  }

  private static List<LimitCheck> checks(Component part) {
    return new HydraulicsModule()
        .parts().checks().stream()
            .filter(check -> check instanceof LimitCheck)
            .map(check -> (LimitCheck) check)
            .filter(check -> check.kind().id().equals(part.kind()))
            .toList();
  }

  private static List<Finding> findings(Check check, Component part, String word, Quantity read) {
    Measurement measurement =
        new Measurement(
            part.id(),
            word,
            List.of(new Reading.Value(read, 0)),
            Conditions.NONE,
            Optional.empty(),
            "");
    Job job =
        new Job(
            "job-1",
            "",
            SampleMachines.with(part),
            new Complaint("it blows weakly", ""),
            List.of(),
            List.of(measurement),
            Optional.empty());
    return check.apply(job, DecisionRule.USUAL);
  }

  private static Verdict verdict(Check check, Component part, String word, Quantity read) {
    return findings(check, part, word, read).get(0).verdict();
  }

  /** Whatever is forecast of a part in order keeps its limits, where there are some. */
  @ParameterizedTest
  @MethodSource("parts")
  void aPartInOrderConforms(Component part) {
    FaultModel model = AirSamples.model(part);
    for (LimitCheck check : checks(part)) {
      boolean known =
          model.questions().stream().anyMatch(q -> q.observable() == check.observable());
      if (known && !(part.kind().equals("housing") && part.figures().isEmpty())) {
        String word = check.observable().id();
        Quantity read = Quantity.ofSi(AirSamples.inOrder(part, word), 0, check.observable().kind());
        assertEquals(Verdict.CONFORMS, verdict(check, part, word, read), check.id());
      }
    }
  }

  /** By hand, from the limits of the page "heat, air, cold and small machines". */
  @ParameterizedTest
  @CsvSource({
    "filter, flow-kept, 0.6, does not conform",
    "charcoal-filter, flow-kept, 0.9, conforms",
    "charcoal-filter, flow-kept, 0.5, does not conform",
    "duct, flow-kept, 0.5, does not conform",
    "duct, back-pressure, 180, does not conform",
    "condenser, rise, 33, does not conform",
    "suction-hose, suction-kept, 0.5, does not conform",
    "suction-hose, flow-kept, 0.3, does not conform",
    "housing, sealed-suction, 12000, does not conform",
    "condensate-pump, winding-resistance, 1e8, does not conform",
    "moisture-sensor, wet-resistance, 1e6, does not conform",
    "moisture-sensor, joined-resistance, 1e7, does not conform",
    "moisture-sensor, dry-resistance, 3, does not conform",
    "room, temperature, 283.15, does not conform"
  })
  void aReadingAgainstItsLimit(String kind, String observable, double si, String verdict) {
    Component part = kind.equals("housing") ? BODY : AirSamples.part(kind);
    LimitCheck check =
        checks(part).stream()
            .filter(each -> each.observable().id().equals(observable))
            .findFirst()
            .orElseThrow();
    Quantity read = Quantity.ofSi(si, 0, check.observable().kind());
    assertEquals(verdict, verdict(check, part, observable, read).words());
  }

  /** A body of which the rating is not known has no limit. */
  @Test
  void aBodyWithoutARatingIsNotJudged() {
    Component unknown = AirSamples.part("housing");
    Quantity read = Quantity.of(12, "kPa", QuantityKind.PRESSURE_DIFFERENCE);
    assertTrue(findings(checks(unknown).get(0), unknown, "sealed-suction", read).isEmpty());
  }
}
