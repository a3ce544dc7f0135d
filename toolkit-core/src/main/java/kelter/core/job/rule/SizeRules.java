package kelter.core.job.rule;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.problem.Problem;

/**
 * How much one job may hold, so that it is diagnosed in a few seconds: the work grows with the
 * square of the components, and with the measurements times the states of a machine.
 */
record SizeRules(List<Problem> problems) {

  private static final int COMPONENTS = 200;
  private static final int MEASUREMENTS = 200;
  private static final int OF_A_COMPONENT = 100;

  void hold(Job job) {
    int components = job.appliance().components().size();
    if (components > COMPONENTS) {
      Spot.of("components", problems)
          .problem(
              components + " components; a job takes up to " + COMPONENTS + ", of one machine",
              "leave out components that nothing is known of, or write a job for each machine");
    }
    if (job.measurements().size() > OF_A_COMPONENT) {
      measurements(job.pooled().measurements());
    }
  }

  private void measurements(List<Measurement> different) {
    Map<String, Integer> counts = new HashMap<>();
    for (Measurement measurement : different) {
      counts.merge(measurement.component(), 1, Integer::sum);
    }
    counts.forEach(
        (component, count) -> {
          if (count > OF_A_COMPONENT) {
            tooMany(count, "component '" + component + "'", OF_A_COMPONENT);
          }
        });
    if (different.size() > MEASUREMENTS) {
      tooMany(different.size(), "a job", MEASUREMENTS);
    }
  }

  private void tooMany(int count, String of, int most) {
    Spot.of("measurements", problems)
        .problem(
            count + " measurements of " + of + "; up to " + most + " are weighed together",
            "leave some out; those of one thing under the same conditions, with one instrument,"
                + " count as one");
  }
}
