package kelter.electrical.heating;

import static kelter.core.diagnosis.model.Course.constant;
import static kelter.core.diagnosis.model.Course.line;
import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.check.Allowed;
import kelter.core.check.Check;
import kelter.core.check.LimitCheck;
import kelter.core.check.Limits;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.Circumstances;
import kelter.core.diagnosis.model.FaultRow;
import kelter.core.diagnosis.model.Figure;
import kelter.core.diagnosis.model.FigureSet;
import kelter.core.diagnosis.model.PartModel;
import kelter.core.diagnosis.model.Spread;
import kelter.core.diagnosis.model.State;
import kelter.core.diagnosis.model.Work;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.module.Part;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Symptoms;
import kelter.electrical.caution.ElectricalCautions;
import kelter.electrical.component.Electrical;
import kelter.electrical.contact.ContactWords;

/**
 * A thermal link, a thermal cut-out or a limiting thermostat of a heating circuit, or of a motor in
 * a machine that heats nothing. Chances and spreads are from memory, those of symptoms too.
 */
public final class ThermalLink implements Part {

  static final Observable LINK_RESISTANCE =
      Observable.named("resistance", "resistance across it when cold")
          .logarithmic(QuantityKind.RESISTANCE, Electrical.RESISTANCE)
          .provingFrom(ContactWords.PROVES)
          .at(Electrical.TEMPERATURE)
          .how(
              "Take one wire off and measure across it, leads nulled; a defrost thermostat below -10 °C"
                  + " (14 °F).")
          .by(Electrical.dead(3, Electrical.OHMMETER));

  static final Observable OPENS_WARM =
      Observable.named("opens-while-working", "it opens while the machine works as it should")
          .how(
              "Filters and ways of the air or water clean first. Close the machine and let it work:"
                  + " does it stop, and work again once it has cooled?")
          .by(Electrical.running(15, Electrical.BY_EYE));

  static final Observable OPENS_OFF =
      Observable.named("opens-below", "how far below its marking it opens")
          .quantity(QuantityKind.TEMPERATURE_DIFFERENCE, -60, 150)
          .how(
              "Only for one that closes again: take it out, ohmmeter on it, thermometer beside it, and"
                  + " warm it slowly with hot air. Write its marking less what you read.")
          .by(Electrical.dead(15, new Accuracy(0, 4), ElectricalCautions.HOT_PART));

  static final Observable HOT_LAMP =
      Observable.named("hot-lamp-dark", "the lamp for a hot zone stays dark")
          .how("Let a zone work at full for three minutes, then off: its lamp must be lit.")
          .by(Electrical.running(5, Electrical.BY_EYE, ElectricalCautions.HOT_PART));

  static final ComponentKind THERMAL_LINK =
      new ComponentKind(
          "thermal-link",
          "thermal link",
          List.of(LINK_RESISTANCE, OPENS_WARM, OPENS_OFF, HOT_LAMP),
          List.of(),
          List.of());

  private static final Source WITHIN =
      Source.fromMemory("cut-outs open within 10 K of their marking, worn ones 15 K to 60 K early");

  /** How far links of one state differ, as a natural logarithm. */
  private static final double SPREAD = 0.7;

  private static final Spread<Object> OF_LINKS = Spread.constant(SPREAD);

  /** What faults change. */
  private static final class Link {
    static final FigureSet ALL = new FigureSet("thermal-link");
    static final Figure RESISTANCE = ALL.figure("resistance when cold, Ohm", 0.1);
    static final Figure OPENS =
        ALL.figure("chance that it is seen to open while the machine works as it should", 0.03);
    static final Figure BELOW = ALL.figure("how far below its marking it opens, K", 0);
    static final Figure LAMP_DARK =
        ALL.figure("chance that the lamp that it switches is seen to stay dark", 0.03);
  }

  /**
   * What a link beside a heater that defrosts shows. It is a fuse, closed while it is whole, or a
   * thermostat, which closes in the cold only: read in warmth both are in order, and an open one is
   * known by a reading in the cold.
   */
  private enum OpenInWarmth implements Circumstances<OpenInWarmth.Found> {
    MAY_BE;

    /** Where it is read so that it tells most: in the cold, as its limit has it; from memory. */
    static final Conditions COLD =
        new Conditions(
            Map.of(Electrical.TEMPERATURE.id(), Quantity.of(-12, "Cel", QuantityKind.TEMPERATURE)));

    /**
     * So wide, as a natural logarithm, that closed and open are found one as often as the other.
     */
    private static final double EITHER = 20;

    /** The resistance, Ohm, and how far links in that state differ, as a natural logarithm. */
    record Found(double resistance, double spread) {}

    @Override
    public Solver<Found> under(Conditions conditions) {
      boolean cold = WholeLink.isCold(conditions);
      return state ->
          cold || isOpen(state)
              ? new Found(state.of(Link.RESISTANCE), SPREAD)
              : new Found(Electrical.RESISTANCE.high(), EITHER);
    }

