package kelter.core.module;

import java.util.ArrayList;
import java.util.Currency;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.problem.InputException;
import kelter.core.problem.Mistake;
import kelter.core.problem.Problem;
import kelter.core.quantity.Expected;
import kelter.core.quantity.Money;
import kelter.core.quantity.Nearest;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityFormatException;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.Unit;
import kelter.core.uncertainty.Estimate;
import kelter.core.uncertainty.InputQuantity;

/**
 * A calculation run on given values.
 *
 * @param calculation what was computed
 * @param inputs what was taken for each parameter, in their order
 * @param results what came out, in the order of the outputs
 */
public record Computation(Calculation calculation, List<Input> inputs, List<Result> results) {

  public Computation {
    inputs = List.copyOf(inputs);
    results = List.copyOf(results);
  }

  /**
   * What was taken for a parameter.
   *
   * @param parameter the parameter, told in the unit that was written
   * @param text what was given, or what is taken where nothing is
   * @param quantity the value in the coherent SI unit with its uncertainty, or the place of the
   *     word for a choice
   * @param given whether somebody gave it
   */
  public record Input(Parameter parameter, String text, InputQuantity quantity, boolean given) {}

  /**
   * What came out.
   *
   * @param output the output
   * @param quantity the value with its standard uncertainty
   * @param contributions what each parameter contributes to the uncertainty, in the coherent SI
   *     unit of the output, in the order of the parameters
   */
  public record Result(Output output, Quantity quantity, List<Double> contributions) {

    public Result {
      contributions = List.copyOf(contributions);
    }
  }

  /**
   * Runs a calculation. Amounts of money are told in the currency in which one of them is given. A
   * parameter is told in the unit in which it is written, and a result in the unit of the first
   * parameter of its kind that is given; where there is none, in the usual unit of its kind.
   *
   * @param calculation what to compute
   * @param given what a person wrote for each parameter
   * @return the computation
   * @throws InputException if a parameter is missing, unknown, unreadable or out of its limits, or
   *     the values do not go together; every mistake is told
   */
  public static Computation of(Calculation calculation, Map<String, String> given) {
    List<Problem> problems = new ArrayList<>();
    Optional<Currency> currency = currency(calculation, given, problems);
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    return currency.isPresent()
        ? read(calculation.in(currency.get()), given)
        : read(calculation, given);
  }

  /** The currency in which amounts are given, if one is named. */
  private static Optional<Currency> currency(
      Calculation calculation, Map<String, String> given, List<Problem> problems) {
    Optional<Currency> first = Optional.empty();
    for (Parameter parameter : calculation.parameters()) {
      String text = given.get(parameter.id());
      if (text == null || !parameter.kind().isMoney()) {
        continue;
      }
      Optional<Currency> named = Money.currencyIn(text);
      if (first.isPresent() && named.isPresent() && !first.equals(named)) {
        problems.add(
            new Problem(
                parameter.id(),
                "is in %s, and another amount in %s".formatted(named.get(), first.get()),
                "give all amounts in one currency"));
      }
      first = first.isPresent() ? first : named;
    }
    return first;
  }

  private static Computation read(Calculation calculation, Map<String, String> given) {
    List<Problem> problems = new ArrayList<>();
    Map<String, String> rest = new LinkedHashMap<>(given);
    List<Input> inputs = new ArrayList<>();
    for (Parameter parameter : calculation.parameters()) {
      Optional<String> own = Optional.ofNullable(rest.remove(parameter.id()));
      Optional<Input> input = read(parameter, own, problems);
      if (input.isPresent()) {
        inputs.add(input.get());
      }
    }
    for (String unknown : rest.keySet()) {
      problems.add(unknown(calculation, unknown));
    }
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    return run(calculation, inputs);
  }

  private static Problem unknown(Calculation calculation, String word) {
    List<String> known = calculation.parameters().stream().map(Parameter::id).toList();
    String remedy =
        Nearest.of(word, known)
            .map(near -> "did you mean '" + near + "'?")
            .orElse("it takes " + String.join(", ", known));
    return new Problem(
        Mistake.UNKNOWN_NAME, word, calculation.id() + " has no such parameter", remedy);
  }

