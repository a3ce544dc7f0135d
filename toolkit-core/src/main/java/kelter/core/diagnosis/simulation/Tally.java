package kelter.core.diagnosis.simulation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/** Counts what came out of the trials, in the order of the jobs. */
final class Tally {

  private static final int BINS = 10;
  private static final int FEW = 3;

  private Tally() {}

  static SimulationReport report(
      List<String> asked,
      int readings,
      List<Trial> unmeasured,
      List<Trial> measured,
      List<List<Walk>> walks) {
    return new SimulationReport(
        measured.size(),
        asked,
        readings,
        quality(unmeasured),
        quality(measured),
        confusions(measured),
        walks(walks));
  }

  private static SimulationReport.Quality quality(List<Trial> trials) {
    return new SimulationReport.Quality(
        scores(trials),
        scores(trials.stream().filter(Trial::clearSingle).toList()),
        sureness(trials),
        CalibrationTable.of(confidences(trials), rights(trials), BINS),
        CalibrationTable.of(probabilities(trials), presences(trials), BINS));
  }

  private static SimulationReport.Scores scores(List<Trial> trials) {
    if (trials.isEmpty()) {
      double none = Double.NaN;
      return new SimulationReport.Scores(0, none, none, none, none, none, none, none, none);
    }
    List<Trial> faulty = trials.stream().filter(trial -> trial.faults() > 0).toList();
    double[] confidence = confidences(trials);
    boolean[] right = rights(trials);
    double[] probability = probabilities(trials);
    boolean[] present = presences(trials);
    return new SimulationReport.Scores(
        trials.size(),
        share(trials, Trial::isRight),
        share(trials, trial -> trial.place() > 0 && trial.place() <= FEW),
        share(faulty, trial -> trial.faultPlace() == 1),
        share(faulty, trial -> trial.faultPlace() > 0 && trial.faultPlace() <= FEW),
        BrierScore.ofEvents(confidence, right),
        LogLoss.of(ofTruth(confidence, right)),
        BrierScore.ofEvents(probability, present),
        LogLoss.of(ofTruth(probability, present)));
  }

  private static double share(List<Trial> trials, Predicate<Trial> counts) {
    return trials.stream().filter(counts).count() / (double) trials.size();
  }

  private static double[] confidences(List<Trial> trials) {
    return trials.stream().mapToDouble(Trial::confidence).toArray();
  }

  private static boolean[] rights(List<Trial> trials) {
    boolean[] rights = new boolean[trials.size()];
    for (int i = 0; i < rights.length; i++) {
      rights[i] = trials.get(i).isRight();
    }
    return rights;
  }

  private static double[] probabilities(List<Trial> trials) {
    return trials.stream().flatMapToDouble(trial -> Arrays.stream(trial.probability())).toArray();
  }

  private static boolean[] presences(List<Trial> trials) {
    boolean[] all = new boolean[trials.stream().mapToInt(trial -> trial.present().length).sum()];
    int next = 0;
    for (Trial trial : trials) {
      for (boolean present : trial.present()) {
        all[next++] = present;
      }
    }
    return all;
  }

  private static double[] ofTruth(double[] probability, boolean[] came) {
    double[] ofTruth = new double[probability.length];
    for (int i = 0; i < ofTruth.length; i++) {
      ofTruth[i] = came[i] ? probability[i] : 1 - probability[i];
    }
    return ofTruth;
  }

  private static SimulationReport.Sureness sureness(List<Trial> trials) {
    List<Trial> sure =
        trials.stream().filter(trial -> trial.confidence() >= SimulationReport.SURE).toList();
    List<Trial> wrong = sure.stream().filter(trial -> !trial.isRight()).toList();
    return new SimulationReport.Sureness(
        sure.size(),
        wrong.size(),
        sure.stream().mapToDouble(trial -> 1 - trial.confidence()).sum(),
        (int) wrong.stream().filter(Trial::namesAbsent).count());
  }

  private static List<SimulationReport.Confusion> confusions(List<Trial> trials) {
    Map<String, Integer> ofTruth = new LinkedHashMap<>();
    Map<String, Map<String, Integer>> counts = new LinkedHashMap<>();
    for (Trial trial : trials) {
      ofTruth.merge(trial.truth(), 1, Integer::sum);
      if (!trial.isRight()) {
        counts
            .computeIfAbsent(trial.truth(), truth -> new LinkedHashMap<>())
            .merge(trial.said(), 1, Integer::sum);
      }
    }
    List<SimulationReport.Confusion> confusions = new ArrayList<>();
    counts.forEach(
        (truth, saids) ->
            saids.forEach(
                (said, jobs) ->
                    confusions.add(
                        new SimulationReport.Confusion(truth, said, jobs, ofTruth.get(truth)))));
    confusions.sort(
        Comparator.comparingInt((SimulationReport.Confusion c) -> -c.jobs())
            .thenComparing(SimulationReport.Confusion::truth)
            .thenComparing(SimulationReport.Confusion::said));
    return confusions;
  }

  /** One line for each order; the walks come job by job, in the order of the orders. */
  private static List<SimulationReport.Walks> walks(List<List<Walk>> byJob) {
    List<SimulationReport.Walks> lines = new ArrayList<>();
    if (byJob.isEmpty()) {
      return lines;
    }
    List<List<Walk>> reachedByAll =
        byJob.stream().filter(job -> job.stream().allMatch(Walk::reached)).toList();
    for (MeasuringOrder order : MeasuringOrder.values()) {
      List<Walk> own = byJob.stream().map(job -> job.get(order.ordinal())).toList();
      List<Walk> reached = reachedByAll.stream().map(job -> job.get(order.ordinal())).toList();
      lines.add(
          new SimulationReport.Walks(
              order,
              own.size(),
              (int) own.stream().filter(Walk::reached).count(),
              (int) own.stream().filter(Walk::right).count(),
              mean(own, Walk::readings),
              mean(own, Walk::minutes),
              reached.size(),
              mean(reached, Walk::readings),
              mean(reached, Walk::minutes)));
    }
    return lines;
  }

  private static double mean(List<Walk> walks, ToDoubleFunction<Walk> figure) {
    return walks.stream().mapToDouble(figure).sum() / walks.size();
  }
}
