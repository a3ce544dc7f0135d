package kelter.core.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.instrument.InstrumentLibrary;
import kelter.core.job.Appliance;
import kelter.core.job.Complaint;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.job.Instrument;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.Nameplate;
import kelter.core.job.Reading;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.Unit;
import kelter.core.safety.Hazard;
import kelter.core.source.Source;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Statement;
import kelter.core.vocabulary.Vocabulary;
import org.junit.jupiter.api.Test;

/** Repeated readings against the claim of the instrument, and how to settle what is undecided. */
class RepeatedTest {

  /** Limits of error of 0.1 sqrt(3) ohm: a standard uncertainty of 0.1 ohm. */
  private static final Instrument METER =
      new Instrument(
          "meter",
          "",
          List.of(
              new Instrument.Function(
                  QuantityKind.RESISTANCE, new Accuracy(0, 0.1 * Math.sqrt(3)), 0, 100)));

  private static final Observable RESISTANCE =
      Observable.named("resistance", "resistance")
          .quantity(QuantityKind.RESISTANCE, 0, 1e6)
          .by(new Procedure("Read it.", 1, Hazard.DEAD, new Accuracy(0.01, 0), List.of()));

  private static final Vocabulary VOCABULARY =
      new Vocabulary(
          List.of(new ComponentKind("part", "part", List.of(RESISTANCE), List.of(), List.of())));

  private static Job job(List<Instrument> instruments, double... ohms) {
    List<Reading> readings =
        Arrays.stream(ohms)
            .<Reading>mapToObj(
                ohm ->
                    new Reading.Value(
                        new Quantity(ohm, 0, Unit.of("Ohm"), QuantityKind.RESISTANCE), 0))
            .toList();
    Component part =
        new Component(
            "part",
            "part",
            Nameplate.UNREADABLE,
            Map.of(),
            Map.of(),
            Source.commonPractice("a test"));
    return new Job(
        "job",
        "",
        new Appliance("machine", "", "", "", Optional.empty(), Nameplate.UNREADABLE, List.of(part)),
        Complaint.NONE,
        instruments,
        List.of(
            new Measurement(
                "part",
                "resistance",
                readings,
                Conditions.NONE,
                Optional.of(instruments.get(0).id()),
                "")),
        Optional.empty());
  }

  private static List<String> found(double... ohms) {
    return new RepeatsCheck(VOCABULARY)
        .apply(job(List.of(METER), ohms), DecisionRule.USUAL).stream()
            .peek(finding -> assertEquals(Verdict.DOES_NOT_CONFORM, finding.verdict()))
            .map(finding -> finding.id().split("\\.")[0])
            .toList();
  }

  /**
   * Tables of chi-squared: 13.277 at 99 % with 4 degrees of freedom, so that five readings may have
   * a standard deviation up to sqrt(13.277 / 4) = 1.8219 times the claim of 0.1 ohm. Five readings
   * at -2, -1, 0, 1, 2 times d, out of order, have a standard deviation of sqrt(2.5) d.
   */
  @Test
  void aSpreadBeyondTheClaimIsFound() {
    double edge = 0.1 * 1.8219 / Math.sqrt(2.5);
    assertEquals(List.of(), found(scattered(0.99 * edge)));
    assertEquals(List.of("repeated-readings-spread"), found(scattered(1.01 * edge)));
  }

  private static double[] scattered(double d) {
    return new double[] {20 + d, 20 - 2 * d, 20 + 2 * d, 20 - d, 20};
  }

  /** Readings that climb by 0.3 ohm each, three claims of the instrument, go one way. */
  @Test
  void aDriftBeyondTheClaimIsFound() {
    assertEquals(
        List.of("repeated-readings-spread", "repeated-readings-drift"),
        found(20, 20.3, 20.6, 20.9, 21.2));
    assertEquals(List.of(), found(20, 20.01, 20.02, 20.03, 20.04), "a drift within the claim");
  }

  @Test
  void twoReadingsOrEqualOnesTellNothing() {
    assertEquals(List.of(), found(20, 25));
    assertEquals(List.of(), found(20, 20, 20, 20));
  }

  private static List<String> ways(Limits limits, List<Instrument> instruments, double... ohms) {
    Job job = job(instruments, ohms);
    Judgement judgement =
        Judgement.of(
            new Measured(
                job, job.appliance().components().get(0), RESISTANCE, job.measurements().get(0)),
            limits,
            DecisionRule.USUAL);
    assertEquals(Verdict.UNDECIDED, judgement.verdict());
    Finding finding =
        new Finding(
            "id",
            "part",
            "resistance",
            "title",
            "",
            QuantityKind.RESISTANCE,
            Unit.of("Ohm"),
            judgement,
            limits,
            Source.commonPractice("a test"),
            List.of(),
            "");
    return Statement.texts(
        new Settling(job, VOCABULARY, List.of(), DecisionRule.USUAL).of(finding));
  }

  /**
   * 0.1 ohm from a limit a verdict at 95 % needs 0.1 / 1.645 = 0.0608 ohm (JCGM 106:2012, table 1).
   * At 26.4 ohm the fine meter of the library claims 0.05 % and 10 counts of 0.01 ohm, 0.1132 ohm,
   * and 0.02 ohm of leads and its rounding: arithmetic gives 0.0664 ohm, too much; the
   * milliohmmeter 0.2 % and 3 counts of 0.01 ohm, 0.0828 ohm, with rounding 0.04789 ohm, is good
   * enough.
   */
  @Test
  void theLibraryNamesAnInstrumentThatIsGoodEnough() {
    List<String> ways = ways(Limits.atMost(26.5), List.of(METER), 26.4);
    assertEquals(2, ways.size());
    assertTrue(ways.get(1).contains("milliohmmeter"), ways.toString());
    assertTrue(ways.get(1).contains("± 0.09578 ohm"), ways.toString());
  }

  @Test
  void anInstrumentOfTheJobComesFirst() {
    Instrument fine = InstrumentLibrary.find("milliohmmeter").orElseThrow();
    List<String> ways = ways(Limits.atMost(26.5), List.of(METER, fine), 26.4);
    assertTrue(ways.get(1).contains("'milliohmmeter' of this job"), ways.toString());
  }

  @Test
  void whereNoInstrumentIsGoodEnoughItSaysSo() {
    List<String> ways = ways(Limits.atMost(26.401), List.of(METER), 26.4);
    assertTrue(ways.get(1).contains("No instrument"), ways.toString());
  }

  /**
   * Two readings 1.2 ohm apart: standard deviation 0.8485 ohm. The mean of eleven scatters by
   * 0.2558 ohm, 1.812 times that with 10 degrees of freedom is 0.464 ohm; with the 0.1 ohm of the
   * instrument, sqrt(0.464² + (1.645 * 0.1)²) = 0.492 ohm, less than the 0.5 ohm to the limit. The
   * mean of ten, 0.2683 ohm at 1.833, makes 0.519 ohm (quantiles of JCGM 100:2008, table G.2).
   */
  @Test
  void theNumberOfReadingsThatSettlesIsComputed() {
    List<String> ways = ways(Limits.atMost(26.9), List.of(METER), 25.8, 27.0);
    assertTrue(ways.get(1).contains("the mean of 11 readings"), ways.toString());
  }
}
