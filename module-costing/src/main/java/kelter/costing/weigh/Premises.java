package kelter.costing.weigh;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kelter.core.option.LearnedLives.LearnedLife;
import kelter.core.quantity.QuantityFormat;
import kelter.core.source.Source;
import kelter.core.vocabulary.Statement;
import kelter.costing.choice.Assumption;
import kelter.costing.choice.Basis;
import kelter.costing.choice.Candidate;
import kelter.costing.choice.Costs;
import kelter.costing.life.LifeStudy;
import kelter.costing.life.RemainingLife;
import kelter.costing.life.Weibull;
import kelter.costing.money.SinglePresentValue;

/** What every comparison takes for granted, and where its figures and methods come from. */
final class Premises {

  private static final List<Assumption> ALWAYS =
      List.of(
          Assumption.REAL_PRICES,
          Assumption.MENDED_LIKE_OTHERS,
          Assumption.COMPONENT_AS_MACHINE,
          Assumption.NO_CURE_NEW_MACHINE);

  private static final double WORTH_TELLING = 0.1;

  private Premises() {}

  /** What the comparison takes for granted whatever the job states. */
  static List<Statement> of(OptionComparison comparison) {
    Basis basis = comparison.basis();
    double[] means = basis.life().studies().stream().mapToDouble(Weibull::mean).sorted().toArray();
    List<Statement> premises = new ArrayList<>();
    premises.add(
        Assumption.STUDIES_DIFFER.with(
            QuantityFormat.fixed(means[0], 1), QuantityFormat.fixed(means[means.length - 1], 1)));
    premises.add(
        Assumption.SAME_YEARS.with(QuantityFormat.fixed(basis.life().meanOfNew(basis.age()), 1)));
    ALWAYS.forEach(each -> premises.add(each.with()));
    premises.add(
        comparison.prices().tax().isKnown()
            ? Assumption.TAXES_INCLUDED.with()
            : Assumption.BEFORE_TAX.with());
    premises.addAll(ofTerms(basis));
    double unexplained = comparison.states().incurable();
    if (unexplained >= WORTH_TELLING) {
      premises.add(Assumption.UNEXPLAINED_BEYOND_REPAIR.with(Influences.percent(unexplained)));
    }
    if (comparison.replacing().isEmpty()) {
      premises.add(Assumption.NO_NEW_MACHINE.with());
    }
    if (comparison.first(Candidate.Kind.WAIT).isPresent()) {
      premises.add(Assumption.WAITING_COSTS_CALL_OUT.with());
    }
    return premises;
  }

  private static List<Statement> ofTerms(Basis basis) {
    Costs costs = basis.costs();
    List<Statement> premises = new ArrayList<>();
    if (costs.callOut() > 0) {
      premises.add(
          costs.callOutWithWork() > 0
              ? Assumption.CALL_OUT_PAID.with()
              : Assumption.CALL_OUT_CREDITED.with());
    }
    if (costs.waitForPart() > 0 || costs.waitForMachine() > 0) {
      premises.add(Assumption.STANDS_STILL.with());
    }
    if (basis.repairWarranty() > 0) {
      premises.add(
          Assumption.REPAIR_WARRANTY.with(QuantityFormat.fixed(basis.repairWarranty(), 1)));
    }
    if (basis.newWarranty() > 0) {
      premises.add(Assumption.NEW_WARRANTY.with(QuantityFormat.fixed(basis.newWarranty(), 1)));
    }
    if (basis.spread().isAny()) {
      premises.add(Assumption.PRICES_DRAWN.with());
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
