package kelter.core.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.Unit;
import kelter.core.source.Source;
import kelter.core.uncertainty.Estimate;
import kelter.core.vocabulary.Statement;
import org.junit.jupiter.api.Test;

/** What would settle a finding. */
class FindingTest {

  private static String toSettle(
      Judgement judgement, Limits limits, QuantityKind kind, String unit) {
    return toSettle(judgement, limits, kind, unit, "");
  }

  private static String toSettle(
      Judgement judgement, Limits limits, QuantityKind kind, String unit, String shown) {
    Finding finding =
        new Finding(
            "id",
            "part",
            "observable",
            "title",
            shown,
            kind,
            Unit.of(unit),
            judgement,
            limits,
            Source.commonPractice("a test"),
            List.of(),
            "");
    return finding.toSettle(DecisionRule.USUAL).map(Statement::text).orElse("");
  }

  private static Judgement judged(double value, double u, Limits limits) {
    return Judgement.of(new Estimate(value, u), limits, DecisionRule.USUAL, false);
  }

  /** 2 x 100 ohm / 1.64 is 122 ohm: arithmetic on JCGM 106:2012, table 1. */
  @Test
  void anUndecidedFindingSaysHowWellToRead() {
    Limits limits = Limits.atMost(1000);
    assertEquals(
        "To settle it, read the same to ± 0.1216 kohm; this reading is good to ± 0.4 kohm.",
        toSettle(judged(900, 200, limits), limits, QuantityKind.RESISTANCE, "kOhm"));
  }

  @Test
  void theEndOfARangeIsNotAskedForWhereItIsWritten() {
    Judgement open = new Judgement(Optional.empty(), Double.NaN, Verdict.UNDECIDED, false);
    Limits limits = Limits.atMost(1);
    assertEquals(
        "To settle it, read a value with an instrument whose range reaches it.",
        toSettle(open, limits, QuantityKind.FLOW, "L/min", "> 5 L/min"));
    assertEquals(
        "To settle it, read a value; at the end of a range write the end, for instance '> 2"
            + " L/min'.",
        toSettle(open, limits, QuantityKind.FLOW, "L/min", "over range"));
  }

  @Test
  void aTemperatureIsSettledByADifference() {
    Limits limits = Limits.atMost(273.15 + 60);
    String sentence =
        toSettle(judged(273.15 + 59, 2, limits), limits, QuantityKind.TEMPERATURE, "Cel");
    assertEquals(
        "To settle it, read the same to ± 1.216 °C; this reading is good to ± 4 °C.", sentence);
  }

  @Test
  void onTheLimitNothingHelps() {
    Limits limits = Limits.atMost(1000);
    assertEquals(
        "The value lies on the limit: no instrument settles it.",
        toSettle(judged(1000, 200, limits), limits, QuantityKind.RESISTANCE, "Ohm"));
  }

  @Test
  void withoutAValueTheEndOfTheRangeHelps() {
    Judgement overRange = new Judgement(Optional.empty(), Double.NaN, Verdict.UNDECIDED, false);
    assertEquals(
        "To settle it, read a value; at the end of a range write the end, for instance '> 2 MOhm'.",
        toSettle(overRange, Limits.atLeast(1e6), QuantityKind.INSULATION_RESISTANCE, "MOhm"));
  }

  @Test
  void noInstrumentSettlesWhichLimitHolds() {
    Limits stricter = Limits.atLeast(2e6);
    Judgement between = judged(1.5e6, 1e4, stricter).onlyIfConforming();
    assertEquals(Verdict.UNDECIDED, between.verdict());
    assertEquals(
        "Not another instrument settles it, but what the limit depends on.",
        toSettle(between, stricter, QuantityKind.INSULATION_RESISTANCE, "MOhm"));
    assertEquals(Verdict.CONFORMS, judged(3e6, 1e4, stricter).onlyIfConforming().verdict());
  }

  @Test
  void aVerdictNeedsNothing() {
    Limits limits = Limits.atMost(1000);
    assertEquals("", toSettle(judged(1, 1, limits), limits, QuantityKind.RESISTANCE, "Ohm"));
  }
}
