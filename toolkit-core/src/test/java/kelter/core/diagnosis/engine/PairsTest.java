package kelter.core.diagnosis.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultHistory;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Forecaster;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.likelihood.LinearModel;
import kelter.core.job.Conditions;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.Reading;
import kelter.core.oracle.Block;
import kelter.core.oracle.DiscreteModel;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Hazard;
import kelter.core.source.Source;
import kelter.core.vocabulary.Observable;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

/** States with two faults of one model, and the priors of faults. */
class PairsTest {

  private static final List<Observable> OBSERVABLES = observables(4);

  /** Three faults: each moves a reading of its own, and all move the last. */
  private static final LinearModel MODEL =
      new LinearModel(
          OBSERVABLES,
          new double[] {50, 50, 50, 50},
          new double[][] {{30, 0, 0, 5}, {0, -30, 0, 5}, {0, 0, 30, -10}},
          new double[] {1, 1, 1, 1},
          List.of(
              LinearModel.fault("one", 0.05),
              LinearModel.fault("two", 0.05),
              LinearModel.fault("three", 0.05)));

  private static List<Observable> observables(int count) {
    List<Observable> observables = new ArrayList<>();
    for (int k = 0; k < count; k++) {
      observables.add(
          Observable.named("reading-" + k, "reading")
              .quantity(QuantityKind.RESISTANCE, 0, 100)
              .by(LinearModel.PROCEDURE));
    }
    return observables;
  }

  private static Job job(double... y) {
    double[] u = new double[y.length];
    java.util.Arrays.fill(u, 0.5);
    return LinearModel.job("it is cold", OBSERVABLES.subList(0, y.length), y, u);
  }

  private static Diagnosis diagnose(FaultModel model, Job job) {
    return new DiagnosisEngine(EngineSettings.USUAL).diagnose(job, List.of(model));
  }

