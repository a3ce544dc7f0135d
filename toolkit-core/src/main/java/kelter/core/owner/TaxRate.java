package kelter.core.owner;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A rate of tax, exact.
 *
 * @param percent the rate in per cent, from 0 to 100
 */
public record TaxRate(BigDecimal percent) {

  private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
  private static final Pattern TEXT =
      Pattern.compile("\\s*([0-9]{1,3}(?:[.,][0-9]{1,4})?)\\s*%\\s*");

  /**
   * Checks the rate.
   *
   * @throws IllegalArgumentException if it does not lie from 0 to 100 %
   */
  public TaxRate {
    Objects.requireNonNull(percent);
    if (percent.signum() < 0 || percent.compareTo(HUNDRED) > 0) {
      throw new IllegalArgumentException(
          "a tax rate of %s %%; it must lie from 0 to 100 %%".formatted(percent.toPlainString()));
    }
    percent = percent.signum() == 0 ? BigDecimal.ZERO : plain(percent);
  }

  private static BigDecimal plain(BigDecimal figure) {
    BigDecimal stripped = figure.stripTrailingZeros();
    return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
  }

  /**
   * Reads a rate.
   *
   * @param text such as {@code 21 %} or {@code 7,5 %}, with up to four decimals
   * @return the rate
   * @throws IllegalArgumentException if it is no rate, or not one from 0 to 100 %
   */
  public static TaxRate parse(String text) {
    Matcher matcher = TEXT.matcher(text);
    if (!matcher.matches()) {
      throw new IllegalArgumentException(
          "'" + text.strip() + "' is not a tax rate; write for instance '21 %'");
    }
    return new TaxRate(new BigDecimal(matcher.group(1).replace(',', '.')));
  }

  /**
   * An amount with this tax on it.
   *
   * @param amount an amount before tax
   * @return the amount with tax, exact and not rounded
   */
  public BigDecimal onTopOf(BigDecimal amount) {
    return amount.multiply(HUNDRED.add(percent)).divide(HUNDRED);
  }

  /**
   * The text of the rate, which {@link #parse} reads back.
   *
   * @return for instance {@code 21 %}
   */
  public String format() {
    return percent.toPlainString() + " %";
  }
}
