package kelter.core.quote;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import kelter.core.owner.TaxRate;
import kelter.core.owner.TaxRounding;
import kelter.core.quantity.Money;
import org.junit.jupiter.api.Test;

/** Bills, against examples worked out by hand and against whole numbers of minor units. */
class BillTest {

  private static final int BILLS = 100_000;

  /** Digits behind the point by ISO 4217, list one of 2023, from memory. */
  private static final Map<String, Integer> DIGITS =
      new TreeMap<>(Map.of("JPY", 0, "EUR", 2, "USD", 2, "KWD", 3));

  private static final List<String> RATES =
      List.of("0 %", "5.5 %", "7 %", "8.875 %", "19 %", "20 %", "21 %", "100 %");

  private static Item item(String count, String price, String rate) {
    return new Item(
        "part",
        Item.Kind.PART,
        new BigDecimal(count),
        Item.Unit.PIECE,
        Optional.of(new BigDecimal(price)),
        Optional.of(TaxRate.parse(rate)));
  }

  private static Item work(String minutes, String price, String rate) {
    return new Item(
        "work",
        Item.Kind.LABOUR,
        new BigDecimal(minutes),
        Item.Unit.MINUTE,
        Optional.of(new BigDecimal(price)),
        Optional.of(TaxRate.parse(rate)));
  }

  private static Bill bill(String currency, TaxRounding rounding, boolean with, Item... items) {
    return Bill.of(Currency.getInstance(currency), List.of(items), rounding, with);
  }

  private static String told(Bill bill) {
    return bill.net().orElseThrow().format()
        + " + "
        + bill.tax().orElseThrow().format()
        + " = "
        + bill.total().orElseThrow().format();
  }

  /** 3 x 19.99 at 21 %: 59.97 x 0.21 = 12.5937; each 19.99 x 0.21 = 4.1979. By hand. */
  @Test
  void taxIsRoundedOnceForALineOrARate() {
    for (TaxRounding rounding : TaxRounding.values()) {
      assertEquals(
          "59.97 EUR + 12.59 EUR = 72.56 EUR",
          told(bill("EUR", rounding, false, item("3", "19.99", "21 %"))));
    }
    Item piece = item("1", "19.99", "21 %");
    assertEquals(
        "59.97 EUR + 12.59 EUR = 72.56 EUR",
        told(bill("EUR", TaxRounding.PER_RATE, false, piece, piece, piece)));
    assertEquals(
        "59.97 EUR + 12.60 EUR = 72.57 EUR",
        told(bill("EUR", TaxRounding.PER_LINE, false, piece, piece, piece)));
  }

  /** 1234.5 yen round up to 1235, and 10 % of it, 123.5, to 124. By hand. */
  @Test
  void amountsHaveTheDigitsOfTheirCurrency() {
    assertEquals(
        "1235 JPY + 124 JPY = 1359 JPY",
        told(bill("JPY", TaxRounding.PER_RATE, false, item("1", "1234.5", "10 %"))));
    // 7 min at 9.500 an hour: 1.10833... ; 5 % of 1.108: 0.0554. By hand.
    assertEquals(
        "1.108 KWD + 0.055 KWD = 1.163 KWD",
        told(bill("KWD", TaxRounding.PER_LINE, false, work("7", "9.500", "5 %"))));
    assertThrows(IllegalArgumentException.class, () -> bill("XXX", TaxRounding.PER_LINE, false));
  }

  /** 121.00 with 21 % in it holds 21.00; 100.00 with 21 % in it 17.355..., by hand. */
  @Test
  void taxIsTakenOutOfPricesThatHoldIt() {
    assertEquals(
        "100.00 EUR + 21.00 EUR = 121.00 EUR",
        told(bill("EUR", TaxRounding.PER_RATE, true, item("1", "121", "21 %"))));
    assertEquals(
        "82.64 EUR + 17.36 EUR = 100.00 EUR",
        told(bill("EUR", TaxRounding.PER_LINE, true, item("1", "100", "21 %"))));
  }

  /** Halves go up; what is taken off is rounded as what it takes off. */
  @Test
  void aCreditTakesOffWhatWasCharged() {
    Bill bill =
        bill(
            "EUR",
            TaxRounding.PER_LINE,
            false,
            item("1", "0.125", "20 %"),
            item("1", "-0.125", "20 %"));
    assertEquals("0.13 EUR", bill.lines().get(0).amount().orElseThrow().format());
    assertEquals("0.00 EUR + 0.00 EUR = 0.00 EUR", told(bill));
  }

  @Test
  void aMissingPriceLeavesTheSumsOpen() {
    Item unknown =
        Item.one("seal", Item.Kind.PART, Optional.empty(), Optional.of(TaxRate.parse("21 %")));
    Bill bill = bill("EUR", TaxRounding.PER_RATE, false, item("1", "5", "21 %"), unknown);
    assertEquals(List.of("seal"), bill.open());
    assertEquals(Optional.empty(), bill.net());
    assertEquals(Optional.empty(), bill.total());
    assertEquals(List.of(), bill.rates());
  }

  @Test
  void aMissingRateIsNotTakenForNoTax() {
    Item rateless =
        Item.one("x", Item.Kind.OTHER, Optional.of(new BigDecimal("8")), Optional.empty());
    Bill before = bill("EUR", TaxRounding.PER_LINE, false, rateless);
    assertEquals("8.00 EUR", before.net().orElseThrow().format());
    assertEquals(Optional.empty(), before.tax());
    assertEquals(Optional.empty(), before.total());
    Bill with = bill("EUR", TaxRounding.PER_LINE, true, rateless);
    assertEquals(Optional.empty(), with.net());
    assertEquals("8.00 EUR", with.total().orElseThrow().format());
  }

