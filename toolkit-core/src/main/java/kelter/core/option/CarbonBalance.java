package kelter.core.option;

import java.util.List;
import kelter.core.source.Source;
import kelter.core.vocabulary.Statement;

/**
 * What keeping a machine and replacing it emit, in kg of carbon dioxide equivalent.
 *
 * @param runningOld by running the old machine for a year
 * @param runningNew by running a new machine for a year
 * @param makingNew by making, delivering and disposing of a new machine
 * @param makingNewPerYear the same spread evenly over its mean life, for a year
 * @param payBack after how many years a new machine has emitted less than the old one; NaN if never
 * @param assumptions what was taken for granted
 * @param sources where figures and method come from
 */
public record CarbonBalance(
    double runningOld,
    double runningNew,
    double makingNew,
    double makingNewPerYear,
    double payBack,
    List<Statement> assumptions,
    List<Source> sources) {

  public CarbonBalance {
    assumptions = List.copyOf(assumptions);
    sources = List.copyOf(sources);
  }
}
