package kelter.core.book;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * What was behind jobs that are like one.
 *
 * @param cause {@code component.fault}
 * @param share how often, 0 to 1; each point of likeness counts double, and a job with several
 *     causes is shared among them
 * @param jobs how many jobs had it
 * @param minutes the median of the minutes of all work on such a job; empty where none were told
 */
public record SimilarCauses(String cause, double share, int jobs, OptionalDouble minutes) {

  private static final double PER_POINT = 2;

  /**
   * The causes of some jobs.
   *
   * @param similar the jobs
   * @return the causes, the likeliest first; none where none was confirmed
   */
  public static List<SimilarCauses> of(List<Similar> similar) {
    Map<String, Double> weights = new HashMap<>();
    Map<String, List<Double>> minutes = new HashMap<>();
    Map<String, Integer> jobs = new HashMap<>();
    double all = 0;
    for (Similar each : similar) {
      List<ConfirmedCause> causes = each.entry().causes();
      double worked =
          each.entry().work().stream().mapToDouble(work -> work.minutes().orElse(0)).sum();
      for (ConfirmedCause cause : causes) {
        double weight = Math.pow(PER_POINT, each.points()) / causes.size();
        all += weight;
        weights.merge(cause.key(), weight, Double::sum);
        jobs.merge(cause.key(), 1, Integer::sum);
        if (worked > 0) {
          minutes.computeIfAbsent(cause.key(), any -> new ArrayList<>()).add(worked);
        }
      }
    }
    List<SimilarCauses> causes = new ArrayList<>();
    for (Map.Entry<String, Double> each : weights.entrySet()) {
      String cause = each.getKey();
      causes.add(
          new SimilarCauses(
              cause, each.getValue() / all, jobs.get(cause), median(minutes.get(cause))));
    }
    causes.sort(
        Comparator.comparingDouble((SimilarCauses each) -> -each.share())
            .thenComparing(SimilarCauses::cause));
    return causes;
  }

  private static OptionalDouble median(List<Double> values) {
    if (values == null) {
      return OptionalDouble.empty();
    }
    Collections.sort(values);
    int middle = values.size() / 2;
    return OptionalDouble.of(
        values.size() % 2 == 1
            ? values.get(middle)
            : (values.get(middle - 1) + values.get(middle)) / 2);
  }
}
