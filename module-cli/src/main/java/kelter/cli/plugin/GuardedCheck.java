package kelter.cli.plugin;

import java.util.List;
import kelter.core.check.Check;
import kelter.core.check.DecisionRule;
import kelter.core.check.Finding;
import kelter.core.job.Job;
import kelter.core.problem.Required;

/**
 * A check of a plugin; one that fails finds nothing.
 *
 * @param id its id
 * @param title what it asks
 */
record GuardedCheck(Guard guard, Check check, String id, String title) implements Check {

  /** More of them nobody reads, and the risks of each take time. */
  private static final int MOST = 1000;

  static GuardedCheck of(Guard guard, Check check) {
    String id = guard.ask("check of " + check.getClass().getName() + ", id()", check::id);
    return new GuardedCheck(
        guard, check, id, guard.ask("check '" + id + "', title()", check::title));
  }

  @Override
  public List<Finding> apply(Job job, DecisionRule rule) {
    return guard.ask(
        "check '" + id + "'",
        () -> few(Required.list(check.apply(job, rule), "the list of findings")),
        List.of());
  }

  private List<Finding> few(List<Finding> findings) {
    if (findings.size() > MOST) {
      throw new Guard.Failed(
          "check '" + id + "'",
          "gives " + findings.size() + " findings, where at most " + MOST + " can be used",
          null);
    }
    return findings;
  }
}
