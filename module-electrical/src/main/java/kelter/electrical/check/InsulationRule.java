package kelter.electrical.check;

import java.util.Optional;
import kelter.core.check.Limits;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.Reading;
import kelter.core.safety.Caution;
import kelter.core.safety.Caution.Signal;
import kelter.core.safety.ProtectionClass;
import kelter.electrical.component.HeaterKinds;
import kelter.electrical.component.SupplyKinds;
import kelter.electrical.protection.InsulationLimit;
import kelter.electrical.rating.Stated;

/**
 * The insulation resistance that a part or the appliance must have at least, by protection class;
 * class I where the nameplate does not say. For the whole appliance the milder limit of appliances
 * with heaters holds if it has one, for a heater always, for other parts never.
 */
final class InsulationRule {

  private static final Caution DO_NOT_RETURN =
      new Caution(
          Signal.DANGER,
          "Electric shock. Leave the machine unplugged and do not hand it back before the insulation"
              + " is mended and measured again.",
          true);

  private static final String BEYOND =
      "; over range tells nothing without the end of the range: write for instance > 200 MOhm";

  private InsulationRule() {}

  static Optional<LimitCheck.Allowed> heater(Job job, Component part, Measurement measurement) {
    return allowed(job.appliance(), true, measurement);
  }

  static Optional<LimitCheck.Allowed> otherPart(Job job, Component part, Measurement measurement) {
    return allowed(job.appliance(), false, measurement);
  }

  static Optional<LimitCheck.Allowed> appliance(Job job, Component part, Measurement measurement) {
    double local = Stated.si(part.figure(SupplyKinds.INSULATION_LIMIT.id()));
    if (Double.isNaN(local)) {
      return allowed(job.appliance(), hasHeater(job.appliance()), measurement);
    }
    return Optional.of(
        new LimitCheck.Allowed(
            Limits.atLeast(local),
            part.source(),
            "insulation resistance against local code",
            "limit of the job in place of the one built in",
            Optional.of(DO_NOT_RETURN)));
  }

  private static boolean isOverRange(Measurement measurement) {
    for (Reading reading : measurement.readings()) {
      if (reading instanceof Reading.OverRange) {
        return true;
      }
    }
    return false;
  }

  private static boolean hasHeater(Appliance appliance) {
    for (Component part : appliance.components()) {
      if (HeaterKinds.isHeater(part.kind())) {
        return true;
      }
    }
    return false;
  }

  private static Optional<LimitCheck.Allowed> allowed(
      Appliance appliance, boolean heaters, Measurement measurement) {
    Optional<ProtectionClass> stated = appliance.nameplate().protectionClass();
    ProtectionClass taken = stated.orElse(ProtectionClass.I);
    String words =
        "limit of class "
            + taken
            + (heaters && taken == ProtectionClass.I ? " with heaters" : "")
            + (stated.isPresent() ? "" : ", taken because the nameplate states none")
            + (isOverRange(measurement) ? BEYOND : "");
    return Optional.of(
        new LimitCheck.Allowed(
            Limits.atLeast(InsulationLimit.limit(taken, heaters)),
            InsulationLimit.SOURCE,
            "insulation resistance against protection class",
            words,
            Optional.of(DO_NOT_RETURN)));
  }
}
