package kelter.electrical.supplycord;

import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import java.util.Optional;
import kelter.core.check.Check;
import kelter.core.check.LimitCheck;
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
import kelter.core.safety.Caution;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Symptoms;
import kelter.electrical.caution.ElectricalCautions;
import kelter.electrical.component.CordWords;
import kelter.electrical.component.Electrical;
import kelter.electrical.contact.Path;

/**
 * The conductors of a supply cord: the protective one from the plug to touchable metal, and the
 * live ones, which break at plug and entry. That it conducts badly is noticed by a tingle, for
 * which a small leak is enough: filters have one. Chances, those of symptoms too, resistances and
 * spreads are from memory.
 */
public final class SupplyCord implements Part {

  /** What faults change on the way of the live conductors. */
  private static final class LiveWay {
    static final FigureSet ALL = new FigureSet("supply-cord");
    static final Figure ADDED = ALL.figure("resistance beside that of the conductor, Ohm", 0.1);
    static final Figure DROPS_OUT =
        ALL.figure("chance that somebody saw it go off and on with the cord", 0.02);
  }

  @Override
  public List<ComponentKind> kinds() {
    return List.of(CordWords.CORD);
  }

  @Override
  public List<Check> checks() {
    return List.of(
        LimitCheck.named(
                "appliance-insulation", "Is the appliance insulated as its protection class asks?")
            .on(CordWords.CORD, CordWords.APPLIANCE_INSULATION, CordChecks::insulation),
        LimitCheck.named(
                "protective-conductor", "Is touchable metal connected to earth well enough?")
            .on(CordWords.CORD, CordWords.PROTECTIVE_CONDUCTOR, CordChecks::protectiveConductor),
        LimitCheck.named(
                "protective-conductor-current", "Does too much flow in the protective conductor?")
            .on(CordWords.CORD, CordWords.CONDUCTOR_CURRENT, CordChecks::conductorCurrent),
        LimitCheck.named("touch-current", "Can too much flow through a person who touches it?")
            .on(CordWords.CORD, CordWords.TOUCH_CURRENT, CordChecks::touchCurrent),
        LimitCheck.named("cord-voltage-drop", "Does plug, outlet or cord lose voltage?")
            .on(CordWords.CORD, CordWords.VOLTAGE_DROP, CordChecks::voltageDrop),
        LimitCheck.named("cord-conducts", "Do the live conductors of the cord conduct?")
            .on(CordWords.CORD, CordWords.LIVE_CONDUCTOR, CordChecks::liveConductor),
        new WarningSign());
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component cord) {
    double conductor = CordChecks.conductor(cord);
    Work renew =
        Work.renewing(
            "renew-cord",
            "renew the supply cord, or make the earth connection good",
            35,
            0.95,
            Caution.UNPLUG,
            ElectricalCautions.CONDUCTOR_AGAIN);
    Work shorten =
        Work.withPart(
            "shorten-cord",
            "cut the broken end of the cord off and connect it again, by a new plug if local rules"
                + " allow one",
            20,
            0.75,
            Caution.UNPLUG,
            ElectricalCautions.CONDUCTOR_AGAIN);
    return Optional.of(
        PartModel.of(cord.id(), Electrical.PRIORS, Path.ALL)
            .on(cord, CordWords.CORD, LiveWay.ALL)
            .faults(
                fault("earth-poor", "protective conductor poor", 0.01)
                    .wears(Wear.WIRE)
                    .changes(Path.poor(0.3, 70))
                    .makes(Symptoms.SHOCK_FELT, 0.01, 0.15)
                    .curedBy(renew),
                fault("earth-open", "protective conductor open", 0.02)
                    .wears(Wear.WIRE)
                    .apartFrom("earth-poor")
                    .changes(Path.open())
                    .makes(Symptoms.SHOCK_FELT, 0.5)
                    .curedBy(renew),
                fault("broken", "live conductor of the cord broken", 0.02)
                    .wears(Wear.WIRE)
                    .changes(
                        LiveWay.ADDED.becomes(Path.parting(0.4, 1e8, 0.5)),
                        LiveWay.DROPS_OUT.becomes(0.55))
                    .makes(Symptoms.DOES_NOT_START, 0.7, 0.97)
                    .makes(Symptoms.STOPS_IN_CYCLE, 0.5, 0.2)
                    .makes(Symptoms.CUTS_IN_AND_OUT, 0.55)
                    .makes(Symptoms.SPARKS, 0.12)
                    .makes(Symptoms.SMELLS_BURNT, 0.08)
                    .curedBy(shorten, renew))
            .looks(CordWords.PROTECTIVE_CONDUCTOR, Path.RESISTANCE, Spread.constant(0.6))
            .looks(
                CordWords.LIVE_CONDUCTOR,
                state -> conductor + state.of(LiveWay.ADDED),
                Spread.constant(0.6))
            .looks(CordWords.DROPS_OUT, LiveWay.DROPS_OUT)
            .build());
  }
}
