package kelter.core.job.rule;

import java.util.List;
import java.util.Optional;
import kelter.core.job.Job;
import kelter.core.job.Prices;
import kelter.core.owner.Terms;
import kelter.core.owner.Use;
import kelter.core.problem.Problem;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;

/**
 * Of which kind the quantities are that a job tells of its owner. How much they may be, the records
 * tell themselves.
 */
record OwnerRules(List<Problem> problems) {

  void hold(Job job) {
    if (job.prices().isPresent()) {
      prices(job.prices().get());
    }
    Use use = job.use();
    Spot at = Spot.of("use", problems);
    hold(use.cyclesPerWeek(), QuantityKind.RATIO, at, "cycles a week");
    hold(use.builtForCycles(), QuantityKind.RATIO, at, "built for cycles");
    consumption(use.now(), at);
    consumption(use.next(), at.in("new machine"));
    hold(use.carbon().newMachine(), QuantityKind.MASS, at, "carbon of a new machine");
    hold(use.carbon().perKilowattHour(), QuantityKind.MASS, at, "carbon of one kW.h");
  }

  private static void consumption(Use.Consumption cycle, Spot at) {
    hold(cycle.energy(), QuantityKind.ENERGY, at, "energy of a cycle");
    hold(cycle.water(), QuantityKind.VOLUME, at, "water of a cycle");
  }

  private void prices(Prices prices) {
    Spot at = Spot.of("prices", problems);
    hold(prices.discountRate(), QuantityKind.PERCENT, at, "discount rate");
    hold(prices.spread().repair(), QuantityKind.PERCENT, at, "spread of repairs");
    hold(prices.spread().replacement(), QuantityKind.PERCENT, at, "spread of new machines");
    hold(prices.spread().running(), QuantityKind.PERCENT, at, "spread of running costs");
    Terms terms = prices.terms();
    hold(terms.leastWork(), QuantityKind.TIME, at, "least work");
    hold(terms.partsDelivery(), QuantityKind.AGE, at, "delivery of parts");
    hold(terms.replacementDelivery(), QuantityKind.AGE, at, "delivery of a new machine");
    hold(terms.repairWarranty(), QuantityKind.AGE, at, "warranty on a repair");
    hold(terms.newWarranty(), QuantityKind.AGE, at, "warranty on a new machine");
  }

  private static void hold(Optional<Quantity> quantity, QuantityKind kind, Spot at, String part) {
    if (quantity.isPresent()) {
      JobRules.kind(quantity.get(), kind, at.in(part));
    }
  }
}
