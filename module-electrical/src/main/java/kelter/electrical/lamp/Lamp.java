package kelter.electrical.lamp;

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
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Symptoms;
import kelter.electrical.caution.ElectricalCautions;
import kelter.electrical.component.Electrical;
import kelter.electrical.contact.ContactWords;

/**
 * The lamp inside a machine. A filament of 15 W at 230 V has 3.5 kOhm hot by U²/P and about a tenth
 * of that cold. Chances and spreads are from memory.
 */
public final class Lamp implements Part {

  static final Observable STAYS_DARK =
      Observable.named("stays-dark", "it stays dark elsewhere, or a new one lights in its holder")
          .how(
              "Screw it out cold and try it in a lamp of the same voltage, or try a lamp known good in"
                  + " its holder.")
          .by(Electrical.inside(3));

  static final Observable RESISTANCE =
      Observable.named("resistance", "resistance between its contacts, cold")
          .logarithmic(QuantityKind.RESISTANCE, Electrical.RESISTANCE)
          .provingFrom(ContactWords.OPEN)
          .how("For lamps with a filament: screw it out and measure between cap and tip.")
          .by(Electrical.dead(2, Electrical.OHMMETER));

  static final ComponentKind LAMP =
      new ComponentKind("lamp", "lamp", List.of(STAYS_DARK, RESISTANCE), List.of(), List.of());

  /** What faults change. */
  private static final class Bulb {
    static final FigureSet ALL = new FigureSet("lamp");
    static final Figure DARK = ALL.figure("chance that it is seen to stay dark elsewhere", 0.03);
    static final Figure RESISTANCE =
        ALL.figure("resistance cold, Ohm: of 15 W to 40 W at 120 V to 230 V, in the middle", 200);
  }

  @Override
  public List<ComponentKind> kinds() {
    return List.of(LAMP);
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component lamp) {
    Work renew =
        Work.renewing(
            "renew-lamp", "renew the lamp", 8, 0.96, Caution.UNPLUG, ElectricalCautions.HOT_LAMP);
    return Optional.of(
        PartModel.of(lamp, LAMP, Electrical.PRIORS, Bulb.ALL)
            .faults(
                fault("dead", "lamp dead", 0.04)
                    .wears(Wear.HEATER)
                    .changes(
                        Bulb.DARK.becomes(0.96),
                        Bulb.RESISTANCE.becomes(Electrical.RESISTANCE.high()))
                    .makes(Symptoms.LIGHT_OUT, 0.95)
                    .curedBy(renew),
                fault("shorted", "lamp or its holder shorted", 0.003)
                    .apartFrom("dead")
                    .changes(Bulb.DARK.becomes(0.9), Bulb.RESISTANCE.becomes(0.5))
                    .makes(Symptoms.LIGHT_OUT, 0.88)
                    .makes(Symptoms.TRIPS_BREAKER, 0.6)
                    .curedBy(renew))
            .looks(STAYS_DARK, Bulb.DARK)
            .looks(RESISTANCE, Bulb.RESISTANCE, Spread.constant(0.8))
            .build());
  }
}
