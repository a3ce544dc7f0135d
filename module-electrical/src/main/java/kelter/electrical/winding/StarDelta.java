package kelter.electrical.winding;

import java.util.List;
import kelter.core.law.Require;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.source.Source;

/**
 * The star that measures the same between its terminals as a delta (Kennelly): R_a = R_ab R_ca /
 * (R_ab + R_bc + R_ca), and what is read between the terminals of a delta.
 *
 * <p>Between two terminals of a balanced star one reads twice its resistance, of a balanced delta
 * two thirds.
 *
 * @param a the resistance from terminal a to the middle, Ohm
 * @param b the resistance from terminal b to the middle, Ohm
 * @param c the resistance from terminal c to the middle, Ohm
 */
public record StarDelta(double a, double b, double c) {

  /** Where the formula comes from. */
  public static final Source SOURCE =
      Source.fromMemory("Kennelly, Electrical World and Engineer 34 (1899) 413; circuit theory");

  /**
   * The star of a delta by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "star-of-delta",
        "what is read between the terminals of three resistances in delta",
        "a = ab ca / (ab + bc + ca), and so on; read-ab = a + b",
        "resistances, or windings read with direct current",
        SOURCE,
        List.of(
            Parameter.required("ab", "resistance from a to b", QuantityKind.RESISTANCE, 1e-3, 1e6),
            Parameter.required("bc", "resistance from b to c", QuantityKind.RESISTANCE, 1e-3, 1e6),
            Parameter.required("ca", "resistance from c to a", QuantityKind.RESISTANCE, 1e-3, 1e6)),
        List.of(
            new Output("a", "star resistance at a", QuantityKind.RESISTANCE),
            new Output("b", "star resistance at b", QuantityKind.RESISTANCE),
            new Output("c", "star resistance at c", QuantityKind.RESISTANCE),
            new Output("read-ab", "reading from a to b", QuantityKind.RESISTANCE),
            new Output("read-bc", "reading from b to c", QuantityKind.RESISTANCE),
            new Output("read-ca", "reading from c to a", QuantityKind.RESISTANCE)),
        List.of(Caution.UNPLUG),
        x -> {
          StarDelta star = ofDelta(x[0], x[1], x[2]);
          return new double[] {
            star.a, star.b, star.c, star.a + star.b, star.b + star.c, star.c + star.a
          };
        });
  }

  /**
   * The star that measures the same as a delta.
   *
   * @param ab the resistance from a to b, Ohm, above 0
   * @param bc the resistance from b to c, Ohm, above 0
   * @param ca the resistance from c to a, Ohm, above 0
   * @return the star
   * @throws IllegalArgumentException if a resistance is not finite and above zero
   */
  public static StarDelta ofDelta(double ab, double bc, double ca) {
    Require.positive("resistance ab", ab, "ohm");
    Require.positive("resistance bc", bc, "ohm");
    Require.positive("resistance ca", ca, "ohm");
    double sum = ab + bc + ca;
    return new StarDelta(ab * ca / sum, ab * bc / sum, bc * ca / sum);
  }
}
