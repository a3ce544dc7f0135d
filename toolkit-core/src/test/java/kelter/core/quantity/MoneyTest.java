package kelter.core.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Money is exact. */
class MoneyTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "38.50 EUR | 38.50 | EUR",
        "38,50 EUR | 38.50 | EUR",
        "EUR 38.50 | 38.50 | EUR",
        "EUR38.50 | 38.50 | EUR",
        "1,234.50 USD | 1234.50 | USD",
        "1.234,50 EUR | 1234.50 | EUR",
        "1 234,50 EUR | 1234.50 | EUR",
        "1'234.50 CHF | 1234.50 | CHF",
        "1’234.50 CHF | 1234.50 | CHF",
        "-5 GBP | -5 | GBP",
        "−5 GBP | -5 | GBP",
        "0.1 EUR | 0.1 | EUR",
        "0.900 EUR | 0.900 | EUR",
        "1900 EUR | 1900 | EUR",
        "1900.000 EUR | 1900.000 | EUR",
        "1.9000 EUR | 1.9000 | EUR",
        "1.900 KWD | 1.900 | KWD",
        "€ 38.50 | 38.50 | EUR",
        "38,50 € | 38.50 | EUR",
        "£38.50 | 38.50 | GBP"
      })
  void amountsAsPeopleWriteThem(String text, BigDecimal amount, String currency) {
    Money money = Money.parse(text);
    assertEquals(amount, money.amount());
    assertEquals(currency, money.currency().getCurrencyCode());
  }

  @Test
  void aDollarIsTheOneInWhichPricesAreTold() {
    var canadian = java.util.Currency.getInstance("CAD");
    assertEquals(Money.parse("95 CAD"), Money.parse("$95", canadian));
    assertEquals(Money.parse("95 CAD"), Money.parse("95 $", canadian));
    var euro = java.util.Currency.getInstance("EUR");
    for (Runnable reader :
        new Runnable[] {() -> Money.parse("$95"), () -> Money.parse("$95", euro)}) {
      var refused = assertThrows(QuantityFormatException.class, reader::run);
      assertTrue(refused.getMessage().contains("'95 USD'"), refused.getMessage());
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "EUR",
        "38.50",
        "38.50 XQX",
        "EUR 38.50 EUR",
        "1,500 EUR",
        "1.900 EUR",
        "EUR 1.900",
        "-1.900 EUR",
        "190.050 EUR",
        "1.900 €",
        "38.50 eur",
        "3 8 EUR",
        "38.50 € EUR",
        "NaN EUR",
        "99999999999999999999999999999999999999999 EUR"
      })
  void whatIsNoAmountIsRefused(String text) {
    assertThrows(QuantityFormatException.class, () -> Money.parse(text));
  }

  @Test
  void thousandsOrDecimalsAreToldBothWays() {
    String message =
        assertThrows(QuantityFormatException.class, () -> Money.parse("1.900 EUR")).getMessage();
    assertTrue(message.contains("write 1900 or 1.90"), message);
    message =
        assertThrows(QuantityFormatException.class, () -> Money.parse("190.055 EUR")).getMessage();
    assertTrue(message.contains("write 190055 or 190.0550"), message);
    assertEquals(
        "1.9000 EUR",
        new Money(new BigDecimal("1.900"), java.util.Currency.getInstance("EUR")).format());
  }

  @Test
  void whatIsWrittenIsReadBackExactly() {
    Random random = new Random(20261125L);
    for (int i = 0; i < 1000; i++) {
      BigDecimal amount = BigDecimal.valueOf(random.nextLong() / 1_000_000, random.nextInt(6));
      Money money = new Money(amount, java.util.Currency.getInstance("EUR"));
      assertEquals(money, Money.parse(money.format()), money.format());
    }
  }

  /** ISO 4217 minor units: EUR 2, JPY 0, KWD 3. Ties go to the even digit. */
  @ParameterizedTest
  @CsvSource({
    "0.125 EUR, 0.12 EUR",
    "0.135 EUR, 0.14 EUR",
    "2.5 JPY, 2 JPY",
    "3.5 JPY, 4 JPY",
    "1.0005 KWD, 1.000 KWD"
  })
  void roundedToTheMinorUnit(String text, String rounded) {
    assertEquals(rounded, Money.parse(text).rounded().format());
  }

  @Test
  void tenCentsTenTimesIsOneEuro() {
    BigDecimal sum = BigDecimal.ZERO;
    for (int i = 0; i < 10; i++) {
      sum = sum.add(Money.parse("0.10 EUR").amount());
    }
    assertEquals(0, sum.compareTo(BigDecimal.ONE));
  }
}
