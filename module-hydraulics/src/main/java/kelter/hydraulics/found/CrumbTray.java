package kelter.hydraulics.found;

import static kelter.core.diagnosis.model.Course.chance;
import static kelter.core.diagnosis.model.Course.early;
import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import java.util.Optional;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.model.FaultRow;
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

/** The crumb tray and the chamber of a toaster. */
public final class CrumbTray implements Part {

  static final Observable CRUMBS =
      Observable.named("crumbs", "crumbs on tray and wires")
          .graded("few", "many", "heaped")
          .how("Let it cool, pull the tray out, and look into the slots with a lamp.")
          .by(Procedure.inside(2));

  private static final ComponentKind KIND =
      new ComponentKind(
          "crumb-tray", "crumb tray and chamber", List.of(CRUMBS), List.of(), List.of());

  private static final FaultRow FULL =
      fault("full", "crumbs on the heating wires", 0.07)
          .changes(Deposit.PLACE.plus(early(0, 0.8)))
          .makes(Symptoms.SMELLS_BURNT, chance(0.1, 0.92, 0.98))
          .makes(Symptoms.TOO_HOT, chance(0.02, 0.21, 0.4))
          .makes(Symptoms.TRIPS_BREAKER, chance(0.01, 0.12, 0.3))
          .curedBy(
              Work.byHand(
                  "empty-crumb-tray",
                  "empty the tray and shake the toaster out over a bin",
                  6,
                  0.93,
                  Caution.UNPLUG));

  @Override
  public List<ComponentKind> kinds() {
    return List.of(KIND);
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component tray) {
    return Optional.of(
        PartModel.of(tray.id(), WaterSide.PRIORS, Deposit.values())
            .on(tray, KIND)
            .faults(FULL)
            .looks(CRUMBS, Deposit.PLACE)
            .build());
  }
}
