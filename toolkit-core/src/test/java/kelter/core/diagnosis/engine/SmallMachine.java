package kelter.core.diagnosis.engine;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import kelter.core.diagnosis.Brings;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.FaultSymptom;
import kelter.core.diagnosis.Forecaster;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.likelihood.LinearModel;
import kelter.core.job.Complaint;
import kelter.core.job.Conditions;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.Reading;
import kelter.core.job.SymptomReport;
import kelter.core.safety.Hazard;
import kelter.core.source.Source;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Symptom;

/**
 * A machine of a few groups in which nothing depends on severity, weighed by the definition itself:
 * every joint state, every set of symptoms that may be there.
 */
record SmallMachine(
    List<Part> parts,
    List<Symptom> symptoms,
    List<Brings> brings,
    List<SymptomReport> reports,
    Map<String, Boolean> readings) {

  private static final double BLUNDER = 0.01;
  private static final double UNEXPLAINED = 0.03;
  private static final double SOUND = 0.1;

  static final EngineSettings SETTINGS =
      new EngineSettings(BLUNDER, UNEXPLAINED, SOUND, 0.9, 1, Hazard.RUNNING, 2);

  /** What nobody knows the cause of. */
  private static final String UNKNOWN = "?";

  /**
   * A group with yes or no to be seen.
   *
   * @param name its id
   * @param faults its faults
   * @param apart the pairs of places that never meet, the greater first
   * @param seen what can be seen
   * @param chance the chance of a yes, by the set of faults (one bit each) and what is seen; what
   *     is as good as the same as with nothing wrong is taken for a fault that begins unseen
   */
  record Part(
      String name,
      List<Fault> faults,
      Set<List<Integer>> apart,
      List<Observable> seen,
      double[][] chance)
      implements FaultModel {

    @Override
    public String id() {
      return name;
    }

    @Override
    public List<Question> questions() {
      return seen.stream().map(o -> new Question("part", o, Conditions.NONE)).toList();
    }

    @Override
    public boolean mayMeet(int one, int other) {
      return !apart.contains(List.of(Math.max(one, other), Math.min(one, other)));
    }

    @Override
    public Forecaster forecaster(List<Question> asked) {
      int[] place = asked.stream().mapToInt(q -> seen.indexOf(q.observable())).toArray();
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

  /** Three groups of two or three faults, four symptoms, and nothing said or seen. */
  static SmallMachine random(Random random) {
    List<Symptom> symptoms = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      List<String> maskers = i > 0 && random.nextInt(3) == 0 ? List.of("s0") : List.of();
      symptoms.add(
          new Symptom(
              "s" + i,
              "s" + i,
              "s" + i,
              0.1 * random.nextDouble(),
              0.3 * random.nextDouble(),
              new Symptom.Misreports(
                  0.05 + 0.05 * random.nextDouble(), 0.1, 0.05 + 0.3 * random.nextDouble()),
              maskers));
    }
    List<Part> parts = new ArrayList<>();
    for (int g = 0; g < 3; g++) {
      parts.add(part(random, g, 2 + random.nextInt(2)));
    }
    return new SmallMachine(parts, symptoms, List.of(), List.of(), Map.of());
  }

  private static Part part(Random random, int g, int count) {
    List<Fault> faults = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      List<FaultSymptom> makes = new ArrayList<>();
      for (int s = 0; s < 4; s++) {
        double chance = 0.1 + 0.8 * random.nextDouble();
        if (random.nextBoolean()) {
          makes.add(new FaultSymptom("s" + s, severity -> chance));
        }
      }
      faults.add(fault("g" + g + "f" + i, 0.1 + 0.2 * random.nextDouble(), makes));
    }
    List<Observable> seen = new ArrayList<>();
    for (int k = 0; k < 2; k++) {
      seen.add(Observable.named("seen-" + g + "-" + k, "seen").by(LinearModel.PROCEDURE));
    }
    double[][] chance = new double[1 << count][2];
    for (int state = 0; state < chance.length; state++) {
      for (int k = 0; k < 2; k++) {
        double drawn = (random.nextBoolean() ? 0.3 : 0.55) + 0.15 * random.nextDouble();
        chance[state][k] = state == 0 ? 0.5 : drawn;
      }
    }
    return new Part("group-" + g, faults, Set.of(), seen, chance);
  }

  static Fault fault(String id, double prior, List<FaultSymptom> makes) {
    return new Fault(
        id,
        "part",
        id,
        prior,
        Source.fromMemory("a test"),
        List.of(LinearModel.REMEDY),
        Optional.empty(),
        makes);
  }

  SmallMachine withBrings(List<Brings> more) {
    return new SmallMachine(parts, symptoms, more, reports, readings);
  }

  /** The same with pairs of faults of a group, by their places, that never meet. */
  SmallMachine apart(int group, Set<List<Integer>> pairs) {
    List<Part> changed = new ArrayList<>(parts);
    Part old = parts.get(group);
    changed.set(group, new Part(old.name, old.faults, pairs, old.seen, old.chance));
    return new SmallMachine(changed, symptoms, brings, reports, readings);
  }

  /** The same with some things said and seen. */
  SmallMachine told(Random random) {
    List<SymptomReport> said = new ArrayList<>();
    for (Symptom symptom : symptoms) {
      int answer = random.nextInt(4);
      if (answer < 3) {
        said.add(new SymptomReport(symptom.id(), SymptomReport.Answer.values()[answer % 2]));
      }
    }
    Map<String, Boolean> shown = new LinkedHashMap<>();
    for (Part part : parts) {
      for (Observable each : part.seen) {
        if (random.nextInt(3) == 0) {
          shown.put(each.id(), random.nextBoolean());
        }
      }
    }
    return new SmallMachine(parts, symptoms, brings, said, shown);
  }

  SmallMachine without(SymptomReport report) {
    List<SymptomReport> rest = new ArrayList<>(reports);
    rest.remove(report);
    return new SmallMachine(parts, symptoms, brings, rest, readings);
  }

  Job job() {
    List<Measurement> measurements = new ArrayList<>();
    readings.forEach(
        (id, yes) ->
            measurements.add(
                new Measurement(
                    "part",
                    id,
                    List.of(new Reading.YesNo(yes)),
                    Conditions.NONE,
                    Optional.empty(),
                    "")));
    Job job = LinearModel.job("it fails", measurements);
    return new Job(
        job.id(),
        job.date(),
        job.appliance(),
        new Complaint(Complaint.Reason.FAULT, "it fails", "", reports),
        job.instruments(),
        measurements,
        job.prices());
  }

  List<String> keys(int group) {
    return parts.get(group).faults.stream().map(Fault::key).toList();
  }

  /** The probability of every joint state, by the faults that are there. */
  Map<Set<String>, Double> posterior() {
    List<Map<Set<String>, Double>> priors = parts.stream().map(this::prior).toList();
    Map<Set<String>, Double> joint = new LinkedHashMap<>();
    double sound = 1;
    for (Map<Set<String>, Double> prior : priors) {
      sound *= prior.get(Set.of());
    }
    double factor = SOUND / (1 - SOUND) * (1 - sound) / sound;
    add(priors, new ArrayList<>(), 1, factor, joint);
    double total = joint.values().stream().mapToDouble(Double::doubleValue).sum();
    joint.replaceAll((state, weight) -> weight / total);
    return joint;
  }

  /** The states of a group before anything is known. */
  private Map<Set<String>, Double> prior(Part part) {
    Map<Set<String>, Double> odds = new LinkedHashMap<>();
    odds.put(Set.of(), 1.0);
    for (int i = 0; i < part.faults.size(); i++) {
      odds.put(Set.of(part.faults.get(i).key()), odds(part, i));
      for (int j = 0; j < i; j++) {
        if (part.mayMeet(i, j)) {
          Set<String> both = Set.of(part.faults.get(i).key(), part.faults.get(j).key());
          odds.put(both, odds(part, i) * odds(part, j));
        }
      }
    }
    Map<Set<String>, Double> changed = new LinkedHashMap<>(odds);
    for (Fault fault : part.faults) {
      Set<String> effects = effects(part, fault.key());
      if (!effects.isEmpty()) {
        bring(odds, changed, fault.key(), effects);
      }
    }
    double sum = changed.values().stream().mapToDouble(Double::doubleValue).sum();
    changed.replaceAll((state, weight) -> (1 - UNEXPLAINED) * weight / sum);
    changed.put(Set.of(UNKNOWN + part.name), UNEXPLAINED);
    return changed;
  }

  private static double odds(Part part, int fault) {
    double prior = part.faults.get(fault).prior();
    return prior / (1 - prior);
  }

  private Set<String> effects(Part part, String cause) {
    Set<String> effects = new TreeSet<>();
    for (Brings each : brings) {
      boolean known = part.faults.stream().anyMatch(f -> f.key().equals(each.effect()));
      if (each.cause().equals(cause) && known) {
        effects.add(each.effect());
      }
    }
    return effects;
  }

  /** Multiplies the states with a cause by (1 + r of the effect beside it) / N. */
  private void bring(
      Map<Set<String>, Double> odds,
      Map<Set<String>, Double> changed,
      String cause,
      Set<String> effects) {
    double open = 0;
    for (Map.Entry<Set<String>, Double> state : odds.entrySet()) {
      open += isOpen(state.getKey(), cause) ? state.getValue() : 0;
    }
    double q = 0;
    double c = 0;
    for (String effect : effects) {
      q += odds.get(Set.of(cause, effect)) / open;
      c += chance(cause, effect);
    }
    double n = (1 - q) / (1 - c);
    for (Set<String> state : odds.keySet()) {
      if (isOpen(state, cause)) {
        double r = 0;
        for (String effect : effects) {
          double own = odds.get(Set.of(cause, effect)) / open;
          r += state.contains(effect) ? (chance(cause, effect) * n - own) / own : 0;
        }
        changed.merge(state, (1 + r) / n, (before, by) -> before * by);
      }
    }
  }

  /** Whether a state has a cause that nothing in it has brought. */
  private boolean isOpen(Set<String> state, String cause) {
    return state.contains(cause) && state.stream().noneMatch(other -> chance(other, cause) > 0);
  }

  private double chance(String cause, String effect) {
    for (Brings each : brings) {
      if (each.cause().equals(cause) && each.effect().equals(effect)) {
        return each.chance();
      }
    }
    return 0;
  }

  private void add(
      List<Map<Set<String>, Double>> priors,
      List<Set<String>> chosen,
      double weight,
      double soundFactor,
      Map<Set<String>, Double> into) {
    if (chosen.size() < priors.size()) {
      for (Map.Entry<Set<String>, Double> state : priors.get(chosen.size()).entrySet()) {
        chosen.add(state.getKey());
        add(priors, chosen, weight * state.getValue(), soundFactor, into);
        chosen.remove(chosen.size() - 1);
      }
      return;
    }
    Set<String> all = new TreeSet<>();
    chosen.forEach(all::addAll);
    double known = weight * (all.isEmpty() ? soundFactor : 1) * across(priors, all);
    for (int g = 0; g < chosen.size(); g++) {
      known *= seen(parts.get(g), chosen.get(g));
    }
    into.put(all, known * said(chosen));
  }

  /** (1 + sum of r) / N over what is brought from one group into another. */
  private double across(List<Map<Set<String>, Double>> priors, Set<String> state) {
    double sum = 1;
    Map<String, Double> excess = new LinkedHashMap<>();
    for (Brings each : brings) {
      if (isAcross(each)) {
        excess.merge(each.cause(), excess(priors, each), Double::sum);
      }
    }
    for (Brings each : brings) {
      if (isAcross(each) && state.contains(each.cause()) && state.contains(each.effect())) {
        double n = 1 / (1 - excess.get(each.cause()));
        sum += n * excess(priors, each) / coincidence(priors, each.effect());
      }
    }
    for (Map.Entry<String, Double> cause : excess.entrySet()) {
      sum *= state.contains(cause.getKey()) ? 1 - cause.getValue() : 1;
    }
    return sum;
  }

  private boolean isAcross(Brings brings) {
    for (int g = 0; g < parts.size(); g++) {
      if (keys(g).contains(brings.cause())) {
        return !keys(g).contains(brings.effect());
      }
    }
    return false;
  }

  private static double excess(List<Map<Set<String>, Double>> priors, Brings brings) {
    double q = coincidence(priors, brings.effect());
    return Math.max(0, (brings.chance() - q) / (1 - q));
  }

  private static double coincidence(List<Map<Set<String>, Double>> priors, String fault) {
    double sum = 0;
    for (Map<Set<String>, Double> prior : priors) {
      for (Map.Entry<Set<String>, Double> state : prior.entrySet()) {
        sum += state.getKey().contains(fault) ? state.getValue() : 0;
      }
    }
    return sum;
  }

  private double seen(Part part, Set<String> state) {
    int faults = 0;
    for (int i = 0; i < part.faults.size(); i++) {
      faults |= state.contains(part.faults.get(i).key()) ? 1 << i : 0;
    }
    double likelihood = 1;
    for (int k = 0; k < part.seen.size(); k++) {
      Boolean yes = readings.get(part.seen.get(k).id());
      if (yes != null) {
        boolean unknown = state.contains(UNKNOWN + part.name);
        double chance = unknown ? 0.5 : part.chance[faults][k];
        likelihood *= (1 - BLUNDER) * (yes ? chance : 1 - chance) + BLUNDER / 2;
      }
    }
    return likelihood;
  }

  /** How likely what was said is: summed over all sets of symptoms that may be there. */
  private double said(List<Set<String>> chosen) {
    double[] there = new double[symptoms.size()];
    boolean sound = chosen.stream().allMatch(Set::isEmpty);
    for (int i = 0; i < there.length; i++) {
      Symptom symptom = symptoms.get(i);
      double absent = 1 - (sound ? symptom.amongUnfounded() : symptom.leak());
      for (int g = 0; g < chosen.size(); g++) {
        absent *= 1 - made(parts.get(g), chosen.get(g), symptom.id());
      }
      there[i] = 1 - absent;
    }
    double sum = 0;
    for (int set = 0; set < 1 << there.length; set++) {
      double chance = 1;
      for (int i = 0; i < there.length; i++) {
        chance *= (set >> i & 1) == 1 ? there[i] : 1 - there[i];
      }
      for (SymptomReport report : reports) {
        chance *= said(report, set);
      }
      sum += chance;
    }
    return sum;
  }

  private double made(Part part, Set<String> state, String symptom) {
    boolean unknown = state.contains(UNKNOWN + part.name);
    double all = part.faults.stream().mapToDouble(Fault::prior).sum();
    double absent = 1;
    double mean = 0;
    for (Fault fault : part.faults) {
      for (FaultSymptom each : fault.symptoms()) {
        if (each.symptom().equals(symptom)) {
          absent *= state.contains(fault.key()) ? 1 - each.at(1) : 1;
          mean += fault.prior() / all * each.at(1);
        }
      }
    }
    return unknown ? mean : 1 - absent;
  }

  private double said(SymptomReport report, int set) {
    int place = symptoms.stream().map(Symptom::id).toList().indexOf(report.symptom());
    Symptom symptom = symptoms.get(place);
    Symptom.Misreports wrong = symptom.misreports();
    double yes = (set >> place & 1) == 1 ? 1 - wrong.falseNo() : wrong.falseYes();
    if (!symptom.maskedBy().isEmpty() && (set & 1) == 1) {
      yes = wrong.yesWhenMasked();
    }
    return report.answer() == SymptomReport.Answer.YES ? yes : 1 - yes;
  }
}
