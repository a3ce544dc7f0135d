package kelter.core.module;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import kelter.core.quantity.Nearest;
import kelter.core.uncertainty.Budget;
import kelter.core.uncertainty.ErrorEffect;
import kelter.core.uncertainty.InputQuantity;
import kelter.core.uncertainty.montecarlo.MonteCarlo;

/**
 * The uncertainty of what came out of a calculation, in full: the budget of each result after JCGM
 * 100:2008, and a Monte Carlo check of it after JCGM 101:2008.
 *
 * @param computation what was computed
 * @param effects what is uncertain about the inputs; empty if none has an uncertainty
 * @param budgets the budget of each result, in the order of the outputs
 * @param outcomes the Monte Carlo check of each result, in the order of the outputs; empty if there
 *     is nothing to check
 * @param refused why there is no Monte Carlo check although something is uncertain, if so
 * @param settings how the Monte Carlo check was run
 */
public record UncertaintyAnalysis(
    Computation computation,
    List<ErrorEffect> effects,
    List<Budget> budgets,
    List<MonteCarlo.Outcome> outcomes,
    Optional<String> refused,
    MonteCarlo.Settings settings) {

  public UncertaintyAnalysis {
    effects = List.copyOf(effects);
    budgets = List.copyOf(budgets);
    outcomes = List.copyOf(outcomes);
  }

  /**
   * Analyses a computation.
   *
   * @param computation what was computed
   * @param shared the ids of parameters whose stated errors are one and the same, as of readings of
   *     one instrument; none, or two or more
   * @param settings how the Monte Carlo check is run
   * @return the analysis
   * @throws InputException if a shared parameter is unknown or states its error in another way than
   *     the others, or the calculation refuses values within one standard uncertainty
   */
  public static UncertaintyAnalysis of(
      Computation computation, List<String> shared, MonteCarlo.Settings settings) {
    List<InputQuantity> inputs =
        computation.inputs().stream().map(Computation.Input::quantity).toList();
    Set<Integer> places = places(computation.calculation(), shared);
    List<ErrorEffect> effects;
    try {
      effects = ErrorEffect.of(inputs, places);
    } catch (IllegalArgumentException different) {
      throw new InputException(String.join(", ", shared), different.getMessage(), "");
    }
    double[] values = inputs.stream().mapToDouble(InputQuantity::value).toArray();
    List<Budget> budgets = budgets(computation.calculation(), values, effects);
    List<MonteCarlo.Outcome> outcomes = List.of();
    Optional<String> refused = Optional.empty();
    if (!effects.isEmpty()) {
      Calculation.Law law = computation.calculation().law();
      try {
        outcomes = MonteCarlo.run(law::apply, values, budgets, effects, settings);
      } catch (IllegalArgumentException undefined) {
        refused = Optional.of(undefined.getMessage());
      }
    }
    return new UncertaintyAnalysis(computation, effects, budgets, outcomes, refused, settings);
  }

  private static List<Budget> budgets(
      Calculation calculation, double[] values, List<ErrorEffect> effects) {
    List<Budget> budgets = new ArrayList<>();
    try {
      for (int i = 0; i < calculation.outputs().size(); i++) {
        int place = i;
        budgets.add(
            Budget.of(
                x -> calculation.law().apply(x)[place],
                values,
                effects,
                Budget.COVERAGE_PROBABILITY));
      }
    } catch (IllegalArgumentException apart) {
      throw new InputException(calculation.id(), apart.getMessage(), "");
    }
    return budgets;
  }

  private static Set<Integer> places(Calculation calculation, List<String> shared) {
    List<String> known = calculation.parameters().stream().map(Parameter::id).toList();
    List<Problem> problems = new ArrayList<>();
    Set<Integer> places = new HashSet<>();
    for (String word : shared) {
      if (!known.contains(word)) {
        String remedy =
            Nearest.of(word, known)
                .map(near -> "did you mean '" + near + "'?")
                .orElse("it takes " + String.join(", ", known));
        problems.add(new Problem(word, calculation.id() + " has no such parameter", remedy));
      }
      places.add(known.indexOf(word));
    }
    if (problems.isEmpty() && places.size() == 1) {
      problems.add(
          new Problem(shared.get(0), "shares its error with nothing", "name two parameters"));
    }
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    return places;
  }
}
