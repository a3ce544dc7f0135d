package kelter.electrical.hob;

import static kelter.core.diagnosis.model.Course.line;
import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import java.util.Optional;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.Figure;
import kelter.core.diagnosis.model.FigureSet;
import kelter.core.diagnosis.model.PartModel;
import kelter.core.diagnosis.model.Work;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.module.Part;
import kelter.core.safety.Caution;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Meaning;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Symptoms;
import kelter.electrical.caution.ElectricalCautions;
import kelter.electrical.component.Electrical;

/**
 * A small fan with an electronic motor that cools a power stage. Its windings cannot be judged by
 * ohms, so it is listened to, turned and looked at. Chances are from memory.
 */
public final class ElectronicsFan implements Part {

  static final Observable SILENT =
      Observable.named("silent", "it does not blow while the machine works hard")
          .asked(
              4, "Let a zone work at full power for three minutes: hear the fan, feel its outlet.");

  static final Observable TURNS =
      Observable.named("turns", "how its wheel turns by hand")
          .graded("freely", "brushes something", "stiffly", "held fast")
          .how("Turn the wheel a full turn with a finger and let it run out.")
          .by(Electrical.inside(3, ElectricalCautions.CHARGED_CAPACITOR));

  static final Observable AIR_WAY =
      Observable.named("air-way", "how clear the way of its air is")
          .graded("clear", "dusty", "half shut", "shut")
          .how("Look at the grilles, the heat sink and at what stands in the cupboard below.")
          .by(Electrical.inside(3, ElectricalCautions.CHARGED_CAPACITOR));

  static final ComponentKind DC_FAN =
      new ComponentKind(
          "dc-fan", "electronic fan", List.of(SILENT, TURNS, AIR_WAY), List.of(), List.of());

  /** What faults change. */
  private static final class Fan {
    static final FigureSet ALL = new FigureSet("electronics-fan");
    static final Figure SILENT = ALL.figure("chance that it is found not to blow", 0.04);
    static final Figure HELD = ALL.figure("how hard it turns, from 0 to 1", 0.05);
    static final Figure SHUT = ALL.figure("how far its air way is shut, from 0 to 1", 0.15);
  }

  @Override
  public List<ComponentKind> kinds() {
    return List.of(DC_FAN);
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component fan) {
    Work renew =
        Work.renewing(
            "renew-electronics-fan",
            "renew the fan",
            30,
            0.95,
            Caution.UNPLUG,
            ElectricalCautions.CHARGED_CAPACITOR);
    Work clear =
        Work.byHand(
            "clear-air-way",
            "clear the air way and see that air can come in",
            20,
            0.9,
            Caution.UNPLUG,
            ElectricalCautions.CHARGED_CAPACITOR);
    return Optional.of(
        PartModel.of(fan, DC_FAN, Electrical.PRIORS, Fan.ALL)
            .faults(
                fault("seized", "fan stiff or seized", 0.02)
                    .wears(Wear.BEARING)
                    .changes(Fan.HELD.becomes(line(0.4, 0.97)), Fan.SILENT.becomes(line(0.3, 0.9)))
                    .makes(Symptoms.STOPS_IN_CYCLE, 0.5, 0.95)
                    .makes(Symptoms.LOUD, 0.8)
                    .makes(Meaning.TOO_HOT.symptom(), 0.5)
                    .curedBy(renew),
                fault("dead", "fan dead", 0.01)
                    .wears(Wear.CAPACITOR)
                    .apartFrom("seized")
                    .changes(Fan.SILENT.becomes(0.95))
                    .makes(Symptoms.STOPS_IN_CYCLE, 0.9)
                    .makes(Meaning.TOO_HOT.symptom(), 0.5)
                    .curedBy(renew),
                fault("blocked", "air way of the fan blocked", 0.01)
                    .wears(Wear.DEPOSIT)
                    .changes(Fan.SHUT.becomes(line(0.5, 0.97)))
                    .makes(Symptoms.STOPS_IN_CYCLE, 0.6, 0.95)
                    .makes(Symptoms.LOUD, 0.4, 0.5)
                    .makes(Meaning.TOO_HOT.symptom(), 0.5)
                    .curedBy(clear))
            .looks(SILENT, Fan.SILENT)
            .looks(TURNS, Fan.HELD)
            .looks(AIR_WAY, Fan.SHUT)
            .build());
  }
}
