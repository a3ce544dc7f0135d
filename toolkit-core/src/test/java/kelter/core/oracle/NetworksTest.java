package kelter.core.oracle;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.engine.DiagnosisEngine;
import kelter.core.diagnosis.engine.RepairOrder;
import kelter.core.oracle.decision.Advice;
import kelter.core.oracle.decision.ValueOfInformation;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Two networks, against figures from exact fractions worked out outside the project (12 digits) and
 * against aima-core 3.0.0, which runs beside. Costs and what readings save were worked out by one
 * other implementation only (9 digits).
 */
class NetworksTest {

  private static final double TWELVE_DIGITS = 5.01e-13;
  private static final double NINE_DIGITS = 5.01e-10;

  private static Networks network(String name) {
    return name.equals("A") ? Networks.a() : Networks.b();
  }

  private static double[] numbers(String text) {
    return Arrays.stream(text.trim().split(" +")).mapToDouble(Double::parseDouble).toArray();
  }

  /** Chance of what was observed, then the posterior, from exact fractions. */
  @Retention(RetentionPolicy.RUNTIME)
  @ParameterizedTest
  @CsvSource({
    "A, Q0, 1, .28 .12 .18 .14 .08 .20",
    "A, Q1, .2772, .050505050505 .372294372294 .162337662338 .025252525253 .173160173160"
        + " .216450216450",
    "A, Q2, .1578, .001774397972 .098098859316 .270912547529 .042141951838 .282889733840"
        + " .304182509506",
    "A, Q3, .0353556, .000237586125 .021891864372 .036274310152 .005642670468 .732308318908"
        + " .203645249975",
    "A, Q4, .014254, .377157289182 .037884102708 .065665778027 .002946541322 .011224919321"
        + " .505121369440",
    "A, Q5, .00328095889723, .000002778580 .002235262626 .000017161715 .000070801607"
        + " .990089871204 .007584124270",
    "A, Q6, .363552, .587338262477 .008317929760 .034658040665 .279882932840 .032039433148"
        + " .057763401109",
    "B, Q0, 1, .28 .12 .18 .14 .08 .20",
    "B, Q1, .275292, .100896502623 .290963776644 .166078200602 .050448251311 .151867834881"
        + " .239745433939",
    "B, Q2, .16087956, .003453017897 .074683197791 .269978361453 .082009175062 .241680422299"
        + " .328195825498",
    "B, Q3, .0327874788, .000508291598 .018322543300 .039741390546 .012071925457"
        + " .687800222077 .241555627022",
    "B, Q4, .014254, .377157289182 .037884102708 .065665778027 .002946541322 .011224919321"
        + " .505121369440",
    "B, Q5, .00439697201229, .000033577949 .001551555020 .000053784490 .000855998651"
        + " .985054915945 .012450167944",
    "B, Q6, .3442679536, .564655291227 .018986303929 .041776017342 .269785226969"
        + " .037303222289 .067493938245",
  })
  @interface Published {}

  @Published
  void posteriors(String name, String query, double chance, String expected) {
    Networks network = network(name);
    int[] evidence = network.evidence(query);
    double[] posterior = network.model().posterior(evidence);

    assertArrayEquals(numbers(expected), posterior, TWELVE_DIGITS);
    assertEquals(chance, Math.exp(network.model().logEvidence(evidence)), 5.01e-15);
    assertArrayEquals(network.aima().ask(0, network.findings(evidence)), posterior, 1e-14);
    assertArrayEquals(posterior, network.model().given(evidence).posterior(), 0);
  }

  /**
   * The engine that users run. What it doubts of readings and of its faults is set to {@link
   * NetworkModel#DOUBT}, which moves no posterior by more than 1e-290, so that nothing of the
   * tolerance is for that.
   */
  @Published
  @DisplayName("The engine, readings and faults doubted by 1e-300")
  void posteriorsByTheEngine(String name, String query, double chance, String expected) {
    Networks network = network(name);
    int[] evidence = network.evidence(query);
    NetworkModel model = new NetworkModel(network, evidence);

    Diagnosis found =
        new DiagnosisEngine(NetworkModel.SETTINGS).diagnose(model.job(), List.of(model));

    double[] posterior = model.posterior(found);
    assertArrayEquals(numbers(expected), posterior, TWELVE_DIGITS);
    assertArrayEquals(network.aima().ask(0, network.findings(evidence)), posterior, 1e-13);
    assertEquals(List.of(), found.notUsed());
    assertEquals(0, found.basis().leftOut());
    assertTrue(found.unexplained().probability() < 1e-14);
  }

