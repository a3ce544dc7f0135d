package kelter.hydraulics.fault;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.job.Measurement;
import kelter.core.job.Nameplate;
import kelter.core.job.Reading;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.core.source.Standing;
import kelter.hydraulics.SampleMachines;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What several readings have in common is not counted twice. The odds that the engine finds between
 * a fault and another of which the readings tell nothing are held against sums over the shared
 * quantity and the severity that are written out here.
 */
class SharedQuantityTest {

  private static final EngineSettings SINGLE_FAULTS =
      new EngineSettings(0.01, 0.03, 0.1, 0.9, false, 1);

  private static final double KILOPASCAL = 4;
  private static final double LITRE = 0.3;

  private static Component valve() {
    return new Component(
        "inlet-valve",
        "inlet-valve",
        Nameplate.UNREADABLE,
        Map.of("rated-flow", Quantity.of(8, "L/min", QuantityKind.FLOW)),
        Map.of(),
        new Source("made up for tests", Standing.INVENTED));
  }

  private static Measurement read(
      String observable, double value, double u, String unit, QuantityKind kind) {
    double scale = Quantity.of(1, unit, kind).si();
    return new Measurement(
        "inlet-valve",
        observable,
        List.of(new Reading.Value(Quantity.ofSi(value * scale, u * scale, kind), 0)),
        Conditions.NONE,
        Optional.empty(),
        "");
  }

  private static double logOdds(double kilopascal, double litres) {
    Appliance machine = SampleMachines.with(valve());
    Diagnosis diagnosis =
        FaultPairsTest.diagnose(
            machine,
            SINGLE_FAULTS,
            read("static-pressure", kilopascal, KILOPASCAL, "kPa", QuantityKind.GAUGE_PRESSURE),
            read("tap-flow", litres, LITRE, "L/min", QuantityKind.FLOW));
    return Math.log(
        probability(diagnosis, "supply-weak") / probability(diagnosis, "screen-clogged"));
  }

  private static double probability(Diagnosis diagnosis, String id) {
    return diagnosis.ranking().stream()
        .filter(state -> state.faults().size() == 1)
        .filter(state -> state.faults().get(0).fault().id().equals(id))
        .mapToDouble(Diagnosis.RankedState::probability)
        .sum();
  }

  /** The prior odds of the catalogue times the ratio of the likelihoods. */
  private static double logOdds(DoubleUnaryOperator likelihoodAtShare) {
    double weak = 0;
    int steps = 2000;
    for (int i = 0; i < steps; i++) {
      weak += likelihoodAtShare.applyAsDouble(1 - 0.92 * (i + 0.5) / steps) / steps;
    }
    double priors = 0.05 / 0.95 / (0.06 / 0.94);
    return Math.log(priors * weak / likelihoodAtShare.applyAsDouble(1));
  }

  private static double density(double read, double forecast, double sd, double span) {
    double off = (read - forecast) / sd;
    double normal = Math.exp(-off * off / 2) / (sd * Math.sqrt(2 * Math.PI));
    return 0.99 * normal + 0.01 / span;
  }

  /** The flow of a tap goes with the root of the pressure, as Torricelli has it. */
  private static double ofBoth(
      double kilopascal, double litres, double supply, double usual, double ofHouse) {
    double own = 5 + usual * Math.hypot(0.03, ofHouse);
    double tap = 20 * Math.sqrt(usual / 300);
    double spread = 0.2 + tap * Math.sqrt(0.15 * 0.15 + ofHouse * ofHouse / 4 - 0.125 * 0.125);
    return density(kilopascal, supply, Math.hypot(KILOPASCAL, own), 1500)
        * density(litres, 20 * Math.sqrt(supply / 300), Math.hypot(LITRE, spread), 60);
  }

  private static double overTheHouses(double kilopascal, double litres, double share) {
    double sum = 0;
    double step = 0.01;
    for (double z = -3.9; z <= 6; z += step) {
      double weight = step * Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI);
      double usual = 300 * share;
      sum += weight * ofBoth(kilopascal, litres, usual * (1 + 0.25 * z), usual, 0);
    }
    return sum;
  }

  /** The engine takes the root as a straight line, which costs a tenth. */
  @ParameterizedTest
  @CsvSource({"300, 20", "240, 17.5", "220, 17"})
  void aWeakSupplyIsNotCountedTwice(double kilopascal, double litres) {
    double jointly = logOdds(share -> overTheHouses(kilopascal, litres, share));
    assertEquals(jointly, logOdds(kilopascal, litres), 0.15);
  }

  /** Each reading with a spread of its own for the house: evidence that is not there. */
  @ParameterizedTest
  @CsvSource({"180, 13"})
  void readingsTakenOneByOneWouldSayMore(double kilopascal, double litres) {
    double apart = logOdds(share -> ofBoth(kilopascal, litres, 300 * share, 300 * share, 0.25));
    assertTrue(
        apart > logOdds(kilopascal, litres) + 0.2, apart + " " + logOdds(kilopascal, litres));
  }
}
