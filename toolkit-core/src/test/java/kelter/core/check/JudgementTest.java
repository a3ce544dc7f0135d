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
import kelter.core.job.ReadingParser;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Hazard;
import kelter.core.source.Source;
import kelter.core.source.Standing;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import org.apache.commons.statistics.distribution.NormalDistribution;
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
    return judgement(limits, readings).verdict();
  }

  private static Judgement judgement(Limits limits, Reading... readings) {
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
        new Measured(job, heater, RESISTANCE, measurement), limits, DecisionRule.USUAL);
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

  /**
   * JCGM 106:2012, 7.1, with a rectangular distribution: of 25.5 ± 0.3 the part from 25.72 to 25.8
   * lies above 25.72, 0.08 of 0.6; of 25.4 ± 0.3 nothing does. With k = 2 it is normal.
   */
  @Test
  void limitsOfErrorAreRectangular() {
    Limits atMost = Limits.atMost(25.72);
    assertEquals(1 - 0.08 / 0.6, conformity(atMost, "25.5 ohm ± 0.3", 0), 1e-9);
    assertEquals(1, conformity(atMost, "25.4 ohm ± 0.3", 0));
    double z = 0.22 / 0.15;
    double normal = NormalDistribution.of(0, 1).cumulativeProbability(z);
    assertEquals(normal, conformity(atMost, "25.5 ohm ± 0.3 (k=2)", 0), 1e-9);
  }

  /** The last digit, 0.1, makes a trapezoid of it: (0.35 - 0.27)^2 / (8 * 0.3 * 0.05) above. */
  @Test
  void theLastDigitIsConvolvedWithIt() {
    double above = 0.08 * 0.08 / (8 * 0.3 * 0.05);
    assertEquals(1 - above, conformity(Limits.atMost(25.77), "25.5 ohm ± 0.3", 0.1), 1e-9);
  }

  private static double conformity(Limits limits, String text, double resolution) {
    Reading.Value read = (Reading.Value) ReadingParser.parse(text, RESISTANCE);
    Reading.Value value = new Reading.Value(read.quantity(), resolution, read.shape());
    return judgement(limits, value).probabilityOfConformity();
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
