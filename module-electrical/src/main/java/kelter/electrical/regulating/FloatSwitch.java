package kelter.electrical.regulating;

import static kelter.core.diagnosis.model.Course.line;
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
import kelter.core.vocabulary.Meaning;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Symptoms;
import kelter.electrical.caution.ElectricalCautions;
import kelter.electrical.component.Electrical;
import kelter.electrical.contact.ContactLimits;
import kelter.electrical.contact.ContactWords;

/**
 * A float with its switch, in a tank, a tray or a base pan. Most stick in the position that stops
 * the machine. Chances and spreads are from memory.
 */
public final class FloatSwitch implements Part {

  static final Observable MOVES =
      Observable.named("float-stuck", "how freely the float moves")
          .graded("freely", "rough", "sticks", "stuck")
          .how(
              "Lift the float by hand and let it drop, tank seated. Look for slime, scale and grit.")
          .by(Electrical.inside(3));

  static final Observable CLOSED =
      ContactWords.closed(
          "resistance across it where the float lets the machine work",
          "Take one wire off. Move the float by hand to where the machine should work and measure"
              + " across the switch; where it works with the switch open, measure at the other end.",
          4);

  static final ComponentKind FLOAT_SWITCH =
      new ComponentKind(
          "float-switch", "float switch", List.of(MOVES, CLOSED), List.of(), List.of());

  /** What faults change. */
  private static final class Float {
    static final FigureSet ALL = new FigureSet("float-switch");
    static final Figure STUCK = ALL.figure("how badly it moves, from 0 to 1", 0.05);
    static final Figure CLOSED = ALL.figure("resistance where the machine should work, Ohm", 0.1);
  }

  @Override
  public List<ComponentKind> kinds() {
    return List.of(FLOAT_SWITCH);
  }

  @Override
  public List<Check> checks() {
    return List.of(
        LimitCheck.named("float-switch-conducts", "Does the float switch close?")
            .on(
                FLOAT_SWITCH,
                CLOSED,
                ContactLimits.lowPath(
                    "resistance of the float switch",
                    ElectricalCautions.NEVER_BRIDGE_FLOAT_SWITCH)));
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component part) {
    return Optional.of(
        PartModel.of(part, FLOAT_SWITCH, Electrical.PRIORS, Float.ALL)
            .faults(
                fault("stuck", "float stuck", 0.02)
                    .wears(Wear.DEPOSIT)
                    .changes(Float.STUCK.becomes(line(0.55, 0.95)))
                    .makes(Symptoms.STOPS_IN_CYCLE, 0.6)
                    .makes(Symptoms.DOES_NOT_START, 0.5)
                    .makes(Symptoms.TANK_FULL_SHOWN, 0.5)
                    .makes(Meaning.LEAK.symptom(), 0.4)
                    .makes(Symptoms.LEAKS, 0.25)
                    .makes(Symptoms.FILLS_WITHOUT_END, 0.2)
                    .curedBy(
                        Work.byHand(
                            "free-float", "clean and free the float", 15, 0.85, Caution.UNPLUG)),
                fault("open", "contact of the float switch open", 0.01)
                    .wears(Wear.CONTACT)
                    .changes(Float.CLOSED.becomes(Electrical.RESISTANCE.high()))
                    .makes(Symptoms.DOES_NOT_START, 0.6)
                    .makes(Symptoms.TANK_FULL_SHOWN, 0.5)
                    .makes(Symptoms.STOPS_IN_CYCLE, 0.35)
                    .makes(Meaning.LEAK.symptom(), 0.3)
                    .curedBy(
                        Work.renewing(
                            "renew-float-switch",
                            "renew the float switch",
                            25,
                            0.95,
                            Caution.UNPLUG,
                            ElectricalCautions.NEVER_BRIDGE_FLOAT_SWITCH)))
            .looks(MOVES, Float.STUCK)
            .looks(CLOSED, Float.CLOSED, Spread.constant(0.7))
            .build());
  }
}
