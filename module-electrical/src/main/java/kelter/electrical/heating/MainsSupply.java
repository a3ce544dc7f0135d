package kelter.electrical.heating;

import static kelter.core.diagnosis.model.Course.early;
import static kelter.core.diagnosis.model.Course.line;
import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import java.util.Optional;
import kelter.core.check.Allowed;
import kelter.core.check.Check;
import kelter.core.check.LimitCheck;
import kelter.core.check.Limits;
import kelter.core.check.Measured;
import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.FaultRow;
import kelter.core.diagnosis.model.PartModel;
import kelter.core.diagnosis.model.Spread;
import kelter.core.diagnosis.model.Work;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Nameplate;
import kelter.core.job.RatedRange;
import kelter.core.module.Part;
import kelter.core.quantity.QuantityFormat;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Symptoms;
import kelter.electrical.caution.ElectricalCautions;
import kelter.electrical.component.Electrical;
import kelter.electrical.rating.MainsRange;
import kelter.electrical.rating.RatedFrequency;
import kelter.electrical.rating.SupplyNet;

/** The outlet and what is behind it; mended by a licensed electrician only. */
public final class MainsSupply implements Part {

  static final Observable IDLE =
      Observable.named("voltage-idle", "voltage with nothing switched on")
          .quantity(QuantityKind.VOLTAGE, 0, 500)
          .how("Read at the outlet through a measuring adapter; the outlet stays closed.")
          .by(Electrical.live(4, Electrical.VOLTMETER, ElectricalCautions.FIXED_WIRING));

  static final Observable LOADED =
      Observable.named("voltage-loaded", "voltage while the machine heats")
          .quantity(QuantityKind.VOLTAGE, 0, 500)
          .at(Electrical.CURRENT)
          .how(
              "Read at the outlet through a measuring adapter while the machine heats; the outlet"
                  + " stays closed.")
          .by(Electrical.live(6, Electrical.VOLTMETER, ElectricalCautions.FIXED_WIRING));

  static final Observable FREQUENCY =
      Observable.named("frequency", "frequency of the supply")
          .quantity(QuantityKind.FREQUENCY, 0, 500)
          .how(
              "Read a plug-in meter at the outlet that shows the frequency, or a multimeter on its"
                  + " frequency range through a measuring adapter; the outlet stays closed.")
          .by(Electrical.running(2, Electrical.FREQUENCY_METER, ElectricalCautions.FIXED_WIRING));

  /** How far mains are from their frequency, and so the limits of the check, as a ratio. */
  private static final double OFF_FREQUENCY = 0.01;

  /** How far mains in order differ from their frequency, Hz; from memory. */
  private static final double HERTZ = 0.1;

  private static final String TITLE = "supply voltage against the range of the net";

  private static final Source NO_NET =
      Source.commonPractice("EN 50160 and ANSI C84.1 are the nets that are known here");

  private static final String ONE_READING =
      "one reading is a hint only: the range holds for means over minutes";

  private static final String ISLANDED =
      "on public mains; a generator or an inverter by itself may stray further";

  private static final String TWO_NETS =
      "; the job does not tell which of two nets it is: state the frequency and the voltage of the"
          + " outlet";

  static final ComponentKind SUPPLY =
      new ComponentKind(
          "supply", "supply at the outlet", List.of(IDLE, LOADED, FREQUENCY), List.of(), List.of());

  @Override
  public List<ComponentKind> kinds() {
    return List.of(SUPPLY);
  }

  @Override
  public String whyNot(Appliance appliance, Component component) {
    return HeatingGroup.missing(appliance);
  }

  @Override
  public List<Check> checks() {
    return List.of(
        LimitCheck.named("supply-idle", "Is the supply within its range?")
            .on(SUPPLY, IDLE, MainsSupply::voltage),
        LimitCheck.named("supply-loaded", "Is the supply within its range under load?")
            .on(SUPPLY, LOADED, MainsSupply::voltage),
        LimitCheck.named("supply-frequency", "Has the supply the frequency of the nameplate?")
            .on(SUPPLY, FREQUENCY, MainsSupply::frequency));
  }

  /**
   * The voltage at the outlet: the range of the net that voltage and frequency of the nameplate
   * tell ({@link SupplyNet}). Of another rated range 10 % below its lower to 10 % above its upper
   * limit; of another voltage none, and it is said why.
   */
  private static Optional<Allowed> voltage(Measured measured) {
    Nameplate nameplate = measured.appliance().nameplate();
    Optional<RatedRange> rated = nameplate.voltage();
    if (rated.isEmpty()) {
      return Optional.of(
          Allowed.without(
              TITLE, NO_NET, "the nameplate of the machine in the job has no voltage: state it"));
    }
    Optional<SupplyNet> net = SupplyNet.of(rated.get(), nameplate.frequency());
    if (net.isPresent()) {
      return Optional.of(ofTheNet(net.get()));
    }
    return Optional.of(
        rated.get().isRange() && !isOfOneNet(rated.get())
            ? ofTheNameplate(rated.get())
            : ofAnUnknownNet(nameplate));
  }

  /**
   * The frequency at the outlet: 1 % to either side of the rated one, in which public mains in
   * Europe lie for 99.5 % of a year.
   */
  private static Optional<Allowed> frequency(Measured measured) {
    String title = "frequency of the supply against the rated one";
    Source source =
        Source.fromMemory("EN 50160: 50 Hz within 1 % for 99.5 % of a year; taken for 60 Hz too");
    return Optional.of(
        measured
            .appliance()
            .nameplate()
            .frequency()
            .map(rated -> Allowed.of(title, source, about(rated)).resting(ISLANDED))
            .orElseGet(
                () ->
                    Allowed.without(
                        title,
                        source,
                        "the nameplate of the machine in the job has no frequency: state it")));
  }

