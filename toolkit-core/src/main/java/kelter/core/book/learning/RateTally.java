package kelter.core.book.learning;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import kelter.core.book.learned.LearnedRate;
import kelter.core.diagnosis.learning.BetaDistribution;
import kelter.core.diagnosis.learning.Strength;

/** How often something was so, by what it was of. */
final class RateTally implements Serializable {

  private static final long serialVersionUID = 2;

  /** As so many cases the usual rate counts against all that were counted; own choice. */
  private static final double USUAL_CASES = 20;

  private static final double LOW = 0.025;
  private static final double HIGH = 0.975;

  /** Has an order in what {@link #plus} makes. */
  private final Map<String, YesNo> counts;

  RateTally() {
    this(new HashMap<>());
  }

  private RateTally(Map<String, YesNo> counts) {
    this.counts = counts;
  }

  void add(String of, boolean so, double weight) {
    counts.put(of, counts.getOrDefault(of, YesNo.NONE).and(so, weight));
  }

  RateTally plus(RateTally other) {
    return new RateTally(MergedMaps.of(counts, other.counts, YesNo.NONE, YesNo::plus));
  }

  /** Rates drawn to the rate of all, which itself is drawn to a usual one. */
  Map<String, LearnedRate> about(double usual) {
    double so = USUAL_CASES * usual;
    double all = USUAL_CASES;
    for (YesNo each : counts.values()) {
      so += each.yes();
      all += each.all();
    }
    return rates(so / all, LearningRule.RATES);
  }

  /** Rates drawn to one that is known, which counts for so many cases at least. */
  Map<String, LearnedRate> about(double known, Strength.Guess guess) {
    return rates(known, guess);
  }

  private Map<String, LearnedRate> rates(double prior, Strength.Guess guess) {
    List<Strength.Sample> samples = new ArrayList<>();
    for (YesNo each : counts.values()) {
      samples.add(new Strength.Sample(new double[] {prior, 1 - prior}, each.counts()));
    }
    double strength = Strength.of(samples, guess);
    Map<String, LearnedRate> rates = new TreeMap<>();
    counts.forEach((of, count) -> rates.put(of, rate(count, prior, strength)));
    return rates;
  }

  private static LearnedRate rate(YesNo count, double prior, double strength) {
    double cases = count.all();
    BetaDistribution rate =
        new BetaDistribution(strength * prior, strength * (1 - prior)).and(cases, count.yes());
    return new LearnedRate(
        cases, cases / (cases + strength), rate.mean(), rate.quantile(LOW), rate.quantile(HIGH));
  }
}
