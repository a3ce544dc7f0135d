package kelter.electrical.heating;

import static kelter.core.diagnosis.model.Course.line;
import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import java.util.Optional;
import kelter.core.check.Allowed;
import kelter.core.check.Check;
import kelter.core.check.LimitCheck;
import kelter.core.check.Measured;
import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.FaultRow;
import kelter.core.diagnosis.model.PartModel;
import kelter.core.diagnosis.model.Work;
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
import kelter.electrical.caution.ElectricalCautions;
import kelter.electrical.component.Electrical;
import kelter.electrical.rating.MainsRange;
import kelter.electrical.supply.SupplyRange.Range;

/** The outlet and what is behind it; mended by a licensed electrician only. */
public final class MainsSupply implements Part {

  static final Characteristic CURRENT =
      new Characteristic("current", "current that is drawn", QuantityKind.CURRENT)
          .within(new Span(0, 1000));

  static final Observable IDLE =
      Observable.named("voltage-idle", "voltage with nothing switched on")
          .quantity(QuantityKind.VOLTAGE, 0, 500)
          .how("Read at the outlet through a measuring adapter; the outlet stays closed.")
          .by(Electrical.live(4, Electrical.VOLTMETER, ElectricalCautions.FIXED_WIRING));

  static final Observable LOADED =
      Observable.named("voltage-loaded", "voltage while the machine heats")
          .quantity(QuantityKind.VOLTAGE, 0, 500)
          .at(CURRENT)
          .how(
              "Read at the outlet through a measuring adapter while the machine heats; the outlet"
                  + " stays closed.")
          .by(Electrical.live(6, Electrical.VOLTMETER, ElectricalCautions.FIXED_WIRING));

  static final ComponentKind SUPPLY =
      new ComponentKind(
          "supply", "supply at the outlet", List.of(IDLE, LOADED), List.of(), List.of());

  @Override
  public List<ComponentKind> kinds() {
    return List.of(SUPPLY);
  }

  @Override
  public List<Check> checks() {
    return List.of(
        LimitCheck.named("supply-idle", "Is the supply within its range?")
            .on(SUPPLY, IDLE, MainsSupply::voltage),
        LimitCheck.named("supply-loaded", "Is the supply within its range under load?")
            .on(SUPPLY, LOADED, MainsSupply::voltage));
  }

  /**
   * The voltage at the outlet: EN 50160 for appliances rated 220 V to 240 V, ANSI C84.1
   * (utilization, range B) for those rated 110 V to 127 V. Of another rated range 10 % below its
   * lower to 10 % above its upper limit; none for other voltages.
   */
  private static Optional<Allowed> voltage(Measured measured) {
    Optional<RatedRange> rated = measured.appliance().nameplate().voltage();
    if (rated.isEmpty()) {
      return Optional.empty();
    }
    double low = rated.get().low().si();
    double high = rated.get().high().si();
    if (low >= 220 && high <= 240) {
      return Optional.of(ofTheNet(Range.EN_50160_ALWAYS));
    }
    if (low >= 110 && high <= 127) {
      return Optional.of(ofTheNet(Range.ANSI_UTILIZATION_B));
    }
    return rated.get().isRange() ? Optional.of(ofTheNameplate(rated.get())) : Optional.empty();
  }

  private static Allowed ofTheNet(Range range) {
    return Allowed.of("supply voltage against the range of the net", range.source(), range.limits())
        .resting("one reading is a hint only: the range holds for means over ten minutes")
        .butIfNot(ElectricalCautions.FIXED_WIRING);
  }

  private static Allowed ofTheNameplate(RatedRange rated) {
    return Allowed.of(
            "supply voltage against the rated range",
            Source.commonPractice(
                "the mains range of 10 % below and above the limits of a rated range"),
            MainsRange.of(rated))
        .resting("rated " + rated.display() + ", which may stand on more than one net")
        .butIfNot(ElectricalCautions.FIXED_WIRING);
  }

  /** Puts it into the model of a circuit. */
  static void addTo(PartModel model, Component supply, HeatingCircuit circuit) {
    model
        .on(supply, SUPPLY)
        .faults(lowVoltage())
        .under(circuit)
        .observe(IDLE, Operation::idle, circuit.fromReadingToReading())
        .observe(LOADED, Operation::supply, circuit.fromReadingToReading());
  }

  /** It is told of the heater where the job lists no supply; from memory. */
  static FaultRow lowVoltage() {
    return fault(
            "low-voltage",
            "too little voltage reaches the heater: weak supply or a hot joint",
            0.02)
        .changes(
            CircuitFigure.REACHING.times(0.7),
            CircuitFigure.PLUG_BURNS.becomes(line(0.3, 0.8)),
            CircuitFigure.PLUG_HOT.becomes(line(0.15, 0.75)))
        .curedBy(
            Work.byHand(
                "mend-supply",
                "mend the hot joint in the machine, or hand the outlet to an electrician",
                30,
                0.75,
                Caution.UNPLUG,
                ElectricalCautions.FIXED_WIRING))
        .wears(Wear.WIRE);
  }
}
