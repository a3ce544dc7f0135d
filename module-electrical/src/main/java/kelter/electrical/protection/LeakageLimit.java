package kelter.electrical.protection;

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
 * The greatest leakage current of an appliance in the type test at operating temperature (IEC
 * 60335-1, 13.2), and the greatest protective conductor current after repair (EN 50678, from
 * memory).
 *
 * <p>Part 2 standards change the first: for some stationary class I appliances 3.5 mA or 1 mA/kW,
 * which is not covered. Leakage depends on how it is measured; the limits hold for the networks
 * that the standards prescribe.
 */
public final class LeakageLimit {

  /** Where the limits of the type test stand. */
  public static final Source TYPE_TEST =
      new Source(
          "IEC 60335-1, 13.2, in the text of GB 4706.1 as cited by others", Standing.SECOND_HAND);

  /** Where the limits after repair are believed to stand. */
  public static final Source AFTER_REPAIR =
      Source.fromMemory("EN 50678:2020 and EN 50699:2020, protective conductor current");

  /** What an appliance is, for the type test. */
  public enum Build {
    /** Class II. */
    CLASS_II,
    /** Class 0, 0I or III. */
    CLASS_0_OR_III,
    /** Class I, portable. */
    CLASS_I_PORTABLE,
    /** Class I, stationary, motor-operated. */
    CLASS_I_MOTOR,
    /** Class I, stationary, heating. */
    CLASS_I_HEATING
  }

  /** Class II, A. IEC 60335-1, 13.2. */
  private static final double II = 0.25e-3;

  /** Class 0, 0I and III, A. IEC 60335-1, 13.2. */
  private static final double ZERO_OR_III = 0.5e-3;

  /** Class I portable, and least limit of class I heating, A. IEC 60335-1, 13.2. */
  private static final double PORTABLE = 0.75e-3;

  /** Class I stationary motor-operated, A. IEC 60335-1, 13.2. */
  private static final double MOTOR = 3.5e-3;

  /** Class I stationary heating, A/W. IEC 60335-1, 13.2. */
  private static final double HEATING_PER_WATT = 0.75e-6;

  /** Greatest limit of class I heating, A. IEC 60335-1, 13.2. */
  private static final double HEATING_MOST = 5e-3;

  /** After repair, A. EN 50678. */
  private static final double REPAIR = 3.5e-3;

  /** Heating power above which the limit after repair rises, W. EN 50678. */
  private static final double REPAIR_STEP = 3500;

  /** How it rises, A/W. EN 50678. */
  private static final double REPAIR_PER_WATT = 1e-6;

  /** Greatest limit after repair, A. EN 50678. */
  private static final double REPAIR_MOST = 10e-3;

  /** Touch current after repair, A. EN 50678, from memory. */
  private static final double TOUCH = 0.5e-3;

  private static final QuantityKind MILLIAMPERE = QuantityKind.of("current", "mA");

  private LeakageLimit() {}

  /**
   * The limits by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "leakage-limit",
        "what leakage current an appliance may have in the type test, and after repair",
        "type-test by class, class I heating 0.75 mA or 0.75 mA/kW, at most 5 mA; after-repair 3.5 mA,"
            + " heating above 3.5 kW 1 mA/kW, at most 10 mA; touch 0.5 mA",
        "Part 2 standards may differ; class I only for after-repair; local code comes first",
        new Source(
            TYPE_TEST.document() + "; after repair " + AFTER_REPAIR.document(),
            Standing.FROM_MEMORY),
        List.of(
            Parameter.required("power", "rated power of its heaters", QuantityKind.POWER, 0, 1e5),
            Parameter.choice(
                "build",
                "what it is",
                List.of(
                    "class-2",
                    "class-0-or-3",
                    "class-1-portable",
                    "class-1-motor",
                    "class-1-heating"),
                "class-1-heating")),
        List.of(
            new Output("type-test", "limit of the type test", MILLIAMPERE),
            new Output(
                "after-repair", "limit of the protective conductor after repair", MILLIAMPERE),
            new Output("touch", "limit of the touch current after repair", MILLIAMPERE)),
        List.of(ElectricalCautions.LIVE_PARTS),
        x ->
            new double[] {
              typeTest(Build.values()[(int) Math.round(x[1])], x[0]), afterRepair(x[0]), TOUCH
            });
  }

  /**
   * The limit of the touch current after repair.
   *
   * @return the greatest current, A
   */
  public static double touch() {
    return TOUCH;
  }

  /**
   * The limit of the type test.
   *
   * @param build what the appliance is
   * @param heating the rated power of its heaters, W, 0 or above
   * @return the greatest leakage current, A
   * @throws IllegalArgumentException if the power is negative or not finite
   */
  public static double typeTest(Build build, double heating) {
    Require.notNegative("rated power", heating, "W");
    return switch (build) {
      case CLASS_II -> II;
      case CLASS_0_OR_III -> ZERO_OR_III;
      case CLASS_I_PORTABLE -> PORTABLE;
      case CLASS_I_MOTOR -> MOTOR;
      case CLASS_I_HEATING ->
          Math.min(HEATING_MOST, Math.max(PORTABLE, HEATING_PER_WATT * heating));
    };
  }

  /**
   * The limit of the protective conductor current after repair.
   *
   * @param heating the rated power of its heaters, W, 0 or above
   * @return the greatest current, A
   * @throws IllegalArgumentException if the power is negative or not finite
   */
  public static double afterRepair(double heating) {
    Require.notNegative("rated power", heating, "W");
    return heating > REPAIR_STEP ? Math.min(REPAIR_MOST, REPAIR_PER_WATT * heating) : REPAIR;
  }
}