  @ParameterizedTest
  @CsvSource({
    "A, Q0, 2.479599503187, heaterR .894662420663 power .520101746121 heaterV .484176354361"
        + " tempRise .446354732681 sensorR .326202845788 code .315039075297"
        + " supplyV .070683615676 insulation .041461725614",
    "A, Q6, 1.587348357717, heaterR .834925074607 heaterV .662250372727 power .210552031363"
        + " sensorR .096328978864 supplyV .033525505558 insulation .025113919628",
    "B, Q6, 1.714958444400, heaterR .863475317399 heaterV .654560012723 power .129074166895"
        + " sensorR .105397557526 supplyV .038351152891 insulation .026580838828",
    "B, Q1, 2.406564587561, heaterR .737240028980 power .573708130741 heaterV .427315908064",
  })
  void information(String name, String query, double entropy, String expected) {
    Networks network = network(name);
    Belief belief = network.model().given(network.evidence(query));
    double[] bits = belief.information();

    assertEquals(entropy, belief.entropy(), TWELVE_DIGITS);
    String[] words = expected.trim().split(" +");
    for (int i = 0; i < words.length; i += 2) {
      double number = Double.parseDouble(words[i + 1]);
      assertEquals(number, bits[network.number(words[i])], TWELVE_DIGITS, words[i]);
    }
    for (int f = 0; f < bits.length; f++) {
      assertEquals(informationByAima(network, query, f), bits[f], 1e-13);
    }
  }

  /** Nodes of two values, which a yes or no tells of as much as the node does. */
  @ParameterizedTest
  @CsvSource({
    "A, Q0, supply-v-low, .070683615676",
    "A, Q0, insulation-low, .041461725614",
    "A, Q6, supply-v-low, .033525505558",
    "A, Q6, insulation-low, .025113919628",
    "B, Q6, supply-v-low, .038351152891",
    "B, Q6, insulation-low, .026580838828",
  })
  void informationByTheEngine(String name, String query, String observable, double expected) {
    Networks network = network(name);
    NetworkModel model = new NetworkModel(network, network.evidence(query));

    Diagnosis found =
        new DiagnosisEngine(NetworkModel.SETTINGS).diagnose(model.job(), List.of(model));

    List<Double> bits = new ArrayList<>();
    for (Diagnosis.NextMeasurement next : found.next()) {
      if (next.question().observable().id().equals(observable)) {
        bits.add(next.bits());
      }
    }
    assertEquals(1, bits.size(), "proposed once");
    assertEquals(expected, bits.get(0), TWELVE_DIGITS);
  }

  /** H(S | e) - sum_o P(o | e) H(S | e, o), each term asked of the other library. */
  private static double informationByAima(Networks network, String query, int observable) {
    int[] evidence = network.evidence(query);
    if (evidence[observable] >= 0) {
      return 0;
    }
    double bits = entropy(network.aima().ask(0, network.findings(evidence)));
    double[] outcomes = network.aima().ask(network.node(observable), network.findings(evidence));
    assertArrayEquals(
        outcomes, network.model().given(evidence).outcomes(observable), 1e-14, "predicted");
    for (int o = 0; o < outcomes.length; o++) {
      evidence[observable] = o;
      bits -= outcomes[o] * entropy(network.aima().ask(0, network.findings(evidence)));
    }
    return bits;
  }

  private static double entropy(double[] p) {
    double sum = 0;
    for (double each : p) {
      sum -= each == 0 ? 0 : each * Math.log(each) / Math.log(2);
    }
    return sum;
  }

  @ParameterizedTest
  @CsvSource({
    "Q2, -.018528",
    "Q3, -1.176610",
    "Q4, 2.174082",
    "Q5, -5.079017",
    "Q6, -.318860",
  })
  void conflictOfReadings(String query, double bits) {
    Networks a = Networks.a();

    assertEquals(bits, ConflictMeasure.bits(a.model(), a.evidence(query)), 5.01e-7);
  }