  /**
   * Bills by chance, worked out again in whole numbers: amounts are fractions of two whole numbers,
   * halves are found by comparing twice the remainder, and sums are those of the printed texts.
   */
  @Test
  void totalsAreTheSumsOfWhatIsPrinted() {
    Random random = new Random(20261129);
    List<String> currencies = List.copyOf(DIGITS.keySet());
    for (int number = 0; number < BILLS; number++) {
      String currency = currencies.get(random.nextInt(currencies.size()));
      TaxRounding rounding = TaxRounding.values()[random.nextInt(2)];
      boolean with = random.nextBoolean();
      List<Item> items = new ArrayList<>();
      for (int line = random.nextInt(6); line >= 0; line--) {
        items.add(drawn(random));
      }
      Bill bill = Bill.of(Currency.getInstance(currency), items, rounding, with);
      String which = "bill " + number + ": " + bill;
      check(bill, new Whole(DIGITS.get(currency), with), which);
    }
  }

  private static Item drawn(Random random) {
    String rate = RATES.get(random.nextInt(RATES.size()));
    String price = BigDecimal.valueOf(random.nextInt(4_000_000) - 500_000, 4).toPlainString();
    String count = BigDecimal.valueOf(random.nextInt(30_000), 2).toPlainString();
    return random.nextBoolean() ? item(count, price, rate) : work(count, price, rate);
  }

  private static void check(Bill bill, Whole whole, String which) {
    Map<TaxRate, BigInteger> sums = new TreeMap<>(Whole.BY_PERCENT);
    Map<TaxRate, BigInteger> taxes = new TreeMap<>(Whole.BY_PERCENT);
    for (Bill.Line line : bill.lines()) {
      TaxRate rate = line.item().rate().orElseThrow();
      BigInteger amount = whole.amount(line.item());
      assertEquals(amount, whole.printed(line.amount().orElseThrow()), which);
      sums.merge(rate, amount, BigInteger::add);
      if (bill.rounding() == TaxRounding.PER_LINE) {
        BigInteger tax = whole.tax(amount, rate);
        assertEquals(tax, whole.printed(line.tax().orElseThrow()), which);
        taxes.merge(rate, tax, BigInteger::add);
      }
    }
    BigInteger net = BigInteger.ZERO;
    BigInteger tax = BigInteger.ZERO;
    for (Bill.RateSum each : bill.rates()) {
      BigInteger sum = sums.remove(each.rate());
      BigInteger ofRate =
          bill.rounding() == TaxRounding.PER_LINE
              ? taxes.get(each.rate())
              : whole.tax(sum, each.rate());
      assertEquals(ofRate, whole.printed(each.tax()), which);
      assertEquals(
          bill.included() ? sum.subtract(ofRate) : sum, whole.printed(each.taxable()), which);
      net = net.add(whole.printed(each.taxable()));
      tax = tax.add(whole.printed(each.tax()));
    }
    assertTrue(sums.isEmpty(), which);
    assertEquals(net, whole.printed(bill.net().orElseThrow()), which);
    assertEquals(tax, whole.printed(bill.tax().orElseThrow()), which);
    assertEquals(net.add(tax), whole.printed(bill.total().orElseThrow()), which);
  }

  /**
   * Money as a whole number of minor units.
   *
   * @param digits how many digits stand behind the point
   * @param with whether amounts have the tax in them
   */
  private record Whole(int digits, boolean with) {

    static final java.util.Comparator<TaxRate> BY_PERCENT =
        java.util.Comparator.comparing(TaxRate::format);

    private static final long COUNT_AND_PRICE = 1_000_000;
    private static final long MINUTES = 60;

    /** Counts have two decimals here and prices four, so that the product has six. */
    BigInteger amount(Item item) {
      BigInteger product = digits(item.count(), 2).multiply(digits(item.price().orElseThrow(), 4));
      long per = item.unit() == Item.Unit.MINUTE ? MINUTES : 1;
      return nearest(product.multiply(unit()), BigInteger.valueOf(COUNT_AND_PRICE * per));
    }

    /** Rates have three decimals at most. */
    BigInteger tax(BigInteger amount, TaxRate rate) {
      BigInteger thousandths = digits(rate.percent(), 3);
      BigInteger all = BigInteger.valueOf(100_000);
      return nearest(amount.multiply(thousandths), with ? all.add(thousandths) : all);
    }

    private BigInteger unit() {
      return BigInteger.TEN.pow(digits);
    }

    /** The whole number of a text without its point, filled up to so many decimals. */
    private static BigInteger digits(BigDecimal figure, int decimals) {
      String text = figure.toPlainString();
      int behind = text.indexOf('.') < 0 ? 0 : text.length() - text.indexOf('.') - 1;
      String zeros = String.join("", Collections.nCopies(decimals - behind, "0"));
      return new BigInteger(text.replace(".", "") + zeros);
    }

    /** Half up: the remainder counts as one where twice of it is not below the divisor. */
    private static BigInteger nearest(BigInteger dividend, BigInteger divisor) {
      BigInteger[] parts = dividend.abs().divideAndRemainder(divisor);
      boolean up = parts[1].shiftLeft(1).compareTo(divisor) >= 0;
      BigInteger size = up ? parts[0].add(BigInteger.ONE) : parts[0];
      return dividend.signum() < 0 ? size.negate() : size;
    }

    /** What stands on paper, with exactly the digits of the currency. */
    BigInteger printed(Money money) {
      String text = money.amount().toPlainString();
      int behind = Stream.of(text.split("\\.")).skip(1).mapToInt(String::length).sum();
      assertEquals(digits, behind, text);
      return new BigInteger(text.replace(".", ""));
    }
  }
}
