package kelter.hydraulics;

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
import kelter.core.safety.Hazard;
import kelter.core.source.Source;
import kelter.core.source.Standing;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What several readings have in common is not counted twice. The odds that the engine finds between
 * a fault and another of which the readings tell nothing are held against sums over the shared
 * quantity and the severity that are written out here.
 */
class SharedQuantityTest {

  private static final EngineSettings SINGLE_FAULTS =
      new EngineSettings(0.01, 0.03, 0.1, 0.9, 1, Hazard.RUNNING, 1);

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
    double priors = 0.02 / 0.98 / (0.06 / 0.94);
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

  private static final double METRE = 0.01;

  /** What the model states of pumps with a curve: ISO 9906:2012, 8 %; four fifths the pump's. */
  private static final double HEAD = 0.08 / Math.sqrt(3);

  private static final double STRENGTH = HEAD * Math.sqrt(0.8);
  private static final double OWN = HEAD * Math.sqrt(0.2);

  private static double pumpLogOdds(double atNoFlow, double atTen) {
    Component pump = SampleMachines.drainPump();
    Conditions ten = new Conditions(Map.of("flow", Quantity.of(10, "L/min", QuantityKind.FLOW)));
    Diagnosis diagnosis =
        FaultPairsTest.diagnose(
            SampleMachines.with(pump),
            SINGLE_FAULTS,
            head(pump, atNoFlow, Conditions.NONE),
            head(pump, atTen, ten));
    return Math.log(
        probability(diagnosis, "impeller-slips") / probability(diagnosis, "lift-too-high"));
  }

  private static Measurement head(Component pump, double metres, Conditions conditions) {
    return new Measurement(
        pump.id(),
        "head",
        List.of(new Reading.Value(Quantity.ofSi(metres, METRE, QuantityKind.HEAD), 0)),
        conditions,
        Optional.empty(),
        "");
  }

  /** 2 m at no flow, 1.55 m at 10 and 0.7 m at 20 L/min; at another speed by the affinity laws. */
  private static double head(double tens, double speed) {
    double exponent = Math.log(1.3 / 0.45) / Math.log(2);
    return Math.max(0, speed * speed * (2 - 0.45 * Math.pow(tens / speed, exponent)));
  }

  private static double ofBothHeads(
      double atNoFlow, double atTen, double speed, double usual, double own) {
    double product = 1;
    for (int tens = 0; tens < 2; tens++) {
      double expected = head(tens, usual);
      double spread =
          Math.hypot(0.02, Math.hypot(own * expected, 0.12 * (expected - head(tens, 1))));
      product *=
          density(tens == 0 ? atNoFlow : atTen, head(tens, speed), Math.hypot(METRE, spread), 6);
    }
    return product;
  }

  private static double slipping(DoubleUnaryOperator likelihoodAtGrip) {
    double slips = 0;
    int steps = 2000;
    for (int i = 0; i < steps; i++) {
      slips += likelihoodAtGrip.applyAsDouble(1 - 0.8 * (i + 0.5) / steps) / steps;
    }
    double priors = 0.03 / 0.97 / (0.02 / 0.98);
    return Math.log(priors * slips / likelihoodAtGrip.applyAsDouble(1));
  }

  private static double overThePumps(double atNoFlow, double atTen, double grip) {
    double sum = 0;
    double step = 0.01;
    for (double z = -6; z <= 6; z += step) {
      double weight = step * Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI);
      double speed = grip * Math.sqrt(1 + STRENGTH * z);
      sum += weight * ofBothHeads(atNoFlow, atTen, speed, grip, OWN);
    }
    return sum;
  }

  @ParameterizedTest
  @CsvSource({"1.80, 1.34", "1.78, 1.32", "1.74, 1.28"})
  void aWeakPumpIsNotCountedTwice(double atNoFlow, double atTen) {
    double jointly = slipping(grip -> overThePumps(atNoFlow, atTen, grip));
    assertEquals(jointly, pumpLogOdds(atNoFlow, atTen), 0.15);
  }

  /** Each reading with a spread of its own for the pump: evidence that is not there. */
  @ParameterizedTest
  @CsvSource({"1.80, 1.34"})
  void headsTakenOneByOneWouldSayMore(double atNoFlow, double atTen) {
    double apart = slipping(grip -> ofBothHeads(atNoFlow, atTen, grip, grip, HEAD));
    assertTrue(apart > pumpLogOdds(atNoFlow, atTen) + 0.3, apart + "");
  }
}
