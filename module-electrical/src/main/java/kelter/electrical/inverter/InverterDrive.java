package kelter.electrical.inverter;

import static kelter.core.diagnosis.model.Course.line;
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
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Symptoms;
import kelter.electrical.caution.ElectricalCautions;
import kelter.electrical.component.Electrical;
import kelter.electrical.insulation.InsulationRule;

/**
 * An inverter drive: of a motor, or the power stage of an induction hob. Its motor is told by three
 * equal phases and its insulation, which are held against limits and move no fault of the drive.
 * Chances, those of symptoms too, are from memory.
 */
public final class InverterDrive implements Part {

  static final Observable NO_ATTEMPT =
      Observable.named("no-attempt", "nothing moves, hums or warms when it should run")
          .asked(
              2, "Listen and feel at the closed machine when the programme calls for the drive.");

  static final Observable STOPS =
      Observable.named("starts-then-stops", "it starts, then stops with a code or starts again")
          .asked(3, "Ask, or let it run empty for some minutes and watch display and lamps.");

  static final Observable CLOGGED =
      Observable.named("cooling-clogged", "heat sink or fan of the drive clogged or loose")
          .how("Look at the fins, the fan and the screws of the drive.")
          .by(inside(4));

  static final Observable STAGE =
      Observable.named(
              "stage-faulty", "diode test of the power stage is uneven, or its fuse is open")
          .how(
              "Pull the load off. Measure its fuse, then on diode test from each output to plus and"
                  + " to minus: all drops alike, 0.3 V to 0.7 V, in order.")
          .by(inside(10));

  static final Observable PHASES =
      Observable.named("phase-difference", "greatest difference of a motor phase from the mean")
          .quantity(QuantityKind.PERCENT, 0, 10)
          .how(
              "Pull the motor plug off the drive. Measure the three pairs, leads nulled, and reckon"
                  + " the greatest distance from the mean (kelter compute winding-balance).")
          .by(Electrical.dead(6, new Accuracy(0, 0.01), ElectricalCautions.DC_LINK));

  static final Observable INSULATION =
      Observable.named("insulation-resistance", "insulation resistance of its motor to earth")
          .logarithmic(QuantityKind.INSULATION_RESISTANCE, Electrical.INSULATION)
          .how(
              "Pull the motor plug off the drive, which 500 V would destroy. Measure from a phase to"
                  + " the frame, one minute.")
          .by(Electrical.insulation());

  static final ComponentKind INVERTER_DRIVE =
      new ComponentKind(
          "inverter-drive",
          "inverter drive",
          List.of(NO_ATTEMPT, STOPS, CLOGGED, STAGE, PHASES, INSULATION),
          List.of(),
          List.of());

  /** What faults change. */
  private static final class Drive {
    static final FigureSet ALL = new FigureSet("inverter-drive");
    static final Figure STILL = ALL.figure("chance that no attempt is seen", 0.04);
    static final Figure STOPS = ALL.figure("chance that it is seen to start, then to stop", 0.04);
    static final Figure CLOGGED = ALL.figure("chance that its cooling is seen clogged", 0.1);
    static final Figure STAGE =
        ALL.figure("chance that its power stage is found uneven, or its fuse open", 0.02);
  }

  private static Procedure inside(double minutes) {
    return Electrical.inside(minutes, ElectricalCautions.DC_LINK);
  }

  @Override
  public List<ComponentKind> kinds() {
    return List.of(INVERTER_DRIVE);
  }

  @Override
  public List<Check> checks() {
    return List.of(
        LimitCheck.named("motor-phases", "Are the three phases of the motor alike?")
            .on(
                INVERTER_DRIVE,
                PHASES,
                Allowed.of(
                        "difference of the phases of the motor",
                        Source.fromMemory(
                            "phases alike within 3 % in large drives, 5 % in small ones"),
                        Limits.atMost(0.05))
                    .orPerhaps(Limits.atMost(0.03))
                    .resting("a motor with unlike phases spoils a new drive: renew it first")),
        LimitCheck.named("driven-motor-insulation", "Does the motor of the drive leak to earth?")
            .on(INVERTER_DRIVE, INSULATION, new InsulationRule(false)));
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component drive) {
    Work renew =
        Work.renewing(
            "renew-inverter-drive",
            "renew the drive, once what it drives measures right",
            50,
            0.9,
            Caution.UNPLUG,
            ElectricalCautions.DC_LINK);
    return Optional.of(
        PartModel.of(drive, INVERTER_DRIVE, Electrical.PRIORS, Drive.ALL)
            .faults(
                fault("dead", "inverter drive dead", 0.02)
                    .wears(Wear.CAPACITOR)
                    .changes(
                        Drive.STILL.becomes(0.9),
                        Drive.STAGE.becomes(0.75),
                        Drive.STOPS.becomes(0.06))
                    .makes(Symptoms.DOES_NOT_TURN, 0.85)
                    .makes(Symptoms.DOES_NOT_SPIN, 0.85)
                    .makes(Symptoms.TRIPS_BREAKER, 0.3)
                    .makes(Symptoms.DOES_NOT_START, 0.15)
                    .makes(Meaning.MOTOR.symptom(), 0.7)
                    .curedBy(renew),
                fault("trips", "inverter drive trips under load", 0.015)
                    .wears(Wear.CAPACITOR)
                    .apartFrom("dead")
                    .changes(
                        Drive.STOPS.becomes(0.92),
                        Drive.CLOGGED.becomes(line(0.35, 0.65)),
                        Drive.STILL.becomes(0.08))
                    .makes(Meaning.MOTOR.symptom(), 0.75)
                    .makes(Symptoms.STOPS_IN_CYCLE, 0.5)
                    .makes(Symptoms.DOES_NOT_SPIN, 0.3, 0.6)
                    .makes(Symptoms.DOES_NOT_TURN, 0.1, 0.5)
                    .curedBy(
                        Work.byHand(
                            "clear-drive-cooling",
                            "clean and tighten the cooling of the drive, check its settings",
                            30,
                            0.45,
                            Caution.UNPLUG,
                            ElectricalCautions.DC_LINK),
                        renew))
            .looks(NO_ATTEMPT, Drive.STILL)
            .looks(STOPS, Drive.STOPS)
            .looks(CLOGGED, Drive.CLOGGED)
            .looks(STAGE, Drive.STAGE)
            .build());
  }
}
