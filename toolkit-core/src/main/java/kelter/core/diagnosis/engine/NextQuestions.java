package kelter.core.diagnosis.engine;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.likelihood.Group;
import kelter.core.diagnosis.symptom.exact.JointState;
import kelter.core.vocabulary.Symptom;

/**
 * What to ask the owner: by what the answer is expected to tell of the state of the machine, the
 * likeliest states one by one and all others as one. That tells less than the answer does, and
 * never more.
 */
final class NextQuestions {

  private static final double WORTH_ASKING = 0.02;

  /** States that are less likely are not looked at one by one. */
  private static final double NEGLIGIBLE = 1e-4;

  private final JointPosterior posterior;
  private final Known any;
  private final List<Known> joints = new ArrayList<>();
  private final List<Symptom> symptoms;
  private final Map<String, Integer> place = new HashMap<>();
  private final List<SymptomChances> chances = new ArrayList<>();

  /** For each group and state, once asked for, with which chances it makes the symptoms. */
  private final double[][][] means;

  /** What is known of the machine, with the chance that each symptom is there, once asked for. */
  private static final class Known {
    private final int[] states;
    private final double probability;
    private final double[] there;

    /**
     * What is known.
     *
     * @param states the state of each group; null where any may be
     */
    private Known(int[] states, double probability, int symptoms) {
      this.states = states;
      this.probability = probability;
      this.there = new double[symptoms];
      Arrays.fill(there, Double.NaN);
    }
  }

  private NextQuestions(JointPosterior posterior, List<JointState> joints, List<Symptom> symptoms) {
    this.posterior = posterior;
    this.symptoms = symptoms;
    this.any = new Known(null, 1, symptoms.size());
    for (JointState joint : joints) {
      if (joint.probability() > NEGLIGIBLE) {
        this.joints.add(new Known(joint.states(), joint.probability(), symptoms.size()));
      }
    }
    for (Symptom symptom : symptoms) {
      place.put(symptom.id(), place.size());
    }
    this.means = new double[posterior.groups().size()][][];
    for (Group group : posterior.groups()) {
      means[chances.size()] = new double[group.states()][];
      chances.add(new SymptomChances(group, symptoms, place));
    }
  }

  /**
   * The symptoms that are worth asking for, those that tell most first.
   *
   * @param posterior what is known so far
   * @param joints the likeliest states
   * @param symptoms the symptoms that machines can have
   */
  static List<Diagnosis.NextQuestion> of(
      JointPosterior posterior, List<JointState> joints, List<Symptom> symptoms) {
    NextQuestions next = new NextQuestions(posterior, joints, symptoms);
    Set<String> made = new HashSet<>();
    for (Group group : posterior.groups()) {
      group.faults().forEach(f -> f.symptoms().forEach(s -> made.add(s.symptom())));
    }
    posterior.asked().said().forEach(report -> made.remove(report.symptom()));
    List<Diagnosis.NextQuestion> asked = new ArrayList<>();
    for (Symptom symptom : symptoms) {
      if (made.contains(symptom.id())) {
        double bits = next.bits(symptom);
        if (bits >= WORTH_ASKING) {
          asked.add(new Diagnosis.NextQuestion(symptom, bits));
        }
      }
    }
    asked.sort(GreatestFirst.by(Diagnosis.NextQuestion::bits, q -> q.symptom().id()));
    return asked;
  }

  /** The mutual information of a plain answer and the state, in bits. */
  private double bits(Symptom symptom) {
    double rest = 1;
    double all = yes(symptom, any);
    double left = all;
    double bits = entropy(all);
    for (Known joint : joints) {
      double yes = yes(symptom, joint);
      rest -= joint.probability;
      left -= joint.probability * yes;
      bits -= joint.probability * entropy(yes);
    }
    if (rest > NEGLIGIBLE) {
      bits -= rest * entropy(Math.max(0, Math.min(1, left / rest)));
    }
    return Math.max(0, bits);
  }

  /** The chance that the owner says yes. */
  private double yes(Symptom symptom, Known known) {
    double masked = 0;
    for (String masker : symptom.maskedBy()) {
      masked = 1 - (1 - masked) * (1 - there(place.get(masker), known));
    }
    double there = there(place.get(symptom.id()), known);
    Symptom.Misreports wrong = symptom.misreports();
    double open = there * (1 - wrong.falseNo()) + (1 - there) * wrong.falseYes();
    return masked * wrong.yesWhenMasked() + (1 - masked) * open;
  }

  /** The chance that a symptom is there. */
  private double there(int number, Known known) {
    if (Double.isNaN(known.there[number])) {
      known.there[number] = there(symptoms.get(number), number, known.states);
    }
    return known.there[number];
  }

  private double there(Symptom symptom, int number, int[] states) {
    double absent = 1;
    boolean sound = states != null;
    for (int g = 0; g < chances.size(); g++) {
      absent *= 1 - made(g, number, states);
      sound &= states != null && states[g] == Group.HEALTHY;
    }
    return 1 - absent * (1 - (sound ? symptom.amongUnfounded() : symptom.leak()));
  }

  private double made(int g, int symptom, int[] states) {
    Group group = posterior.groups().get(g);
    if (states != null) {
      int state = states[g];
      if (means[g][state] == null) {
        means[g][state] = chances.get(g).means(state, posterior.shares(g, state));
      }
      return means[g][state][symptom];
    }
    double sum = 0;
    for (int fault = 0; fault < group.faults().size(); fault++) {
      double middle = chances.get(g).middle(fault, symptom);
      sum += middle > 0 ? posterior.fault(g, fault) * middle : 0;
    }
    return Math.min(1, sum);
  }

  private static double entropy(double yes) {
    return term(yes) + term(1 - yes);
  }

  private static double term(double chance) {
    return chance > 0 ? -chance * Math.log(chance) / Math.log(2) : 0;
  }
}
