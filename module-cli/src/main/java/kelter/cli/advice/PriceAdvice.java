package kelter.cli.advice;

import java.util.ArrayList;
import java.util.List;
import kelter.core.diagnosis.Remedy;
import kelter.core.file.json.JsonText;
import kelter.core.job.Job;
import kelter.core.problem.Problem;
import kelter.core.quantity.Nearest;

/** Prices of parts that no remedy of a job needs. */
public final class PriceAdvice {

  private PriceAdvice() {}

  /**
   * Holds the prices of a job against its remedies.
   *
   * @param job the job
   * @param remedies the remedies of its fault models
   * @return each price that stands under none of them, with its JSON pointer; not of a component
   *     that no model speaks of
   */
  public static List<Problem> of(Job job, List<Remedy> remedies) {
    List<Problem> advice = new ArrayList<>();
    if (job.prices().isEmpty()) {
      return advice;
    }
    for (String name : job.prices().get().parts().keySet()) {
      if (!isKnown(name, remedies) && isAssessed(name, job, remedies)) {
        advice.add(
            new Problem(
                "/prices/parts/" + JsonText.escape(name),
                "'" + name + "' is not a remedy of this job",
                remedy(name, remedies)));
      }
    }
    return advice;
  }

  private static boolean isKnown(String name, List<Remedy> remedies) {
    return remedies.stream()
        .anyMatch(remedy -> name.equals(remedy.id()) || name.equals(remedy.key()));
  }

  /** Of a component that no model speaks of nobody can say which remedies it has. */
  private static boolean isAssessed(String name, Job job, List<Remedy> remedies) {
    int dot = name.indexOf('.');
    String component = dot < 0 ? "" : name.substring(0, dot);
    return job.appliance().component(component).isEmpty()
        || remedies.stream().anyMatch(remedy -> remedy.component().equals(component));
  }

  private static String remedy(String name, List<Remedy> remedies) {
    List<String> known =
        remedies.stream().filter(Remedy::needsPart).map(Remedy::key).distinct().toList();
    return Nearest.of(name, known)
        .map(near -> "did you mean '" + near + "'?")
        .orElse("known: " + String.join(", ", known));
  }
}
