package kelter.hydraulics.fault;

import java.util.List;
import kelter.core.diagnosis.Remedy;
import kelter.core.diagnosis.Remedy.Restores;
import kelter.core.safety.Caution;
import kelter.core.safety.Caution.Signal;

/**
 * The work on what should bring the voltage to a pump. Minutes and chances of cure: common
 * practice, no source.
 *
 * @param component the id of the pump
 */
public record PowerRemedies(String component) {

  private static final Caution LIVE =
      new Caution(
          Signal.DANGER,
          "Electric shock. Voltage at the pump is measured on live parts: that is for those who are"
              + " competent and licensed for it. Anybody else traces the break with the plug out, by"
              + " continuity, and leaves the rest to them.");

  /**
   * Finding the break.
   *
   * @return work on connectors and wires
   */
  public Remedy mendWire() {
    return new Remedy(
        "mend-wire",
        component,
        "find where the voltage for the pump stays away (connector, wire, control) and mend the"
            + " connection",
        35,
        Restores.FUNCTION,
        false,
        0.6,
        List.of(Caution.UNPLUG, LIVE));
  }

  /**
   * Renewing what switches the pump.
   *
   * @return work with a part
   */
  public Remedy renewControl() {
    return new Remedy(
        "renew-control",
        component,
        "renew the control that switches the pump",
        45,
        Restores.PART,
        true,
        0.9,
        List.of(Caution.UNPLUG, LIVE));
  }
}
