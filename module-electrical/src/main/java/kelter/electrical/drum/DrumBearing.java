package kelter.electrical.drum;

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
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Symptoms;
import kelter.electrical.component.Electrical;

/**
 * The bearing of a drum. A log of the sound at one speed tells more: {@code bearing-frequencies}
 * says where a damaged ring knocks. Chances, those of symptoms too, and spreads are from memory.
 */
public final class DrumBearing implements Part {

  static final Observable RIM_PLAY =
      Observable.named("rim-play", "play of the drum at its front rim")
          .quantity(QuantityKind.LENGTH, 0, 0.03)
          .how(
              "Plug out, door open. Lift the rim of the drum against the tub and read how far it"
                  + " moves up and down. Do not count what the tub itself moves.")
          .by(Electrical.dead(3, new Accuracy(0, 2e-4)));

  static final Observable RUN_DOWN =
      Observable.named("run-down-noise", "noise of the drum as it runs down by hand")
          .graded("quiet", "hums", "rumbles", "grinds")
          .asked(
              2, "Plug out: turn the empty drum by hand, let it run down and listen at the back.");

  static final ComponentKind DRUM_BEARING =
      new ComponentKind(
          "drum-bearing", "drum bearing", List.of(RIM_PLAY, RUN_DOWN), List.of(), List.of());

  /** What faults change. */
  private static final class Bearing {
    static final FigureSet ALL = new FigureSet("drum-bearing");
    static final Figure PLAY = ALL.figure("play at the rim, m", 0.3e-3);
    static final Figure NOISE = ALL.figure("how loud it runs down, from 0 to 1", 0.12);
  }

  @Override
  public List<ComponentKind> kinds() {
    return List.of(DRUM_BEARING);
  }

  @Override
  public List<Check> checks() {
    return List.of(
        LimitCheck.named("drum-play", "Has the drum too much play?")
            .on(
                DRUM_BEARING,
                RIM_PLAY,
                Allowed.of(
                        "play at the rim of the drum",
                        Source.fromMemory("less than 0.5 mm in order, more than 1.5 mm worn"),
                        Limits.atMost(1.5e-3))
                    .orPerhaps(Limits.atMost(0.5e-3))));
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component bearing) {
    return Optional.of(
        PartModel.of(bearing, DRUM_BEARING, Electrical.PRIORS, Bearing.ALL)
            .faults(
                fault("worn", "bearing of the drum worn", 0.05)
                    .wears(Wear.BEARING)
                    .changes(
                        Bearing.PLAY.becomes(power(0.8e-3, 7)),
                        Bearing.NOISE.becomes(line(0.4, 0.97)))
                    .makes(Symptoms.LOUD, 0.8, 0.97)
                    .makes(Symptoms.VIBRATES, 0.15, 0.6)
                    .makes(Symptoms.LEAKS, 0.05, 0.3)
                    .makes(Symptoms.DOES_NOT_SPIN, 0, 0.25)
                    .makes(Symptoms.SMELLS_BURNT, 0, 0.15)
                    .curedBy(
                        Work.renewing(
                            "renew-drum-bearing",
                            "renew the bearings of the drum, and their seal if they have one",
                            180,
                            0.95,
                            Caution.UNPLUG)))
            .looks(RIM_PLAY, Bearing.PLAY, Spread.relative(0.35).atLeast(1e-4))
            .looks(RUN_DOWN, Bearing.NOISE)
            .build());
  }
}
