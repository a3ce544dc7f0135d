package kelter.core.diagnosis.likelihood;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kelter.core.quantity.QuantityKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Proof;
import kelter.core.vocabulary.Span;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is read where nothing is known of the machine. */
class AnythingTest {

  private static final Observable PLAIN = Observable.named("dark", "dark").asked(1, "Look.");
  private static final Observable SIGN = Observable.named("split", "split").proving().asked(1, "");
  private static final Span OHMS = new Span(0.01, 100);
  private static final Observable RESISTANCE =
      Observable.named("resistance", "resistance")
          .logarithmic(QuantityKind.RESISTANCE, OHMS)
          .asked(1, "");
  private static final Observable EARTH =
      Observable.named("earth", "earth")
          .logarithmic(QuantityKind.RESISTANCE, OHMS)
          .provingFrom(1)
          .asked(1, "");
  private static final Observable VOLTS =
      Observable.named("volts", "volts")
          .quantity(QuantityKind.VOLTAGE, 0, 400)
          .provingFrom(300)
          .asked(1, "");

  private static double otherwise(Observable observable) {
    return observable.proof().orElseThrow().otherwise();
  }

  @Test
  void aSignIsSeldomSeenForNothing() {
    assertEquals(0.5, new ChanceLikelihood(PLAIN, 0.01, true).unexplained());
    double seldom = otherwise(SIGN);
    assertTrue(seldom < 0.05);
    assertEquals(seldom, new ChanceLikelihood(SIGN, 0.01, true).unexplained());
    assertEquals(1 - seldom, new ChanceLikelihood(SIGN, 0.01, false).unexplained());
  }

  /** Four decades alike: each is a quarter, and the density by the logarithm is 1/ln 10000. */
  @Test
  void aValueLiesAnywhereOnItsScale() {
    assertEquals(1 / Math.log(1e4), Anything.density(RESISTANCE, Math.log(7)), 1e-12);
    assertEquals(0.25, Anything.share(RESISTANCE, Math.log(1), Math.log(10)), 1e-12);
    assertEquals(1, Anything.value(RESISTANCE, 0.5), 1e-9);
  }

  /** Two decades below the limit share what the two above it leave. */
  @Test
  void aValueThatProvesIsSeldomReadForNothing() {
    double seldom = otherwise(EARTH);
    assertEquals(seldom / Math.log(100), Anything.density(EARTH, Math.log(7)), 1e-12);
    assertEquals((1 - seldom) / Math.log(100), Anything.density(EARTH, Math.log(0.5)), 1e-12);
    assertEquals(seldom / 2, Anything.share(EARTH, Math.log(10), Math.log(100)), 1e-12);
    assertEquals(
        (1 - seldom + seldom) / 2, Anything.share(EARTH, Math.log(0.1), Math.log(10)), 1e-12);
    assertEquals(1, Anything.share(EARTH, Double.NEGATIVE_INFINITY, 1e9), 1e-12);
    assertTrue(new IntervalLikelihood(EARTH, 0.01, Math.log(50), 1e9, 0).unexplained() < seldom);
  }

  /** The chance of a value up to the one at a place is that place. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 0.1, 0.5, 0.99, 0.996, 0.999, 1})
  void placesAndSharesAgree(double place) {
    for (Observable observable : new Observable[] {RESISTANCE, EARTH, VOLTS}) {
      double value = Anything.value(observable, place);
      double scaled = observable.logarithmic() ? Math.log(value) : value;
      assertEquals(
          place, Anything.share(observable, Double.NEGATIVE_INFINITY, scaled), 1e-9, "" + value);
    }
  }

  @Test
  void aGradeOrAValueOutsideTheSpanProvesNothing() {
    assertThrows(
        IllegalArgumentException.class,
        () -> Observable.named("burns", "burns").graded("none", "dark").proving().asked(1, ""));
    assertThrows(
        IllegalArgumentException.class,
        () ->
            Observable.named("volts", "volts")
                .quantity(QuantityKind.VOLTAGE, 0, 400)
                .provingFrom(400)
                .asked(1, ""));
    assertThrows(IllegalArgumentException.class, () -> new Proof(1, 0));
  }
}
