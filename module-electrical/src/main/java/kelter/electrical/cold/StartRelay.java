package kelter.electrical.cold;

import static kelter.core.diagnosis.model.Course.line;
import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import java.util.Optional;
import kelter.core.check.Allowed;
import kelter.core.check.Check;
import kelter.core.check.LimitCheck;
import kelter.core.check.Limits;
import kelter.core.check.Measured;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.Figure;
import kelter.core.diagnosis.model.FigureSet;
import kelter.core.diagnosis.model.PartModel;
import kelter.core.diagnosis.model.Spread;
import kelter.core.diagnosis.model.Work;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.RatedRange;
import kelter.core.module.Part;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Span;
import kelter.core.vocabulary.Symptoms;
import kelter.electrical.caution.ElectricalCautions;
import kelter.electrical.component.Electrical;
import kelter.electrical.contact.ContactWords;

/**
 * The starter of a compressor, a resistor that rises as it warms. Cold it has 12 to 45 Ohm at 230 V
 * and 3 to 12 Ohm at 120 V; shaken it is silent. Figures, chances and spreads are from memory.
 */
public final class StartRelay implements Part {

  static final Characteristic RATED =
      new Characteristic(
              "cold-resistance", "resistance of the resistor at 25 °C", QuantityKind.RESISTANCE)
          .within(new Span(0.1, 1e4));

  static final Observable COLD =
      Observable.named("cold-resistance", "resistance of the resistor, cold")
          .logarithmic(QuantityKind.RESISTANCE, Electrical.RESISTANCE)
          .how(
              "Let it cool for ten minutes, pull it off the compressor and measure between the two"
                  + " sockets of the pins.")
          .by(Electrical.dead(6, Electrical.OHMMETER));

  static final Observable RATTLES =
      Observable.named("rattles", "it rattles when shaken")
          .how("Pull it off and shake it: a cracked resistor rattles.")
          .by(Electrical.inside(4));

  static final Observable BURNS =
      ContactWords.burns(
          "burnt look of starter and pins", "Look at its case, its sockets and the pins.", 4);

  static final ComponentKind START_RELAY =
      new ComponentKind(
          "start-relay", "start relay", List.of(COLD, RATTLES, BURNS), List.of(RATED), List.of());

  private static final Source IN_ORDER =
      Source.fromMemory("starters with a resistor: 12 to 45 ohm at 230 V, 3 to 12 ohm at 120 V");

  /** From here on a supply counts as one of 230 V, V. */
  private static final double HIGHER = 180;

  /** What faults change. */
  private static final class Starter {
    static final FigureSet ALL = new FigureSet("start-relay");
    static final Figure RESISTANCE =
        ALL.figure("cold resistance over the one in order, as a ratio", 1);
    static final Figure RATTLES = ALL.figure("chance that it rattles", 0.03);
    static final Figure BURNS = ALL.figure("burnt look, from 0 to 1", 0.08);
  }

  @Override
  public List<ComponentKind> kinds() {
    return List.of(START_RELAY);
  }

  @Override
  public List<Check> checks() {
    return List.of(
        LimitCheck.named("start-relay-cold", "Does the starter measure what it should when cold?")
            .on(START_RELAY, COLD, StartRelay::cold));
  }

  /** By its figure within a factor of two, else by the supply. */
  private static Optional<Allowed> cold(Measured measured) {
    double rated = measured.component().si(RATED);
    Limits bySupply = isHigher(measured.appliance()) ? new Limits(8, 60) : new Limits(2, 20);
    return Optional.of(
        Allowed.of(
            "cold resistance of the starter",
            IN_ORDER,
            rated > 0 ? new Limits(rated / 2, rated * 2) : bySupply));
  }

  /** Whether it runs on 230 V; taken where nothing tells it. */
  private static boolean isHigher(Appliance appliance) {
    Optional<RatedRange> rated = appliance.nameplate().voltage();
    return rated.isEmpty() || rated.get().high().si() > HIGHER;
  }

  /** As a natural logarithm: of one figure within 20 %, else as all of one voltage differ. */
  private static Spread<Object> ofResistors(Component part) {
    return Spread.constant(part.si(RATED) > 0 ? 0.2 : 0.4);
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component part) {
    double usual = part.si(RATED, isHigher(appliance) ? 22 : 5);
    Work renew =
        Work.renewing(
            "renew-start-relay",
            "renew the start relay, and measure the windings",
            20,
            0.9,
            Caution.UNPLUG,
            ElectricalCautions.CHARGED_CAPACITOR);
    return Optional.of(
        PartModel.of(part, START_RELAY, Electrical.PRIORS, Starter.ALL)
            .faults(
                fault("dead", "resistor of the start relay cracked", 0.02)
                    .wears(Wear.CONTACT)
                    .changes(
                        Starter.RESISTANCE.becomes(1e7), Starter.RATTLES.becomes(line(0.5, 0.8)))
                    .makes(Symptoms.TOO_WARM_INSIDE, 0.9)
                    .makes(Symptoms.SHORT_CYCLES, 0.7)
                    .makes(Symptoms.HUMS_ONLY, 0.57)
                    .makes(Symptoms.POOR_RESULT, 0.5)
                    .makes(Symptoms.DOES_NOT_START, 0.3)
                    .curedBy(renew),
                fault("burnt", "start relay burnt", 0.005)
                    .wears(Wear.CONTACT)
                    .changes(
                        Starter.RESISTANCE.becomes(1e5),
                        Starter.RATTLES.becomes(0.3),
                        Starter.BURNS.becomes(line(0.6, 0.95)))
                    .makes(Symptoms.TOO_WARM_INSIDE, 0.85)
                    .makes(Symptoms.SHORT_CYCLES, 0.7)
                    .makes(Symptoms.HUMS_ONLY, 0.6)
                    .makes(Symptoms.SMELLS_BURNT, 0.3, 0.5)
                    .makes(Symptoms.TRIPS_BREAKER, 0.1)
                    .curedBy(renew))
            .looks(COLD, Starter.RESISTANCE.of(usual), ofResistors(part))
            .looks(RATTLES, Starter.RATTLES)
            .looks(BURNS, Starter.BURNS)
            .build());
  }
}
