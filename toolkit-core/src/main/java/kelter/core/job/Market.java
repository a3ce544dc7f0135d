package kelter.core.job;

import java.util.Optional;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;

/** A region with its mains, units, words and rules. */
public enum Market {
  /** The European Union and countries with its rules: 230 V, 50 Hz. */
  EU(230, 50),
  /** The United Kingdom and Ireland: 230 V, 50 Hz, fused plugs. */
  UK(230, 50),
  /** North America: 120 V and 120/240 V, 60 Hz. */
  NA(120, 60);

  /** Above the highest household voltage of 100 to 127 V nets with its tolerance. */
  private static final double BETWEEN_NETS = 150;

  private final double volts;
  private final double hertz;

  Market(double volts, double hertz) {
    this.volts = volts;
    this.hertz = hertz;
  }

  /**
   * The nominal voltage at an ordinary outlet (IEC 60038:2009, Table 1).
   *
   * @return the voltage between the poles
   */
  public Quantity voltage() {
    return Quantity.of(volts, "V", QuantityKind.VOLTAGE);
  }

  /**
   * The nominal frequency (IEC 60038:2009, Table 1).
   *
   * @return the frequency
   */
  public Quantity frequency() {
    return Quantity.of(hertz, "Hz", QuantityKind.FREQUENCY);
  }

  /**
   * The market that a nameplate speaks for.
   *
   * @param nameplate the nameplate of a machine
   * @return North America where it tells of 60 Hz alone, else the EU where it tells of 50 Hz alone;
   *     else North America below 150 V and the EU above; empty if it tells no voltage either
   */
  public static Optional<Market> of(Nameplate nameplate) {
    Optional<RatedRange> frequency = nameplate.frequency();
    if (frequency.isPresent() && !frequency.get().isRange()) {
      return Optional.of(frequency.get().low().si() > EU.hertz ? NA : EU);
    }
    return nameplate.voltage().map(each -> each.high().si() < BETWEEN_NETS ? NA : EU);
  }
}
