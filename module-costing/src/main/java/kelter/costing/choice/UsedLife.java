package kelter.costing.choice;

import java.util.List;
import java.util.OptionalDouble;
import kelter.core.owner.Use;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityFormat;
import kelter.core.vocabulary.Statement;
import kelter.costing.life.ApplianceLife;
import kelter.costing.life.KindOfLife;
import kelter.costing.use.HouseholdUse;
import kelter.costing.use.LifeAtUse;
import kelter.costing.use.RunningCost;

/**
 * How long machines last at the use that a job states. Where it says how many cycles the machine is
 * built for, that many are its mean life; where the kind itself was studied in households, their
 * life is scaled by cycles, within limits; else the studies stand as they are.
 */
final class UsedLife {

  /** Beyond this, wear counted in cycles is not to be trusted; a judgement. */
  private static final double SHORTEST = 0.1;

  /** Rubber and plastic age by themselves however light the use; a judgement. */
  private static final double LONGEST = 2;

  /**
   * Nodes and weights for three points of a normal distribution (Gauss-Hermite, DLMF 3.5.28, table
   * number from memory): exact for polynomials up to the fifth degree.
   */
  private static final double[] NODES = {-Math.sqrt(3), 0, Math.sqrt(3)};

  private static final double[] WEIGHTS = {1 / 6.0, 2 / 3.0, 1 / 6.0};

  /** A use that is hardly known does not fall below this share of the stated one; a judgement. */
  private static final double LEAST_USE = 0.2;

  private UsedLife() {}

  static ApplianceLife of(KindOfLife kind, Use use, List<Statement> assumptions) {
    if (use.cyclesPerWeek().isEmpty()) {
      assumptions.add(Assumption.NO_CYCLES.with());
      return kind.life();
    }
    Quantity cycles = use.cyclesPerWeek().get();
    if (use.builtForCycles().isPresent()) {
      double built = use.builtForCycles().get().si();
      double years = built / (cycles.si() * RunningCost.WEEKS_PER_YEAR);
      assumptions.add(
          Assumption.BUILT_FOR_CYCLES.with(
              QuantityFormat.fixed(built, 0), QuantityFormat.fixed(years, 1)));
      return spread(kind, years / kind.life().mean(), cycles, Double.POSITIVE_INFINITY);
    }
    return scaled(kind, cycles, assumptions);
  }

  private static ApplianceLife scaled(
      KindOfLife kind, Quantity cycles, List<Statement> assumptions) {
    OptionalDouble household =
        kind.isStudied()
            ? HouseholdUse.cyclesPerWeek(kind.studies().get(0).kind())
            : OptionalDouble.empty();
    if (household.isEmpty()) {
      assumptions.add(Assumption.CYCLES_DO_NOT_TELL.with());
      return kind.life();
    }
    double factor = LifeAtUse.years(1, household.getAsDouble(), cycles.si());
    double kept = Math.max(SHORTEST, Math.min(LONGEST, factor));
    assumptions.add(
        Assumption.CYCLES_AGAINST_HOUSEHOLDS.with(
            QuantityFormat.fixed(household.getAsDouble(), 1),
            HouseholdUse.SOURCE.standing().words(),
            QuantityFormat.fixed(cycles.si(), 1),
            QuantityFormat.fixed(kept, 2),
            kept == factor ? "" : " and not beyond that"));
    return spread(kind, kept, cycles, LONGEST);
  }

  /** The lives for a use that is known with the uncertainty that the job states. */
  private static ApplianceLife spread(
      KindOfLife kind, double factor, Quantity cycles, double longest) {
    double relative = cycles.standardUncertaintySi() / cycles.si();
    if (!(relative > 0)) {
      return kind.life().stretched(factor);
    }
    double[] factors = new double[NODES.length];
    for (int i = 0; i < NODES.length; i++) {
      double use = Math.max(LEAST_USE, 1 + NODES[i] * Math.min(1, relative));
      factors[i] = Math.min(longest, factor / use);
    }
    return kind.life().stretched(factors, WEIGHTS);
  }
}
