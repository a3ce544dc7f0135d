package kelter.costing.shop;

import java.math.BigDecimal;
import kelter.core.quantity.Money;

/**
 * What a shop charges, all in one currency and before tax.
 *
 * @param labourPerHour the price of an hour of work
 * @param leastMinutes how many minutes are charged at least
 * @param callOut what coming costs
 * @param callOutCredited whether the call-out is taken off again when the owner has the machine
 *     mended
 * @param partMarkUp what is put on the shop's price of a part, as a ratio of it (20 % is 0.2)
 * @param tax the tax on the net sum, as a ratio of it (19 % is 0.19)
 */
public record Tariff(
    Money labourPerHour,
    int leastMinutes,
    Money callOut,
    boolean callOutCredited,
    BigDecimal partMarkUp,
    BigDecimal tax) {

  /**
   * Checks the figures.
   *
   * @throws IllegalArgumentException if there are two currencies or a figure is negative
   */
  public Tariff {
    requireNotNegative("the price of an hour", labourPerHour.amount());
    requireNotNegative("the call-out", callOut.amount());
    requireNotNegative("the mark-up", partMarkUp);
    requireNotNegative("the tax", tax);
    requireNotNegative("the least time", BigDecimal.valueOf(leastMinutes));
    if (!labourPerHour.currency().equals(callOut.currency())) {
      throw new IllegalArgumentException(
          "an hour costs %s and the call-out %s; both must be in one currency"
              .formatted(labourPerHour.format(), callOut.format()));
    }
  }

  private static void requireNotNegative(String what, BigDecimal figure) {
    if (figure.signum() < 0) {
      throw new IllegalArgumentException(
          "%s is %s; it must not be negative".formatted(what, figure.toPlainString()));
    }
  }
}
