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
import kelter.core.safety.Caution;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Symptoms;
import kelter.electrical.caution.ElectricalCautions;
import kelter.electrical.component.Electrical;

/** The glass of a hob. A crack lets water in to live parts. Chances are from memory. */
public final class GlassTop implements Part {

  static final Observable CRACK =
      Observable.named("crack", "a crack or a chip that goes through the glass")
          .asked(2, "Hob off and cold: look along the glass against the light, edges too.");

  static final ComponentKind GLASS =
      new ComponentKind("glass", "glass top", List.of(CRACK), List.of(), List.of());

  /** What faults change. */
  private static final class Glass {
    static final FigureSet ALL = new FigureSet("glass-top");
    static final Figure CRACK = ALL.figure("chance that a crack is seen", 0.005);
  }

  @Override
  public List<ComponentKind> kinds() {
    return List.of(GLASS);
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component glass) {
    return Optional.of(
        PartModel.of(glass, GLASS, Electrical.PRIORS, Glass.ALL)
            .faults(
                fault("cracked", "glass top cracked", 0.02)
                    .changes(Glass.CRACK.becomes(0.98))
                    .makes(Symptoms.TRIPS_RCD, 0.5)
                    .makes(Symptoms.TRIPS_BREAKER, 0.1)
                    .curedBy(
                        Work.renewing(
                            "renew-glass",
                            "renew the glass top",
                            45,
                            0.97,
                            Caution.UNPLUG,
                            ElectricalCautions.CRACKED_GLASS)))
            .looks(CRACK, Glass.CRACK)
            .build());
  }
}
