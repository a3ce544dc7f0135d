package kelter.electrical.regulating;

import static kelter.core.diagnosis.model.Course.line;
import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.ArrayList;
import java.util.List;
import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.Effect;
import kelter.core.diagnosis.model.FaultRow;
import kelter.core.diagnosis.model.Work;
import kelter.core.safety.Caution;
import kelter.core.vocabulary.Symptoms;
import kelter.electrical.caution.ElectricalCautions;
import kelter.electrical.component.Electrical;

/**
 * What can be wrong with a thermostat; chances and effects are from memory. A machine that cools
 * gets too warm where one that heats stays cold.
 */
final class ThermostatFaults {

  private static final Work RENEW =
      Work.renewing(
          "renew-thermostat",
          "renew the thermostat",
          35,
          0.94,
          Caution.UNPLUG,
          ElectricalCautions.NEVER_BRIDGE_THERMOSTAT);

  private ThermostatFaults() {}

  static List<FaultRow> of(boolean cools, Effect... interrupted) {
    List<FaultRow> rows = new ArrayList<>();
    for (FaultRow row :
        List.of(open(cools, interrupted), early(cools), late(cools), welded(cools))) {
      rows.add(row.curedBy(RENEW));
    }
    return rows;
  }

  private static FaultRow open(boolean cools, Effect... interrupted) {
    Effect[] all = new Effect[interrupted.length + 1];
    all[0] = Governing.CLOSED.becomes(Electrical.RESISTANCE.high());
    System.arraycopy(interrupted, 0, all, 1, interrupted.length);
    FaultRow open =
        fault("open", "thermostat open", 0.02)
            .wears(Wear.CONTACT)
            .changes(all)
            .makes(Symptoms.DOES_NOT_START, 0.3);
    return cools
        ? open.makes(Symptoms.TOO_WARM_INSIDE, 0.95)
        : open.makes(Symptoms.STAYS_COLD, 0.9)
            .makes(Symptoms.POOR_RESULT, 0.3)
            .makes(Symptoms.STOPS_IN_CYCLE, 0.2);
  }

  private static FaultRow early(boolean cools) {
    FaultRow early =
        fault("opens-early", "thermostat opens too early", 0.02)
            .wears(Wear.SENSOR)
            .apartFrom("open")
            .changes(Governing.OVERSHOOT.becomes(line(-15, -45)))
            .makes(Symptoms.SHORT_CYCLES, 0.3, 0.5);
    return cools
        ? early.makes(Symptoms.TOO_WARM_INSIDE, 0.7, 0.95)
        : early
            .makes(Symptoms.POOR_RESULT, 0.4, 0.8)
            .makes(Symptoms.HEATS_SLOWLY, 0.3, 0.6)
            .makes(Symptoms.TEMPERATURE_SWINGS, 0.35)
            .makes(Symptoms.STOPS_IN_CYCLE, 0.3)
            .makes(Symptoms.RUNS_OUT_EARLY, 0.3, 0.5)
            .makes(Symptoms.STAYS_COLD, 0.05, 0.2);
  }

  private static FaultRow late(boolean cools) {
    FaultRow late =
        fault("opens-late", "thermostat opens too late", 0.015)
            .wears(Wear.SENSOR)
            .apartFrom("open", "opens-early")
            .changes(Governing.OVERSHOOT.becomes(line(15, 45)));
    return cools
        ? late.makes(Symptoms.TOO_COLD_INSIDE, 0.7, 0.95).makes(Symptoms.ICES_UP, 0.3)
        : late.makes(Symptoms.TOO_HOT, 0.8, 0.95)
            .makes(Symptoms.TEMPERATURE_SWINGS, 0.3)
            .makes(Symptoms.POOR_RESULT, 0.3, 0.5)
            .makes(Symptoms.UNEVEN_HEAT, 0.1);
  }

  /** It goes on until something else stops it. */
  private static FaultRow welded(boolean cools) {
    FaultRow welded =
        fault("welded", "contact of the thermostat welded", 0.008)
            .wears(Wear.CONTACT)
            .apartFrom("open", "opens-early", "opens-late")
            .changes(Governing.OPENED.becomes(0.1), Governing.OVERSHOOT.becomes(80));
    return cools
        ? welded.makes(Symptoms.TOO_COLD_INSIDE, 0.95).makes(Symptoms.RUNS_WITHOUT_END, 0.9)
        : welded
            .makes(Symptoms.TOO_HOT, 0.9)
            .makes(Symptoms.RUNS_WITHOUT_END, 0.4)
            .makes(Symptoms.TRIPS_BREAKER, 0.15)
            .makes(Symptoms.POOR_RESULT, 0.3);
  }
}
