package kelter.electrical.protection;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.safety.ProtectionClass;
import kelter.core.source.Source;
import kelter.electrical.caution.ElectricalCautions;

/**
 * The least insulation resistance at 500 V direct voltage after repair (EN 50678, from memory):
 * class I 1 MOhm, class I with heaters 0.3 MOhm, class II 2 MOhm, class III 0.25 MOhm.
 *
 * <p>IEC 60335-1 itself sets no insulation resistance: it limits leakage current instead. A heater
 * appliance above 3.5 kW that stays below 0.3 MOhm is there judged by its protective conductor
 * current, which is not covered here.
 */
public final class InsulationLimit {

  /** Where the limits are believed to stand. */
  public static final Source SOURCE =
      Source.fromMemory("EN 50678:2020 and EN 50699:2020, insulation resistance");

  /** Class I, Ohm. EN 50678, from memory. */
  private static final double CLASS_I = 1e6;

  /** Class I with heaters, Ohm. EN 50678, from memory. */
  private static final double CLASS_I_HEATING = 0.3e6;

  /** Class II, Ohm. EN 50678, from memory. */
  private static final double CLASS_II = 2e6;

  /** Class III, Ohm. EN 50678, from memory. */
  private static final double CLASS_III = 0.25e6;

  /** The classes as the standard writes them, and as some nameplates do. */
  private static final List<String> CLASSES = List.of("I", "II", "III", "1", "2", "3");

  private InsulationLimit() {}

  private static ProtectionClass protectionClass(int choice) {
    return ProtectionClass.of(CLASSES.get(choice)).orElseThrow();
  }

  /**
   * The limit by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "insulation-limit",
        "what insulation resistance an appliance must have at least after repair",
        "limit by protection class: I 1 MOhm, I with heaters 0.3 MOhm, II 2 MOhm, III 0.25 MOhm",
        "measured with 500 V direct voltage; local code comes first",
        SOURCE,
        List.of(
            Parameter.choice("class", "protection class", CLASSES, "I"),
            Parameter.choice("heaters", "whether it has heaters", List.of("no", "yes"), "no")),
        List.of(
            new Output("limit", "least insulation resistance", QuantityKind.INSULATION_RESISTANCE)),
        List.of(Caution.UNPLUG, ElectricalCautions.TEST_VOLTAGE),
        x -> new double[] {limit(protectionClass((int) Math.round(x[0])), Math.round(x[1]) == 1)});
  }

  /**
   * The limit.
   *
   * @param protectionClass how the appliance protects against electric shock
   * @param heaters whether it has heaters
   * @return the least insulation resistance, Ohm
   */
  public static double limit(ProtectionClass protectionClass, boolean heaters) {
    return switch (protectionClass) {
      case I -> heaters ? CLASS_I_HEATING : CLASS_I;
      case II -> CLASS_II;
      case III -> CLASS_III;
    };
  }
}
