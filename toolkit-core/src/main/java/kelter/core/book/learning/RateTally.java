package kelter.core.book.learning;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import kelter.core.book.learned.LearnedRate;
import kelter.core.diagnosis.learning.BetaDistribution;
import kelter.core.diagnosis.learning.Strength;

/** How often something was so, by what it was of. */
final class RateTally {

  /** As so many cases the usual rate counts against all that were counted; own choice. */
  private static final double USUAL_CASES = 20;

  private static final double LOW = 0.025;
  private static final double HIGH = 0.975;

  private final Map<String, double[]> counts = new TreeMap<>();

  void add(String of, boolean so, double weight) {
    double[] count = counts.computeIfAbsent(of, any -> new double[2]);
    count[so ? 0 : 1] += weight;
  }

  /** Rates drawn to the rate of all, which itself is drawn to a usual one. */
  Map<String, LearnedRate> about(double usual) {
    double so = USUAL_CASES * usual;
    double all = USUAL_CASES;
    for (double[] each : counts.values()) {
      so += each[0];
      all += each[0] + each[1];
    }
    return rates(so / all, LearningRule.RATES);
  }

  /** Rates drawn to one that is known, which counts for so many cases at least. */
  Map<String, LearnedRate> about(double known, Strength.Guess guess) {
    return rates(known, guess);
  }

  private Map<String, LearnedRate> rates(double prior, Strength.Guess guess) {
    List<Strength.Sample> samples = new ArrayList<>();
    for (double[] each : counts.values()) {
      samples.add(new Strength.Sample(new double[] {prior, 1 - prior}, each));
    }
    double strength = Strength.of(samples, guess);
    Map<String, LearnedRate> rates = new TreeMap<>();
    counts.forEach((of, count) -> rates.put(of, rate(count, prior, strength)));
    return rates;
  }

  private static LearnedRate rate(double[] count, double prior, double strength) {
    double cases = count[0] + count[1];
    BetaDistribution rate =
        new BetaDistribution(strength * prior, strength * (1 - prior)).and(cases, count[0]);
    return new LearnedRate(
        cases, cases / (cases + strength), rate.mean(), rate.quantile(LOW), rate.quantile(HIGH));
  }
}
