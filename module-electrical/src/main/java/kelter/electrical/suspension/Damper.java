package kelter.electrical.suspension;

import static kelter.core.diagnosis.model.Course.line;
import static kelter.core.diagnosis.model.Course.power;
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
import kelter.core.vocabulary.Meaning;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Symptoms;
import kelter.electrical.caution.ElectricalCautions;
import kelter.electrical.component.Electrical;
import kelter.electrical.drive.DampedSwing;

/**
 * The dampers of a tub on springs. Chances, those of symptoms too, and spreads are from memory; how
 * often it swings follows from its damping.
 */
public final class Damper implements Part {

  static final Observable SWINGS =
      Observable.named("swings", "how often the tub swings after a press")
          .quantity(QuantityKind.of("number of swings", "1"), 0, 20)
          .how(
              "Plug out, drum empty, lid off. Press the tub down by a hand's width, let go, and"
                  + " count its swings to the half until it stands.")
          .by(Electrical.dead(2, new Accuracy(0, 0.25)));

  static final Observable RESISTS =
      Observable.named("resists", "how a damper resists by hand")
          .graded("firmly and evenly", "weakly or by jerks", "hardly at all")
          .how("Unhook each damper at its lower end, push and pull it. Write the weakest.")
          .by(Electrical.inside(12, ElectricalCautions.HEAVY_TUB));

  static final ComponentKind DAMPER =
      new ComponentKind("damper", "damper", List.of(SWINGS, RESISTS), List.of(), List.of());

  /** A swing that is a tenth of the first is the last that one sees. */
  private static final double VISIBLE = 0.1;

  /** What faults change. */
  private static final class Damping {
    static final FigureSet ALL = new FigureSet("damper");
    static final Figure RATIO = ALL.figure("damping as a ratio of the critical one", 0.3);
    static final Figure WEAKNESS = ALL.figure("how weak it feels, from 0 to 1", 0.12);
  }

  @Override
  public List<ComponentKind> kinds() {
    return List.of(DAMPER);
  }

  @Override
  public List<Check> checks() {
    return List.of(
        LimitCheck.named("tub-swings", "Is the tub damped?")
            .on(
                DAMPER,
                SWINGS,
                Allowed.of(
                        "swings of the tub after a press",
                        Source.fromMemory(
                            "1.5 swings at most in order, 3 and more weak, counted to the half"),
                        Limits.atMost(2.5))
                    .orPerhaps(Limits.atMost(1.5))));
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component damper) {
    return Optional.of(
        PartModel.of(damper, DAMPER, Electrical.PRIORS, Damping.ALL)
            .faults(
                fault("weak", "dampers weak", 0.05)
                    .wears(Wear.BEARING)
                    .changes(
                        Damping.RATIO.becomes(power(0.18, 0.2)),
                        Damping.WEAKNESS.becomes(line(0.4, 0.95)))
                    .makes(Symptoms.VIBRATES, 0.7, 0.95)
                    .makes(Symptoms.LOUD, 0.4, 0.7)
                    .makes(Symptoms.DOES_NOT_SPIN, 0.1, 0.6)
                    .makes(Meaning.IMBALANCE.symptom(), 0.3, 0.6)
                    .curedBy(
                        Work.renewing(
                            "renew-dampers",
                            "renew the dampers of the tub, all of them",
                            45,
                            0.95,
                            Caution.UNPLUG,
                            ElectricalCautions.HEAVY_TUB)))
            .looks(
                SWINGS,
                state -> DampedSwing.swings(state.of(Damping.RATIO), VISIBLE),
                Spread.relative(0.2).atLeast(0.25))
            .looks(RESISTS, Damping.WEAKNESS)
            .build());
  }
}
