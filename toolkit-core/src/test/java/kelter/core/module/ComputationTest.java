package kelter.core.module;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import kelter.core.problem.InputException;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import org.junit.jupiter.api.Test;

/** A result comes back in the unit in which the first input of its kind was given. */
class ComputationTest {

  private static final Calculation THROUGH =
      new Calculation(
          "through",
          "What was put in",
          "as it is",
          "any",
          Source.commonPractice("a test"),
          List.of(
              Parameter.optional("first", "first", QuantityKind.FLOW, 0, 1, "1 L/min"),
              Parameter.optional("second", "second", QuantityKind.FLOW, 0, 1, "1 L/min"),
              Parameter.optional("head", "head", QuantityKind.HEAD, 0, 100, "1 m"),
              Parameter.optional("share", "share", QuantityKind.RATIO, 0, 1, "1"),
              Parameter.optional("warmth", "warmth", QuantityKind.TEMPERATURE, 200, 400, "20 Cel")),
          List.of(
              new Output("flow", "first", QuantityKind.FLOW),
              new Output("head", "head", QuantityKind.HEAD),
              new Output("share", "share", QuantityKind.RATIO),
              new Output("warmth", "warmth", QuantityKind.TEMPERATURE)),
          List.of(),
          p -> new double[] {p[0], p[2], p[3], p[4]});

  private static Quantity result(int place, Map<String, String> given) {
    return Computation.of(THROUGH, given).results().get(place).quantity();
  }

  /** A US gallon is 231 cubic inches of 25.4 mm (NIST Handbook 44): 3.785 411 784 L. */
  @Test
  void asTheFirstOfItsKindIsGiven() {
    Quantity flow = result(0, Map.of("first", "2 L/min", "second", "5 m3/h"));
    assertEquals("L/min", flow.unit().code());
    Quantity gallons = result(0, Map.of("second", "5 gpm"));
    assertEquals("[gal_us]/min", gallons.unit().code());
    assertEquals(1 / 3.785411784, gallons.value(), 1e-9);
  }

  /** The output of a computation, which budgets follow, has the unit of its figure. */
  @Test
  void outputsAndInputsAreToldAlike() {
    Computation computation = Computation.of(THROUGH, Map.of("first", "5 gpm ± 1"));
    Computation.Result result = computation.results().get(0);
    assertEquals("[gal_us]/min", computation.calculation().outputs().get(0).kind().unit().code());
    assertEquals(result.output(), computation.calculation().outputs().get(0));
    assertEquals("[gal_us]/min", computation.inputs().get(0).parameter().kind().unit().code());
    assertEquals(1 / Math.sqrt(3), result.quantity().standardUncertainty(), 1e-9);
  }

  /** A temperature keeps its zero: 68 °F are 20 °C. */
  @Test
  void temperaturesKeepTheirScale() {
    Quantity warmth = result(3, Map.of("warmth", "68 degF"));
    assertEquals("[degF]", warmth.unit().code());
    assertEquals(68, warmth.value(), 1e-9);
  }

  /**
   * A ratio has no unit to come back in; a head that was written as the pressure of cold water is
   * told as one.
   */
  @Test
  void ratiosAndHeads() {
    Map<String, String> given = Map.of("share", "50 %", "head", "10 kPa");
    assertEquals(0.5, result(2, given).value());
    assertEquals("1", result(2, given).unit().code());
    assertEquals("kPa", result(1, given).unit().code());
    assertEquals(10, result(1, given).value(), 1e-9);
    assertEquals("[ft_i]", result(1, Map.of("head", "3 ft")).unit().code());
  }

  @Test
  void whatIsAssumedDoesNotCount() {
    assertEquals("L/min", result(0, Map.of("head", "3 ft")).unit().code());
  }

  /** A law that has no value beyond a half of what its parameter may be. */
  @Test
  void anUncertaintyThatReachesToWhereThereIsNoResultIsToldWithItsParameter() {
    Calculation half =
        new Calculation(
            "half",
            "Less than a half",
            "as it is",
            "below a half",
            Source.commonPractice("a test"),
            List.of(Parameter.optional("share", "share", QuantityKind.RATIO, 0, 1, "0.4")),
            List.of(new Output("share", "share", QuantityKind.RATIO)),
            List.of(),
            p -> new double[] {p[0] < 0.5 ? p[0] : Double.NaN});

    InputException refused =
        assertThrows(
            InputException.class, () -> Computation.of(half, Map.of("share", "0.4 ± 0.3")));

    assertTrue(
        refused.getMessage().contains("share: '0.4 ± 0.3' reaches to where there is no result"),
        refused.getMessage());
  }
}
