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

  static GuardedCheck of(Guard guard, Check check) {
    String id = guard.ask("check of " + check.getClass().getName() + ", id()", check::id);
    return new GuardedCheck(
        guard, check, id, guard.ask("check '" + id + "', title()", check::title));
  }

  @Override
  public List<Finding> apply(Job job, DecisionRule rule) {
    return guard.ask(
        "check '" + id + "'",
        () -> Required.list(check.apply(job, rule), "the list of findings"),
        List.of());
  }
}
