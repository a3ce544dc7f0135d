package kelter.electrical.inverter;

import java.util.List;
import kelter.core.check.Allowed;
import kelter.core.check.Check;
import kelter.core.check.LimitCheck;
import kelter.core.check.Limits;
import kelter.core.module.Part;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.DischargeWait;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Span;
import kelter.electrical.caution.ElectricalCautions;
import kelter.electrical.component.Electrical;

/** The charge that an inverter drive keeps in its DC link, read before anything else inside. */
public final class LinkCharge implements Part {

  static final Observable DC_LINK_VOLTAGE =
      Observable.named("dc-link-voltage", "voltage left at the DC link")
          .quantity(QuantityKind.VOLTAGE, 0, 1000)
          .how("Read the DC link at its capacitor, instrument CAT III 600 V or more.")
          .by(Electrical.dead(4, Electrical.VOLTMETER, ElectricalCautions.CHARGED_CAPACITOR));

  private static final Characteristic CAPACITANCE =
      new Characteristic("capacitance", "capacitance of the DC link", QuantityKind.CAPACITANCE)
          .within(new Span(1e-9, 1));

  private static final Characteristic BLEED =
      new Characteristic(
              "bleed-resistance", "resistance that discharges it", QuantityKind.RESISTANCE)
          .within(new Span(1, 1e9));

  private static final Characteristic BUS =
      new Characteristic("bus-voltage", "voltage marked on a boosted bus", QuantityKind.VOLTAGE)
          .within(new Span(1, 2000));

  private static final ComponentKind DRIVE =
      new ComponentKind(
          "inverter-drive",
          "inverter drive",
          List.of(DC_LINK_VOLTAGE),
          List.of(CAPACITANCE, BLEED, BUS),
          List.of());

  @Override
  public List<ComponentKind> kinds() {
    return List.of(DRIVE);
  }

  @Override
  public List<Check> checks() {
    return List.of(
        LimitCheck.named("dc-link", "Is the DC link discharged?")
            .on(
                DRIVE,
                DC_LINK_VOLTAGE,
                Allowed.of(
                    "voltage left at the DC link",
                    DischargeWait.SOURCE,
                    Limits.atMost(DischargeWait.INSIDE))));
  }
}
