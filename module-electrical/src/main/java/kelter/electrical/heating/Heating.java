package kelter.electrical.heating;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.SharedQuantity;
import kelter.core.diagnosis.model.Course;
import kelter.core.diagnosis.model.PartModel;
import kelter.core.diagnosis.model.Spread;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.module.Part;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityFormat;
import kelter.core.source.Source;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.ComponentKind;
import kelter.electrical.component.CordWords;
import kelter.electrical.component.Electrical;
import kelter.electrical.heating.Leaking.Insulation;
import kelter.electrical.heating.Operation.OfReading;
import kelter.electrical.insulation.EarthLeak;
import kelter.electrical.rating.CordConductor;
import kelter.electrical.rating.HeaterRating;
import kelter.electrical.rating.RatedFrequency;
import kelter.electrical.regulating.Thermostat;

/**
 * The heating of an appliance: heater, thermal links, relays, temperature sensors, supply and cord.
 * Every forecast comes from one operating point of the circuit; the voltage of the mains, where no
 * reading states it, moves power, current and warming together. The spreads say how far machines in
 * the same state differ; those of figures follow from the tolerance of the power input, all others
 * are from memory.
 */
public final class Heating implements Part {

  /** How much the mains of one house differ from their rated voltage, as a ratio. */
  private static final double MAINS_DEVIATION = 0.03;

  /** Spread of the resistance of heaters by their nameplate, and by a service figure, ratio. */
  private static final double BY_NAMEPLATE = 0.05;

  private static final double BY_FIGURE = 0.03;

  /** How far voltages along joints and cords in one state differ, as a natural logarithm. */
  private static final Spread<Object> OF_DROPS = Spread.constant(0.5);

  /** Length of a cord where none is stated, m. */
  private static final double USUAL_CORD = 2;

  /** The kinds of machine whose cut-outs limit the glass of cooking zones. */
  private static final Set<String> HOBS = Set.of("hob", "plate-hob");

  /** Such a conductor of 1.5 mm², Ohm: 13.3 Ohm/km, IEC 60228, Table 3. */
  private static final double CONDUCTOR = 0.0266;

  @Override
  public List<ComponentKind> kinds() {
    return List.of(HeaterWords.WATER.kind(), HeaterWords.AIR.kind());
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component heater) {
    return Medium.of(heater.kind()).isEmpty()
        ? Optional.empty()
        : HeatingGroup.of(appliance, heater)
            .map(
                group ->
                    model(
                        group,
                        RatedFrequency.of(appliance.nameplate().frequency()),
                        HOBS.contains(appliance.kind())));
  }

  private static FaultModel model(
      HeatingGroup group, Optional<RatedFrequency> frequency, boolean cooks) {
    HeaterRating rating = group.rating();
    PartModel model =
        PartModel.of(group.heater().id(), Electrical.PRIORS, CircuitFigure.ALL)
            .moves(mains(rating), CircuitFigure.MAINS.times(1 + mainsDeviation(rating)))
            .moves(
                group.rated() ? tolerance(rating) : usual(group.heater().id(), rating),
                CircuitFigure.TOLERANCE.times(Course.power(1, 1 + ofRating(rating))));
    HeatingCircuit circuit = HeatingCircuit.of(group);
    heater(model, group, circuit);
    for (Component link : group.links()) {
      if (cooks) {
        ThermalLink.addLimiterTo(model, link, group);
      } else {
        ThermalLink.addTo(model, link, group);
      }
    }
    for (Component relay : group.relays()) {
      Relay.addTo(model, relay, group, circuit);
    }
    for (Component sensor : group.sensors()) {
      TemperatureSensor.addTo(model, sensor, group);
    }
    for (Component thermostat : group.thermostats()) {
      Thermostat.inCircuit(model, thermostat, CircuitFigure.INTERRUPTED.becomes(1));
    }
    if (group.supply().isPresent()) {
      MainsSupply.addTo(model, group, circuit, frequency);
    } else {
      model
          .on(group.heater(), group.medium().words().kind())
          .faults(SupplyFaults.lowVoltage(group));
    }
    if (group.cord().isPresent()) {
      double conductor = conductor(group.cord().get());
      model
          .on(group.cord().get(), CordWords.CORD)
          .faults(HeaterFaults.otherLeak(), HeaterFaults.hotPlug())
          .looks(CordWords.PLUG_BURNS, CircuitFigure.PLUG_BURNS, Spread.constant(0.15))
          .looks(CordWords.PLUG_HOT, CircuitFigure.PLUG_HOT)
          .under(Leaking.AS_WARM)
          .observe(CordWords.APPLIANCE_INSULATION, Insulation::ofAppliance, EarthLeak.SPREAD)
          .under(circuit)
          .observe(CordWords.VOLTAGE_DROP, at -> at.cordDrop(conductor), OF_DROPS);
    }
    return model.build();
  }

