package kelter.core.diagnosis.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.likelihood.LinearModel;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Hazard;
import kelter.core.vocabulary.Observable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * A heater with three causes whose forecasts are linear in the severity. The inputs are from
 * memory; the expected posteriors were computed from the closed form of the integral outside the
 * project and agree with JAGS 4.3.1 (2 x 200,000 draws) to its sampling error.
 */
class ContinuousEvidenceTest {

  private static final double AS_PRINTED = 5e-9;

  private static final List<Observable> OBSERVABLES =
      List.of(
          Observable.named("resistance", "resistance")
              .quantity(QuantityKind.RESISTANCE, 5, 200)
              .by(LinearModel.PROCEDURE),
          Observable.named("current", "current")
              .quantity(QuantityKind.CURRENT, 0, 16)
              .by(LinearModel.PROCEDURE),
          Observable.named("heating-rate", "heating rate")
              .quantity(QuantityKind.of("heating rate", "K"), 0, 4)
              .by(LinearModel.PROCEDURE));

  // Prior odds against "healthy" (0.05): 0.35, 0.25 and 0.30, so p/(1-p) is 7, 5 and 6.
  private static final LinearModel MODEL =
      new LinearModel(
          OBSERVABLES,
          new double[] {24.0, 9.58, 2.0},
          new double[][] {{8, -2.4, -0.8}, {0, -1.92, -0.9}, {0, 0, -1.1}},
          new double[] {0.30, 0.15, 0.15},
          List.of(
              LinearModel.fault("element-degraded", 7.0 / 8),
              LinearModel.fault("low-supply", 5.0 / 6),
              LinearModel.fault("scale", 6.0 / 7)));

  private static final double[] U = {0.25, 0.12, 0.10};

  private static final EngineSettings NO_BLUNDERS =
      new EngineSettings(1e-300, 0.05, 0.05, 0.05, 1, Hazard.RUNNING, 1);

  private static Diagnosis diagnose(double... y) {
    return new DiagnosisEngine(NO_BLUNDERS)
        .diagnose(LinearModel.job("it is cold", OBSERVABLES, y, U), List.of(MODEL));
  }

  private static Diagnosis.FaultProbability of(Diagnosis diagnosis, String id) {
    return diagnosis.faults().stream()
        .filter(fault -> fault.fault().id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  @Test
  @DisplayName("3.1: readings between the causes")
  void ambiguous() {
    Diagnosis diagnosis = diagnose(24.5, 9.20, 1.72);

    assertEquals(0.0228639138, diagnosis.healthy(), AS_PRINTED);
    assertEquals(0.2703395540, of(diagnosis, "element-degraded").probability(), AS_PRINTED);
    assertEquals(0.5298443980, of(diagnosis, "low-supply").probability(), AS_PRINTED);
    assertEquals(0.1769311999, of(diagnosis, "scale").probability(), AS_PRINTED);
    assertEquals(2.09343e-05, diagnosis.unexplained().probability(), 5e-10);
    assertEquals(0.09812429, of(diagnosis, "element-degraded").severity().mean(), AS_PRINTED);
    assertEquals(0.03977198, of(diagnosis, "element-degraded").severity().sd(), AS_PRINTED);
    assertEquals(0.22224594, of(diagnosis, "low-supply").severity().mean(), AS_PRINTED);
    assertEquals(0.08733287, of(diagnosis, "low-supply").severity().sd(), AS_PRINTED);
    assertEquals(0.27536871, of(diagnosis, "scale").severity().mean(), AS_PRINTED);
    assertEquals(0.14533820, of(diagnosis, "scale").severity().sd(), AS_PRINTED);
    assertEquals("low-supply", diagnosis.ranking().get(0).faults().get(0).fault().id());
  }

  @Test
  @DisplayName("3.2: readings that point one way, all and without the heating rate")
  void clear() {
    Diagnosis all = diagnose(27.4, 8.55, 1.62);

    assertEquals(0.999975696018, of(all, "element-degraded").probability(), 5e-12);
    assertEquals(0.000024303982, all.unexplained().probability(), 5e-12);
    assertEquals(0.4277458039, of(all, "element-degraded").severity().mean(), AS_PRINTED);
    assertEquals(0.0409800963, of(all, "element-degraded").severity().sd(), AS_PRINTED);

    Diagnosis without = diagnose(27.4, 8.55, Double.NaN);
    assertEquals(0.9997932484, of(without, "element-degraded").probability(), 5e-10);
    assertEquals(0.0002067516, without.unexplained().probability(), 5e-10);
  }

  @Test
  @DisplayName("3.3: readings that contradict each other are not explained, never a fault")
  void contradictory() {
    Diagnosis diagnosis = diagnose(24.1, 6.0, 0.9);

    assertEquals(1, diagnosis.unexplained().probability(), 1e-12);
    assertEquals(9.99e-14, of(diagnosis, "low-supply").probability(), 1e-15);
    assertTrue(diagnosis.ranking().get(0).unexplained());
    assertTrue(diagnosis.unexplained().misfit() < 1e-6);
  }

  @Test
  void moreEvidenceInAnotherOrderChangesNothing() {
    Diagnosis forward = diagnose(24.5, 9.20, 1.72);
    List<Observable> turned = List.of(OBSERVABLES.get(2), OBSERVABLES.get(0), OBSERVABLES.get(1));
    Diagnosis backward =
        new DiagnosisEngine(NO_BLUNDERS)
            .diagnose(
                LinearModel.job(
                    "it is cold",
                    turned,
                    new double[] {1.72, 24.5, 9.20},
                    new double[] {0.10, 0.25, 0.12}),
                List.of(MODEL));

    for (String id : List.of("element-degraded", "low-supply", "scale")) {
      assertEquals(of(forward, id).probability(), of(backward, id).probability(), 1e-14);
    }
  }

  @Test
  void probabilitiesOfOneGroupSumToOne() {
    Diagnosis diagnosis = diagnose(25, 9, 1.9);
    double sum =
        diagnosis.healthy()
            + diagnosis.unexplained().probability()
            + diagnosis.faults().stream()
                .mapToDouble(Diagnosis.FaultProbability::probability)
                .sum();
    assertEquals(1, sum, 1e-12);
  }
}
