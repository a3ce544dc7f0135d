package kelter.costing.weigh;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kelter.core.option.LearnedLives.LearnedLife;
import kelter.core.quantity.QuantityFormat;
import kelter.core.source.Source;
import kelter.costing.choice.Basis;
import kelter.costing.choice.Candidate;
import kelter.costing.choice.Costs;
import kelter.costing.life.LifeStudy;
import kelter.costing.life.RemainingLife;
import kelter.costing.life.Weibull;
import kelter.costing.money.SinglePresentValue;

/** What every comparison takes for granted, and where its figures and methods come from. */
final class Premises {

  private static final List<String> ALWAYS =
      List.of(
          "Prices stay as they are but for inflation: the discount rate is taken as a real rate.",
          "A mended machine lasts as long as any other of its age; the work renews the component or"
              + " part that it is done on and nothing else.",
          "No study of the life of components is known; where nothing else is said, a component is taken"
              + " to last as long as a machine of its kind. Renewing a part takes half of the age off its component,"
              + " cleaning and setting take none. If it fails again before the machine ends,"
              + " the same"
              + " work is paid once more.",
          "Where the work does not cure, a new machine follows at once; it is in the annual"
              + " cost, not"
              + " in what is paid now.",
          "Prices are taken as the owner pays them, taxes included.");

  private static final String CALL_OUT =
      "The call-out is paid whatever is done, also if the machine is replaced.";

  private static final String CREDITED =
      "The call-out is taken off again where the machine is mended.";

  private static final String DAYS =
      "While a part or a new machine is awaited, the machine is taken to stand still; steps that need"
          + " parts wait one after the other. What those days cost is in the cost a year and not in"
          + " the bill.";

  private static final String SPREAD =
      "Prices are drawn around those stated, lognormal with the spread that the job states, each kind"
          + " of price by itself and the same over all years.";

  private static final String NOT_TO_BE_HAD =
      "The job says that no new machine can be had, so that replacing is no option. The years that"
          + " the machine lasts are still valued at the price stated for one.";

  private static final String WAITING =
      "Where nothing is done although there is a fault, the call-out is paid again and the best of"
          + " the repairs follows.";

  private static final double WORTH_TELLING = 0.1;

  private Premises() {}

  /** What the comparison takes for granted whatever the job states. */
  static List<String> of(OptionComparison comparison) {
    Basis basis = comparison.basis();
    double[] means = basis.life().studies().stream().mapToDouble(Weibull::mean).sorted().toArray();
    List<String> premises = new ArrayList<>();
    premises.add(
        ("The studies of the life of such machines give means from %s to %s years. A study counts"
                + " the more, the more machines reach the age of this one by it, for this machine"
                + " and for a new one: place, care and use stay the same. So an old machine speaks"
                + " for long lives, its own and that of the next.")
            .formatted(
                QuantityFormat.fixed(means[0], 1),
                QuantityFormat.fixed(means[means.length - 1], 1)));
    premises.add(
        ("All options are compared over the same %s years, the mean life of a new machine; a machine"
                + " that ends sooner is followed by a new one at today's price, and years beyond are"
                + " credited.")
            .formatted(QuantityFormat.fixed(basis.life().meanOfNew(basis.age()), 1)));
    premises.addAll(ALWAYS);
    premises.addAll(ofTerms(basis));
    double unexplained = comparison.states().incurable();
    if (unexplained >= WORTH_TELLING) {
      premises.add(
          "By %s nothing that is known explains the readings. That counts as beyond repair here."
              .formatted(Influences.percent(unexplained)));
    }
    if (comparison.replacing().isEmpty()) {
      premises.add(NOT_TO_BE_HAD);
    }
    if (comparison.first(Candidate.Kind.WAIT).isPresent()) {
      premises.add(WAITING);
    }
    return premises;
  }

  private static List<String> ofTerms(Basis basis) {
    Costs costs = basis.costs();
    List<String> premises = new ArrayList<>();
    if (costs.callOut() > 0) {
      premises.add(costs.callOutWithWork() > 0 ? CALL_OUT : CREDITED);
    }
    if (costs.waitForPart() > 0 || costs.waitForMachine() > 0) {
      premises.add(DAYS);
    }
    if (basis.repairWarranty() > 0) {
      premises.add(
          "What was mended and fails again within %s years of warranty is mended for nothing."
              .formatted(QuantityFormat.fixed(basis.repairWarranty(), 1)));
    }
    if (basis.newWarranty() > 0) {
      premises.add(
          "A new machine that ends within %s years of warranty is replaced for nothing."
              .formatted(QuantityFormat.fixed(basis.newWarranty(), 1)));
    }
    if (basis.spread().isAny()) {
      premises.add(SPREAD);
    }
    return premises;
  }

  /** Where the figures and methods come from. */
  static List<Source> sources(OptionComparison comparison) {
    List<Source> sources = new ArrayList<>();
    sources.add(SinglePresentValue.SOURCE);
    sources.add(RemainingLife.WEIBULL);
    sources.addAll(LifeStudy.sources(comparison.kind().studies()));
    sources.add(
        Source.fromMemory(
            "Kijima, Journal of Applied Probability 26 (1989): virtual age after repair"));
    Map<String, Source> learned = new LinkedHashMap<>();
    for (LearnedLife life : comparison.basis().learned().values()) {
      learned.putIfAbsent(life.source().display(), life.source());
    }
    sources.addAll(learned.values());
    if (comparison.prices().discountRate().isEmpty()) {
      sources.add(Source.published("10 CFR 436.14(a)(2): real discount rate of at least 3 %"));
    }
    return sources;
  }
}