  @Test
  @DisplayName("A, Q6: what to repair first, and what a reading saves")
  void decisionOnA() {
    Networks a = Networks.a();
    int[] evidence = a.evidence("Q6");
    RepairOrder order = Networks.REPAIRS.order(a.model().posterior(evidence));

    assertEquals(148.862446087, order.expectedCost(), NINE_DIGITS);
    assertEquals(java.util.List.of(0, 2, 1, 3), order.remedies());

    ValueOfInformation value = new ValueOfInformation(a.model(), Networks.REPAIRS, a.prices());
    double[] savings = value.savings(evidence);
    assertEquals(31.678735367, savings[a.number("heaterR")], NINE_DIGITS);
    assertEquals(28.804474738, savings[a.number("heaterV")], NINE_DIGITS);
    assertEquals(6.702957486, savings[a.number("power")], NINE_DIGITS);
    assertEquals(4.759812076, savings[a.number("sensorR")], NINE_DIGITS);
    assertEquals(1.025292668, savings[a.number("supplyV")], NINE_DIGITS);
    assertEquals(.159288355, savings[a.number("insulation")], NINE_DIGITS);
    assertEquals(0, savings[a.number("code")]);

    Advice advice = value.advise(evidence, 0);
    assertEquals(a.number("heaterR"), advice.readings().get(0).observable());
    assertEquals(121.183710721, advice.readings().get(0).expectedCost(), NINE_DIGITS);
    assertEquals(148.862446087, advice.costNow(), NINE_DIGITS);
    assertTrue(!advice.enough());
  }

  @Test
  @DisplayName("B, Q1: what saves most is not what tells most, nor what is worth most after cost")
  void decisionOnB() {
    Networks b = Networks.b();
    int[] evidence = b.evidence("Q1");
    RepairOrder order = Networks.REPAIRS.order(b.model().posterior(evidence));

    assertEquals(222.130029205, order.expectedCost(), NINE_DIGITS);
    assertEquals(java.util.List.of(0, 1, 3), order.remedies());
    assertTrue(order.endsWithService());

    ValueOfInformation value = new ValueOfInformation(b.model(), Networks.REPAIRS, b.prices());
    double[] savings = value.savings(evidence);
    assertEquals(40.640016419, savings[b.number("heaterR")], NINE_DIGITS);
    assertEquals(40.101121718, savings[b.number("heaterV")], NINE_DIGITS);
    assertEquals(38.080329250, savings[b.number("power")], NINE_DIGITS);

    Advice advice = value.advise(evidence, 0);
    assertEquals(b.number("heaterR"), advice.readings().get(0).observable());
    assertEquals(b.number("power"), advice.readings().get(1).observable());
    assertEquals(b.number("heaterV"), advice.readings().get(2).observable());
  }

  @Test
  @DisplayName("Two readings ahead on both networks, each step asked of aima-core")
  void twoReadingsAhead() {
    for (String query : new String[] {"Q6", "Q3"}) {
      Networks b = Networks.b();
      int[] evidence = b.evidence(query);
      Advice advice =
          new ValueOfInformation(b.model(), Networks.REPAIRS, b.prices()).advise(evidence, 8);

      for (Advice.Reading reading : advice.readings()) {
        assertEquals(
            costByAima(b, evidence, reading.observable(), 1),
            reading.expectedCostWithSecond(),
            1e-9);
        assertTrue(reading.expectedCostWithSecond() <= reading.expectedCost() + 1e-12);
      }
      double least = advice.readings().get(0).expectedCostWithSecond();
      assertEquals(least >= advice.costNow() * (1 - 1e-12), advice.enough());
    }
  }

  /** The price of a reading and the expected cost after it, with so many more allowed. */
  private static double costByAima(Networks network, int[] evidence, int observable, int more) {
    double sum = network.prices()[observable];
    double[] outcomes = network.aima().ask(network.node(observable), network.findings(evidence));
    for (int o = 0; o < outcomes.length; o++) {
      int[] after = evidence.clone();
      after[observable] = o;
      double[] posterior = network.aima().ask(0, network.findings(after));
      double least = Networks.REPAIRS.leastCost(posterior);
      for (int f = 0; more > 0 && f < after.length; f++) {
        if (after[f] < 0) {
          least = Math.min(least, costByAima(network, after, f, more - 1));
        }
      }
      sum += outcomes[o] * least;
    }
    return sum;
  }
}
