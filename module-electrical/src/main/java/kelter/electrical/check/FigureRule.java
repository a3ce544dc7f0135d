package kelter.electrical.check;

import java.util.Optional;
import kelter.core.check.Limits;
import kelter.core.job.Component;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.law.CopperResistance;
import kelter.core.quantity.QuantityFormat;
import kelter.core.source.Source;
import kelter.electrical.capacitor.CapacitorDischarge;
import kelter.electrical.component.Electrical;
import kelter.electrical.component.MotorKinds;
import kelter.electrical.rating.Stated;

/**
 * Windings, coils and capacitors against their service figure, within 10 %. Copper is brought to
 * the temperature of the reading; where none is stated, the limits span 10 °C to 35 °C.
 */
final class FigureRule {

  /** How far a reading may lie from its figure, as a ratio; common practice, no source. */
  private static final double WITHIN = 0.10;

  /** What a part may have in a machine that was off, where no temperature is stated, K. */
  private static final double COLD = 283.15;

  private static final double WARM = 308.15;

  /** An ordinary discharge tool, Ohm; common practice, no source. */
  private static final double DISCHARGE_RESISTOR = 20e3;

  /** Peak of 230 V, V. */
  private static final double MAINS_PEAK = 230 * Math.sqrt(2);

  /** What may be left between the pins of a plug, V: IEC 60335-1, 22.5. */
  private static final double EXTRA_LOW = 34;

  private FigureRule() {}

  /** Resistance of copper against a figure at 20 °C. */
  static Optional<LimitCheck.Allowed> copper(
      String winding, Component part, Measurement measurement, String figure) {
    double stated = Stated.si(measurement.conditions().figure(Electrical.TEMPERATURE.id()));
    double cold = Stated.si(part.figure(figure));
    if (!(cold > 0) || stated < 223.15 || stated > 473.15) {
      return Optional.empty();
    }
    boolean isStated = !Double.isNaN(stated);
    double low = CopperResistance.at(cold, 293.15, isStated ? stated : COLD);
    double high = CopperResistance.at(cold, 293.15, isStated ? stated : WARM);
    return Optional.of(
        new LimitCheck.Allowed(
            new Limits(low * (1 - WITHIN), high * (1 + WITHIN)),
            Source.commonPractice(
                "within 10 % of the service figure, copper brought to the temperature of the part"),
            "resistance of the " + winding + " against service figure",
            isStated ? "" : "10 °C to 35 °C taken, because no temperature is stated",
            Optional.empty()));
  }

  /** Capacitance against what is marked. */
  static Optional<LimitCheck.Allowed> capacitance(
      Job job, Component capacitor, Measurement measurement) {
    double marked = Stated.si(capacitor.figure(MotorKinds.CAPACITANCE.id()));
    if (!(marked > 0)) {
      return Optional.empty();
    }
    return Optional.of(
        new LimitCheck.Allowed(
            new Limits(marked * (1 - WITHIN), marked * (1 + WITHIN)),
            Source.fromMemory("IEC 60252-1, tolerance class of 10 %"),
            "capacitance against its mark, tolerance 10 % whatever is marked",
            discharge(marked),
            Optional.empty()));
  }

  /** How long the capacitor takes to discharge, for whoever measures it again. */
  private static String discharge(double capacitance) {
    double seconds =
        CapacitorDischarge.time(capacitance, DISCHARGE_RESISTOR, MAINS_PEAK, EXTRA_LOW);
    return "from the peak of 230 V it falls to 34 V in %s s through 20 kohm, if that is connected"
        .formatted(QuantityFormat.plain(seconds));
  }
}
