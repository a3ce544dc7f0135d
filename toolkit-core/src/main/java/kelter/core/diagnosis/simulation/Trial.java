package kelter.core.diagnosis.simulation;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.FaultModel;

/**
 * One machine and what was said of it.
 *
 * @param truth the state that it is in
 * @param faults how many faults it has
 * @param clearSingle whether it has one fault, bad enough to be told, and nothing else
 * @param said the likeliest state
 * @param place the place of the truth in the ranking from 1, 0 if it is not there
 * @param confidence the probability of the likeliest state
 * @param namesAbsent whether the likeliest state has a fault that is not there
 * @param faultPlace the place of the first fault that is there among all faults from 1, 0 if none
 *     is
 * @param probability what was said of each fault
 * @param present whether it is there
 */
record Trial(
    String truth,
    int faults,
    boolean clearSingle,
    String said,
    int place,
    double confidence,
    boolean namesAbsent,
    int faultPlace,
    double[] probability,
    boolean[] present) {

  static Trial of(Machine machine, List<FaultModel> models, Diagnosis diagnosis) {
    String truth = StateName.of(machine, models);
    List<String> keys = StateName.keys(machine, models);
    Map<String, Double> ranking = ranking(diagnosis);
    String said = ranking.keySet().iterator().next();
    int place = 0;
    int count = 0;
    for (String name : ranking.keySet()) {
      count++;
      place = name.equals(truth) ? count : place;
    }
    List<Diagnosis.FaultProbability> marginals = diagnosis.faults();
    double[] probability = new double[marginals.size()];
    boolean[] present = new boolean[probability.length];
    int faultPlace = 0;
    for (int i = probability.length - 1; i >= 0; i--) {
      probability[i] = Math.min(1, marginals.get(i).probability());
      present[i] = keys.contains(marginals.get(i).fault().key());
      faultPlace = present[i] ? i + 1 : faultPlace;
    }
    return new Trial(
        truth,
        keys.size(),
        keys.size() == 1
            && !machine.isUnexplained()
            && machine.leastSeverity() >= SimulationReport.CLEAR,
        said,
        place,
        ranking.get(said),
        namesAbsent(diagnosis, said, keys),
        faultPlace,
        probability,
        present);
  }

  /** The ranking by names, the likeliest first; states that read the same are one. */
  static Map<String, Double> ranking(Diagnosis diagnosis) {
    Map<String, Double> sums = new LinkedHashMap<>();
    for (Diagnosis.RankedState state : diagnosis.ranking()) {
      sums.merge(StateName.of(state), state.probability(), Double::sum);
    }
    Map<String, Double> ranking = new LinkedHashMap<>();
    sums.entrySet().stream()
        .sorted(Comparator.comparingDouble(entry -> -entry.getValue()))
        .forEach(entry -> ranking.put(entry.getKey(), Math.min(1, entry.getValue())));
    return ranking;
  }

  private static boolean namesAbsent(Diagnosis diagnosis, String said, List<String> keys) {
    return diagnosis.ranking().stream()
        .filter(state -> StateName.of(state).equals(said))
        .flatMap(state -> state.faults().stream())
        .anyMatch(present -> !keys.contains(present.fault().key()));
  }

  boolean isRight() {
    return place == 1;
  }
}
