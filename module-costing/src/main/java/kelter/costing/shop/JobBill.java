package kelter.costing.shop;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import kelter.core.quantity.Money;

/**
 * A bill, exact to the minor unit of its currency.
 *
 * <p>Each line is rounded by itself, half up as merchants do, so that the lines that the owner sees
 * add up to the net sum; the tax is rounded once, on the net sum. A currency without minor units
 * has none, one with three digits has three. Local rules on rounding, tax and the form of a bill
 * come first.
 *
 * @param lines what is charged
 * @param net the sum of the lines
 * @param tax the tax on the net sum
 * @param total what is to be paid
 */
public record JobBill(List<Line> lines, Money net, Money tax, Money total) {

  private static final BigDecimal MINUTES_PER_HOUR = BigDecimal.valueOf(60);

  public JobBill {
    lines = List.copyOf(lines);
  }

  /**
   * One line of a bill.
   *
   * @param text what it is for
   * @param amount how much, below zero for a credit
   */
  public record Line(String text, Money amount) {}

  /**
   * A part that was fitted.
   *
   * @param text what it is
   * @param count how many, one or more
   * @param cost what one cost the shop
   */
  public record Part(String text, int count, Money cost) {

    /**
     * Checks the figures.
     *
     * @throws IllegalArgumentException if the count is not above zero or the cost is negative
     */
    public Part {
      if (count < 1 || cost.amount().signum() < 0) {
        throw new IllegalArgumentException(
            "%s: %s at %s; one or more, at a cost that is not negative"
                .formatted(text, count, cost.format()));
      }
    }
  }

  /**
   * Makes out a bill.
   *
   * @param tariff what the shop charges
   * @param minutes how long the work took, in minutes; 0 if the owner did not have it mended
   * @param parts what was fitted
   * @return the bill
   * @throws IllegalArgumentException if the time is negative or a part is in another currency
   */
  public static JobBill of(Tariff tariff, int minutes, List<Part> parts) {
    if (minutes < 0) {
      throw new IllegalArgumentException(
          "%s minutes of work; it must not be negative".formatted(minutes));
    }
    Currency currency = tariff.labourPerHour().currency();
    List<Line> lines = new ArrayList<>();
    lines.add(new Line("Call-out", rounded(tariff.callOut().amount(), currency)));
    if (minutes > 0) {
      int charged = Math.max(minutes, tariff.leastMinutes());
      lines.add(new Line("Work, " + charged + " min", labour(tariff, charged, currency)));
      if (tariff.callOutCredited()) {
        BigDecimal credit = tariff.callOut().amount().negate();
        lines.add(new Line("Call-out credited", rounded(credit, currency)));
      }
    }
    parts.forEach(part -> lines.add(line(part, tariff, currency)));
    return summed(lines, tariff, currency);
  }

  private static Money labour(Tariff tariff, int minutes, Currency currency) {
    BigDecimal whole = tariff.labourPerHour().amount().multiply(BigDecimal.valueOf(minutes));
    int digits = digits(currency);
    return new Money(whole.divide(MINUTES_PER_HOUR, digits, RoundingMode.HALF_UP), currency);
  }

  private static Line line(Part part, Tariff tariff, Currency currency) {
    if (!part.cost().currency().equals(currency)) {
      throw new IllegalArgumentException(
          "%s costs %s and the bill is in %s; an amount is never converted here"
              .formatted(part.text(), part.cost().format(), currency));
    }
    BigDecimal each =
        rounded(part.cost().amount().multiply(BigDecimal.ONE.add(tariff.partMarkUp())), currency)
            .amount();
    String text = part.count() == 1 ? part.text() : part.count() + " x " + part.text();
    return new Line(text, rounded(each.multiply(BigDecimal.valueOf(part.count())), currency));
  }

  private static JobBill summed(List<Line> lines, Tariff tariff, Currency currency) {
    BigDecimal net =
        lines.stream().map(line -> line.amount().amount()).reduce(BigDecimal.ZERO, BigDecimal::add);
    Money tax = rounded(net.multiply(tariff.tax()), currency);
    return new JobBill(
        lines, rounded(net, currency), tax, rounded(net.add(tax.amount()), currency));
  }

  private static Money rounded(BigDecimal amount, Currency currency) {
    return new Money(amount.setScale(digits(currency), RoundingMode.HALF_UP), currency);
  }

  private static int digits(Currency currency) {
    return Math.max(0, currency.getDefaultFractionDigits());
  }
}