  private static Limits about(RatedRange rated) {
    return new Limits(
        rated.low().si() * (1 - OFF_FREQUENCY), rated.high().si() * (1 + OFF_FREQUENCY));
  }

  /** Whether a range is what one net has, on the frequency of which everything depends. */
  private static boolean isOfOneNet(RatedRange rated) {
    return SupplyNet.of(rated, Optional.empty()).isPresent();
  }

  private static Allowed ofTheNet(SupplyNet net) {
    Allowed allowed =
        Allowed.of(TITLE, net.source(), net.limits()).butIfNot(ElectricalCautions.FIXED_WIRING);
    return net.onEach().isPresent()
        ? allowed.orPerhaps(net.onEach().get()).resting(ONE_READING + TWO_NETS)
        : allowed.resting(ONE_READING);
  }

  private static Allowed ofAnUnknownNet(Nameplate nameplate) {
    return Allowed.without(
        TITLE,
        NO_NET,
        "no range is known here for a net of "
            + nameplate.voltage().get().display()
            + (nameplate.frequency().isPresent()
                ? " at " + nameplate.frequency().get().display()
                : "")
            + ": ask the network operator");
  }

  private static Allowed ofTheNameplate(RatedRange rated) {
    return Allowed.of(
            "supply voltage against the rated range",
            Source.commonPractice(
                "the mains range of 10 % below and above the limits of a rated range"),
            MainsRange.of(rated).limits())
        .resting("rated " + rated.display() + ", which may stand on more than one net")
        .butIfNot(ElectricalCautions.FIXED_WIRING);
  }

  /** Puts it into the model of a circuit. */
  static void addTo(
      PartModel model,
      HeatingGroup group,
      HeatingCircuit circuit,
      Optional<RatedFrequency> frequency) {
    model
        .on(group.supply().orElseThrow(), SUPPLY)
        .faults(lowVoltage(group), highVoltage())
        .under(circuit)
        .observe(IDLE, Operation::idle, circuit.fromReadingToReading())
        .observe(LOADED, Operation::supply, circuit.fromReadingToReading());
    if (frequency.isPresent()) {
      double rated = frequency.get().hertz();
      model
          .faults(wrongFrequency(frequency.get()))
          .looks(
              FREQUENCY,
              state -> rated * state.of(CircuitFigure.FREQUENCY),
              Spread.constant(HERTZ));
    }
  }

  /**
   * It is told of the heater where the job lists no supply; from memory, the chances of symptoms
   * too.
   */
  static FaultRow lowVoltage(HeatingGroup group) {
    return HeatSymptoms.slow(
        fault("low-voltage", "too little voltage at the outlet: weak supply", 0.01)
            .changes(CircuitFigure.REACHING.times(0.7))
            .makes(Symptoms.DOES_NOT_START, 0, 0.2)
            .makes(Symptoms.HUMS_ONLY, 0, 0.2)
            .curedBy(
                Work.byHand(
                    "mend-supply",
                    "hand the outlet and its circuit to an electrician",
                    30,
                    0.75,
                    Caution.UNPLUG,
                    ElectricalCautions.FIXED_WIRING))
            .wears(Wear.WIRE),
        group,
        early(0.05, 0.75));
  }

  /**
   * It is the other frequency or it is not, whatever the severity. A heater does not mind; motors,
   * pumps and clocks do. All from memory.
   */
  private static FaultRow wrongFrequency(RatedFrequency rated) {
    return fault("wrong-frequency", title(rated), 0.001)
        .changes(CircuitFigure.FREQUENCY.becomes(rated.ratio()))
        .makes(Symptoms.LOUD, 0.4, 0.4)
        .makes(Symptoms.DOES_NOT_SPIN, 0.15, 0.15)
        .makes(Symptoms.TOO_HOT, 0.05, 0.05)
        .curedBy(
            Work.byHand(
                "mend-frequency",
                "run it on a supply of the rated frequency: another outlet, or generator or inverter"
                    + " set to it",
                20,
                0.7,
                Caution.UNPLUG,
                ElectricalCautions.FIXED_WIRING));
  }

  private static String title(RatedFrequency rated) {
    return "supply at "
        + QuantityFormat.plain(rated.other())
        + " Hz for a machine of "
        + QuantityFormat.plain(rated.hertz())
        + " Hz";
  }

  /** With a lost neutral the voltage is anything between that of a phase and of two. */
  private static FaultRow highVoltage() {
    return fault(
            "high-voltage", "too much voltage at the outlet: neutral lost, or wrong phases", 0.003)
        .apartFrom("low-voltage")
        .changes(CircuitFigure.MAINS.times(line(1.1, 1.6)))
        .makes(Symptoms.DISPLAY_DEAD, 0, 0.6)
        .makes(Symptoms.DOES_NOT_START, 0.05, 0.6)
        .makes(Symptoms.SMELLS_BURNT, 0.05, 0.5)
        .makes(Symptoms.TRIPS_BREAKER, 0, 0.3)
        .makes(Symptoms.TOO_HOT, 0.05, 0.2)
        .curedBy(
            Work.byHand(
                "mend-neutral",
                "pull the plug at once and hand the outlet and its circuit to an electrician",
                30,
                0.7,
                Caution.UNPLUG,
                ElectricalCautions.FIXED_WIRING));
  }
}
