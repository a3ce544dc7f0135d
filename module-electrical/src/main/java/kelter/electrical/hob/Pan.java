package kelter.electrical.hob;

import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import java.util.Optional;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.model.Figure;
import kelter.core.diagnosis.model.FigureSet;
import kelter.core.diagnosis.model.PartModel;
import kelter.core.diagnosis.model.Work;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.module.Part;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Symptoms;
import kelter.electrical.component.Electrical;

/**
 * The pan on an induction hob, which is half of its transformer: only an iron base heats, and one
 * of copper or aluminium is not seen. The hob is in order then. Chances are from memory.
 */
public final class Pan implements Part {

  static final Observable NO_MAGNET =
      Observable.named("magnet-falls-off", "a magnet does not hold on the base of the pan")
          .asked(1, "Hold a magnet on the base of each pan that fails. Weak hold counts as a no.");

  static final Observable GOOD_PAN_HEATS =
      Observable.named("good-pan-heats", "a pan that is known to be good heats on the same zone")
          .asked(
              4, "Own test pan with water, as wide as the zone, highest setting, three minutes.");

  static final ComponentKind PAN =
      new ComponentKind("pan", "pan", List.of(NO_MAGNET, GOOD_PAN_HEATS), List.of(), List.of());

  /** What faults change. */
  private static final class Base {
    static final FigureSet ALL = new FigureSet("pan");
    static final Figure NO_MAGNET =
        ALL.figure(
            "chance that no magnet holds: some pans do for which the hob is not to blame", 0.05);
    static final Figure GOOD_HEATS =
        ALL.figure(
            "chance that a good pan heats where the one on the hob fails for another reason", 0.3);
  }

  @Override
  public List<ComponentKind> kinds() {
    return List.of(PAN);
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component pan) {
    return Optional.of(
        PartModel.of(pan, PAN, Electrical.PRIORS, Base.ALL)
            .faults(
                fault("unsuitable", "pan not made for induction, or too small", 0.05)
                    .changes(Base.NO_MAGNET.becomes(0.85), Base.GOOD_HEATS.becomes(0.98))
                    .makes(Symptoms.PAN_NOT_SEEN, 0.9)
                    .makes(Symptoms.STOPS_IN_CYCLE, 0.55)
                    .makes(Symptoms.STAYS_COLD, 0.45)
                    .makes(Symptoms.HEATS_SLOWLY, 0.15)
                    .curedBy(
                        Work.byHand(
                            "show-pan",
                            "show the owner that the hob heats a pan on whose base a magnet holds",
                            10,
                            0.97)))
            .looks(NO_MAGNET, Base.NO_MAGNET)
            .looks(GOOD_PAN_HEATS, Base.GOOD_HEATS)
            .build());
  }
}
