package kelter.electrical.insulation;

import java.util.Optional;
import kelter.core.check.Allowed;
import kelter.core.check.LimitRule;
import kelter.core.check.Limits;
import kelter.core.check.Measured;
import kelter.core.job.Reading;
import kelter.core.quantity.QuantityFormat;
import kelter.core.safety.ProtectionClass;
import kelter.electrical.caution.ElectricalCautions;
import kelter.electrical.protection.InsulationLimit;

/**
 * The insulation resistance that a part or the appliance must have at least, by protection class.
 * Where the nameplate does not say it, the limit of class I and that of class II both count; class
 * III, which no mains reach, has to be stated.
 *
 * @param heaters whether the milder limit of appliances with heaters holds
 */
public record InsulationRule(boolean heaters) implements LimitRule {

  private static final String BEYOND =
      "; over range tells nothing without the end of the range: write for instance > 200 MOhm";

  /** Ohm in a megohm. */
  private static final double MEGOHM = 1e6;

  @Override
  public Optional<Allowed> allowed(Measured measured) {
    Optional<ProtectionClass> stated = measured.appliance().nameplate().protectionClass();
    ProtectionClass mildest = stated.orElse(ProtectionClass.I);
    Allowed allowed =
        Allowed.of(
                "insulation resistance against protection class",
                InsulationLimit.SOURCE,
                limits(mildest))
            .resting(
                (stated.isPresent() ? ofClass(mildest) : ofEither())
                    + (isOverRange(measured) ? BEYOND : ""))
            .butIfNot(ElectricalCautions.FAILED_INSULATION);
    return Optional.of(
        stated.isPresent() ? allowed : allowed.orPerhaps(limits(ProtectionClass.II)));
  }

  private static boolean isOverRange(Measured measured) {
    for (Reading reading : measured.measurement().readings()) {
      if (reading instanceof Reading.OverRange) {
        return true;
      }
    }
    return false;
  }

  private Limits limits(ProtectionClass protectionClass) {
    return Limits.atLeast(InsulationLimit.limit(protectionClass, heaters));
  }

  private String ofClass(ProtectionClass stated) {
    return "limit of class "
        + stated
        + (heaters && stated == ProtectionClass.I ? " with heaters" : "");
  }

  private String ofEither() {
    return "limit "
        + megohms(ProtectionClass.I)
        + (heaters ? " (class I with heaters)" : " (class I)")
        + " or "
        + megohms(ProtectionClass.II)
        + " (class II), because the job does not state the protection class; between both the class"
        + " decides: look for the double square of class II on the nameplate";
  }

  private String megohms(ProtectionClass protectionClass) {
    return QuantityFormat.plain(InsulationLimit.limit(protectionClass, heaters) / MEGOHM) + " Mohm";
  }
}
