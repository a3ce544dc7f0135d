package kelter.hydraulics.dosing;

import static kelter.core.diagnosis.model.Course.chance;
import static kelter.core.diagnosis.model.Course.early;
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
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Symptoms;
import kelter.hydraulics.part.WaterSide;

/**
 * What opens the lid of a dispenser. Minutes, chances and what is seen are judgement: common
 * practice, no source.
 */
public final class DispenserActuator implements Part {

  static final Observable LEVER =
      Observable.named("lever", "how its lever moves by hand")
          .graded("easily", "stiff", "not at all")
          .how("Inner door off: move the lever with a finger; the lid must spring open.")
          .by(Procedure.inside(6));

  static final Observable COIL_OPEN =
      Observable.named("coil-open", "its coil does not conduct")
          .how("Take one wire off and measure the coil: 0.2 kohm to 3 kohm conducts.")
          .by(Procedure.inside(6));

  private static final ComponentKind KIND =
      new ComponentKind(
          "dispenser-actuator",
          "actuator of the dispenser",
          List.of(COIL_OPEN, LEVER),
          List.of(),
          List.of());

  /** What faults change. */
  private static final class Change {
    static final FigureSet ALL = new FigureSet("dispenser-actuator");
    static final Figure LEVER =
        ALL.figure("the lever, place on the scale from easily to not at all", 0.1);
    static final Figure COIL_OPEN = ALL.figure("chance that the coil is found open", 0.03);
  }

  @Override
  public List<ComponentKind> kinds() {
    return List.of(KIND);
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component actuator) {
    Work renew = Work.renewing("renew-dispenser", "renew the dispenser", 35, 0.95, Caution.UNPLUG);
    Work free = Work.byHand("free-dispenser", "clean lever and lid", 20, 0.6, Caution.UNPLUG);
    return Optional.of(
        PartModel.of(actuator, KIND, WaterSide.PRIORS, Change.ALL)
            .faults(
                fault("stuck", "actuator of the dispenser stuck", 0.025)
                    .wears(Wear.DEPOSIT)
                    .changes(Change.LEVER.plus(early(0, 0.85)))
                    .makes(Symptoms.DISPENSER_STAYS_FULL, chance(0.1, 0.87, 0.97))
                    .makes(Symptoms.POOR_RESULT, chance(0.05, 0.6, 0.8))
                    .curedBy(free, renew),
                fault("coil-open", "coil of the actuator of the dispenser open", 0.013)
                    .wears(Wear.WINDING)
                    .changes(Change.COIL_OPEN.becomes(0.97))
                    .makes(Symptoms.DISPENSER_STAYS_FULL, 0.95)
                    .makes(Symptoms.POOR_RESULT, 0.6)
                    .curedBy(renew))
            .looks(LEVER, Change.LEVER)
            .looks(COIL_OPEN, Change.COIL_OPEN)
            .build());
  }
}
