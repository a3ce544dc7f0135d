package kelter.electrical.hob;

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
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Meaning;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Span;
import kelter.core.vocabulary.Symptoms;
import kelter.electrical.caution.ElectricalCautions;
import kelter.electrical.component.Electrical;
import kelter.electrical.contact.ContactWords;

/**
 * A coil under the glass of an induction hob: of thick stranded wire, 0.05 Ohm to 0.2 Ohm. Chances,
 * figures and spreads are from memory.
 */
public final class InductionCoil implements Part {

  static final Observable RESISTANCE =
      Observable.named("resistance", "resistance of the coil")
          .logarithmic(QuantityKind.RESISTANCE, Electrical.RESISTANCE)
          .provingFrom(ContactWords.PROVES)
          .how("Take both ends of the coil off the board. Null the leads and measure between them.")
          .by(Electrical.dead(5, Electrical.LOW_OHMMETER, ElectricalCautions.CHARGED_CAPACITOR));

  static final Observable SCORCHED =
      Observable.named("scorched", "the coil or its ends are scorched")
          .how("Look at the varnish of the wire, at both ends and at their screws.")
          .by(Electrical.inside(3, ElectricalCautions.CHARGED_CAPACITOR));

  static final ComponentKind INDUCTION_COIL =
      new ComponentKind(
          "induction-coil", "induction coil", List.of(RESISTANCE, SCORCHED), List.of(), List.of());

  private static final Source CLOSED =
      Source.fromMemory("coils of 0.05 Ohm to 0.2 Ohm; a closed path up to 0.5 Ohm");

  /** Half of the coils lie within a third of the middle, as natural logarithm. */
  private static final Spread<Object> OF_COILS = Spread.constant(0.45);

  /** What faults change. */
  private static final class Coil {
    static final FigureSet ALL = new FigureSet("induction-coil");
    static final Figure RESISTANCE = ALL.figure("resistance, Ohm", 0.1);
    static final Figure SCORCHED = ALL.figure("chance that it looks scorched", 0.02);
  }

  @Override
  public List<ComponentKind> kinds() {
    return List.of(INDUCTION_COIL);
  }

  @Override
  public List<Check> checks() {
    return List.of(
        LimitCheck.named("induction-coil", "Is the coil closed?")
            .on(
                INDUCTION_COIL,
                RESISTANCE,
                Allowed.of("resistance of the coil", CLOSED, Limits.atMost(0.5))));
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component coil) {
    Span span = Electrical.RESISTANCE;
    return Optional.of(
        PartModel.of(coil, INDUCTION_COIL, Electrical.PRIORS, Coil.ALL)
            .faults(
                fault("open", "induction coil or its joint open", 0.01)
                    .wears(Wear.WIRE)
                    .changes(Coil.RESISTANCE.becomes(span.high()), Coil.SCORCHED.becomes(0.6))
                    .makes(Symptoms.STAYS_COLD, 0.95)
                    .makes(Meaning.SENSOR.symptom(), 0.2)
                    .curedBy(
                        Work.renewing(
                            "renew-induction-coil",
                            "renew the induction coil",
                            40,
                            0.95,
                            Caution.UNPLUG,
                            ElectricalCautions.CHARGED_CAPACITOR)))
            .looks(RESISTANCE, Coil.RESISTANCE, OF_COILS)
            .looks(SCORCHED, Coil.SCORCHED)
            .build());
  }
}
