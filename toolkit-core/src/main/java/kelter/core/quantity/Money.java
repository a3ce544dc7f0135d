package kelter.core.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An amount of money, exact.
 *
 * @param amount the amount, of either sign
 * @param currency the currency (ISO 4217)
 */
public record Money(BigDecimal amount, Currency currency) {

  private static final Pattern TEXT =
      Pattern.compile(
          "\\s*(?:(?<before>[A-Z]{3})\\s*)?(?<amount>[-+−]?[0-9][0-9.,'\\u2019 \\u00a0\\u2009\\u202f]*?)\\s*(?<after>[A-Z]{3})?\\s*");
  private static final int MAX_LENGTH = 40;

  /** Checks that nothing is missing. */
  public Money {
    Objects.requireNonNull(amount);
    Objects.requireNonNull(currency);
  }

  /**
   * Reads an amount.
   *
   * @param text the amount with the ISO 4217 code of its currency, for instance {@code 38.50 EUR}
   * @return the amount, exact
   * @throws QuantityFormatException if there is no amount, no currency, or one that is not known
   */
  public static Money parse(String text) {
    Matcher matcher = text.length() > MAX_LENGTH ? TEXT.matcher("") : TEXT.matcher(text);
    if (!matcher.matches()
        || (matcher.group("before") == null) == (matcher.group("after") == null)) {
      throw new QuantityFormatException(
          "'" + text.strip() + "' is not an amount of money; write for instance '38.50 EUR'");
    }
    String code =
        matcher.group("before") == null ? matcher.group("after") : matcher.group("before");
    try {
      return new Money(DecimalText.of(matcher.group("amount")).exact(), Currency.getInstance(code));
    } catch (QuantityFormatException wrongNumber) {
      throw wrongNumber;
    } catch (IllegalArgumentException notACurrency) {
      throw new QuantityFormatException("'" + code + "' is not a currency of ISO 4217");
    }
  }

  /**
   * The amount as a number for statistics; never for an invoice.
   *
   * @return the nearest double, in units of the currency
   */
  public double toDouble() {
    return amount.doubleValue();
  }

  /**
   * The amount rounded to the minor unit of its currency, half to even.
   *
   * @return the rounded amount
   */
  public Money rounded() {
    int digits = Math.max(0, currency.getDefaultFractionDigits());
    return new Money(amount.setScale(digits, RoundingMode.HALF_EVEN), currency);
  }

  /**
   * The text of the amount, which {@link #parse} reads back.
   *
   * @return for instance {@code 38.50 EUR}
   */
  public String format() {
    return amount.toPlainString() + " " + currency.getCurrencyCode();
  }
}
