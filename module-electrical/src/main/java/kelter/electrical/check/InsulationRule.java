package kelter.electrical.check;

import java.util.Optional;
import kelter.core.check.Limits;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.Reading;
import kelter.core.quantity.QuantityFormat;
import kelter.core.safety.Caution;
import kelter.core.safety.Caution.Signal;
import kelter.core.safety.ProtectionClass;
import kelter.electrical.component.HeaterKinds;
import kelter.electrical.component.SupplyKinds;
import kelter.electrical.protection.InsulationLimit;
import kelter.electrical.rating.Stated;

/**
 * The insulation resistance that a part or the appliance must have at least, by protection class.
 * Where the nameplate does not say it, the limit of class I and that of class II both count; class
 * III, which no mains reach, has to be stated. For the whole appliance the milder limit of
 * appliances with heaters holds if it has one, for a heater always, for other parts never.
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

  /** Ohm in a megohm. */
  private static final double MEGOHM = 1e6;

  private InsulationRule() {}

  static Optional<LimitCheck.Allowed> heater(Job job, Component part, Measurement measurement) {
    return allowed(job.appliance(), true, measurement);
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
    ProtectionClass mildest = stated.orElse(ProtectionClass.I);
    String beyond = isOverRange(measurement) ? BEYOND : "";
    String ofMildest =
        "limit of class "
            + mildest
            + (heaters && mildest == ProtectionClass.I ? " with heaters" : "");
    LimitCheck.Allowed allowed =
        new LimitCheck.Allowed(
            limits(mildest, heaters),
            InsulationLimit.SOURCE,
            "insulation resistance against protection class",
            (stated.isPresent() ? ofMildest : ofEither(heaters)) + beyond,
            Optional.of(DO_NOT_RETURN));
    return Optional.of(
        stated.isPresent()
            ? allowed
            : allowed.orIfOfAnotherClass(limits(ProtectionClass.II, heaters)));
  }

  private static Limits limits(ProtectionClass protectionClass, boolean heaters) {
    return Limits.atLeast(InsulationLimit.limit(protectionClass, heaters));
  }

  private static String ofEither(boolean heaters) {
    return "limit "
        + megohms(ProtectionClass.I, heaters)
        + (heaters ? " (class I with heaters)" : " (class I)")
        + " or "
        + megohms(ProtectionClass.II, heaters)
        + " (class II), because the job does not state the protection class; between both the class"
        + " decides: look for the double square of class II on the nameplate";
  }

  private static String megohms(ProtectionClass protectionClass, boolean heaters) {
    return QuantityFormat.plain(InsulationLimit.limit(protectionClass, heaters) / MEGOHM) + " Mohm";
  }
}
