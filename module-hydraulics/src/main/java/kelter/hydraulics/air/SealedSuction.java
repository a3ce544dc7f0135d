package kelter.hydraulics.air;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;

/**
 * The suction of a closed vacuum cleaner that leaks: the leak lets in Cd A √(2p/ρ), the fan gives
 * p0 (1 − Q/Q0). With x = √(p/p0) and c = Cd A √(2p0/ρ)/Q0: x² + c x − 1 = 0.
 *
 * <p>It holds for sharp-edged holes and suctions to 40 kPa; the density of the air is taken as
 * constant.
 *
 * <p>Source: Torricelli's law with Cd 0.6 and the straight fan line, from memory.
 */
public final class SealedSuction {

  private static final double DISCHARGE = 0.6; // sharp-edged hole, from memory

  private static final Parameter AREA =
      Parameter.required("leak-area", "area of the leak", QuantityKind.AREA, 0, 2e-3);

  private SealedSuction() {}

  /**
   * The suction by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "sealed-suction",
        "Suction of a closed vacuum cleaner with a leak",
        "c = 0.6 leak-area sqrt(2 sealed-suction / density) / open-flow; x = (sqrt(c^2 + 4) - c) / 2;"
            + " suction = sealed-suction x^2",
        "Sharp-edged hole; air of 1.2 kg/m3",
        Source.fromMemory("Torricelli's law with a coefficient of 0.6; straight fan line"),
        List.of(SuctionPower.SEALED, SuctionPower.OPEN, AREA),
        List.of(new Output("suction", "suction", QuantityKind.PRESSURE_DIFFERENCE)),
        List.of(),
        p -> {
          double sealed = SuctionPower.SEALED.check(p[0]);
          double open = SuctionPower.OPEN.check(p[1]);
          return new double[] {sealed * kept(sealed, open, Math.max(0, AREA.check(p[2])))};
        });
  }

  /**
   * What a leak leaves of the suction.
   *
   * @param sealed the suction without any flow, Pa, above 0
   * @param open the flow rate without a nozzle, m3/s, above 0
   * @param area the area of the leak, m2, not negative
   * @return the share that is left, ratio
   */
  public static double kept(double sealed, double open, double area) {
    double c = leak(sealed, open, area);
    double root = (Math.sqrt(c * c + 4) - c) / 2;
    return root * root;
  }

  /**
   * How much a leak lets in.
   *
   * @param sealed the suction without any flow, Pa, above 0
   * @param open the flow rate without a nozzle, m3/s, above 0
   * @param area the area of the leak, m2, not negative
   * @return c: what it lets in at full suction by the open flow rate, ratio
   */
  public static double leak(double sealed, double open, double area) {
    return DISCHARGE * area * Math.sqrt(2 * sealed / Air.DENSITY) / open;
  }
}
