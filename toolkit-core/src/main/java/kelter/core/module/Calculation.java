package kelter.core.module;

import java.util.Currency;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.Unit;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.core.vocabulary.Ids;

/**
 * One calculation as a person can ask for it by name.
 *
 * @param id its name, unique among all modules
 * @param title what it answers, for a person
 * @param formula the formula in plain characters, with the parameters' ids
 * @param range where it holds, and what happens outside
 * @param source where the formula comes from
 * @param parameters what it takes, in the order in which the law gets them
 * @param outputs what it gives, in the order in which the law returns them
 * @param cautions what to mind when the figures are measured or used
 * @param law the formula itself
 */
public record Calculation(
    String id,
    String title,
    String formula,
    String range,
    Source source,
    List<Parameter> parameters,
    List<Output> outputs,
    List<Caution> cautions,
    Law law) {

  /**
   * Checks the ids and copies the lists.
   *
   * @throws IllegalArgumentException if it gives nothing or an id occurs twice
   */
  public Calculation {
    Ids.require(id);
    Objects.requireNonNull(source);
    Objects.requireNonNull(law);
    parameters = List.copyOf(parameters);
    outputs = List.copyOf(outputs);
    cautions = List.copyOf(cautions);
    Set<String> ids = new HashSet<>();
    for (Parameter parameter : parameters) {
      ids.add(parameter.id());
    }
    if (outputs.isEmpty() || ids.size() < parameters.size()) {
      throw new IllegalArgumentException(id + ": one output or more, each parameter once");
    }
  }

  /**
   * The same with all amounts of money told in one currency.
   *
   * @param currency the currency
   * @return the calculation, whose law is the same
   */
  public Calculation in(Currency currency) {
    return new Calculation(
        id,
        title,
        formula,
        range,
        source,
        parameters.stream().map(parameter -> parameter.in(currency)).toList(),
        outputs.stream()
            .map(each -> new Output(each.id(), each.title(), each.kind().in(currency)))
            .toList(),
        cautions,
        law);
  }

  /**
   * The same with results told in other units.
   *
   * @param units the unit by the kind of a result; where there is none, the kind's own stays
   * @return the calculation, whose law is the same
   */
  Calculation toldIn(Map<QuantityKind, Unit> units) {
    return new Calculation(
        id,
        title,
        formula,
        range,
        source,
        parameters,
        outputs.stream()
            .map(each -> each.toldIn(units.getOrDefault(each.kind(), each.kind().unit())))
            .toList(),
        cautions,
        law);
  }

  /** The formula of a calculation. */
  @FunctionalInterface
  public interface Law {

    /**
     * Computes the outputs.
     *
     * @param parameters one value for each parameter, in the coherent SI unit, inside its limits;
     *     in a Monte Carlo check anything that the uncertainty allows
     * @return one value for each output, in the coherent SI unit
     * @throws IllegalArgumentException if the values do not go together; the message says which and
     *     what would
     */
    double[] apply(double[] parameters);
  }
}
