package kelter.electrical.regulating;

import static kelter.core.diagnosis.model.Course.line;
import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import java.util.Optional;
import kelter.core.check.Allowed;
import kelter.core.check.Check;
import kelter.core.check.LimitCheck;
import kelter.core.check.Limits;
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
import kelter.core.source.Source;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Symptoms;
import kelter.electrical.component.Electrical;
import kelter.electrical.contact.ContactLimits;
import kelter.electrical.contact.ContactWords;

/**
 * The switch of a kettle or boiler that steam opens: in order 3 s to 15 s after the water boils.
 * Times, chances and spreads are from memory.
 */
public final class SteamSwitch implements Part {

  static final Observable CLOSED =
      ContactWords.closed(
          "resistance across it, switched on and cold",
          "Take one wire off, switch on and measure across it.",
          4);

  static final Observable BOILS_ON =
      Observable.named("boil-off-time", "time from a rolling boil to switching off")
          .quantity(QuantityKind.TIME, 0, 600)
          .how(
              "Half full, lid shut. Time from the rolling boil to the click, and switch off by hand"
                  + " after two minutes. Write 0 s if it switches off before it boils.")
          .by(Electrical.runningWithWater(6, new Accuracy(0, 1)));

  static final ComponentKind STEAM_SWITCH =
      new ComponentKind(
          "steam-switch", "steam switch", List.of(CLOSED, BOILS_ON), List.of(), List.of());

  private static final Source IN_ORDER =
      Source.fromMemory("steam switches of kettles open 3 s to 15 s after a rolling boil");

  /** What faults change. */
  private static final class Steam {
    static final FigureSet ALL = new FigureSet("steam-switch");
    static final Figure CLOSED = ALL.figure("resistance when closed, Ohm", 0.1);
    static final Figure TIME = ALL.figure("time from boiling to opening, s", 8);
  }

  @Override
  public List<ComponentKind> kinds() {
    return List.of(STEAM_SWITCH);
  }

  @Override
  public List<Check> checks() {
    return List.of(
        LimitCheck.named("steam-switch-conducts", "Does the steam switch conduct?")
            .on(
                STEAM_SWITCH,
                CLOSED,
                ContactLimits.lowPath("resistance of the steam switch", Caution.HOT_WATER)),
        LimitCheck.named("boil-off", "Does it switch off soon after it boils?")
            .on(
                STEAM_SWITCH,
                BOILS_ON,
                Allowed.of("time from boiling to switching off", IN_ORDER, new Limits(2, 30))
                    .resting("twice the longest of switches in order allowed, lid shut")));
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component part) {
    Work clear =
        Work.byHand(
            "clear-steam-way",
            "descale lid and steam way, see that the lid shuts",
            15,
            0.4,
            Caution.UNPLUG);
    Work renew =
        Work.renewing("renew-steam-switch", "renew the steam switch", 30, 0.94, Caution.UNPLUG);
    return Optional.of(
        PartModel.of(part, STEAM_SWITCH, Electrical.PRIORS, Steam.ALL)
            .faults(
                fault("stuck", "steam switch does not open", 0.02)
                    .wears(Wear.CONTACT)
                    .changes(Steam.TIME.becomes(line(40, 300)))
                    .makes(Symptoms.RUNS_WITHOUT_END, 0.6, 0.8)
                    .makes(Symptoms.STOPS_IN_CYCLE, 0.25)
                    .makes(Symptoms.TOO_HOT, 0.2)
                    .curedBy(clear, renew),
                fault("opens-early", "steam switch opens before it boils", 0.015)
                    .wears(Wear.SENSOR)
                    .apartFrom("stuck")
                    .changes(Steam.TIME.becomes(0))
                    .makes(Symptoms.STOPS_IN_CYCLE, 0.95)
                    .makes(Symptoms.POOR_RESULT, 0.2)
                    .curedBy(renew),
                fault("dead", "steam switch does not close", 0.012)
                    .wears(Wear.CONTACT)
                    .apartFrom("stuck")
                    .changes(Steam.CLOSED.becomes(Electrical.RESISTANCE.high()))
                    .makes(Symptoms.STOPS_IN_CYCLE, 0.7)
                    .makes(Symptoms.DOES_NOT_START, 0.5)
                    .makes(Symptoms.STAYS_COLD, 0.3)
                    .curedBy(renew))
            .looks(CLOSED, Steam.CLOSED, Spread.constant(0.7))
            .looks(BOILS_ON, Steam.TIME, Spread.relative(0.3).atLeast(2))
            .build());
  }
}