  private static Optional<Input> read(
      Parameter parameter, Optional<String> own, List<Problem> problems) {
    Optional<String> text = own.isPresent() ? own : parameter.usual();
    if (text.isEmpty()) {
      problems.add(
          new Problem(
              Mistake.MISSING,
              parameter.id(),
              "is missing",
              "give the %s (%s)".formatted(parameter.title(), example(parameter))));
      return Optional.empty();
    }
    try {
      InputText.Written read = value(parameter, text.get());
      Parameter told = parameter.toldIn(read.unit());
      return Optional.of(new Input(told, text.get(), read.quantity(), own.isPresent()));
    } catch (QuantityFormatException wrong) {
      problems.add(new Problem(parameter.id(), wrong.getMessage(), ""));
      return Optional.empty();
    }
  }

  private static String example(Parameter parameter) {
    return "in " + parameter.kind().unit().code();
  }

  private static InputText.Written value(Parameter parameter, String text) {
    if (!parameter.choices().isEmpty()) {
      int place = parameter.choices().indexOf(text.strip());
      if (place < 0) {
        throw new QuantityFormatException(
            "'%s' is not one of %s".formatted(text, String.join(", ", parameter.choices())));
      }
      return new InputText.Written(InputQuantity.exact(place), Unit.ONE);
    }
    Expected expected = parameter.expected();
    InputText.Written read = parameter.written(text);
    InputQuantity quantity = parameter.atLimit(read.quantity());
    double si = quantity.value();
    if (parameter.isCount() && (si != Math.rint(si) || !quantity.terms().isEmpty())) {
      throw new QuantityFormatException("'" + text.strip() + "' is not a whole number");
    }
    if (!expected.takes(si)) {
      throw new QuantityFormatException(
          "%s is outside %s to %s"
              .formatted(
                  text.strip(),
                  limit(parameter, expected.least()),
                  limit(parameter, expected.most())));
    }
    return new InputText.Written(quantity, read.unit());
  }

  private static String limit(Parameter parameter, double si) {
    return Quantity.ofSi(si, 0, parameter.kind()).display();
  }

  private static Computation run(Calculation asked, List<Input> inputs) {
    Calculation calculation = asked.toldIn(units(asked, inputs));
    List<Estimate> estimates = inputs.stream().map(input -> input.quantity().estimate()).toList();
    double[] least = calculation.parameters().stream().mapToDouble(Parameter::low).toArray();
    double[] most = calculation.parameters().stream().mapToDouble(Parameter::high).toArray();
    List<Result> results = new ArrayList<>();
    try {
      for (int i = 0; i < calculation.outputs().size(); i++) {
        int place = i;
        Propagation.Propagated propagated =
            Propagation.through(x -> output(calculation, inputs, place, x), estimates, least, most);
        Output output = calculation.outputs().get(i);
        results.add(
            new Result(
                output, quantity(output, propagated.estimate()), propagated.contributions()));
      }
    } catch (QuantityFormatException notFinite) {
      throw new InputException(calculation.id(), "the values give no finite result", "");
    } catch (IllegalArgumentException apart) {
      throw new InputException(calculation.id(), apart.getMessage(), "");
    }
    return new Computation(calculation, inputs, results);
  }

  /** The unit in which each kind of figure was given first. */
  private static Map<QuantityKind, Unit> units(Calculation calculation, List<Input> inputs) {
    Map<QuantityKind, Unit> units = new HashMap<>();
    for (int i = 0; i < inputs.size(); i++) {
      QuantityKind kind = calculation.parameters().get(i).kind();
      if (inputs.get(i).given()) {
        units.putIfAbsent(kind, inputs.get(i).parameter().kind().unit());
      }
    }
    return units;
  }

  private static double output(
      Calculation calculation, List<Input> inputs, int place, double... x) {
    double value = calculation.law().apply(x)[place];
    if (Double.isFinite(value)) {
      return value;
    }
    for (int i = 0; i < x.length; i++) {
      if (x[i] != inputs.get(i).quantity().value()) {
        throw new IllegalArgumentException(
            inputs.get(i).parameter().id()
                + ": '"
                + inputs.get(i).text()
                + "' reaches to where there is no result; state a smaller uncertainty");
      }
    }
    throw new IllegalArgumentException("the values give no finite result");
  }

  private static Quantity quantity(Output output, Estimate estimate) {
    return Quantity.ofSi(estimate.value(), estimate.standardUncertainty(), output.kind());
  }
}
