package kelter.testkit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kelter.core.module.Calculation;
import kelter.core.module.Computation;
import kelter.core.module.Output;
import kelter.core.quantity.Quantity;

/** Runs the calculations of a module as a person who asks for one by its name. */
public final class ByName {

  private final List<Calculation> calculations;

  /**
   * The calculations of a module.
   *
   * @param calculations all of them
   */
  public ByName(List<Calculation> calculations) {
    this.calculations = List.copyOf(calculations);
  }

  /**
   * Holds one result against a figure, within half of its last printed digit.
   *
   * @param id the name of the calculation
   * @param given what the person writes, such as {@code power=2 kW, voltage=230 V}
   * @param word the word of the result
   * @param figure what it should be, in decimals
   * @param unit the unit of that figure, in UCUM
   * @throws AssertionError if it is farther off
   */
  public void assertGives(String id, String given, String word, String figure, String unit) {
    Calculation calculation =
        calculations.stream().filter(each -> each.id().equals(id)).findFirst().orElseThrow();
    Computation.Result result =
        Computation.of(calculation, figures(given)).results().stream()
            .filter(each -> each.output().id().equals(word))
            .findFirst()
            .orElseThrow();
    int point = figure.indexOf('.');
    double half = 0.5 * Math.pow(10, point < 0 ? 0 : point + 1 - figure.length());
    assertEquals(
        si(result.output(), Double.parseDouble(figure), unit),
        result.quantity().si(),
        si(result.output(), half, unit) - si(result.output(), 0, unit));
  }

  private static Map<String, String> figures(String given) {
    Map<String, String> figures = new HashMap<>();
    for (String one : given.split(", ")) {
      int sign = one.indexOf('=');
      figures.put(one.substring(0, sign), one.substring(sign + 1));
    }
    return figures;
  }

  private static double si(Output output, double figure, String unit) {
    return Quantity.of(figure, unit, output.kind()).si();
  }
}
