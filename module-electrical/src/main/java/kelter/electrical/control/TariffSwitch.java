package kelter.electrical.control;

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
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Symptoms;
import kelter.electrical.caution.ElectricalCautions;
import kelter.electrical.component.Electrical;

/**
 * The clock or receiver that lets a store heat in cheap hours. It belongs to the fixed wiring:
 * nothing is opened. Chances are from memory.
 */
public final class TariffSwitch implements Part {

  static final Observable STAYS_OFF =
      Observable.named(
              "stays-off", "the store gets nothing in its hours, but does on the day setting")
          .how(
              "Open nothing. Set the switch or its clock to day or boost and read the meter, then to"
                  + " its hours and read again.")
          .by(Electrical.running(10, Electrical.BY_EYE, ElectricalCautions.FIXED_WIRING));

  static final ComponentKind TARIFF_SWITCH =
      new ComponentKind("tariff-switch", "tariff switch", List.of(STAYS_OFF), List.of(), List.of());

  /** What faults change. */
  private static final class Tariff {
    static final FigureSet ALL = new FigureSet("tariff-switch");
    static final Figure OFF = ALL.figure("chance that it is seen to stay off", 0.03);
  }

  @Override
  public List<ComponentKind> kinds() {
    return List.of(TARIFF_SWITCH);
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component part) {
    return Optional.of(
        PartModel.of(part, TARIFF_SWITCH, Electrical.PRIORS, Tariff.ALL)
            .faults(
                fault("dead", "tariff switch does not switch on", 0.01)
                    .wears(Wear.CONTACT)
                    .changes(Tariff.OFF.becomes(0.94))
                    .makes(Symptoms.STAYS_COLD, 0.86)
                    .makes(Symptoms.HEATS_SLOWLY, 0.11)
                    .curedBy(
                        Work.byHand(
                            "hand-over-tariff-switch",
                            "set its clock, or hand it to an electrician or the network operator",
                            20,
                            0.9,
                            Caution.UNPLUG,
                            ElectricalCautions.FIXED_WIRING)))
            .looks(STAYS_OFF, Tariff.OFF)
            .build());
  }
}
