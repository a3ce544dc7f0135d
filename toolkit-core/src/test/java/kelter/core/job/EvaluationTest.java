package kelter.core.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.Unit;
import kelter.core.safety.Hazard;
import kelter.core.source.Source;
import kelter.core.uncertainty.Accuracy;
import kelter.core.uncertainty.Estimate;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import org.junit.jupiter.api.Test;

/** What readings are worth, after JCGM 100:2008. */
class EvaluationTest {

  private static final Accuracy EXACT = new Accuracy(0, 0);
  private static final Instrument METER =
      new Instrument(
          "meter",
          "",
          List.of(new Instrument.Function(QuantityKind.VOLTAGE, new Accuracy(0.01, 0.2))));

  private static Evaluation evaluate(
      Accuracy typical, Optional<String> instrument, Reading... readings) {
    Observable voltage =
        Observable.named("voltage", "voltage")
            .quantity(QuantityKind.VOLTAGE, 0, 500)
            .by(new Procedure("Read it.", 1, Hazard.NONE, typical, List.of()));
    Component part =
        new Component(
            "part",
            "part",
            Nameplate.UNREADABLE,
            Map.of(),
            Map.of(),
            Source.commonPractice("a test"));
    Appliance appliance =
        new Appliance("machine", "", "", "", Optional.empty(), Nameplate.UNREADABLE, List.of(part));
    Measurement measurement =
        new Measurement("part", "voltage", List.of(readings), Conditions.NONE, instrument, "");
    Job job =
        new Job(
            "job",
            "",
            appliance,
            Complaint.NONE,
            List.of(METER),
            List.of(measurement),
            Optional.empty());
    return Evaluation.of(job, measurement, voltage).orElseThrow();
  }

  private static Reading volt(double value, double u, double resolution) {
    return new Reading.Value(
        new Quantity(value, u, Unit.of("V"), QuantityKind.VOLTAGE), resolution);
  }

  /** JCGM 100:2008, H.2, table H.2 (rows from memory): mean 4.9990 V, u 0.0032 V, by type A. */
  @Test
  void scatterOfRepeatedReadings() {
    Reading[] readings =
        Stream.of(5.007, 4.994, 5.005, 4.990, 4.999)
            .map(value -> volt(value, 0, 0))
            .toArray(Reading[]::new);
    Estimate estimate = evaluate(EXACT, Optional.empty(), readings).estimate();
    assertEquals(4.9990, estimate.value(), 5e-5);
    assertEquals(0.0032, estimate.standardUncertainty(), 5e-5);
  }

  /** JCGM 100:2008, F.2.2.1: a resolution δx gives u = 0.29 δx. */
  @Test
  void rounding() {
    Estimate estimate = evaluate(EXACT, Optional.empty(), volt(230, 0, 1)).estimate();
    assertEquals(0.29, estimate.standardUncertainty(), 5e-3);
  }

  /** A dealer's note on meter accuracy: 100.0 V, ±(1 % + 2 counts) is ±1.2 V; over √3, 0.693 V. */
  @Test
  void theInstrumentOfTheReadingCounts() {
    Evaluation evaluation = evaluate(EXACT, Optional.of("meter"), volt(100, 0, 0));
    assertEquals(0.693, evaluation.estimate().standardUncertainty(), 5e-4);
    assertFalse(evaluation.assumed());
  }

  @Test
  void withoutAnInstrumentAnOrdinaryOneIsAssumedAndToldSo() {
    Evaluation evaluation = evaluate(new Accuracy(0.01, 0.2), Optional.empty(), volt(100, 0, 0));
    assertEquals(0.693, evaluation.estimate().standardUncertainty(), 5e-4);
    assertTrue(evaluation.assumed());
  }

  @Test
  void whatIsStatedWithTheReadingComesFirst() {
    Evaluation evaluation = evaluate(EXACT, Optional.of("meter"), volt(100, 0.5, 0));
    assertEquals(0.5, evaluation.estimate().standardUncertainty(), 1e-12);
    assertFalse(evaluation.assumed());
  }

  /** The error of an instrument does not shrink by reading it again; only the scatter does. */
  @Test
  void repeatingDoesNotCureTheInstrument() {
    Evaluation evaluation =
        evaluate(EXACT, Optional.of("meter"), volt(100, 0, 0), volt(100, 0, 0), volt(100, 0, 0));
    assertEquals(0.693, evaluation.estimate().standardUncertainty(), 5e-4);
  }
}
