package kelter.costing.choice;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import kelter.core.owner.Use;
import kelter.core.quantity.Quantity;
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

  private UsedLife() {}

  static ApplianceLife of(KindOfLife kind, Use use, List<String> assumptions) {
    Optional<Double> cycles = use.cyclesPerWeek().map(Quantity::si);
    Optional<Double> built = use.builtForCycles().map(Quantity::si);
    if (cycles.isEmpty()) {
      assumptions.add(
          "The job states no cycles a week; use as hard as where the lives were studied was taken.");
      return kind.life();
    }
    if (built.isPresent()) {
      double years = built.get() / (cycles.get() * RunningCost.WEEKS_PER_YEAR);
      assumptions.add(
          ("Such a machine was taken to last the %s cycles on average that it is built for: %s years"
                  + " at this use. The spread is that of the studies.")
              .formatted(Rounded.decimal(built.get(), 0), Rounded.decimal(years, 1)));
      return kind.life().stretched(years / kind.life().mean());
    }
    return scaled(kind, cycles.get(), assumptions);
  }

  private static ApplianceLife scaled(KindOfLife kind, double cycles, List<String> assumptions) {
    OptionalDouble household =
        kind.isStudied()
            ? HouseholdUse.cyclesPerWeek(kind.studies().get(0).kind())
            : OptionalDouble.empty();
    if (household.isEmpty()) {
      assumptions.add(
          "Cycles a week do not tell how long this kind of machine lasts, unless the job states how"
              + " many it is built for; the lives were taken as studied.");
      return kind.life();
    }
    double factor = LifeAtUse.years(1, household.getAsDouble(), cycles);
    double kept = Math.max(SHORTEST, Math.min(LONGEST, factor));
    assumptions.add(
        ("Households were taken to run %s cycles a week (%s) and this machine runs %s: its life was"
                + " taken %s times as long, wear counted in cycles%s (common practice, no source).")
            .formatted(
                Rounded.decimal(household.getAsDouble(), 1),
                HouseholdUse.SOURCE.standing().words(),
                Rounded.decimal(cycles, 1),
                Rounded.decimal(kept, 2),
                kept == factor ? "" : " and not beyond that"));
    return kind.life().stretched(kept);
  }
}
