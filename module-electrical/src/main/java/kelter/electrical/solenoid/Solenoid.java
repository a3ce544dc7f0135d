package kelter.electrical.solenoid;

import static kelter.core.diagnosis.model.Course.line;
import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import java.util.Optional;
import kelter.core.check.Check;
import kelter.core.check.LimitCheck;
import kelter.core.diagnosis.FaultModel;
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
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Symptoms;
import kelter.electrical.component.Electrical;
import kelter.electrical.copper.CoilWords;
import kelter.electrical.copper.CopperCoil;
import kelter.electrical.copper.CopperRule;

/**
 * The coil of a valve, lock or pump that works by attraction. What the machine does without it
 * depends on what it moves, which a job does not tell: the chances of symptoms are the shares of
 * such coils that fill, lock, drain or dispense. Chances and spreads are from memory.
 */
public final class Solenoid implements Part {

  static final Observable COIL_RESISTANCE =
      CoilWords.resistance(
          "resistance of the coil",
          "Unplug it from its control and measure between its terminals, leads nulled.",
          5);

  static final Observable DOES_NOT_ACT =
      Observable.named("does-not-act", "it does not click, open or pull when it should")
          .asked(4, "Listen and look when the programme should make it act.");

  static final Observable COIL_SMELL =
      Observable.named("burnt-smell", "it smells burnt, or its case is melted or dark")
          .how("Smell at the coil and look at its case.")
          .by(Electrical.inside(3));

  /** The coil of a valve, lock or pump that works by attraction. */
  public static final ComponentKind SOLENOID =
      new ComponentKind(
          "solenoid",
          "solenoid",
          List.of(COIL_RESISTANCE, DOES_NOT_ACT, COIL_SMELL),
          List.of(CoilWords.COLD),
          List.of());

  /** What faults change. */
  private static final class Coil {
    static final FigureSet ALL = new FigureSet("solenoid");
    static final Figure RESISTANCE = ALL.figure("resistance, ratio to the one in order", 1);
    static final Figure NOTICED =
        ALL.figure("chance that somebody notices that it does not act", 0.03);
    static final Figure SMELLS = ALL.figure("chance of a burnt smell", 0.02);
  }

  @Override
  public List<ComponentKind> kinds() {
    return List.of(SOLENOID);
  }

  @Override
  public List<Check> checks() {
    return List.of(
        LimitCheck.named("coil-resistance", "Does the coil measure what it should?")
            .on(SOLENOID, COIL_RESISTANCE, new CopperRule("coil", CoilWords.COLD)));
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component coil) {
    double cold = coil.si(CoilWords.COLD);
    if (!(cold > 0)) {
      return Optional.empty();
    }
    Work renew =
        Work.renewing(
            "renew-solenoid", "renew the coil or the whole part", 30, 0.95, Caution.UNPLUG);
    return Optional.of(
        PartModel.of(coil, SOLENOID, Electrical.PRIORS, Coil.ALL)
            .faults(
                fault("coil-shorted", "turns shorted in the coil", 0.02)
                    .changes(
                        Coil.RESISTANCE.times(0.1),
                        Coil.NOTICED.becomes(line(0.1, 0.8)),
                        Coil.SMELLS.becomes(line(0.15, 0.8)))
                    .makes(Symptoms.SMELLS_BURNT, 0.05, 0.4)
                    .makes(Symptoms.STOPS_IN_CYCLE, 0.05, 0.35)
                    .makes(Symptoms.DOES_NOT_FILL, 0.02, 0.2)
                    .makes(Symptoms.DOOR_DOES_NOT_LOCK, 0.02, 0.2)
                    .makes(Symptoms.DOES_NOT_DRAIN, 0.01, 0.1)
                    .makes(Symptoms.DISPENSER_STAYS_FULL, 0.01, 0.1)
                    .curedBy(renew),
                fault("coil-open", "coil open", 0.04)
                    .apartFrom("coil-shorted")
                    .changes(
                        Coil.RESISTANCE.becomes(CopperCoil.OPEN),
                        Coil.NOTICED.becomes(0.95),
                        Coil.SMELLS.becomes(0.15))
                    .makes(Symptoms.SMELLS_BURNT, 0.1)
                    .makes(Symptoms.STOPS_IN_CYCLE, 0.4)
                    .makes(Symptoms.DOES_NOT_FILL, 0.2)
                    .makes(Symptoms.DOOR_DOES_NOT_LOCK, 0.2)
                    .makes(Symptoms.DOES_NOT_DRAIN, 0.1)
                    .makes(Symptoms.DISPENSER_STAYS_FULL, 0.1)
                    .curedBy(renew))
            .looks(DOES_NOT_ACT, Coil.NOTICED)
            .looks(COIL_SMELL, Coil.SMELLS)
            .under(new CopperCoil(cold, Coil.RESISTANCE))
            .observe(COIL_RESISTANCE, Double::doubleValue, Spread.constant(0.06))
            .build());
  }
}
