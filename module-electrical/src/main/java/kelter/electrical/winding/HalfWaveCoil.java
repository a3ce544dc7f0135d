package kelter.electrical.winding;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import kelter.core.law.Require;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.numeric.Root;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.electrical.caution.ElectricalCautions;

/**
 * What a coil draws behind a single diode: vibrating pumps (no free-wheeling diode) and valves with
 * a rectifier (with one).
 *
 * <p>With Z = √(R² + (ωL)²), φ = atan(ωL/R) and the peak U√2, Kirchhoff's voltage law gives while
 * the diode carries i = (√2 U/Z) (sin(θ − φ) + sin φ exp(−θ/tan φ)), which ends at the extinction
 * angle β past half a period. With a free-wheeling diode the current never ends and its mean is √2
 * U/(πR), whatever the inductance.
 *
 * <p>Ideal diodes, steady state, constant inductance: iron that saturates and a plunger that moves
 * change it. A meter on its direct current range shows the mean; only one that reads true effective
 * values of direct and alternating current together shows the effective one.
 *
 * @param mean the mean current, A
 * @param effective the effective current, A
 * @param conduction the share of the period in which the diode to the mains carries, as a ratio
 */
public record HalfWaveCoil(double mean, double effective, double conduction) {

  /** Where the equations come from. */
  public static final Source SOURCE =
      Source.published(
          "Kirchhoff's voltage law for a coil behind one diode; textbooks of power electronics,"
              + " half-wave rectifier with resistance and inductance");

  private static final QuantityKind INDUCTANCE = QuantityKind.of("inductance", "H");

  private static final QuantityKind MILLIAMPERE = QuantityKind.of("current", "mA");

  /**
   * The currents by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "half-wave-coil",
        "what a coil behind a single diode draws",
        "mean = sqrt(2) voltage (1 - cos beta) / (2 pi resistance), the current ending at beta:"
            + " sin(beta - phi) + sin(phi) exp(-beta / tan phi) = 0, tan phi = 2 pi frequency"
            + " inductance / resistance; with free-wheeling mean = sqrt(2) voltage / (pi"
            + " resistance)",
        "ideal diodes, steady state, constant inductance; a moving plunger changes it",
        SOURCE,
        List.of(
            Parameter.required(
                "voltage", "effective voltage before the diode", QuantityKind.VOLTAGE, 0.1, 1000),
            Parameter.required(
                "resistance", "resistance with direct current", QuantityKind.RESISTANCE, 1e-2, 1e6),
            Parameter.required("inductance", "inductance of the coil", INDUCTANCE, 0, 1e3),
            Parameter.optional("frequency", "frequency", QuantityKind.FREQUENCY, 10, 1000, "50 Hz"),
            Parameter.choice(
                "free-wheeling",
                "whether a second diode lies across the coil",
                List.of("no", "yes"),
                "no")),
        List.of(
            new Output("mean", "mean current", MILLIAMPERE),
            new Output("effective", "effective current", MILLIAMPERE),
            new Output("heat", "heat in the wire", QuantityKind.POWER),
            new Output("conduction", "share of the period with current", QuantityKind.PERCENT)),
        List.of(ElectricalCautions.LIVE_PARTS, ElectricalCautions.HOT_PART),
        x -> {
          HalfWaveCoil coil =
              Math.round(x[4]) == 1
                  ? withFreeWheeling(x[0], x[1], x[2], x[3])
                  : of(x[0], x[1], x[2], x[3]);
          return new double[] {
            coil.mean, coil.effective, coil.effective * coil.effective * x[1], coil.conduction
          };
        });
  }

  /**
   * The currents of a coil behind one diode and nothing else.
   *
   * @param voltage the effective voltage before the diode, V, above 0
   * @param resistance the resistance with direct current, Ohm, above 0
   * @param inductance the inductance, H, 0 or above
   * @param frequency the frequency, Hz, above 0
   * @return the currents
   * @throws IllegalArgumentException if a figure is out of its range
   */
  public static HalfWaveCoil of(
      double voltage, double resistance, double inductance, double frequency) {
    double reactance = reactance(voltage, resistance, inductance, frequency);
    double amplitude = Math.sqrt(2) * voltage / Math.hypot(resistance, reactance);
    double phi = Math.atan2(reactance, resistance);
    double tangent = reactance / resistance;
    double beta = extinction(phi, tangent);
    // The voltage across the inductance has no mean: what is left is that of the resistance.
    double mean = Math.sqrt(2) * voltage * (1 - Math.cos(beta)) / (2 * Math.PI * resistance);
    return new HalfWaveCoil(
        mean,
        amplitude * Math.sqrt(squares(beta, phi, tangent) / (2 * Math.PI)),
        beta / (2 * Math.PI));
  }

  /** The integral of (sin(θ − φ) + sin φ exp(−θ/tan φ))² from 0 to β. */
  private static double squares(double beta, double phi, double tangent) {
    double square = Math.sin(phi) * Math.sin(phi);
    double decay = tangent == 0 ? 0 : Math.exp(-beta / tangent);
    double sines = beta / 2 - (Math.sin(2 * (beta - phi)) + Math.sin(2 * phi)) / 4;
    double mixed = -2 * square * Math.sin(beta) * decay;
    return sines + mixed + square * tangent / 2 * (1 - decay * decay);
  }

  /** Where the current ends, rad, from π to 2π; there is exactly one root. */
  private static double extinction(double phi, double tangent) {
    if (tangent == 0) {
      return Math.PI;
    }
    DoubleUnaryOperator current =
        theta -> Math.sin(theta - phi) + Math.sin(phi) * Math.exp(-theta / tangent);
    boolean endsBefore = current.applyAsDouble(2 * Math.PI) < 0; // else R is lost beside ωL
    return endsBefore ? Root.between(current, Math.PI, 2 * Math.PI, 0) : 2 * Math.PI;
  }

  /**
   * The currents of a coil behind one diode, with a second one across the coil.
   *
   * @param voltage the effective voltage before the diode, V, above 0
   * @param resistance the resistance with direct current, Ohm, above 0
   * @param inductance the inductance, H, 0 or above
   * @param frequency the frequency, Hz, above 0
   * @return the currents; the first diode carries half of the period
   * @throws IllegalArgumentException if a figure is out of its range
   */
  public static HalfWaveCoil withFreeWheeling(
      double voltage, double resistance, double inductance, double frequency) {
    double reactance = reactance(voltage, resistance, inductance, frequency);
    double amplitude = Math.sqrt(2) * voltage / Math.hypot(resistance, reactance);
    double tangent = reactance / resistance;
    double start = amplitude * Math.sin(Math.atan2(reactance, resistance));
    // Sine and decaying part are orthogonal over the half-wave; the decay goes on past it.
    double decaying =
        tangent == 0
            ? 0
            : start * start * tangent / (2 * Math.PI) / Math.tanh(Math.PI / (2 * tangent));
    return new HalfWaveCoil(
        Math.sqrt(2) * voltage / (Math.PI * resistance),
        Math.sqrt(amplitude * amplitude / 4 + decaying),
        0.5);
  }

  private static double reactance(
      double voltage, double resistance, double inductance, double frequency) {
    Require.positive("voltage", voltage, "V");
    Require.positive("resistance", resistance, "ohm");
    return 2
        * Math.PI
        * Require.positive("frequency", frequency, "Hz")
        * Require.notNegative("inductance", inductance, "H");
  }
}
