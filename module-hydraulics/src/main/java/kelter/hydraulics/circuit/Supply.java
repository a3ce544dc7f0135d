package kelter.hydraulics.circuit;

import kelter.core.quantity.QuantityFormat;

/**
 * What a motor is fed with, by what it was made for.
 *
 * @param frequency the frequency as a ratio of the rated one, 0.5 to 1.5; 1.2 for a 50 Hz motor on
 *     60 Hz
 * @param voltage the voltage as a ratio of the rated one, 0.5 to 1.5
 */
public record Supply(double frequency, double voltage) {

  /** Frequency and voltage of the nameplate. */
  public static final Supply RATED = new Supply(1, 1);

  private static final double LEAST = 0.5; // ratio, own choice: beyond it no motor is what it was
  private static final double GREATEST = 1.5; // ratio, same

  /**
   * Checks the ratios.
   *
   * @throws IllegalArgumentException if one is not from 0.5 to 1.5
   */
  public Supply {
    require("frequency", frequency);
    require("voltage", voltage);
  }

  private static void require(String name, double ratio) {
    if (!(ratio >= LEAST && ratio <= GREATEST)) {
      throw new IllegalArgumentException(
          "%s: %s times the rated one is outside 0.5 to 1.5 times"
              .formatted(name, Double.isNaN(ratio) ? "NaN" : QuantityFormat.plain(ratio)));
    }
  }

  /**
   * The magnetic flux: voltage by frequency.
   *
   * @return the flux as a ratio of the rated one
   */
  public double flux() {
    return voltage / frequency;
  }
}