  private static void heater(PartModel model, HeatingGroup group, HeatingCircuit circuit) {
    HeaterWords words = group.medium().words();
    boolean air = group.medium() == Medium.AIR;
    boolean three = group.rating().isThreePhase();
    double times = three ? ThreeElements.BETWEEN_TERMINALS : 1;
    double line = three ? Math.sqrt(3) : 1;
    if (three) {
      model
          .on(group.heater(), words.kind())
          .looks(HeaterWords.READINGS_DIFFER, CircuitFigure.UNEQUAL, Spread.constant(0.05));
    }
    model
        .on(group.heater(), words.kind())
        .faults(HeaterFaults.ofHeater(group))
        .looks(HeaterWords.TERMINAL_BURNS, CircuitFigure.TERMINAL_BURNS)
        .looks(HeaterWords.MARKING_DIFFERS, CircuitFigure.MARKING_DIFFERS)
        .looks(words.sheath(), CircuitFigure.SHEATH_DAMAGED)
        .under(Leaking.AS_WARM)
        .observe(HeaterWords.INSULATION, Insulation::ofHeater, EarthLeak.SPREAD)
        .under(circuit)
        .observe(
            HeaterWords.RESISTANCE,
            at -> at.cold() * times,
            Spread.constant(
                three
                    ? Math.hypot(Operation.HOT_AGAINST_COLD, ThreeElements.OF_PLACE)
                    : Operation.HOT_AGAINST_COLD))
        .observe(words.current(), at -> at.current() / line, new OfReading(1, 0.05))
        .observe(words.power(), Operation::power, new OfReading(2, 10))
        .observe(words.voltage(), Operation::terminalVoltage, circuit.fromReadingToReading())
        .observe(HeaterWords.JOINT_DROP, Operation::jointDrop, OF_DROPS);
    if (!air || group.blown()) {
      model
          .looks(words.deposit(), CircuitFigure.DEPOSIT)
          .under(circuit)
          .usually(ofHeater(group.heater(), words.amount()))
          .observe(words.warming(), Operation::warming, new OfReading(2, air ? 2 : 5e-4, true));
    }
  }

  /** One conductor of the cord, Ohm; of the usual one where the table has none for its figures. */
  private static double conductor(Component cord) {
    try {
      return CordConductor.cold(cord, USUAL_CORD);
    } catch (IllegalArgumentException notInTheTable) {
      return CONDUCTOR;
    }
  }

  /** The conditions that a service figure of the heater tells. */
  private static Conditions ofHeater(Component heater, Characteristic figure) {
    Optional<Quantity> stated = heater.figure(figure);
    return stated.isPresent() ? new Conditions(Map.of(figure.id(), stated.get())) : Conditions.NONE;
  }

  /** The mains of one house, which may lie anywhere in a rated range. */
  private static double mainsDeviation(HeaterRating rating) {
    double open = rating.mainsOpenness();
    return open == 0 ? MAINS_DEVIATION : Math.hypot(MAINS_DEVIATION, open);
  }

  private static SharedQuantity mains(HeaterRating rating) {
    boolean open = rating.mainsOpenness() != 0;
    return new SharedQuantity(
        "mains-voltage",
        "voltage of the mains, "
            + percent(mainsDeviation(rating))
            + (open ? " of the middle of the rated range" : " of the rated one"),
        Source.commonPractice(
            open
                ? "the mains of one house lie within 3 % of a voltage two times of three, and that may"
                    + " be any of the rated range"
                : "the mains of one house lie within 3 % of the rated voltage two times of three;"
                    + " EN 50160 allows 10 % for 95 % of a week"));
  }

  /**
   * How far heaters of one rating differ, and how far the rating itself is open, as a ratio of
   * their resistance.
   */
  private static double ofRating(HeaterRating rating) {
    double whole = rating.resistanceStated() ? BY_FIGURE : BY_NAMEPLATE;
    double part = Operation.HOT_AGAINST_COLD;
    return Math.hypot(Math.sqrt(whole * whole - part * part), rating.openness());
  }

  private static SharedQuantity tolerance(HeaterRating rating) {
    return new SharedQuantity(
        "heater-tolerance",
        "resistance of this heater within its tolerance, " + percent(ofRating(rating)),
        Source.commonPractice(
            rating.openness() > 0
                ? "heaters of one rating differ by 5 % in resistance; the nameplate has a range of"
                    + " voltages, and the one that its power belongs to was taken"
                : "heaters of one rating differ by 5 % in resistance, by 3 % where a service figure is"
                    + " known"));
  }

  /** One power that nobody stated moves all that follows from it. */
  private static SharedQuantity usual(String heater, HeaterRating rating) {
    return new SharedQuantity(
        "heater-rating",
        "resistance of "
            + heater
            + ", whose rating is not stated: "
            + QuantityFormat.plain(rating.power() / 1000)
            + " kW at "
            + QuantityFormat.plain(rating.voltage())
            + " V, within "
            + percent(ofRating(rating)),
        Source.fromMemory("power of heaters of such machines: usual, and half or twice that"),
        true);
  }

  private static String percent(double ratio) {
    return QuantityFormat.plain(Math.round(1000 * ratio) / 10.0) + " %";
  }
}
