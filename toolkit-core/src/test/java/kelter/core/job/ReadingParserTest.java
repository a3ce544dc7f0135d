package kelter.core.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kelter.core.quantity.QuantityFormatException;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Hazard;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Readings as people write them. */
class ReadingParserTest {

  private static final Procedure PROCEDURE =
      new Procedure("Read it.", 1, Hazard.NONE, new Accuracy(0.01, 0), List.of());
  private static final Observable RESISTANCE = figure(QuantityKind.RESISTANCE);
  private static final Observable VOLUME = figure(QuantityKind.VOLUME);
  private static final Observable NOISE = Observable.named("noise", "noise").by(PROCEDURE);
  private static final Observable SCALE =
      Observable.named("scale", "scale").graded("none", "some", "thick").by(PROCEDURE);

  private static Observable figure(QuantityKind kind) {
    return Observable.named("figure", "figure").quantity(kind, 0, 1e9).by(PROCEDURE);
  }

  @Test
  void aValueWithItsLastDigit() {
    Reading.Value value =
        assertInstanceOf(Reading.Value.class, ReadingParser.parse(" 26,40 ohm ", RESISTANCE));
    assertEquals(26.4, value.quantity().si(), 0);
    assertEquals(0.01, value.resolution(), 1e-12);
  }

  @Test
  void beyondWhatTheInstrumentTells() {
    Reading.Below below =
        assertInstanceOf(Reading.Below.class, ReadingParser.parse("< 0.1 ohm", RESISTANCE));
    assertEquals(0.1, below.limit().si(), 0);
    Reading.Above above =
        assertInstanceOf(Reading.Above.class, ReadingParser.parse(">200 MOhm", RESISTANCE));
    assertEquals(2e8, above.limit().si(), 0);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "OL",
        "ol",
        "O.L",
        "0L",
        "0.L",
        "OFL",
        "open",
        "overload",
        "over range",
        "inf",
        "infinite",
        "Infinity",
        "∞"
      })
  void overRange(String text) {
    assertInstanceOf(Reading.OverRange.class, ReadingParser.parse(text, RESISTANCE));
  }

  @Test
  void noughtLitresAreNotOverRange() {
    Reading.Value value = assertInstanceOf(Reading.Value.class, ReadingParser.parse("0L", VOLUME));
    assertEquals(0, value.quantity().si(), 0);
    assertInstanceOf(Reading.OverRange.class, ReadingParser.parse("OL", VOLUME));
    value = assertInstanceOf(Reading.Value.class, ReadingParser.parse("0.L", VOLUME));
    assertEquals(0, value.quantity().si(), 0);
  }

  @Test
  void megohmsBeyondTheScale() {
    Reading.Above above =
        assertInstanceOf(Reading.Above.class, ReadingParser.parse(">200 M", RESISTANCE));
    assertEquals(2e8, above.limit().si(), 0);
  }

  @ParameterizedTest
  @CsvSource({"yes, true", "Y, true", "no, false", "N, false"})
  void yesAndNo(String text, boolean yes) {
    assertEquals(new Reading.YesNo(yes), ReadingParser.parse(text, NOISE));
  }

  @Test
  void aWordOfTheScale() {
    assertEquals(new Reading.Grade("some", 1), ReadingParser.parse("Some", SCALE));
  }

  @Test
  void refusedWithWhatWouldBeRight() {
    assertTold("neither yes nor no", "perhaps", NOISE);
    assertTold("did you mean 'thick'", "thik", SCALE);
    assertTold("resistance is expected", "26 V", RESISTANCE);
    assertTold("has no unit", "26", RESISTANCE);
    assertTold("has no unit", "< 26", RESISTANCE);
  }

  /** Resistance and effective voltage are magnitudes (IEC 60050-131 and -103). */
  @Test
  void whatCannotBeIsRefused() {
    assertTold("a resistance is never negative", "-26 ohm", RESISTANCE);
    assertTold("-0.5 Mohm cannot be", "> -0.5 MOhm", figure(QuantityKind.INSULATION_RESISTANCE));
    assertTold("an insulation resistance", "<-1 MOhm", figure(QuantityKind.INSULATION_RESISTANCE));
    assertTold("a voltage is never negative", "−230 V", figure(QuantityKind.VOLTAGE));
    assertTold("a current is never negative", "-1 A", figure(QuantityKind.CURRENT));
    assertTold("a power is never negative", "-2 kW", figure(QuantityKind.POWER));
    ReadingParser.parse("0 ohm", RESISTANCE);
  }

  @Test
  void differencesGaugePressuresAndHeadsMayBeNegative() {
    for (QuantityKind kind :
        List.of(
            QuantityKind.TEMPERATURE_DIFFERENCE,
            QuantityKind.GAUGE_PRESSURE,
            QuantityKind.PRESSURE_DIFFERENCE,
            QuantityKind.HEAD,
            QuantityKind.HEATING_RATE)) {
      String text = "-2 " + kind.unit().code();
      Reading.Value value =
          assertInstanceOf(Reading.Value.class, ReadingParser.parse(text, figure(kind)));
      assertTrue(value.quantity().si() < 0, text);
    }
  }

  @Test
  void aTemperatureLiesInItsSpan() {
    Observable water =
        Observable.named("figure", "figure")
            .quantity(QuantityKind.TEMPERATURE, 268.15, 393.15)
            .by(PROCEDURE);
    ReadingParser.parse("60 Cel", water);
    assertTold("-5 to 120 °C is possible", "140 Cel", water);
    assertTold("-5 to 120 °C is possible", "-40 F", water);
  }

  /** A prefix that slipped is the likeliest of what is far beyond what can be. */
  @Test
  void theUnitThatIsLikelyMeantIsNamed() {
    assertTold("did you mean 250 mA?", "250 MA", upTo(1, QuantityKind.CURRENT));
    assertTold("did you mean 8 µF?", "8 MF", upTo(1e-4, QuantityKind.CAPACITANCE));
    assertTold("did you mean 8 µF?", "8 mf", upTo(1e-4, QuantityKind.CAPACITANCE));
    assertTold("did you mean 12 mV?", "12 MV", upTo(500, QuantityKind.VOLTAGE));
    assertTold("did you mean 5 V?", "5 KV", upTo(500, QuantityKind.VOLTAGE));
    assertTold("0 to 1000 V is possible here", "5 KV", upTo(500, QuantityKind.VOLTAGE));
    ReadingParser.parse("690 V", upTo(500, QuantityKind.VOLTAGE));
    ReadingParser.parse("> 690 V", upTo(300, QuantityKind.VOLTAGE));
  }

  private static Observable upTo(double most, QuantityKind kind) {
    return Observable.named("figure", "figure").quantity(kind, 0, most).by(PROCEDURE);
  }

  private static void assertTold(String part, String text, Observable observable) {
    var refused =
        assertThrows(QuantityFormatException.class, () -> ReadingParser.parse(text, observable));
    assertTrue(refused.getMessage().contains(part), refused.getMessage());
  }

  @Test
  void aGradeIsTakenAsItIsSpoken() {
    Observable filled =
        Observable.named("filled", "filled").graded("empty", "half-full", "full").by(PROCEDURE);

    assertEquals(new Reading.Grade("half-full", 1), ReadingParser.parse("Half full", filled));
  }
}
