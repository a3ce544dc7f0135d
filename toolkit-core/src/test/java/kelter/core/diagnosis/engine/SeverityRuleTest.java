package kelter.core.diagnosis.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultHistory;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.FaultSymptom;
import kelter.core.diagnosis.Forecaster;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.likelihood.Group;
import kelter.core.diagnosis.likelihood.Item;
import kelter.core.diagnosis.likelihood.Likelihood;
import kelter.core.diagnosis.likelihood.LinearModel;
import kelter.core.diagnosis.likelihood.Priors;
import kelter.core.diagnosis.symptom.Background;
import kelter.core.diagnosis.symptom.GroupChances;
import kelter.core.diagnosis.symptom.MachineChances;
import kelter.core.diagnosis.symptom.Report;
import kelter.core.diagnosis.symptom.Reports;
import kelter.core.diagnosis.symptom.StateChances;
import kelter.core.diagnosis.symptom.WrongReports;
import kelter.core.diagnosis.symptom.exact.SymptomPosterior;
import kelter.core.job.Conditions;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Hazard;
import kelter.core.source.Source;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Symptom;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The rule over severities that every diagnosis takes, with symptoms that depend on the severity,
 * one of them steeply: against figures worked out outside the project by a rule of Gauss of 192
 * nodes that agreed with one of 240 to 4e-14. The machine is invented: f and h move one reading, 10
 * - 6 s + 3 t^2, of which 6.1 was read; g, r1 and r2 move none. What is left comes from the pair,
 * of which parts below a ten-thousandth of the whole are not integrated.
 */
class SeverityRuleTest {

  private static final double CLOSE = 4e-4;
  private static final String[] ANSWERS = {".yy", "yn.", "yyy"};
  private static final Observable SHOWN =
      Observable.named("shown", "a figure")
          .quantity(QuantityKind.RATIO, 0, 20)
          .by(LinearModel.PROCEDURE);

  /** Only what the reading speaks of may be what no known fault explains. */
  private static EngineSettings settings(double unexplained) {
    return new EngineSettings(0.01, unexplained, 0.1, 0.9, 1, Hazard.RUNNING, 2);
  }

  private record Parts(List<Fault> faults, List<Observable> shows) implements FaultModel {
    @Override
    public String id() {
      return faults.get(0).id();
    }

    @Override
    public List<Question> questions() {
      return shows.stream().map(o -> new Question("part", o, Conditions.NONE)).toList();
    }

    @Override
    public Forecaster forecaster(List<Question> questions) {
      return (severity, value, spread) -> {
        value[0] = 10 - 6 * severity[0] + 3 * severity[1] * severity[1];
        spread[0] = 0.8;
      };
    }
  }

  private static Fault fault(String id, double prior, Object... makes) {
    List<FaultSymptom> symptoms = new ArrayList<>();
    for (int i = 0; i < makes.length; i += 2) {
      symptoms.add(new FaultSymptom((String) makes[i], (DoubleUnaryOperator) makes[i + 1]));
    }
    return new Fault(
        id,
        "part",
        id,
        prior,
        Source.fromMemory("a test"),
        List.of(LinearModel.REMEDY),
        Optional.empty(),
        symptoms);
  }

  private static DoubleUnaryOperator by(DoubleUnaryOperator chance) {
    return chance;
  }

  private static final Parts P =
      new Parts(
          List.of(
              fault(
                  "f",
                  0.05,
                  "s1",
                  by(s -> 0.9 / (1 + Math.exp(-25 * (s - 0.7)))),
                  "s2",
                  by(s -> 0.8 * s)),
              fault("h", 0.04, "s2", by(t -> 0.5 * t * t), "s3", by(t -> 0.6 * t))),
          List.of(SHOWN));
  private static final Parts G =
      new Parts(
          List.of(fault("g", 0.06, "s2", by(r -> 0.7 * r), "s3", by(r -> 1 - Math.exp(-2 * r)))),
          List.of());
  private static final Parts R =
      new Parts(
          List.of(
              fault("r1", 0.03, "s1", by(s -> 0.6)),
              fault("r2", 0.02, "s2", by(s -> 0.1), "s3", by(s -> 0.3))),
          List.of());

  private static final List<Symptom> SYMPTOMS =
      List.of(
          symptom("s1", 0.01, 0.05, 0.02, 0.01),
          symptom("s2", 0.02, 0.2, 0.03, 0.1, "s1"),
          symptom("s3", 0.005, 0.03, 0.01, 0.05));

  private static Symptom symptom(
      String id, double leak, double sound, double falseYes, double falseNo, String... maskers) {
    return new Symptom(
        id, id, id, leak, sound, new Symptom.Misreports(falseYes, falseNo, 0.05), List.of(maskers));
  }

  private final List<Group> groups = new ArrayList<>();