    private static boolean isOpen(State state) {
      return state.of(Link.RESISTANCE) >= Electrical.RESISTANCE.high();
    }
  }

  @Override
  public List<ComponentKind> kinds() {
    return List.of(THERMAL_LINK);
  }

  @Override
  public List<Check> checks() {
    return List.of(
        LimitCheck.named("thermal-link-continuity", "Is the thermal link whole?")
            .on(THERMAL_LINK, LINK_RESISTANCE, WholeLink.RULE),
        LimitCheck.named("thermal-link-opens", "Does the cut-out open at its marking?")
            .on(
                THERMAL_LINK,
                OPENS_OFF,
                Allowed.of("how far below its marking it opens", WITHIN, new Limits(-10, 10))));
  }

  /** Of a motor or fan, where the machine heats nothing; else its circuit speaks of it. */
  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component link) {
    if (Heater.isIn(appliance)) {
      return Optional.empty();
    }
    PartModel model = PartModel.of(link.id(), Electrical.PRIORS);
    FaultRow open =
        row()
            .changes(Link.RESISTANCE.becomes(Electrical.RESISTANCE.high()))
            .makes(Symptoms.DOES_NOT_START, 0.85)
            .makes(Symptoms.STOPS_IN_CYCLE, 0.6);
    return Optional.of(
        faults(model, link, open).looks(LINK_RESISTANCE, Link.RESISTANCE, OF_LINKS).build());
  }

  /** Puts it into the model of its circuit. */
  static void addTo(PartModel model, Component link, HeatingGroup group) {
    faults(model, link, open(group));
    if (group.opensWarm()) {
      model
          .under(OpenInWarmth.MAY_BE)
          .usually(OpenInWarmth.COLD)
          .observe(
              LINK_RESISTANCE,
              OpenInWarmth.Found::resistance,
              (value, order, found) -> found.spread());
    } else {
      model.looks(LINK_RESISTANCE, Link.RESISTANCE, OF_LINKS);
    }
  }

  /** Puts that of a cooking zone, which switches a lamp too, into the model of its circuit. */
  static void addLimiterTo(PartModel model, Component link, HeatingGroup group) {
    addTo(model, link, group);
    model.faults(lampContact()).looks(HOT_LAMP, Link.LAMP_DARK);
  }

  private static FaultRow lampContact() {
    return fault("lamp-contact-burnt", "lamp contact of the zone limiter burnt", 0.005)
        .wears(Wear.CONTACT)
        .changes(Link.LAMP_DARK.becomes(0.95))
        .makes(Symptoms.LIGHT_OUT, 0.95)
        .makes(Symptoms.HEATS_SLOWLY, 0.1)
        .curedBy(renew("renew the limiter of the zone", ElectricalCautions.HOT_PART));
  }

  private static PartModel faults(PartModel model, Component link, FaultRow open) {
    return model
        .on(link, THERMAL_LINK, Link.ALL)
        .faults(open, opensEarly())
        .looks(OPENS_WARM, Link.OPENS)
        .looks(OPENS_OFF, Link.BELOW, Spread.relative(0.2).atLeast(5));
  }

  /** In some machines it feeds the drive or the control too, which then does not start. */
  private static FaultRow open(HeatingGroup group) {
    double cold = group.medium() == Medium.AIR ? 0.7 : 0.85;
    FaultRow open =
        row()
            .changes(
                Link.RESISTANCE.becomes(Electrical.RESISTANCE.high()),
                CircuitFigure.INTERRUPTED.becomes(1))
            .makes(Symptoms.DOES_NOT_START, 0.3);
    return HeatSymptoms.cold(open, group, constant(cold));
  }

  private static FaultRow row() {
    return fault("open", "thermal link open", 0.05)
        .curedBy(
            renew(
                "find why the thermal link opened, and renew it",
                ElectricalCautions.OPENED_THERMAL_LINK));
  }

  /** It is whole when cold. */
  private static FaultRow opensEarly() {
    return fault("opens-early", "cut-out opens at too low a temperature", 0.01)
        .wears(Wear.SENSOR)
        .apartFrom("open")
        .changes(Link.OPENS.becomes(0.93), Link.BELOW.becomes(line(15, 60)))
        .makes(Symptoms.STOPS_IN_CYCLE, 0.8, 0.95)
        .makes(Symptoms.STAYS_COLD, 0.3)
        .makes(Symptoms.HEATS_SLOWLY, 0.2)
        .makes(Symptoms.SHORT_CYCLES, 0.2)
        .makes(Symptoms.DOES_NOT_START, 0.1)
        .curedBy(
            renew(
                "clean the ways of the air or water, and renew the cut-out",
                ElectricalCautions.HOT_PART));
  }

  private static Work renew(String title, Caution caution) {
    return Work.renewing("renew-thermal-link", title, 30, 0.9, Caution.UNPLUG, caution);
  }
}
