package kelter.hydraulics.airway;

import java.util.Set;
import kelter.core.job.Appliance;

/**
 * In machines that dry laundry, lint in filter, duct and condenser is one cause: that of the air
 * heater, whose model has the flow. A second model of the same lint would contradict it.
 */
final class LintOfDryers {

  static final String WHY_NOT = "its lint is told of the air heater";

  private static final Set<String> DRYERS = Set.of("tumble-dryer", "washer-dryer");

  private LintOfDryers() {}

  static boolean isToldIn(Appliance appliance) {
    return DRYERS.contains(appliance.kind());
  }
}