  private SymptomPosterior posterior(String answers) {
    Item read =
        new Item(
            P.questions().get(0), "6.1", Likelihood.value(SHOWN, 6.1, 0, 0.01), Optional.empty());
    Priors priors = new Priors(LinearModel.job("", List.of()).appliance(), FaultHistory.NONE);
    groups.clear();
    for (Parts parts : List.of(P, G, R)) {
      groups.add(
          parts == P
              ? Group.of(parts, List.of(read), priors, List.of(), settings(0.003))
              : Group.of(parts, List.of(), priors, List.of(), settings(1e-15)));
    }
    SymptomPosterior ofSingles = posterior(reports(answers));
    for (int g = 0; g < groups.size(); g++) {
      SymptomPosterior.Lift lift = ofSingles.lift(g);
      groups.set(g, groups.get(g).withPairs(outside(lift)));
    }
    return posterior(reports(answers));
  }

  private static Group.Outside outside(SymptomPosterior.Lift lift) {
    return new Group.Outside() {
      @Override
      public double logTotal() {
        return lift.logTotal();
      }

      @Override
      public double logMost(int one, int other) {
        return lift.logMost(one + 1, other + 1);
      }

      @Override
      public double logLeast(int one, int other) {
        return lift.logLeast(one + 1, other + 1);
      }
    };
  }

  private SymptomPosterior posterior(Reports reports) {
    List<GroupChances> chances = new ArrayList<>();
    for (Group group : groups) {
      chances.add(withUnexplained(new SymptomChances(group, SYMPTOMS).chances(null, List.of())));
    }
    return SymptomPosterior.of(new MachineChances(chances, 0.1), reports);
  }

  private static Reports reports(String answers) {
    List<String> ids = SYMPTOMS.stream().map(Symptom::id).toList();
    List<Background> backgrounds = new ArrayList<>();
    List<Report> reports = new ArrayList<>();
    for (int i = 0; i < ids.size(); i++) {
      Symptom symptom = SYMPTOMS.get(i);
      int[] maskers = symptom.maskedBy().stream().mapToInt(ids::indexOf).toArray();
      backgrounds.add(new Background(symptom.leak(), symptom.amongUnfounded(), maskers));
      Symptom.Misreports m = symptom.misreports();
      WrongReports wrong = new WrongReports(m.falseYes(), m.falseNo(), m.yesWhenMasked());
      char answer = answers.charAt(i);
      reports.add(
          answer == 'y' ? Report.yes(wrong) : answer == 'n' ? Report.no(wrong) : Report.UNASKED);
    }
    return new Reports(backgrounds, reports);
  }

  /** What the figures take for the chances of what no known fault explains. */
  private static GroupChances withUnexplained(GroupChances group) {
    List<StateChances> states = new ArrayList<>(group.states());
    int last = states.size() - 1;
    states.set(
        last,
        new StateChances.Nodes(
            states.get(last).logWeight(),
            new double[] {1},
            new double[] {0.2},
            new double[] {0.3},
            new double[] {0.2}));
    return new GroupChances(group.logPriorHealthy(), states);
  }

  @ParameterizedTest
  @DisplayName("Marginals and severities to a few parts in ten thousand")
  @CsvSource({
    "sound, .000400662633, .000230219690, .000186435996",
    "f, .908687026842, .984774914444, .943487759815",
    "h, .096524462781, .051058956749, .202028435979",
    "g, .638577869285, .059838517128, .533026537923",
    "r1, .014720094742, .064121433376, .047640548067",
    "r2, .098134690210, .020038814556, .097195837169",
    "mean of f, .616300707571, .757496303788, .735081422274",
    "mean of g, .645830172589, .498836516019, .623195009873",
  })
  void limits(String what, double a, double b, double d) {
    double[] limit = {a, b, d};
    for (int q = 0; q < ANSWERS.length; q++) {
      assertEquals(limit[q], found(what, posterior(ANSWERS[q])), CLOSE, what + ANSWERS[q]);
    }
  }

  private double found(String what, SymptomPosterior posterior) {
    return switch (what) {
      case "sound" -> posterior.sound();
      case "f" -> fault(posterior, 0, 0);
      case "h" -> fault(posterior, 0, 1);
      case "g" -> fault(posterior, 1, 0);
      case "r1" -> fault(posterior, 2, 0);
      case "r2" -> fault(posterior, 2, 1);
      case "mean of f" -> mean(posterior, 0, 0);
      default -> mean(posterior, 1, 0);
    };
  }

  private double fault(SymptomPosterior posterior, int g, int fault) {
    double sum = 0;
    for (int state = 0; state < groups.get(g).states(); state++) {
      sum += groups.get(g).hasFault(state, fault) ? posterior.marginal(g, state) : 0;
    }
    return sum;
  }

  private double mean(SymptomPosterior posterior, int g, int fault) {
    double mean = 0;
    for (int state = 0; state < groups.get(g).states(); state++) {
      if (groups.get(g).hasFault(state, fault)) {
        double[] shares = posterior.nodeShares(g, state);
        for (int node = 0; node < shares.length; node++) {
          mean +=
              posterior.marginal(g, state)
                  * shares[node]
                  * groups.get(g).severityAt(state, node, fault);
        }
      }
    }
    return mean / fault(posterior, g, fault);
  }
}
