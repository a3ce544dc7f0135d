package kelter.electrical.heating;

import static kelter.core.diagnosis.model.Course.constant;
import static kelter.core.diagnosis.model.Course.early;
import static kelter.core.diagnosis.model.Course.line;
import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.FaultRow;
import kelter.core.diagnosis.model.Work;
import kelter.core.quantity.QuantityFormat;
import kelter.core.safety.Caution;
import kelter.core.vocabulary.Symptoms;
import kelter.electrical.caution.ElectricalCautions;
import kelter.electrical.rating.RatedFrequency;

/** What can be wrong with the supply of a heating circuit; chances and effects are from memory. */
final class SupplyFaults {

  /** From here on mains are those between two of three phases, V. */
  private static final double TWO_PHASES = 300;

  /**
   * What is left of the voltage at heaters of three phases if one is lost, as a ratio: half of the
   * power, in delta as in star without neutral (Kirchhoff). Between two legs nothing is left.
   */
  private static final double LEFT_OF_THREE = Math.sqrt(0.5);

  private SupplyFaults() {}

  /** Whether mains are those between two of three phases, V. */
  static boolean isBetweenPhases(double volts) {
    return volts > TWO_PHASES;
  }

  static List<FaultRow> all(HeatingGroup group) {
    return List.of(lowVoltage(group), highVoltage(), legLost(group), off());
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
  static FaultRow wrongFrequency(RatedFrequency rated) {
    return fault("wrong-frequency", title(rated), 0.001)
        .changes(CircuitFigure.FREQUENCY.becomes(rated.ratio()))
        .makes(Symptoms.LOUD, 0.4)
        .makes(Symptoms.DOES_NOT_SPIN, 0.15)
        .makes(Symptoms.TOO_HOT, 0.05)
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

  /** Heaters of three phases keep half of their power, those between two legs nothing. */
  private static FaultRow legLost(HeatingGroup group) {
    double left = isBetweenPhases(group.rating().mains()) ? LEFT_OF_THREE : 0;
    return fault("leg-lost", "one leg or phase of the supply lost", 0.004)
        .apartFrom("low-voltage", "high-voltage")
        .changes(
            CircuitFigure.MAINS.times(constant(left)),
            CircuitFigure.LEG_LOST.becomes(1),
            CircuitFigure.FUSES_OUT.becomes(0.5))
        .makes(Symptoms.HEATS_SLOWLY, 0.5)
        .makes(Symptoms.STAYS_COLD, 0.44)
        .makes(Symptoms.DOES_NOT_START, 0.2)
        .curedBy(handOver("mend-leg", "hand fuses, breaker and outlet to an electrician"));
  }

  private static FaultRow off() {
    return fault("off", "supply switched off: fuse, breaker or tariff hours", 0.01)
        .apartFrom("low-voltage", "high-voltage", "leg-lost")
        .changes(CircuitFigure.MAINS.times(constant(0)), CircuitFigure.FUSES_OUT.becomes(0.97))
        .makes(Symptoms.STAYS_COLD, 0.95)
        .makes(Symptoms.DOES_NOT_START, 0.5)
        .makes(Symptoms.DISPLAY_DEAD, 0.4)
        .curedBy(
            handOver(
                "switch-on", "switch it on once; hand it to an electrician if it goes off again"));
  }

  private static Work handOver(String id, String title) {
    return Work.byHand(id, title, 20, 0.8, Caution.UNPLUG, ElectricalCautions.FIXED_WIRING);
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
