package kelter.electrical.check;

import java.util.Optional;
import kelter.core.check.Limits;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
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
              + " the current measured again.");

  private LeakageRule() {}

  static Optional<LimitCheck.Allowed> conductor(Job job, Component cord, Measurement measurement) {
    String title = "protective conductor current";
    return local(cord, SupplyKinds.CONDUCTOR_CURRENT_LIMIT.id(), title)
        .or(
            () ->
                northAmerica(job.appliance(), title)
                    .or(
                        () ->
                            Optional.of(
                                new LimitCheck.Allowed(
                                    Limits.atMost(
                                        LeakageLimit.afterRepair(heating(job.appliance()))),
                                    LeakageLimit.AFTER_REPAIR,
                                    title + " against heating power",
                                    "",
                                    Optional.of(DO_NOT_RETURN)))));
  }

  static Optional<LimitCheck.Allowed> touch(Job job, Component cord, Measurement measurement) {
    String title = "touch current";
    return local(cord, SupplyKinds.TOUCH_CURRENT_LIMIT.id(), title)
        .or(
            () ->
                northAmerica(job.appliance(), title)
                    .or(
                        () ->
                            Optional.of(
                                new LimitCheck.Allowed(
                                    Limits.atMost(LeakageLimit.touch()),
                                    LeakageLimit.AFTER_REPAIR,
                                    title + " against the limit after repair",
                                    "",
                                    Optional.of(DO_NOT_RETURN)))));
  }

  private static Optional<LimitCheck.Allowed> local(Component cord, String figure, String title) {
    return cord.figure(figure)
        .map(
            limit ->
                new LimitCheck.Allowed(
                    Limits.atMost(limit.si()),
                    cord.source(),
                    title + " against local code",
                    "limit of the job in place of the one built in",
                    Optional.of(DO_NOT_RETURN)));
  }

  private static Optional<LimitCheck.Allowed> northAmerica(Appliance appliance, String title) {
    if (!NorthAmerica.supplies(appliance.nameplate())) {
      return Optional.empty();
    }
    boolean twoWire =
        appliance.nameplate().protectionClass().filter(c -> c == ProtectionClass.II).isPresent();
    NorthAmericanLimit.Build build =
        twoWire ? NorthAmericanLimit.Build.TWO_WIRE : NorthAmericanLimit.Build.GROUNDED_STATIONARY;
    return Optional.of(
        new LimitCheck.Allowed(
            Limits.atMost(NorthAmericanLimit.leakage(build)),
            NorthAmericanLimit.LEAKAGE_SOURCE,
            title + " against the North American type test",
            twoWire
                ? "limit of two-wire appliances"
                : "limit of stationary grounded appliances; portable ones 0.5 mA",
            Optional.of(DO_NOT_RETURN)));
  }

  /** All heaters that state their power, W; the limit does not rise without one. */
  private static double heating(Appliance appliance) {
    double heaters =
        appliance.components().stream()
            .filter(
                part ->
                    part.kind().equals(HeaterKinds.HEATER.id())
                        || part.kind().equals(HeaterKinds.AIR_HEATER.id()))
            .flatMap(part -> part.nameplate().power().stream())
            .mapToDouble(Quantity::si)
            .sum();
    return Math.max(0, heaters);
  }
}
