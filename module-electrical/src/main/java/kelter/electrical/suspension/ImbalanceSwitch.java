package kelter.electrical.suspension;

import static kelter.core.diagnosis.model.Course.step;
import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import java.util.Optional;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.Figure;
import kelter.core.diagnosis.model.FigureSet;
import kelter.core.diagnosis.model.PartModel;
import kelter.core.diagnosis.model.Spread;
import kelter.core.diagnosis.model.Work;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.module.Part;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Meaning;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Symptoms;
import kelter.electrical.caution.ElectricalCautions;
import kelter.electrical.component.Electrical;
import kelter.electrical.contact.ContactWords;

/**
 * The switch that stops a spin when the tub swings too far: closed at rest, open when its lever is
 * moved. Chances, those of symptoms too, and spreads are from memory.
 */
public final class ImbalanceSwitch implements Part {

  static final Observable AT_REST =
      resistance("rest-resistance", "resistance across it at rest", "leave its lever alone");

  static final Observable MOVED =
      resistance("moved-resistance", "resistance across it with its lever moved", "move its lever");

  static final ComponentKind IMBALANCE_SWITCH =
      new ComponentKind(
          "imbalance-switch", "imbalance switch", List.of(AT_REST, MOVED), List.of(), List.of());

  /** What faults change. */
  private static final class Contact {
    static final FigureSet ALL = new FigureSet("imbalance-switch");
    static final Figure REST = ALL.figure("resistance at rest, Ohm", 0.1);
    static final Figure MOVED =
        ALL.figure("resistance with the lever moved, Ohm", Electrical.RESISTANCE.high());
  }

  private static Observable resistance(String id, String title, String lever) {
    return Observable.named(id, title)
        .logarithmic(QuantityKind.RESISTANCE, Electrical.RESISTANCE)
        .provingFrom(ContactWords.PROVES)
        .how("Take one wire off, " + lever + " and measure across it, leads nulled.")
        .by(
            Electrical.dead(
                4, Electrical.OHMMETER, ElectricalCautions.NEVER_BRIDGE_IMBALANCE_SWITCH));
  }

  @Override
  public List<ComponentKind> kinds() {
    return List.of(IMBALANCE_SWITCH);
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component part) {
    double open = Electrical.RESISTANCE.high();
    return Optional.of(
        PartModel.of(part, IMBALANCE_SWITCH, Electrical.PRIORS, Contact.ALL)
            .faults(
                fault("stuck", "imbalance switch stuck open or closed", 0.015)
                    .wears(Wear.CONTACT)
                    .changes(
                        Contact.REST.becomes(step(open, 0.1)),
                        Contact.MOVED.becomes(step(open, 0.1)))
                    .makes(Meaning.IMBALANCE.symptom(), step(0.95, 0.5))
                    .makes(Symptoms.DOES_NOT_SPIN, step(0.9, 0.2))
                    .makes(Symptoms.VIBRATES, step(0.3, 0.85))
                    .makes(Symptoms.LOUD, step(0.05, 0.4))
                    .curedBy(
                        Work.renewing(
                            "renew-imbalance-switch",
                            "renew the imbalance switch, or set it",
                            30,
                            0.95,
                            Caution.UNPLUG,
                            ElectricalCautions.NEVER_BRIDGE_IMBALANCE_SWITCH)))
            .looks(AT_REST, Contact.REST, Spread.constant(0.7))
            .looks(MOVED, Contact.MOVED, Spread.constant(0.7))
            .build());
  }
}
