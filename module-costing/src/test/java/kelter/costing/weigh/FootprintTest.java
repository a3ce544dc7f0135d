package kelter.costing.weigh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import kelter.core.job.Job;
import kelter.core.option.CarbonBalance;
import kelter.core.owner.Use;
import kelter.core.problem.InputException;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.core.source.Standing;
import kelter.costing.CostingModule;
import org.junit.jupiter.api.Test;

/** What keeping and replacing emit, worked out by hand. */
class FootprintTest {

  private static Optional<Quantity> energy(double kilowattHours) {
    return Optional.of(Quantity.of(kilowattHours, "kW.h", QuantityKind.ENERGY));
  }

  private static Optional<Quantity> mass(double kilograms) {
    return Optional.of(Quantity.of(kilograms, "kg", QuantityKind.MASS));
  }

  private static Use use(double now, double next, Optional<Quantity> making) {
    return new Use(
        Optional.of(Quantity.of(7, "1", QuantityKind.RATIO)),
        Optional.empty(),
        new Use.Consumption(energy(now), Optional.empty()),
        new Use.Consumption(energy(next), Optional.empty()),
        new Use.Carbon(making, mass(0.4)));
  }

  private static Job washer(Use use) {
    Job job = Cases.washer(0, Cases.prices(12, 155, 950, 0));
    return new Job(
        job.id(),
        job.date(),
        job.appliance(),
        job.complaint(),
        job.instruments(),
        job.measurements(),
        job.prices(),
        use);
  }

  /**
   * 7 cycles a week are 365.25 a year, at 0.4 kg a kW.h: 1 kW.h each 146.1 kg, 0.6 kW.h 87.66 kg,
   * so that 58.44 kg a year are saved. Making one at 292.2 kg has paid back after five years and is
   * 24.35 kg a year over twelve.
   */
  @Test
  void theBalanceOfAYear() {
    CarbonBalance balance = Footprint.of(washer(use(1, 0.6, mass(292.2))), 12);
    assertEquals(146.1, balance.runningOld(), 1e-9);
    assertEquals(87.66, balance.runningNew(), 1e-9);
    assertEquals(292.2, balance.makingNew());
    assertEquals(24.35, balance.makingNewPerYear(), 1e-9);
    assertEquals(5, balance.payBack(), 1e-9);
    assertEquals(2, balance.assumptions().size());
    assertEquals(1, balance.sources().size());
  }

  @Test
  void whatMakingOneEmitsIsTakenAndSaidWhereTheJobIsSilent() {
    CarbonBalance balance = Footprint.of(washer(use(1, 1, Optional.empty())), 10);
    assertEquals(300, balance.makingNew());
    assertEquals(30, balance.makingNewPerYear(), 1e-12);
    assertTrue(Double.isNaN(balance.payBack()));
    assertEquals(
        "The job does not say what making a new machine emits; 300 kg were taken.",
        balance.assumptions().get(2).text());
    assertEquals(
        List.of(Standing.FROM_MEMORY, Standing.FROM_MEMORY),
        balance.sources().stream().map(Source::standing).toList());
  }

  @Test
  void allThatIsMissingIsToldAtOnce() {
    Job bare = washer(Use.UNKNOWN);
    InputException missing = assertThrows(InputException.class, () -> Footprint.of(bare, 12));
    assertEquals(
        List.of(
            "/use/cycles-per-week is missing; give it, for instance \"4\", for --carbon",
            "/use/energy-per-cycle is missing; give it, for instance \"1.1 kW.h\", for --carbon",
            "/use/energy-per-cycle-new is missing; give it, for instance \"0.8 kW.h\", for"
                + " --carbon",
            "/use/carbon-per-kwh is missing; give it, for instance \"0.3 kg\", for --carbon"),
        missing.problems().stream()
            .map(each -> each.where() + " " + each.what() + "; " + each.remedy())
            .toList());
  }

  /** The ten means of washing machines are 12.642 years on average, at age 0 and household use. */
  @Test
  void theModuleGivesTheBalanceOfAJob() {
    double life = 12.642 * 220 / 365.25;
    CarbonBalance balance =
        new CostingModule()
            .weigher()
            .orElseThrow()
            .carbon(washer(use(1, 0.6, mass(300))), Cases.certain(Cases.PUMP))
            .orElseThrow();
    assertEquals(300 / life, balance.makingNewPerYear(), 1e-6);
  }
}
