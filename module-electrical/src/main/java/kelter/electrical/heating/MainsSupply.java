package kelter.electrical.heating;

import java.util.List;
import java.util.Optional;
import kelter.core.check.Allowed;
import kelter.core.check.Check;
import kelter.core.check.LimitCheck;
import kelter.core.check.Limits;
import kelter.core.check.Measured;
import kelter.core.diagnosis.model.PartModel;
import kelter.core.diagnosis.model.Spread;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Nameplate;
import kelter.core.job.RatedRange;
import kelter.core.module.Part;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Hazard;
import kelter.core.source.Source;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Span;
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
          .how(
              "Read at the outlet through a measuring adapter; the outlet stays closed. On two or three"
                  + " phases: between each two at the terminals; write the lowest.")
          .by(Electrical.live(4, Electrical.VOLTMETER, ElectricalCautions.FIXED_WIRING));

  static final Observable LOADED =
      Observable.named("voltage-loaded", "voltage while the machine heats")
          .quantity(QuantityKind.VOLTAGE, 0, 500)
          .at(Electrical.CURRENT)
          .how(
              "Read at the outlet through a measuring adapter while the machine heats; the outlet"
                  + " stays closed. On two or three phases: between each two at the terminals; write"
                  + " the lowest.")
          .by(Electrical.live(6, Electrical.VOLTMETER, ElectricalCautions.FIXED_WIRING));

  static final Observable FREQUENCY =
      Observable.named("frequency", "frequency of the supply")
          .quantity(QuantityKind.FREQUENCY, 0, 500)
          .how(
              "Read a plug-in meter at the outlet that shows the frequency, or a multimeter on its"
                  + " frequency range through a measuring adapter; the outlet stays closed.")
          .by(Electrical.running(2, Electrical.FREQUENCY_METER, ElectricalCautions.FIXED_WIRING));

  static final Observable FUSES =
      Observable.named("fuses-out", "what of its fuses, breakers or tariff hours is off")
          .graded("nothing", "one of several", "all")
          .how(
              "Look at fuses and breakers of its circuit from outside and open nothing. Is one out, or"
                  + " not fully up? Ask what else in the house is dim or dark.")
          .by(
              new Procedure(
                  "", 3, Hazard.NONE, Electrical.BY_EYE, List.of(ElectricalCautions.FIXED_WIRING)));

  /** How far readings differ with a leg lost, as a ratio: it depends on where one measures. */
  private static final double ANYWHERE = 0.4;

  /** The same where it may be that of a phase to neutral, 0.58 of the one between phases. */
  private static final double TO_NEUTRAL_OR_NOT = 0.25;

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

  static final Characteristic PHASES =
      new Characteristic("phases", "number of phases that it has", QuantityKind.COUNT)
          .within(new Span(1, 3));

  static final ComponentKind SUPPLY =
      new ComponentKind(
          "supply",
          "supply at the outlet",
          List.of(FUSES, IDLE, LOADED, FREQUENCY),
          List.of(PHASES),
          List.of());

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
   * limit; of another voltage none, and it is said why. On several phases of the net of EN 50160 a
   * reading is taken as the one of the two voltages of that net that it lies nearer to.
   */
  private static Optional<Allowed> voltage(Measured measured) {
    Nameplate nameplate = measured.appliance().nameplate();
    Optional<RatedRange> rated = nameplate.voltage();
    if (rated.isEmpty()) {
      return Optional.of(
          Allowed.without(
              TITLE, NO_NET, "the nameplate of the machine in the job has no voltage: state it"));
    }
    if (Phases.areSeveral(measured)) {
      return Optional.of(Phases.allowed(measured, TITLE).butIfNot(ElectricalCautions.FIXED_WIRING));
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
        .faults(SupplyFaults.all(group))
        .looks(FUSES, CircuitFigure.FUSES_OUT)
        .under(circuit)
        .observe(IDLE, Operation::idle, new OfLegs(circuit.rating().voltage()))
        .observe(LOADED, Operation::supply, new OfLegs(circuit.rating().voltage()));
    if (frequency.isPresent()) {
      double rated = frequency.get().hertz();
      model
          .faults(SupplyFaults.wrongFrequency(frequency.get()))
          .looks(FREQUENCY, CircuitFigure.FREQUENCY.of(rated), Spread.constant(HERTZ));
    }
  }

  /**
   * How far voltages of one supply differ from reading to reading, V. On several phases one reads
   * between two of them or to neutral, and nobody states which.
   *
   * @param volts the rated voltage, V
   */
  private record OfLegs(double volts) implements Spread<Operation> {
    @Override
    public double of(double value, InOrder order, Operation at) {
      if (at.state().has(CircuitFigure.LEG_LOST)) {
        return volts * ANYWHERE;
      }
      return volts
          * (SupplyFaults.isBetweenPhases(volts)
              ? TO_NEUTRAL_OR_NOT
              : Operation.FROM_READING_TO_READING);
    }
  }
}
