package kelter.core.oracle;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Forecaster;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.likelihood.LinearModel;
import kelter.core.job.Conditions;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.Reading;
import kelter.core.safety.Hazard;
import kelter.core.vocabulary.Observable;

/**
 * A network as the diagnosis engine is told of it, for one set of observations.
 *
 * <p>The last cause of the network is the state in which nothing is wrong; the others are faults
 * that never meet, and how bad they are moves nothing. The prior odds of a fault against nothing
 * wrong are those of the network. What was observed is a yes to "the node has this value"; its
 * chance is the one of the table given the fault and the observed value of the node on which it
 * hangs, a node that was not observed being summed out. Nodes of two values that were not observed
 * are left to be asked for; they hang on the fault alone.
 */
public final class NetworkModel implements FaultModel {

  /** The chance of a blunder and of a fault that nobody knows; the settings want more than 0. */
  static final double DOUBT = 1e-300;

  private static final int FAULTS = Networks.PRIOR.length - 1;
  private static final double NOTHING_WRONG = Networks.PRIOR[FAULTS];

  /**
   * Settings under which the posterior is that of the network: a complaint makes "nothing wrong" as
   * frequent as the faults leave it.
   */
  public static final EngineSettings SETTINGS =
      new EngineSettings(DOUBT, DOUBT, NOTHING_WRONG, NOTHING_WRONG, 1, Hazard.DEAD, 2);

  private final Networks network;
  private final int[] evidence;
  private int observed;
  private final List<Fault> faults = new ArrayList<>();

  /** What was observed first, then what can be. */
  private final List<Question> questions = new ArrayList<>();

  /** By the id of an observable the chance of a yes, by fault; nothing wrong is the last. */
  private final Map<String, double[]> chances = new HashMap<>();

  /**
   * Takes over the tables.
   *
   * @param network the network
   * @param evidence what is observed, for the kernel
   */
  public NetworkModel(Networks network, int[] evidence) {
    this.network = network;
    this.evidence = evidence.clone();
    for (int fault = 0; fault < FAULTS; fault++) {
      double odds = Networks.PRIOR[fault] / NOTHING_WRONG;
      faults.add(LinearModel.fault(id(Networks.FAULTS[fault]), odds / (1 + odds)));
    }
    for (int observable = 0; observable < evidence.length; observable++) {
      if (evidence[observable] >= 0) {
        ask(observable, evidence[observable]);
        observed++;
      }
    }
    for (int observable = 0; observable < evidence.length; observable++) {
      if (evidence[observable] < 0 && network.outcomes(observable).length == 2) {
        ask(observable, 0);
      }
    }
  }

  private void ask(int observable, int outcome) {
    String word = id(network.name(observable) + "_" + network.outcomes(observable)[outcome]);
    Observable seen = Observable.named(word, "seen").by(LinearModel.PROCEDURE);
    questions.add(new Question("part", seen, Conditions.NONE));
    chances.put(
        word,
        IntStream.range(0, Networks.PRIOR.length)
            .mapToDouble(fault -> network.chance(fault, observable, outcome, evidence))
            .toArray());
  }

  private static String id(String name) {
    return name.replaceAll("([A-Z])", "-$1").replace('_', '-').toLowerCase(Locale.ROOT);
  }

  /**
   * What was observed.
   *
   * @return a job with a complaint, and a yes for each observation
   */
  public Job job() {
    List<Measurement> yes = new ArrayList<>();
    for (Question question : questions.subList(0, observed)) {
      yes.add(
          new Measurement(
              question.component(),
              question.observable().id(),
              List.of(new Reading.YesNo(true)),
              Conditions.NONE,
              Optional.empty(),
              ""));
    }
    return LinearModel.job("it does not heat", yes);
  }

  /**
   * The posterior of the causes of the network.
   *
   * @param found the diagnosis
   * @return the probability of each, in their order
   */
  public double[] posterior(Diagnosis found) {
    double[] posterior = new double[Networks.PRIOR.length];
    for (Diagnosis.FaultProbability each : found.faults()) {
      posterior[faults.indexOf(each.fault())] = each.probability();
    }
    posterior[FAULTS] = found.healthy();
    return posterior;
  }

  @Override
  public String id() {
    return "network";
  }

  @Override
  public List<Fault> faults() {
    return List.copyOf(faults);
  }

  @Override
  public List<Question> questions() {
    return List.copyOf(questions);
  }

  @Override
  public boolean mayMeet(int one, int other) {
    return false;
  }

  @Override
  public Forecaster forecaster(List<Question> asked) {
    double[][] table = new double[asked.size()][];
    for (int k = 0; k < table.length; k++) {
      table[k] = chances.get(asked.get(k).observable().id());
    }
    return (severity, value, spread) -> {
      int cause = FAULTS;
      for (int fault = 0; fault < FAULTS; fault++) {
        cause = severity[fault] > 0 ? fault : cause;
      }
      for (int k = 0; k < table.length; k++) {
        value[k] = table[k][cause];
        spread[k] = 1;
      }
    };
  }
}
