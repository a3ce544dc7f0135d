package kelter.costing.choice;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Figures in sentences, without the locale data of a formatter. */
public final class Rounded {

  private Rounded() {}

  /**
   * A figure with so many decimal places.
   *
   * @param value a finite figure
   * @param places how many
   * @return its text
   */
  public static String decimal(double value, int places) {
    return new BigDecimal(value).setScale(places, RoundingMode.HALF_EVEN).toPlainString();
  }
}