  private static double probability(Diagnosis diagnosis, String id) {
    return diagnosis.faults().stream()
        .filter(fault -> fault.fault().id().equals(id))
        .mapToDouble(Diagnosis.FaultProbability::probability)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void twoFaultsOfOneModelAreFound() {
    Diagnosis diagnosis = diagnose(MODEL, job(65, 32, 50, 55.5));

    assertEquals(
        List.of("one", "two"),
        diagnosis.ranking().get(0).faults().stream().map(f -> f.fault().id()).sorted().toList());
    assertTrue(probability(diagnosis, "one") > 0.9);
    assertTrue(probability(diagnosis, "two") > 0.9);
    assertTrue(probability(diagnosis, "three") < 0.1);
    for (Diagnosis.PresentFault present : diagnosis.ranking().get(0).faults()) {
      double planted = present.fault().id().equals("one") ? 0.5 : 0.6;
      assertEquals(planted, present.severity().mean(), 0.05);
    }
    assertTrue(diagnosis.basis().leftOut() < 0.01);
    assertTrue(diagnosis.basis().conclusion().isDecided());
  }

  @Test
  void faultsThatCannotMeetAreNotPaired() {
    FaultModel apart =
        new FaultModel() {
          @Override
          public String id() {
            return MODEL.id();
          }

          @Override
          public List<Fault> faults() {
            return MODEL.faults();
          }

          @Override
          public List<Question> questions() {
            return MODEL.questions();
          }

          @Override
          public boolean mayMeet(int one, int other) {
            return false;
          }

          @Override
          public Forecaster forecaster(List<Question> questions) {
            return MODEL.forecaster(questions);
          }
        };

    Diagnosis diagnosis = diagnose(apart, job(65, 32, 50, 55.5));

    assertTrue(diagnosis.ranking().stream().allMatch(state -> state.faults().size() < 2));
  }

  /** Yes or no at chances that do not depend on severity: the states are then discrete. */
  private record Coins(double[][] chance, List<Fault> faults, List<Observable> observables)
      implements FaultModel {

    static Coins random(Random random) {
      int faults = 2 + random.nextInt(3);
      int readings = 2 + random.nextInt(6);
      double[][] chance = new double[1 << faults][readings];
      for (double[] row : chance) {
        for (int k = 0; k < readings; k++) {
          row[k] = 0.02 + 0.96 * random.nextDouble();
        }
      }
      List<Fault> all = new ArrayList<>();
      for (int i = 0; i < faults; i++) {
        all.add(LinearModel.fault("fault-" + i, 0.02 + 0.3 * random.nextDouble()));
      }
      List<Observable> seen = new ArrayList<>();
      for (int k = 0; k < readings; k++) {
        seen.add(Observable.named("seen-" + k, "seen").by(LinearModel.PROCEDURE));
      }
      return new Coins(chance, all, seen);
    }

    @Override
    public String id() {
      return "coins";
    }

    @Override
    public List<Question> questions() {
      return observables.stream().map(o -> new Question("part", o, Conditions.NONE)).toList();
    }

    @Override
    public Forecaster forecaster(List<Question> asked) {
      int[] place = asked.stream().mapToInt(q -> observables.indexOf(q.observable())).toArray();
      return (severity, value, spread) -> {
        int state = 0;
        for (int i = 0; i < faults.size(); i++) {
          state |= severity[i] > 0 ? 1 << i : 0;
        }
        for (int k = 0; k < place.length; k++) {
          value[k] = chance[state][place[k]];
          spread[k] = 1;
        }
      };
    }
  }

  /**
   * On a discrete problem the engine agrees with the exact kernel, which is itself held against an
   * independent library: random models of two to four faults with their pairs, and random answers;
   * to 1e-9 and the bound of what it says that it left out.
   */
  @RepeatedTest(40)
  void agreesWithTheDiscreteKernel(RepetitionInfo number) {
    Random random = new Random(number.getCurrentRepetition());
    Coins coins = Coins.random(random);
    EngineSettings settings = new EngineSettings(1e-300, 1e-12, 0.1, 0.9, 1, Hazard.RUNNING, 2);
    int[] answers = coins.observables.stream().mapToInt(o -> random.nextInt(3) - 1).toArray();
    answers[0] = 1;
    List<Measurement> measurements = new ArrayList<>();
    for (int k = 0; k < answers.length; k++) {
      if (answers[k] >= 0) {
        measurements.add(
            new Measurement(
                "part",
                "seen-" + k,
                List.of(new Reading.YesNo(answers[k] == 1)),
                Conditions.NONE,
                java.util.Optional.empty(),
                ""));
      }
    }

    Diagnosis diagnosis =
        new DiagnosisEngine(settings)
            .diagnose(LinearModel.job("it is cold", measurements), List.of(coins));

    List<Integer> states = new ArrayList<>();
    for (int state = 0; state < coins.chance.length; state++) {
      if (Integer.bitCount(state) <= 2) {
        states.add(state);
      }
    }
    double[] posterior = exact(coins, states, answers);
    double within = 1e-9 + diagnosis.basis().leftOut();
    assertTrue(within < 1e-4, "left out " + within);
    for (int i = 0; i < coins.faults.size(); i++) {
      double expected = 0;
      for (int s = 0; s < posterior.length; s++) {
        expected += (states.get(s) >> i & 1) * posterior[s];
      }
      assertEquals(expected, probability(diagnosis, "fault-" + i), within);
    }
    assertEquals(posterior[0], diagnosis.healthy(), within);
  }

  private static double[] exact(Coins coins, List<Integer> states, int[] answers) {
    double[] prior = new double[states.size()];
    double sum = 0;
    for (int s = 1; s < prior.length; s++) {
      prior[s] = 1;
      for (int i = 0; i < coins.faults.size(); i++) {
        double p = coins.faults.get(i).prior();
        prior[s] *= (states.get(s) >> i & 1) == 1 ? p : 1 - p;
      }
      sum += prior[s];
    }
    for (int s = 1; s < prior.length; s++) {
      prior[s] *= 0.9 / sum;
    }
    prior[0] = 0.1;
    List<Block> blocks = new ArrayList<>();
    for (int k = 0; k < answers.length; k++) {
      double[][] table = new double[prior.length][];
      for (int s = 0; s < prior.length; s++) {
        double yes = coins.chance[states.get(s)][k];
        table[s] = new double[] {1 - yes, yes};
      }
      blocks.add(Block.single(table));
    }
    return new DiscreteModel(prior, blocks).posterior(answers);
  }

  /** 9.1 jobs in 12 of the catalogue's and 28 of its own: (7 + 12 x 0.05) / (28 + 12) = 0.19. */
  @Test
  void theShopsOwnJobsTakeTheCataloguesPlace() {
    FaultHistory history =
        new FaultHistory(java.util.Map.of("part", 28.0), java.util.Map.of("part.one", 7.0));

    assertEquals(0.19, history.probability("part", "one", 0.05), 1e-12);
    assertEquals(0.015, history.probability("part", "two", 0.05), 1e-12);
    assertEquals(0.7, history.weight("part"), 1e-12);

    Diagnosis diagnosis =
        new DiagnosisEngine(EngineSettings.USUAL, history, false).diagnose(job(), List.of(MODEL));
    assertEquals("one", diagnosis.faults().get(0).fault().id());
    assertTrue(diagnosis.basis().priors().get(0).source().document().contains("70 %"));
  }

  /** The hazard of a Weibull lifetime of shape 3 is four times as high at twice the age. */
  @Test
  void oldMachinesHaveMoreOfTheFaultsOfWear() {
    Wear wear = new Wear(3, 6, Source.fromMemory("a test"));

    assertEquals(4, wear.factor(12), 1e-12);
    assertEquals(1, wear.factor(6), 1e-12);
    assertEquals(0.25, wear.factor(3), 1e-12);
    assertEquals(0.2, wear.factor(0), 1e-12);
    assertEquals(5, wear.factor(60), 1e-12);
  }
}
