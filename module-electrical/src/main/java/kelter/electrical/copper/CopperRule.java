package kelter.electrical.copper;

import java.util.Optional;
import kelter.core.check.Allowed;
import kelter.core.check.LimitRule;
import kelter.core.check.Limits;
import kelter.core.check.Measured;
import kelter.core.law.Celsius;
import kelter.core.law.CopperResistance;
import kelter.core.source.Source;
import kelter.core.vocabulary.Characteristic;
import kelter.electrical.component.Electrical;

/**
 * A winding or coil against its service figure, within 10 %. Copper is brought to the temperature
 * of the reading; where none is stated, the limits span 10 °C to 35 °C. There are none beyond -50
 * °C to 200 °C.
 *
 * @param winding what is measured, for a person
 * @param figure its resistance at 20 °C by the maker
 */
public record CopperRule(String winding, Characteristic figure) implements LimitRule {

  /** How far a reading may lie from its figure, as a ratio; common practice, no source. */
  private static final double WITHIN = 0.10;

  /** What a part may have in a machine that was off, where no temperature is stated, K. */
  private static final double COOL = Celsius.ZERO + 10;

  private static final double WARM = Celsius.ZERO + 35;

  @Override
  public Optional<Allowed> allowed(Measured measured) {
    double stated = measured.conditions().si(Electrical.TEMPERATURE, Double.NaN);
    double cold = measured.component().si(figure);
    if (!(cold > 0) || stated < Celsius.ZERO - 50 || stated > Celsius.ZERO + 200) {
      return Optional.empty();
    }
    boolean isStated = !Double.isNaN(stated);
    double low = cold * CopperResistance.factor(isStated ? stated : COOL);
    double high = cold * CopperResistance.factor(isStated ? stated : WARM);
    return Optional.of(
        Allowed.of(
                "resistance of the " + winding + " against service figure",
                Source.commonPractice(
                    "within 10 % of the service figure, copper brought to the temperature of the"
                        + " part"),
                new Limits(low * (1 - WITHIN), high * (1 + WITHIN)))
            .resting(isStated ? "" : "10 °C to 35 °C taken, because no temperature is stated"));
  }
}
