package kelter.electrical.check;

import java.util.Optional;
import kelter.core.check.Limits;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.RatedRange;
import kelter.core.quantity.Quantity;
import kelter.core.safety.Caution;
import kelter.core.safety.Caution.Signal;
import kelter.core.safety.ProtectionClass;
import kelter.electrical.component.HeaterKinds;
import kelter.electrical.component.SupplyKinds;
import kelter.electrical.protection.LeakageLimit;
import kelter.electrical.protection.NorthAmericanLimit;

/**
 * What may flow to earth, in the protective conductor and through a person who touches metal: the
 * limits after repair, on North American supplies those of the type test; local code stated with
 * the cord comes before both.
 */
final class LeakageRule {

  private static final Caution DO_NOT_RETURN =
      new Caution(
          Signal.DANGER,
          "Electric shock. Unplug the machine and do not hand it back before the leak is found and"
              + " the current measured again.",
          true);

  private static final String OR_TWO_WIRE =
      ", and that of two-wire ones, because the job does not state the protection class: two prongs"
          + " and a double square on the nameplate mean class II";

  private LeakageRule() {}

  static Optional<LimitCheck.Allowed> conductor(Job job, Component cord, Measurement measurement) {
    String title = "protective conductor current";
    double limit = LeakageLimit.afterRepair(heating(job.appliance()));
    return allowed(
        job.appliance(),
        cord,
        cord.figure(SupplyKinds.CONDUCTOR_CURRENT_LIMIT.id()),
        title,
        limit,
        title + " against heating power");
  }

  static Optional<LimitCheck.Allowed> touch(Job job, Component cord, Measurement measurement) {
    String title = "touch current";
    return allowed(
        job.appliance(),
        cord,
        cord.figure(SupplyKinds.TOUCH_CURRENT_LIMIT.id()),
        title,
        LeakageLimit.touch(),
        title + " against the limit after repair");
  }

  /** The limit of local code, else of a North American supply, else the one after repair. */
  private static Optional<LimitCheck.Allowed> allowed(
      Appliance appliance,
      Component cord,
      Optional<Quantity> local,
      String title,
      double afterRepair,
      String titleAfterRepair) {
    if (local.isPresent()) {
      return Optional.of(
          new LimitCheck.Allowed(
              Limits.atMost(local.get().si()),
              cord.source(),
              title + " against local code",
              "limit of the job in place of the one built in",
              Optional.of(DO_NOT_RETURN)));
    }
    if (NorthAmerica.supplies(appliance.nameplate())) {
      return Optional.of(northAmerica(appliance, title));
    }
    return Optional.of(
        new LimitCheck.Allowed(
            Limits.atMost(afterRepair),
            LeakageLimit.AFTER_REPAIR,
            titleAfterRepair,
            "",
            Optional.of(DO_NOT_RETURN)));
  }

  private static LimitCheck.Allowed northAmerica(Appliance appliance, String title) {
    Optional<ProtectionClass> stated = appliance.nameplate().protectionClass();
    NorthAmericanLimit.Build grounded = NorthAmericanLimit.Build.GROUNDED_STATIONARY;
    NorthAmericanLimit.Build twoWire = NorthAmericanLimit.Build.TWO_WIRE;
    boolean isTwoWire = stated.isPresent() && stated.get() == ProtectionClass.II;
    LimitCheck.Allowed allowed =
        new LimitCheck.Allowed(
            Limits.atMost(NorthAmericanLimit.leakage(isTwoWire ? twoWire : grounded)),
            NorthAmericanLimit.LEAKAGE_SOURCE,
            title + " against the North American type test",
            isTwoWire
                ? "limit of two-wire appliances"
                : "limit of stationary grounded appliances; portable ones 0.5 mA"
                    + (stated.isPresent() ? "" : OR_TWO_WIRE),
            Optional.of(DO_NOT_RETURN));
    return stated.isPresent()
        ? allowed
        : allowed.orIfOfAnotherClass(Limits.atMost(NorthAmericanLimit.leakage(twoWire)));
  }

  /** All heaters that state their power, W, at the lower limit of what they state. */
  private static double heating(Appliance appliance) {
    double heaters = 0;
    for (Component part : appliance.components()) {
      Optional<RatedRange> power = part.nameplate().power();
      if (HeaterKinds.isHeater(part.kind()) && power.isPresent()) {
        heaters += power.get().low().si();
      }
    }
    return Math.max(0, heaters);
  }
}
