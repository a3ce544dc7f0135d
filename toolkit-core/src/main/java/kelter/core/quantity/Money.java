package kelter.core.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An amount of money, exact.
 *
 * @param amount the amount, of either sign
 * @param currency the currency (ISO 4217)
 */
public record Money(BigDecimal amount, Currency currency) {

  private static final int MAX_LENGTH = 40;
  private static final int CODE_LENGTH = 3;

  /** The currencies of which the sign is $ (ISO 4217 codes, from memory). */
  private static final Set<String> DOLLARS =
      Set.of("USD", "CAD", "AUD", "NZD", "SGD", "HKD", "TWD", "MXN", "CLP", "COP", "ARS", "JMD");

  /** More than any price, in units of whatever currency; own choice. */
  private static final BigDecimal GREATEST = new BigDecimal("1000000000000000");

  /** So many digits behind a point may stand for thousands. */
  private static final int THOUSANDS = 3;

  public Money {
    Objects.requireNonNull(amount);
    Objects.requireNonNull(currency);
  }

  /**
   * Reads an amount.
   *
   * <p>Three digits behind a single point, as in {@code 1.900 EUR}, are thousands to one writer and
   * decimals to another, and are refused; not so in a currency whose minor unit has three digits.
   *
   * @param text the amount with the ISO 4217 code of its currency or €, for instance {@code 38.50
   *     EUR}
   * @return the amount, exact
   * @throws QuantityFormatException if there is no amount, no currency, or one that is not known
   */
  public static Money parse(String text) {
    Optional<Money> plain = plain(text);
    return plain.isPresent() ? plain.get() : any(text, Optional.empty());
  }

  /**
   * Reads an amount where it is known in which currency prices are told.
   *
   * @param text as for {@link #parse(String)}; {@code $} stands for the currency if it is a dollar
   * @param usual the currency of prices
   * @return the amount, exact, in the currency that was written
   * @throws QuantityFormatException as {@link #parse(String)} does
   */
  public static Money parse(String text, Currency usual) {
    Optional<Money> plain = plain(text);
    return plain.isPresent() ? plain.get() : any(text, Optional.of(usual));
  }

  /** The plainest form, digits, a blank and a code, read without patterns for a quick start. */
  private static Optional<Money> plain(String text) {
    int end = text.length() > MAX_LENGTH ? 0 : DecimalText.plainEnd(text);
    if (end == 0 || text.length() != end + 1 + CODE_LENGTH || text.charAt(end) != ' ') {
      return Optional.empty();
    }
    return Optional.of(of(text.substring(0, end), text.substring(end + 1)));
  }

  private static Money any(String text, Optional<Currency> usual) {
    Matcher matcher = Patterns.MONEY.matcher(text.length() > MAX_LENGTH ? "" : text);
    if (!matcher.matches()
        || (matcher.group("before") == null) == (matcher.group("after") == null)) {
      throw new QuantityFormatException(
          "'" + text.strip() + "' is not an amount of money; write for instance '38.50 EUR'");
    }
    String code =
        matcher.group("before") == null ? matcher.group("after") : matcher.group("before");
    return of(matcher.group("amount"), code(code, usual));
  }

  private static String code(String written, Optional<Currency> usual) {
    return switch (written) {
      case "€" -> "EUR";
      case "£" -> "GBP";
      case "$" -> dollar(usual);
      default -> written;
    };
  }

  private static String dollar(Optional<Currency> usual) {
    if (usual.isPresent() && DOLLARS.contains(usual.get().getCurrencyCode())) {
      return usual.get().getCurrencyCode();
    }
    throw new QuantityFormatException(
        "'$' is the sign of several currencies; write the code, for instance '95 USD'");
  }

  private static Money of(String amount, String code) {
    Currency currency;
    try {
      currency = Currency.getInstance(code);
    } catch (IllegalArgumentException notACurrency) {
      throw new QuantityFormatException("'" + code + "' is not a currency of ISO 4217");
    }
    BigDecimal exact = exact(amount, currency.getDefaultFractionDigits());
    if (exact.abs().compareTo(GREATEST) > 0) {
      throw new QuantityFormatException(
          "'"
              + amount
              + " "
              + code
              + "' is too large: up to "
              + GREATEST.toPlainString()
              + " is taken");
    }
    return new Money(exact, currency);
  }

  private static BigDecimal exact(String amount, int minorDigits) {
    boolean decimals = minorDigits == THOUSANDS && amount.indexOf(',') < 0;
    return decimals
        ? DecimalText.of(amount, size -> Math.abs(size) < 1000).exact()
        : DecimalText.of(amount).exact();
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
   * An amount that was worked out, for a person.
   *
   * @param amount a finite amount, in units of the currency
   * @param currency the currency
   * @return the text of the amount, to the minor unit of the currency
   */
  public static String rounded(double amount, Currency currency) {
    return new Money(BigDecimal.valueOf(amount), currency).rounded().format();
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
   * @return for instance {@code 38.50 EUR}; three decimals that might be taken for thousands are
   *     told with a fourth
   */
  public String format() {
    BigDecimal size = amount.abs();
    boolean doubtful =
        amount.scale() == THOUSANDS
            && currency.getDefaultFractionDigits() != THOUSANDS
            && size.compareTo(BigDecimal.ONE) >= 0
            && size.compareTo(BigDecimal.valueOf(1000)) < 0;
    BigDecimal told = doubtful ? amount.setScale(THOUSANDS + 1) : amount;
    return told.toPlainString() + " " + currency.getCurrencyCode();
  }

  /**
   * The currency that is named in a text.
   *
   * @param text what a person wrote, such as {@code 38.50 EUR ± 5 %}
   * @return the first ISO 4217 code in it that stands by itself, or the euro for €; empty if there
   *     is none
   */
  public static Optional<Currency> currencyIn(String text) {
    Matcher code = Patterns.CODE.matcher(text.replace("€", " EUR "));
    while (code.find()) {
      try {
        return Optional.of(Currency.getInstance(code.group()));
      } catch (IllegalArgumentException notACurrency) {
        continue;
      }
    }
    return Optional.empty();
  }

  /** Made ready when the first text needs it. */
  private static final class Patterns {
    static final Pattern MONEY =
        Pattern.compile(
            "\\s*(?:(?<before>[A-Z]{3}|[€£$])\\s*)?(?<amount>[-+−]?[0-9][0-9.,'\\u2019 \\u00a0\\u2009\\u202f]*?)\\s*(?<after>[A-Z]{3}|[€£$])?\\s*");

    static final Pattern CODE = Pattern.compile("(?<![A-Za-z])[A-Z]{3}(?![A-Za-z])");

    private Patterns() {}
  }
}
