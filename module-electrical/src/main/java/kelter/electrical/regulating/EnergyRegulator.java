package kelter.electrical.regulating;

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
import kelter.core.diagnosis.model.Spread;
import kelter.core.diagnosis.model.State;
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
import kelter.electrical.caution.ElectricalCautions;
import kelter.electrical.component.Electrical;
import kelter.electrical.contact.ContactLimits;
import kelter.electrical.contact.ContactWords;
import kelter.electrical.contact.Path;

/**
 * The regulator of a cooking zone, which switches it on and off in turn. At the middle setting it
 * is on for 0.25 to 0.55 of the time, in periods of 10 s to 60 s. Figures, chances and spreads are
 * from memory.
 */
public final class EnergyRegulator implements Part {

  static final Observable CLOSED =
      ContactWords.closed(
          "highest resistance of its contacts, turned to full",
          "Wires off, turn to full, measure each pole and write the higher one.",
          5);

  static final Observable OPENED =
      ContactWords.opened(
          "lowest resistance of its contacts, turned to off",
          "Wires off, turn to off, measure each pole and write the lower one.",
          5);

  static final Observable ON_SHARE =
      Observable.named("on-share", "share of the time in which the zone is on, middle setting")
          .quantity(QuantityKind.RATIO, 0, 1)
          .how(
              "Pan with water on the zone, middle setting. After two minutes time on and off for"
                  + " three periods, by the glow or a power meter.")
          .by(Electrical.running(5, new Accuracy(0.03, 0.02)));

  static final Observable PERIOD =
      Observable.named("period", "time from one switching on to the next, middle setting")
          .quantity(QuantityKind.TIME, 0, 600)
          .how("Take it from the same three periods. Write 600 s if it never switches.")
          .by(Electrical.running(5, new Accuracy(0.02, 1)));

  static final ComponentKind REGULATOR =
      new ComponentKind(
          "energy-regulator",
          "energy regulator",
          List.of(CLOSED, OPENED, ON_SHARE, PERIOD),
          List.of(),
          List.of());

  private static final Source IN_ORDER =
      Source.fromMemory(
          "regulators at the middle setting: on for 0.25 to 0.55, period 10 s to 60 s");

  /** What faults change. */
  private static final class Beat {
    static final FigureSet ALL = new FigureSet("energy-regulator");
    static final Figure CLOSED = ALL.figure("resistance when closed, Ohm", 0.1);
    static final Figure OPENED =
        ALL.figure("resistance when off, Ohm", Electrical.RESISTANCE.high());
    static final Figure ON_SHARE = ALL.figure("share of the time on", 0.4);
    static final Figure PERIOD = ALL.figure("period, s", 30);
  }

  @Override
  public List<ComponentKind> kinds() {
    return List.of(REGULATOR);
  }

  @Override
  public List<Check> checks() {
    return List.of(
        LimitCheck.named("regulator-conducts", "Does the regulator conduct at full?")
            .on(
                REGULATOR,
                CLOSED,
                ContactLimits.lowPath("resistance of its contacts", ElectricalCautions.HOT_JOINT)),
        LimitCheck.named("regulator-opens", "Do both poles of the regulator open at off?")
            .on(
                REGULATOR,
                OPENED,
                ContactLimits.open("resistance of an open contact", ElectricalCautions.HOT_PART)),
        LimitCheck.named("regulator-on-share", "Is the zone on for the share that it should?")
            .on(
                REGULATOR,
                ON_SHARE,
                Allowed.of("share of the time on, middle setting", IN_ORDER, new Limits(0.2, 0.6))),
        LimitCheck.named("regulator-period", "Does the regulator switch often enough?")
            .on(
                REGULATOR,
                PERIOD,
                Allowed.of("period, middle setting", IN_ORDER, new Limits(5, 90))));
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component part) {
    Work renew =
        Work.renewing(
            "renew-energy-regulator",
            "renew the energy regulator",
            35,
            0.95,
            Caution.UNPLUG,
            ElectricalCautions.HOT_PART);
    return Optional.of(
        PartModel.of(part, REGULATOR, Electrical.PRIORS, Beat.ALL)
            .faults(
                fault("contact-burnt", "contact of the energy regulator burnt", 0.03)
                    .wears(Wear.CONTACT)
                    .changes(
                        Beat.CLOSED.becomes(Path.burning(0.7)),
                        Beat.ON_SHARE.times(line(0.5, 0)),
                        Beat.PERIOD.becomes(line(60, 600)))
                    .makes(Symptoms.STAYS_COLD, 0.6, 0.97)
                    .makes(Symptoms.POOR_RESULT, 0.2, 0.1)
                    .makes(Symptoms.SMELLS_BURNT, 0.05, 0.2)
                    .curedBy(renew),
                fault("contact-welded", "contact of the energy regulator welded", 0.02)
                    .wears(Wear.CONTACT)
                    .apartFrom("contact-burnt")
                    .changes(
                        Beat.OPENED.becomes(0.1),
                        Beat.ON_SHARE.becomes(1),
                        Beat.PERIOD.becomes(600))
                    .makes(Symptoms.TOO_HOT, 0.95)
                    .makes(Symptoms.RUNS_WITHOUT_END, 0.5)
                    .makes(Symptoms.POOR_RESULT, 0.25)
                    .curedBy(renew),
                fault("drifts", "energy regulator drifts", 0.03)
                    .wears(Wear.SENSOR)
                    .apartFrom("contact-burnt", "contact-welded")
                    .changes(
                        Beat.ON_SHARE.becomes(line(0.55, 0.9)), Beat.PERIOD.times(line(1.3, 4)))
                    .makes(Symptoms.POOR_RESULT, 0.8)
                    .makes(Symptoms.TOO_HOT, 0.4, 0.9)
                    .makes(Symptoms.STAYS_COLD, 0.1)
                    .curedBy(renew))
            .looks(CLOSED, Beat.CLOSED, Spread.constant(0.7))
            .looks(OPENED, Beat.OPENED, Spread.constant(0.7))
            .looks(ON_SHARE, Beat.ON_SHARE, Spread.constant(0.09))
            .looks(PERIOD, EnergyRegulator::period, Spread.relative(0.5).atLeast(5))
            .build());
  }

  private static double period(State state) {
    return state.of(Beat.PERIOD);
  }
}
