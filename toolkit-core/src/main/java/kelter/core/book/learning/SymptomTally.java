package kelter.core.book.learning;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import kelter.core.book.learned.KindTable;
import kelter.core.book.learned.LearnedChance;
import kelter.core.diagnosis.learning.BetaDistribution;
import kelter.core.diagnosis.learning.Strength;
import kelter.core.numeric.Root;

/**
 * What was answered where one cause alone was confirmed, by cause and symptom.
 *
 * <p>What an owner says unasked is mostly a yes, so that among the answers of a symptom there are
 * too many of them, whatever the cause. This is taken out by one factor on the odds for each
 * symptom, by which the table fits all its answers together; what is learned is how a cause stands
 * out from it.
 */
final class SymptomTally implements Serializable {

  private static final long serialVersionUID = 2;

  /** No factor on odds is greater than e to this. */
  private static final double GREATEST_SHIFT = 6;

  private static final double TOLERANCE = 1e-9;

  /** Has an order in what {@link #plus} makes. */
  private final Map<String, Map<Integer, YesNo>> answers;

  SymptomTally() {
    this(new HashMap<>());
  }

  private SymptomTally(Map<String, Map<Integer, YesNo>> answers) {
    this.answers = answers;
  }

  /** An answer, yes or no, that counts so much. */
  void add(int cause, String symptom, boolean yes, double weight) {
    Map<Integer, YesNo> ofCauses = answers.computeIfAbsent(symptom, any -> new HashMap<>());
    ofCauses.put(cause, ofCauses.getOrDefault(cause, YesNo.NONE).and(yes, weight));
  }

  SymptomTally plus(SymptomTally other) {
    return new SymptomTally(
        MergedMaps.of(answers, other.answers, Map.of(), SymptomTally::together));
  }

  private static Map<Integer, YesNo> together(Map<Integer, YesNo> one, Map<Integer, YesNo> other) {
    return MergedMaps.of(one, other, YesNo.NONE, YesNo::plus);
  }

  /**
   * One figure against what was answered.
   *
   * @param cause the number of the cause
   * @param symptom the symptom
   * @param chance by the table
   * @param shift the logarithm of the factor on the odds of all causes
   * @param yes how often it was there
   * @param no how often it was not
   */
  record Cell(int cause, String symptom, double chance, double shift, double yes, double no) {

    private double shifted() {
      return chance(odds(chance) + shift);
    }

    Strength.Sample sample() {
      return new Strength.Sample(new double[] {shifted(), 1 - shifted()}, new double[] {yes, no});
    }

    LearnedChance learned(double strength) {
      double prior = shifted();
      double mean =
          new BetaDistribution(strength * prior, strength * (1 - prior)).and(yes + no, yes).mean();
      double own = yes + no;
      return new LearnedChance(chance(odds(mean) - shift), own, own / (own + strength));
    }

    private static double odds(double chance) {
      return Math.log(chance / (1 - chance));
    }

    private static double chance(double logOdds) {
      return 1 / (1 + Math.exp(-logOdds));
    }
  }

  /** The figures of the table that something was answered to. */
  List<Cell> cells(KindTable table) {
    List<Cell> cells = new ArrayList<>();
    answers.forEach(
        (symptom, counts) -> {
          Map<Integer, Double> told = told(table, symptom, counts);
          double shift = told.isEmpty() ? 0 : shift(told, counts);
          told.forEach(
              (cause, chance) -> {
                YesNo count = counts.get(cause);
                cells.add(new Cell(cause, symptom, chance, shift, count.yes(), count.no()));
              });
        });
    return cells;
  }

  private static Map<Integer, Double> told(
      KindTable table, String symptom, Map<Integer, YesNo> counts) {
    Map<Integer, Double> told = new LinkedHashMap<>();
    for (int cause : counts.keySet()) {
      Map<String, Double> chances =
          cause < table.nothing() ? table.kind().causes().get(cause).symptoms() : Map.of();
      double chance = chances.getOrDefault(symptom, 0.0);
      if (chance > 0 && chance < 1) {
        told.put(cause, chance);
      }
    }
    return told;
  }

  /** Falls with the shift, so that it is 0 once; beyond the ends the shift stays at the end. */
  private static double shift(Map<Integer, Double> told, Map<Integer, YesNo> counts) {
    DoubleUnaryOperator excess =
        shift -> {
          // A yes and a no of nobody keep the shift about 0 where little was answered.
          double sum = 1 - 2 * Cell.chance(shift);
          for (Map.Entry<Integer, Double> each : told.entrySet()) {
            YesNo count = counts.get(each.getKey());
            double expected = Cell.chance(Cell.odds(each.getValue()) + shift);
            sum += count.yes() - count.all() * expected;
          }
          return sum;
        };
    if (excess.applyAsDouble(GREATEST_SHIFT) >= 0) {
      return GREATEST_SHIFT;
    }
    return excess.applyAsDouble(-GREATEST_SHIFT) <= 0
        ? -GREATEST_SHIFT
        : Root.between(excess, -GREATEST_SHIFT, GREATEST_SHIFT, TOLERANCE);
  }
}
