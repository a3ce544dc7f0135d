package kelter.electrical.capacitor;

import java.util.List;
import kelter.core.law.Require;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.core.source.Standing;
import kelter.electrical.caution.ElectricalCautions;

/**
 * What may leak through a new capacitor at most. Film capacitors of mains filters: resistance
 * between the terminals of at least 15 000 MOhm up to 0.33 µF, above that a time constant of at
 * least 5000 s (IEC 60384-14, from memory). Run capacitors of motors: a time constant of at least
 * 3000 s (a data sheet to IEC 60252-1; the standard itself proves them by voltage, capacitance and
 * loss and has no such limit, from memory). Aluminium electrolytic: 0.01 C U in µA for µF and V, or
 * 3 µA if that is more, after two minutes at rated voltage and 20 °C (makers' data sheets).
 *
 * <p>An electrolytic capacitor that lay unused for months leaks more until it has been under
 * voltage for a while. Good film capacitors are several times better than the limit.
 */
public final class CapacitorLeakageLimit {

  /** Where the limit of film is believed to stand. */
  public static final Source FILM_SOURCE =
      Source.fromMemory("IEC 60384-14:2013, insulation resistance between terminations");

  /** Where the limit of run capacitors stands. */
  public static final Source RUN_SOURCE =
      new Source(
          "a data sheet of metallized polypropylene motor capacitors to IEC 60252-1: resistance times"
              + " capacitance of at least 3000 s (20 °C, 100 V, 1 min)",
          Standing.SECOND_HAND);

  /** Where the limit of electrolytic capacitors stands. */
  public static final Source ELECTROLYTIC_SOURCE =
      new Source(
          "data sheets of general-purpose aluminium electrolytic capacitors, as answers that work"
              + " them cite them: 0.01 C U or 3 µA after 2 minutes",
          Standing.SECOND_HAND);

  private static final QuantityKind MICROAMPERE = QuantityKind.of("current", "uA");

  /** Least resistance of a small film capacitor, Ohm. IEC 60384-14, from memory. */
  private static final double FILM_RESISTANCE = 15e9;

  /** Up to this it is a resistance, above it a time constant, F. IEC 60384-14, from memory. */
  private static final double FILM_STEP = 0.33e-6;

  /** Least time constant of a film capacitor, s. IEC 60384-14, from memory. */
  private static final double FILM_TIME = 5000;

  /** Least time constant of a run capacitor, s. Data sheet. */
  private static final double RUN_TIME = 3000;

  /** Leakage over charge of an electrolytic capacitor, 1/s. Data sheets. */
  private static final double ELECTROLYTIC_RATE = 0.01;

  /** What any electrolytic capacitor may leak, A. Data sheets. */
  private static final double ELECTROLYTIC_LEAST = 3e-6;

  /** What a capacitor is made of. */
  public enum Build {
    /** Plastic film or paper across the mains or to earth: filters (classes X and Y). */
    FILM,
    /** Aluminium electrolytic: power supplies, motor start capacitors. */
    ELECTROLYTIC,
    /** Metallized film that works in series with a motor winding. */
    RUN
  }

  private CapacitorLeakageLimit() {}

  /**
   * The limit by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "capacitor-leakage-limit",
        "what may leak through a capacitor at most",
        "film of filters: voltage / 15000 MOhm up to 0.33 uF, voltage capacitance / 5000 s above;"
            + " run: voltage capacitance / 3000 s;"
            + " electrolytic: 0.01/s capacitance voltage or 3 uA, the greater",
        "new capacitors at 20 °C and rated direct voltage; limits of the data sheet come first",
        Source.fromMemory(
            FILM_SOURCE.document()
                + "; run: "
                + RUN_SOURCE.document()
                + "; electrolytic: "
                + ELECTROLYTIC_SOURCE.document()),
        List.of(
            Parameter.required("capacitance", "capacitance", QuantityKind.CAPACITANCE, 1e-12, 1),
            Parameter.required("voltage", "rated direct voltage", QuantityKind.VOLTAGE, 0.1, 10000),
            Parameter.choice(
                "build", "what it is made of", List.of("film", "electrolytic", "run"), "film")),
        List.of(new Output("limit", "greatest leakage current", MICROAMPERE)),
        List.of(ElectricalCautions.CHARGED_CAPACITOR, ElectricalCautions.HIGH_VOLTAGE),
        x -> new double[] {limit(x[0], x[1], Build.values()[(int) Math.round(x[2])])});
  }

  /**
   * The limit.
   *
   * @param capacitance the capacitance, F, above 0
   * @param voltage the rated direct voltage, V, above 0
   * @param build what it is made of
   * @return the greatest leakage current, A
   * @throws IllegalArgumentException if a figure is not finite and above zero
   */
  public static double limit(double capacitance, double voltage, Build build) {
    Require.positive("capacitance", capacitance, "F");
    Require.positive("voltage", voltage, "V");
    return switch (build) {
      case FILM ->
          capacitance <= FILM_STEP ? voltage / FILM_RESISTANCE : voltage * capacitance / FILM_TIME;
      case RUN -> voltage * capacitance / RUN_TIME;
      case ELECTROLYTIC -> Math.max(ELECTROLYTIC_LEAST, ELECTROLYTIC_RATE * capacitance * voltage);
    };
  }
}
