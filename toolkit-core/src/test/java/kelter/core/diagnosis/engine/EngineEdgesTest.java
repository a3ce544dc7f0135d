package kelter.core.diagnosis.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.likelihood.LinearModel;
import kelter.core.job.Conditions;
import kelter.core.job.Measurement;
import kelter.core.job.Reading;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.vocabulary.Observable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Jobs at the edge of what the engine can use. */
class EngineEdgesTest {

  private static final Observable RESISTANCE =
      Observable.named("resistance", "resistance")
          .quantity(QuantityKind.RESISTANCE, 0, 1e6)
          .by(LinearModel.PROCEDURE);

  /** From 26 ohm to 500 kohm, which is a thousand times the spread. */
  private static final LinearModel MODEL =
      new LinearModel(
          List.of(RESISTANCE),
          new double[] {26},
          new double[][] {{5e5}},
          new double[] {5},
          List.of(LinearModel.fault("burnt", 0.1)));

  private static Diagnosis diagnose(List<FaultModel> models, Reading... readings) {
    Measurement measurement =
        new Measurement(
            "part", "resistance", List.of(readings), Conditions.NONE, Optional.empty(), "");
    return new DiagnosisEngine(EngineSettings.USUAL)
        .diagnose(LinearModel.job("it is cold", List.of(measurement)), models);
  }

  private static Reading ohm(double value) {
    return new Reading.Value(Quantity.of(value, "Ohm", QuantityKind.RESISTANCE), 0.1);
  }

  /**
   * The likelihood of the fault is 1/500 kohm for every reading well inside its range (substitution
   * of y = 26 + 5e5 s) and twice the one of the unexplained, 1/1 Mohm: with priors of 0.1 and 0.03
   * the fault leads, whatever the reading.
   */
  @ParameterizedTest
  @ValueSource(doubles = {300, 3000, 25000, 123456, 333333, 490000})
  void aSharpReadingFindsItsSeverity(double value) {
    Diagnosis.FaultProbability fault = diagnose(List.of(MODEL), ohm(value)).faults().get(0);

    assertTrue(fault.probability() > 0.8, "probability " + fault.probability());
    assertEquals((value - 26) / 5e5, fault.severity().mean(), 0.01);
  }

  @Test
  void readingsThatContradictEachOtherSayNothingInWhateverOrder() {
    Reading open = new Reading.OverRange();
    Diagnosis nothingRead =
        new DiagnosisEngine(EngineSettings.USUAL)
            .diagnose(LinearModel.job("it is cold", List.of()), List.of(MODEL));

    assertEquals(nothingRead.healthy(), diagnose(List.of(MODEL), open, ohm(26)).healthy(), 1e-12);
    assertEquals(nothingRead.healthy(), diagnose(List.of(MODEL), ohm(26), open).healthy(), 1e-12);
    assertTrue(diagnose(List.of(MODEL), open, open).healthy() < 0.5 * nothingRead.healthy());
  }

  @Test
  void aMachineThatNoModelKnowsIsToldAsSuch() {
    Diagnosis diagnosis = diagnose(List.of(), ohm(26));

    assertEquals(EngineSettings.USUAL.nothingFound(), diagnosis.healthy(), 0);
    assertEquals(1 - EngineSettings.USUAL.nothingFound(), diagnosis.unexplained().probability(), 0);
    assertEquals(List.of("part.resistance"), diagnosis.notUsed());
    assertEquals(List.of(), diagnosis.faults());
  }
}
