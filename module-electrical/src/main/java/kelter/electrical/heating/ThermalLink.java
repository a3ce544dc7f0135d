package kelter.electrical.heating;

import static kelter.core.diagnosis.model.Course.line;
import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import kelter.core.check.Check;
import kelter.core.check.LimitCheck;
import kelter.core.diagnosis.model.FaultRow;
import kelter.core.diagnosis.model.PartModel;
import kelter.core.diagnosis.model.Spread;
import kelter.core.diagnosis.model.Work;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.module.Part;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.safety.Caution.Signal;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Symptoms;
import kelter.electrical.component.Electrical;
import kelter.electrical.contact.ClosedContact;
import kelter.electrical.contact.Path;

/**
 * A thermal link, a thermal cut-out or a limiting thermostat of a heating circuit. Chances and
 * spreads are from memory, those of symptoms too.
 */
public final class ThermalLink implements Part {

  static final Observable LINK_RESISTANCE =
      Observable.named("resistance", "resistance across it when cold")
          .logarithmic(QuantityKind.RESISTANCE, Electrical.RESISTANCE)
          .at(Electrical.TEMPERATURE)
          .how("Take one wire off and measure across it, leads nulled.")
          .by(Electrical.dead(3, Electrical.OHMMETER));

  static final ComponentKind THERMAL_LINK =
      new ComponentKind(
          "thermal-link", "thermal link", List.of(LINK_RESISTANCE), List.of(), List.of());

  @Override
  public List<ComponentKind> kinds() {
    return List.of(THERMAL_LINK);
  }

  @Override
  public String whyNot(Appliance appliance, Component component) {
    return HeatingGroup.missing(appliance);
  }

  @Override
  public List<Check> checks() {
    return List.of(
        LimitCheck.named("thermal-link-continuity", "Is the thermal link whole?")
            .on(THERMAL_LINK, LINK_RESISTANCE, ClosedContact.RULE));
  }

  /** Puts it into the model of its circuit. */
  static void addTo(PartModel model, Component link, HeatingGroup group) {
    model
        .on(link, THERMAL_LINK, Path.values())
        .faults(open(group))
        .looks(LINK_RESISTANCE, state -> state.of(Path.RESISTANCE), Spread.constant(0.7));
  }

  /** In some machines it feeds the drive or the control too, which then does not start. */
  private static FaultRow open(HeatingGroup group) {
    double cold = group.medium() == Medium.AIR ? 0.7 : 0.85;
    FaultRow open =
        fault("open", "thermal link open", 0.05)
            .changes(
                Path.RESISTANCE.becomes(Electrical.RESISTANCE.high()),
                CircuitFigure.INTERRUPTED.becomes(1))
            .curedBy(
                Work.renewing(
                    "renew-thermal-link",
                    "find why the thermal link opened, and renew it",
                    30,
                    0.9,
                    Caution.UNPLUG,
                    new Caution(
                        Signal.WARNING,
                        "A thermal link opens because something got too hot. Find out what"
                            + " before a new one goes in, fit the same temperature and current,"
                            + " and never bridge it.")))
            .makes(Symptoms.DOES_NOT_START, 0.3, 0.3);
    return HeatSymptoms.cold(open, group, line(cold, cold));
  }
}
