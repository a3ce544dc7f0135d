package kelter.electrical.heating;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.engine.DiagnosisEngine;
import kelter.core.job.Appliance;
import kelter.core.job.Complaint;
import kelter.core.job.Conditions;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.Reading;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Hazard;
import kelter.electrical.Jobs;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A weak mains lowers current and power together, and so does a heater that is a little high in
 * resistance. The odds that the engine finds between too little voltage and scale, of which no
 * reading tells, are held against sums over mains, heater and severity that are written out here:
 * Ohm's and Joule's laws, Gaussian errors.
 */
class MainsTest {

  private static final Appliance MACHINE =
      Jobs.appliance(Jobs.heater(), Jobs.component("supply", "supply"));
  private static final FaultModel MODEL = new Heating().faultModels(MACHINE).get(0);
  private static final EngineSettings SINGLE_FAULTS =
      new EngineSettings(0.01, 0.03, 0.1, 0.9, 1, Hazard.RUNNING, 1);

  /** Hot resistance of 2000 W at 230 V, Ohm. */
  private static final double HEATER = 230.0 * 230 / 2000;

  /** What the model states of machines in order: mains, from reading to reading, the heater. */
  private static final double MAINS = 0.03;

  private static final double DRIFT = 0.01;
  private static final double TOLERANCE = 0.05;

  /** Hot against cold resistance of one heater: 0.03 either way. */
  private static final double HOT = 0.03 / Math.sqrt(3);

  private static final double OF_THE_HEATER = Math.sqrt(TOLERANCE * TOLERANCE - HOT * HOT);

  private static final double AMPERE = 0.08;
  private static final double WATT = 20;

  private static Measurement measured(String observable, double si, double u, QuantityKind kind) {
    return Jobs.measurement(
        "heater", observable, new Reading.Value(Quantity.ofSi(si, u, kind), 0), Conditions.NONE);
  }

  private static double logOdds(FaultModel model, double current, double power) {
    Job job =
        new Job(
            "job-1",
            "",
            MACHINE,
            new Complaint("washes badly", ""),
            List.of(),
            List.of(
                measured("current", current, AMPERE, QuantityKind.CURRENT),
                measured("power", power, WATT, QuantityKind.POWER)),
            Optional.empty());
    Diagnosis diagnosis = new DiagnosisEngine(SINGLE_FAULTS).diagnose(job, List.of(model));
    return Math.log(
        probability(diagnosis, "supply.low-voltage") / probability(diagnosis, "heater.scaled"));
  }

  private static double probability(Diagnosis diagnosis, String key) {
    return diagnosis.ranking().stream()
        .filter(state -> state.faults().size() == 1)
        .filter(state -> state.faults().get(0).fault().key().equals(key))
        .mapToDouble(Diagnosis.RankedState::probability)
        .sum();
  }

  /** The prior odds of the catalogue times the ratio of the likelihoods. */
  private static double logOdds(DoubleUnaryOperator likelihoodAtShare) {
    double weak = 0;
    int steps = 100;
    for (int i = 0; i < steps; i++) {
      weak += likelihoodAtShare.applyAsDouble(1 - 0.3 * (i + 0.5) / steps) / steps;
    }
    double priors = 0.01 / 0.99 / (0.08 / 0.92);
    return Math.log(priors * weak / likelihoodAtShare.applyAsDouble(1));
  }

  private static double density(double read, double forecast, double sd, double span) {
    double off = (read - forecast) / sd;
    double normal = Math.exp(-off * off / 2) / (sd * Math.sqrt(2 * Math.PI));
    return 0.99 * normal + 0.01 / span;
  }

  private static double ofBoth(
      double current, double power, double amperes, double watts, double usual, double[] own) {
    double ownAmperes = usual / HEATER * own[0];
    double ownWatts = usual * usual / HEATER * own[1];
    return density(current, amperes, Math.hypot(AMPERE, Math.hypot(0.05, ownAmperes)), 150)
        * density(power, watts, Math.hypot(WATT, Math.hypot(10, ownWatts)), 30_000);
  }

  private static double overMainsAndHeater(double current, double power, double share) {
    double[] own = {Math.hypot(HOT, DRIFT), Math.hypot(HOT, 2 * DRIFT)};
    double usual = 230 * share;
    double step = 0.1;
    double sum = 0;
    for (double z = -6; z <= 6; z += step) {
      for (double y = -6; y <= 6; y += step) {
        double weight = step * step * Math.exp(-(z * z + y * y) / 2) / (2 * Math.PI);
        double volts = usual * (1 + MAINS * z);
        double amperes = volts / (HEATER * (1 + OF_THE_HEATER * y));
        sum += weight * ofBoth(current, power, amperes, volts * amperes, usual, own);
      }
    }
    return sum;
  }

  /**
   * The engine takes what mains and heater move as straight lines. Of the power that leaves out the
   * square of the deviation: 1 % of it at 10 % less voltage.
   */
  @ParameterizedTest
  @CsvSource({"8.7, 2000", "8.2, 1790", "7.9, 1650"})
  void lowReadingsAreNotCountedTwice(double current, double power) {
    double jointly = logOdds(share -> overMainsAndHeater(current, power, share));
    assertEquals(jointly, logOdds(MODEL, current, power), 0.15);
  }

  /** Each reading with a spread of its own for mains and heater: evidence that is not there. */
  @Test
  void readingsTakenOneByOneWouldSayMore() {
    double[] own = {
      Math.hypot(TOLERANCE, Math.hypot(DRIFT, MAINS)),
      Math.hypot(TOLERANCE, 2 * Math.hypot(DRIFT, MAINS))
    };
    double apart =
        logOdds(
            share -> {
              double volts = 230 * share;
              return ofBoth(7.9, 1650, volts / HEATER, volts * volts / HEATER, volts, own);
            });
    assertTrue(apart > logOdds(MODEL, 7.9, 1650) + 0.5, "" + apart);
  }

  @Test
  void aVoltageStatedWithTheReadingLeavesNothingToTheMains() {
    double[] state = new double[MODEL.faults().size() + MODEL.shared().size()];
    double[] usual = powerAt(207, state);
    state[MODEL.faults().size()] = -1;
    double[] weak = powerAt(207, state);
    assertEquals(usual[0], weak[0], 0);
    // Joule's law: 0.9 of the voltage leaves 0.81 of the power.
    assertEquals(1620, usual[0], 0.5);
  }

  private static double[] powerAt(double volt, double[] state) {
    Question power =
        MODEL.questions().stream()
            .filter(q -> q.observable().id().equals("power"))
            .findFirst()
            .orElseThrow();
    Conditions stated =
        new Conditions(Map.of("voltage", Quantity.of(volt, "V", QuantityKind.VOLTAGE)));
    double[] value = new double[1];
    MODEL
        .forecaster(List.of(new Question(power.component(), power.observable(), stated)))
        .forecast(state, value, new double[1]);
    return value;
  }
}
