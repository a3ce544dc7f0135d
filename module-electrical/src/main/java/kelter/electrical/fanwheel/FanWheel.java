package kelter.electrical.fanwheel;

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
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Symptoms;
import kelter.electrical.caution.ElectricalCautions;
import kelter.electrical.component.Electrical;

/**
 * A fan wheel on its shaft: whether it is tight, clean and free. What air it moves is another
 * room's work. Chances, those of symptoms too, are from memory.
 */
public final class FanWheel implements Part {

  static final Observable WOBBLE =
      Observable.named("wobble", "how its wheel sits on the shaft")
          .graded("firmly and true", "wobbles a little", "wobbles or rubs", "loose or off")
          .how("Hold the shaft and rock the wheel. Then spin it and look along its rim.")
          .by(Electrical.inside(4, ElectricalCautions.SHARP_BLADES));

  static final Observable DIRT =
      Observable.named("dirt", "what sticks to its blades")
          .graded("nothing", "a film", "a thick layer", "caked over")
          .how("Look at the blades from both sides with a lamp.")
          .by(Electrical.inside(3, ElectricalCautions.SHARP_BLADES));

  static final Observable TURNS =
      Observable.named("turns", "how its wheel turns by hand")
          .graded("freely", "brushes something", "stiffly", "held fast")
          .how("Turn the wheel a full turn. Look for ice, lint, wires or a thing in its way.")
          .by(Electrical.inside(3, ElectricalCautions.SHARP_BLADES));

  /** What faults change. */
  private static final class Wheel {
    static final FigureSet ALL = new FigureSet("fan-wheel");
    static final Figure WOBBLE = ALL.figure("how loosely it sits, from 0 to 1", 0.06);
    static final Figure DIRT = ALL.figure("how dirty it is, from 0 to 1", 0.2);
    static final Figure HELD = ALL.figure("how hard it turns, from 0 to 1", 0.05);
  }

  private final ComponentKind kind;

  private FanWheel(String id, String title) {
    kind = new ComponentKind(id, title, List.of(WOBBLE, DIRT, TURNS), List.of(), List.of());
  }

  /**
   * A fan.
   *
   * @return the part
   */
  public static FanWheel ofFan() {
    return new FanWheel("fan", "fan wheel");
  }

  /**
   * The wheel that cools a condenser outdoors.
   *
   * @return the part
   */
  public static FanWheel ofCondenser() {
    return new FanWheel("condenser-fan-wheel", "fan wheel of the condenser");
  }

  @Override
  public List<ComponentKind> kinds() {
    return List.of(kind);
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component fan) {
    Work renew =
        Work.renewing(
            "renew-fan-wheel",
            "renew the fan wheel",
            35,
            0.95,
            Caution.UNPLUG,
            ElectricalCautions.SHARP_BLADES);
    return Optional.of(
        PartModel.of(fan, kind, Electrical.PRIORS, Wheel.ALL)
            .faults(
                fault("loose", "fan wheel loose on its shaft", 0.01)
                    .wears(Wear.IMPELLER)
                    .changes(Wheel.WOBBLE.becomes(line(0.4, 0.97)), Wheel.HELD.atLeast(0.15))
                    .makes(Symptoms.LOUD, 0.85, 0.95)
                    .makes(Symptoms.VIBRATES, 0.4, 0.8)
                    .makes(Symptoms.WEAK_AIR, 0.05, 0.6)
                    .curedBy(
                        Work.byHand(
                            "fix-fan-wheel",
                            "fix the fan wheel on its shaft",
                            20,
                            0.7,
                            Caution.UNPLUG,
                            ElectricalCautions.SHARP_BLADES),
                        renew),
                fault("greasy", "fan wheel out of balance with grease or dust", 0.015)
                    .wears(Wear.DEPOSIT)
                    .changes(
                        Wheel.DIRT.becomes(line(0.5, 0.97)), Wheel.WOBBLE.atLeast(line(0.1, 0.35)))
                    .makes(Symptoms.VIBRATES, 0.7, 0.9)
                    .makes(Symptoms.LOUD, 0.6, 0.9)
                    .makes(Symptoms.WEAK_AIR, 0.1, 0.5)
                    .curedBy(
                        Work.byHand(
                            "clean-fan-wheel",
                            "take the fan wheel off and wash it",
                            30,
                            0.9,
                            Caution.UNPLUG,
                            ElectricalCautions.SHARP_BLADES)),
                fault("blocked", "fan wheel held by ice, lint or a thing in its way", 0.015)
                    .changes(Wheel.HELD.becomes(line(0.45, 0.97)))
                    .makes(Symptoms.WEAK_AIR, 0.5, 0.9)
                    .makes(Symptoms.LOUD, 0.6)
                    .makes(Symptoms.DOES_NOT_TURN, 0.1, 0.6)
                    .makes(Symptoms.SMELLS_BURNT, 0.1, 0.4)
                    .curedBy(
                        Work.byHand(
                            "free-fan-wheel",
                            "free the fan wheel and find where that came from",
                            20,
                            0.9,
                            Caution.UNPLUG,
                            ElectricalCautions.SHARP_BLADES)))
            .looks(WOBBLE, Wheel.WOBBLE)
            .looks(DIRT, Wheel.DIRT)
            .looks(TURNS, Wheel.HELD)
            .build());
  }
}
