package kelter.core.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
import kelter.core.safety.Hazard;
import kelter.core.source.Source;
import kelter.core.source.Standing;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import org.junit.jupiter.api.Test;

/** Readings of every form held against limits. */
class JudgementTest {

  private static final Observable RESISTANCE =
      Observable.named("resistance", "resistance")
          .quantity(QuantityKind.RESISTANCE, 0, 1e9)
          .by(new Procedure("measure", 1, Hazard.DEAD, new Accuracy(0.01, 0.1), List.of()));

  private static final Limits BAND = new Limits(24, 28);
  private static final Limits AT_LEAST = Limits.atLeast(1e6);
  private static final Limits AT_MOST = Limits.atMost(0.3);

  private static Verdict verdict(Limits limits, Reading... readings) {
    Measurement measurement =
        new Measurement(
            "heater", "resistance", List.of(readings), Conditions.NONE, Optional.empty(), "");
    Component heater =
        new Component(
            "heater",
            "heater",
            Nameplate.UNREADABLE,
            Map.of(),
            Map.of(),
            new Source("made up", Standing.INVENTED));
    Appliance appliance =
        new Appliance(
            "cooker", "", "", "", Optional.empty(), Nameplate.UNREADABLE, List.of(heater));
    Job job =
        new Job(
            "job",
            "",
            appliance,
            Complaint.NONE,
            List.of(),
            List.of(measurement),
            Optional.empty());
    return Judgement.of(
            new Measured(job, heater, RESISTANCE, measurement), limits, DecisionRule.USUAL)
        .verdict();
  }

  private static Quantity ohm(double value) {
    return Quantity.of(value, "Ohm", QuantityKind.RESISTANCE);
  }

  private static Reading value(double ohm) {
    return new Reading.Value(ohm(ohm), 0.1);
  }

  @Test
  void aValueIsHeldAgainstTheLimitsWithItsUncertainty() {
    assertEquals(Verdict.CONFORMS, verdict(BAND, value(26)));
    assertEquals(Verdict.DOES_NOT_CONFORM, verdict(BAND, value(35)));
    assertEquals(Verdict.UNDECIDED, verdict(BAND, value(28)));
  }

  @Test
  void belowWhatTheInstrumentCanTell() {
    assertEquals(Verdict.CONFORMS, verdict(AT_MOST, new Reading.Below(ohm(0.1))));
    assertEquals(Verdict.UNDECIDED, verdict(AT_MOST, new Reading.Below(ohm(1))));
    assertEquals(Verdict.DOES_NOT_CONFORM, verdict(BAND, new Reading.Below(ohm(1))));
    assertEquals(Verdict.UNDECIDED, verdict(BAND, new Reading.Below(ohm(25))));
  }

  @Test
  void aboveWhatTheInstrumentCanTell() {
    assertEquals(Verdict.CONFORMS, verdict(AT_LEAST, new Reading.Above(ohm(2e8))));
    assertEquals(Verdict.UNDECIDED, verdict(AT_LEAST, new Reading.Above(ohm(2e5))));
    assertEquals(Verdict.DOES_NOT_CONFORM, verdict(BAND, new Reading.Above(ohm(2000))));
    assertEquals(Verdict.UNDECIDED, verdict(BAND, new Reading.Above(ohm(20))));
  }

  @Test
  void overRangeWithoutTheEndOfTheRangeNeverConforms() {
    assertEquals(Verdict.DOES_NOT_CONFORM, verdict(BAND, new Reading.OverRange()));
    assertEquals(Verdict.DOES_NOT_CONFORM, verdict(AT_MOST, new Reading.OverRange()));
    assertEquals(Verdict.UNDECIDED, verdict(AT_LEAST, new Reading.OverRange()));
  }

  @Test
  void readingsThatDisagreeSettleNothingInWhateverOrder() {
    Reading open = new Reading.OverRange();
    assertEquals(Verdict.UNDECIDED, verdict(BAND, open, value(26)));
    assertEquals(Verdict.UNDECIDED, verdict(BAND, value(26), open));
    assertEquals(Verdict.DOES_NOT_CONFORM, verdict(BAND, open, open));
  }

  @Test
  void aReadingWithoutAFigureSettlesNothing() {
    assertEquals(Verdict.UNDECIDED, verdict(BAND, new Reading.YesNo(true)));
    assertEquals(Verdict.UNDECIDED, verdict(BAND, new Reading.Grade("some", 1)));
  }

  @Test
  void everyVerdictHasWords() {
    for (Verdict verdict : Verdict.values()) {
      assertTrue(!verdict.words().isBlank());
    }
  }
}
