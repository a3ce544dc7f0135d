package kelter.electrical.copper;

import kelter.core.diagnosis.model.Circumstances;
import kelter.core.diagnosis.model.Figure;
import kelter.core.diagnosis.model.State;
import kelter.core.job.Conditions;
import kelter.core.law.Celsius;
import kelter.core.law.CopperResistance;
import kelter.electrical.component.Electrical;

/**
 * What a winding or coil of copper measures at the temperature of the reading, at 20 °C where none
 * is stated, Ohm. Beyond -50 °C to 200 °C the nearer end is taken.
 *
 * @param cold its resistance in order at 20 °C, Ohm
 * @param ratio the figure that tells by what ratio faults have changed it
 */
public record CopperCoil(double cold, Figure ratio) implements Circumstances<Double> {

  /** Of an open winding, as a ratio of its resistance: any number that ends at the span. */
  public static final double OPEN = 1e9;

  private static final double COLDEST = Celsius.ZERO - 50;
  private static final double HOTTEST = Celsius.ZERO + 200;

  @Override
  public Solver<Double> under(Conditions conditions) {
    double kelvin = conditions.si(Electrical.TEMPERATURE, Celsius.TWENTY);
    double factor = CopperResistance.factor(Math.min(Math.max(kelvin, COLDEST), HOTTEST));
    return new Warm(cold * factor, ratio);
  }

  /**
   * At one temperature.
   *
   * @param resistance the resistance in order, Ohm
   */
  private record Warm(double resistance, Figure ratio) implements Solver<Double> {
    @Override
    public Double in(State state) {
      return resistance * state.of(ratio);
    }
  }
}
