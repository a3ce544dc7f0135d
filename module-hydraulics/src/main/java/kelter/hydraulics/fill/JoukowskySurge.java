package kelter.hydraulics.fill;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.hydraulics.caution.HydraulicCautions;
import kelter.hydraulics.pipe.Hose;
import kelter.hydraulics.water.Water;

/**
 * The pressure surge when a valve stops the water in a pipe: Δp = ρ a V if it closes within 2 L /
 * a, less in proportion (Michaud) if it takes longer; a = √(K/ρ) / √(1 + K D / (E e)) is the speed
 * of the pressure wave in a thin elastic pipe.
 *
 * <p>It holds for a single pipe of one kind from a vessel or a main to the valve. Solenoid valves
 * close within 20 to 100 ms (from memory), which is sudden for more than 15 to 70 m of copper pipe.
 *
 * <p>Source: N. Joukowsky 1898, D. J. Korteweg 1878 and J. Michaud 1878 as in E. B. Wylie and V. L.
 * Streeter, Fluid Transients; from memory.
 */
public final class JoukowskySurge {

  private static final double BULK_MODULUS =
      2.19e9; // Pa, water at 20 °C, White, Table A.3, from memory
  private static final double GIGAPASCAL = 1e9; // Pa

  /** Young's moduli by the words of the choice, in Pa; handbooks, from memory. */
  private static final double[] WALL_MODULUS = {
    120 * GIGAPASCAL, 210 * GIGAPASCAL, 3 * GIGAPASCAL, 0.9 * GIGAPASCAL, 0.6 * GIGAPASCAL
  };

  private static final List<String> WALLS = List.of("copper", "steel", "pvc", "pe", "pex");

  private static final Parameter THICKNESS =
      Parameter.required("wall", "thickness of the wall", QuantityKind.LENGTH, 2e-4, 0.05);
  private static final Parameter LENGTH =
      Parameter.required(
          "length", "length of the pipe back to the main", QuantityKind.DISTANCE, 0.1, 1000);
  private static final Parameter CLOSING =
      Parameter.required(
          "closing-time", "time in which the valve closes", QuantityKind.TIME, 0, 10);

  private JoukowskySurge() {}

  /**
   * The surge by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "pressure-surge",
        "Pressure surge when the inlet valve closes (it bangs)",
        "a = sqrt(K/density) / sqrt(1 + K bore/(E wall)); surge = density a v min(1, (2 length/a) /"
            + " closing-time); v = flow / (pi/4 bore^2); K 2.19 GPa",
        "One pipe of one kind; thin wall; on top of the static pressure",
        Source.fromMemory(
            "Joukowsky 1898, Korteweg 1878, Michaud 1878, as in Wylie and Streeter, Fluid Transients"),
        List.of(
            Hose.FLOW,
            Hose.BORE,
            THICKNESS.optional("1 mm"),
            Parameter.choice("pipe", "material of the pipe", WALLS, "copper"),
            LENGTH,
            CLOSING.optional("30 ms"),
            Water.TEMPERATURE.optional("15 Cel")),
        List.of(
            new Output(
                "surge", "surge above the static pressure", QuantityKind.PRESSURE_DIFFERENCE),
            new Output("wave-speed", "speed of the pressure wave", QuantityKind.VELOCITY),
            new Output(
                "sudden-within", "closing time below which it is sudden", QuantityKind.TIME)),
        List.of(HydraulicCautions.SURGE),
        JoukowskySurge::compute);
  }

  private static double[] compute(double[] p) {
    double bore = Hose.BORE.check(p[1]);
    double density = Water.at(p[6]).density();
    double wave =
        waveSpeed(density, bore, THICKNESS.check(p[2]), WALL_MODULUS[(int) Math.round(p[3])]);
    double velocity = Math.max(0, Hose.FLOW.check(p[0])) / (Math.PI / 4 * bore * bore);
    double sudden = 2 * LENGTH.check(p[4]) / wave;
    double closing = Math.max(0, CLOSING.check(p[5]));
    double share = closing <= sudden ? 1 : sudden / closing; // Michaud
    return new double[] {surge(density, wave, velocity) * share, wave, sudden};
  }

  /**
   * The speed of a pressure wave.
   *
   * @param density the density in kg/m3
   * @param bore the inner diameter in m
   * @param wall the thickness of the wall in m, above 0
   * @param modulus Young's modulus of the wall in Pa, above 0; infinite for a rigid pipe
   * @return the speed in m/s
   */
  public static double waveSpeed(double density, double bore, double wall, double modulus) {
    return Math.sqrt(BULK_MODULUS / density / (1 + BULK_MODULUS * bore / (modulus * wall)));
  }

  /**
   * The surge of a sudden stop.
   *
   * @param density the density in kg/m3
   * @param waveSpeed the speed of the pressure wave in m/s
   * @param velocity the velocity that is stopped, in m/s
   * @return the surge in Pa
   */
  public static double surge(double density, double waveSpeed, double velocity) {
    return density * waveSpeed * velocity;
  }
}
