package kelter.core.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
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
import kelter.core.safety.Caution;
import kelter.core.safety.Caution.Signal;
import kelter.core.source.Source;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import org.junit.jupiter.api.Test;

/** What a row of a check makes of the readings of a job. */
class LimitCheckTest {

  private static final Source SOURCE = Source.commonPractice("a test");

  private static final Caution OF_THE_WAY =
      new Caution("hot", Signal.WARNING, "Hot. Let it cool before you read it.");

  private static final Caution IF_NOT =
      new Caution("fire", Signal.DANGER, "Fire. Leave it unplugged until it is renewed.", true);

  private static final Observable RESISTANCE =
      Observable.named("resistance", "resistance")
          .quantity(QuantityKind.RESISTANCE, 0, 1e6)
          .how("Measure it.")
          .by(Procedure.inside(1, OF_THE_WAY));

  private static final ComponentKind COIL =
      new ComponentKind("coil", "coil", List.of(RESISTANCE), List.of(), List.of());

  private static final Allowed TEN_TO_TWENTY =
      Allowed.of("resistance of the coil", SOURCE, new Limits(10, 20));

  private static Measurement read(String component, String observable, Reading reading) {
    return new Measurement(
        component, observable, List.of(reading), Conditions.NONE, Optional.empty(), "");
  }

  private static Measurement ohm(String component, double value, String unit) {
    return read(
        component,
        "resistance",
        new Reading.Value(Quantity.of(value, unit, QuantityKind.RESISTANCE), 0));
  }

  private static List<Finding> findings(LimitRule rule, Measurement... measurements) {
    List<Component> parts = new ArrayList<>();
    for (String id : List.of("coil", "other-coil", "motor")) {
      String kind = id.equals("motor") ? "motor" : "coil";
      parts.add(new Component(id, kind, Nameplate.UNREADABLE, Map.of(), Map.of(), SOURCE));
    }
    Job job =
        new Job(
            "job",
            "",
            new Appliance("machine", "", "", "", Optional.empty(), Nameplate.UNREADABLE, parts),
            Complaint.NONE,
            List.of(),
            List.of(measurements),
            Optional.empty());
    return LimitCheck.named("coil-resistance", "Is the coil whole?")
        .on(COIL, RESISTANCE, rule)
        .apply(job, DecisionRule.USUAL);
  }

  private static Finding only(Allowed allowed, double ohms) {
    List<Finding> all = findings(measured -> Optional.of(allowed), ohm("coil", ohms, "Ohm"));
    assertEquals(1, all.size());
    return all.get(0);
  }

  @Test
  void everyReadingOfItsKindIsJudgedAndNoOther() {
    List<Finding> all =
        findings(
            measured -> Optional.of(TEN_TO_TWENTY),
            ohm("coil", 15, "Ohm"),
            ohm("motor", 15, "Ohm"),
            ohm("coil", 50, "Ohm"),
            ohm("other-coil", 0.015, "kOhm"),
            read("coil", "colour", new Reading.YesNo(true)));
    assertEquals(
        List.of("coil CONFORMS", "coil DOES_NOT_CONFORM", "other-coil CONFORMS"),
        all.stream().map(each -> each.component() + " " + each.verdict()).toList());
    assertEquals("coil-resistance.other-coil", all.get(2).id());
    assertEquals("resistance", all.get(2).observable());
    assertEquals("kOhm", all.get(2).unit().code());
    assertEquals(10, all.get(2).limits().low(), 1e-12);
    assertEquals(20, all.get(2).limits().high(), 1e-12);
  }

  @Test
  void whatHasNoLimitIsNotFound() {
    assertEquals(List.of(), findings(measured -> Optional.empty(), ohm("coil", 15, "Ohm")));
  }

  @Test
  void whatLacksAFigureIsNotMeasuredAndSaysWhy() {
    Finding finding = only(Allowed.without("resistance", SOURCE, "State the figure."), 15);
    assertEquals(Verdict.NOT_MEASURED, finding.verdict());
    assertEquals("State the figure.", finding.remark());
    assertFalse(finding.keepsUnplugged());
  }

  /** The danger comes before the cautions of the way of reading, and only where it is one. */
  @Test
  void theCautionOfAFailureComesFirstAndOnlyThen() {
    Allowed allowed = TEN_TO_TWENTY.butIfNot(IF_NOT);
    Finding sound = only(allowed, 15);
    assertEquals(List.of(Caution.UNPLUG, OF_THE_WAY), sound.cautions());
    assertFalse(sound.keepsUnplugged());
    Finding burnt = only(allowed, 50);
    assertEquals(List.of(IF_NOT, Caution.UNPLUG, OF_THE_WAY), burnt.cautions());
    assertTrue(burnt.keepsUnplugged());
  }

  /**
   * Where a stricter limit may hold, only what keeps it conforms, and only what breaks the milder
   * one does not: what lies between is undecided.
   */
  @Test
  void betweenTwoLimitsNothingIsDecided() {
    Allowed perhaps = TEN_TO_TWENTY.orPerhaps(new Limits(14, 16));
    assertEquals(Verdict.CONFORMS, only(perhaps, 15).verdict());
    assertEquals(Verdict.UNDECIDED, only(perhaps, 18).verdict());
    assertEquals(Verdict.UNDECIDED, only(perhaps, 12).verdict());
    assertEquals(Verdict.DOES_NOT_CONFORM, only(perhaps, 25).verdict());
    assertEquals(16, only(perhaps, 18).limits().high(), 1e-12);
    assertEquals(20, only(perhaps, 25).limits().high(), 1e-12);
  }
}
