package kelter.core.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Points and differences, gauge and absolute, and how quantities are shown. */
class QuantityTest {

  private static Quantity temperature(double value) {
    return Quantity.of(value, "Cel", QuantityKind.TEMPERATURE);
  }

  private static Quantity difference(double value, String unit) {
    return Quantity.of(value, unit, QuantityKind.TEMPERATURE_DIFFERENCE);
  }

  @Test
  void aDifferenceIsScaledAndATemperatureIsShifted() {
    assertEquals(293.15, temperature(20).si(), 1e-12);
    assertEquals(20, difference(20, "Cel").si(), 0);
    assertEquals(20, difference(36, "[degF]").si(), 1e-12);
    assertEquals(
        68, temperature(20).in(Unit.of("[degF]")).value(), 1e-12); // 20 Cel is 68 [degF], exact
  }

  @Test
  void absoluteZeroItselfIsATemperatureInEveryUnit() {
    for (String unit : new String[] {"K", "Cel", "[degF]"}) {
      Quantity zero = Quantity.ofSi(0, 0, QuantityKind.TEMPERATURE).in(Unit.of(unit));
      assertEquals(0, zero.si(), 1e-9, unit);
    }
    assertEquals(0, Quantity.of(-459.67, "[degF]", QuantityKind.TEMPERATURE).si(), 1e-9);
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void figuresThatAreNotFiniteAreRefused(double value) {
    assertThrows(
        QuantityFormatException.class, () -> Quantity.of(value, "V", QuantityKind.VOLTAGE));
    assertThrows(
        QuantityFormatException.class,
        () -> new Quantity(1, value, Unit.of("V"), QuantityKind.VOLTAGE));
  }

  @Test
  void aNegativeUncertaintyIsRefused() {
    assertThrows(
        QuantityFormatException.class,
        () -> new Quantity(1, -1e-9, Unit.of("V"), QuantityKind.VOLTAGE));
  }

  @Test
  void moneyOfTwoCurrenciesIsNeverConverted() {
    Quantity euros = Quantity.of(10, "EUR", QuantityKind.money("EUR"));
    assertThrows(QuantityFormatException.class, () -> euros.in(Unit.of("USD")));
    assertEquals("EUR/a", Unit.of("EUR/a").code());
  }

  /** JCGM 100:2008, 7.2.6: two significant digits of uncertainty, the value to the same place. */
  @ParameterizedTest
  @CsvSource({
    "26.4537, 0.0612, 26.45 ± 0.12",
    "100.02147, 0.00035, 100.02147 ± 0.00070",
    "1234567, 1000, 1234600 ± 2000",
    "0.0498, 0.0498, 0.05 ± 0.10",
    "26.4537, 0, 26.45"
  })
  void theUncertaintySetsTheDigits(double value, double u, String shown) {
    assertEquals(shown, QuantityFormat.withUncertainty(value, u));
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "26.4537, 26.45",
    "1000, 1000",
    "12345678, 1.235e+07",
    "0.00012345, 0.0001234",
    "0.00001, 1.000e-05",
    "NaN, not a number",
    "Infinity, infinite"
  })
  void aFigureHasFourDigits(double value, String shown) {
    assertEquals(shown, QuantityFormat.plain(value));
  }

  @Test
  void displayIsInTheSpellingOfTheTrade() {
    assertEquals("26.4 ohm", Quantity.of(26.4, "Ohm", QuantityKind.RESISTANCE).display());
    assertEquals("60 °C", temperature(60).display());
    assertEquals(
        "1400 rpm", Quantity.of(1400, "{rev}/min", QuantityKind.ROTATIONAL_SPEED).display());
    assertEquals(
        "101.3 kPa absolute",
        Quantity.of(101.325, "kPa", QuantityKind.ABSOLUTE_PRESSURE).display());
    assertEquals(
        "26.45 ohm ± 0.12",
        new Quantity(26.4537, 0.0612, Unit.of("Ohm"), QuantityKind.RESISTANCE).display());
  }

  /** Nobody writes a power of ten before a unit: then no other unit is likelier. */
  @Test
  void aUnitIsNamedOnlyWithAFigureThatPeopleWrite() {
    Expected power = new Expected(QuantityKind.POWER, 0.01, 1e6);
    assertTrue(refusal(power, Quantity.of(8000, "kW", QuantityKind.POWER)).contains("8000 W?"));
    String tiny = refusal(power, Quantity.of(1e-6, "kW", QuantityKind.POWER));
    assertTrue(tiny.endsWith("a slip of the pen, or the wrong unit"), tiny);
  }

  private static String refusal(Expected expected, Quantity quantity) {
    return assertThrows(QuantityFormatException.class, () -> expected.require(quantity))
        .getMessage();
  }

  @Test
  void anUncertaintyIsToldInTheUnitOfItsKindAndBack() {
    Quantity length = Quantity.ofSi(0.5, 0.001, QuantityKind.LENGTH);
    assertEquals(500, length.value(), 1e-9);
    assertEquals(1, length.standardUncertainty(), 1e-12);
    assertEquals(0.001, length.standardUncertaintySi(), 1e-15);
    assertEquals(0.1, length.in(Unit.of("cm")).standardUncertainty(), 1e-12);
  }
}
