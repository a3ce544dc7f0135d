package kelter.electrical.heating;

import kelter.core.diagnosis.model.Course;
import kelter.core.diagnosis.model.FaultRow;
import kelter.core.vocabulary.Meaning;
import kelter.core.vocabulary.Symptom;
import kelter.core.vocabulary.Symptoms;

/**
 * What a machine does that is not heated, or not enough, by what its heater heats: air that dries,
 * water that washes, or water that is kept hot. Chances are from memory.
 */
final class HeatSymptoms {

  /** Of machines without heat, how many show it by themselves. */
  private static final double SHOWN = 0.5;

  /** Of those, how many wash or brew badly. */
  private static final double BADLY = 0.4;

  /** Of those, how many stop and wait for the heat. */
  private static final double WAITS = 0.2;

  /** Of those, how many leave crockery wet. */
  private static final double WET = 0.5;

  /** Of dryers without heat, how many run until somebody stops them. */
  private static final double RUNS_ON = 0.6;

  /** Of stores with less heat, from how many less hot water comes. */
  private static final double LESS_HOT = 0.8;

  private HeatSymptoms() {}

  /**
   * A fault that leaves the machine cold.
   *
   * @param row the fault
   * @param group what it heats
   * @param cold the chance that it stays cold, by severity
   */
  static FaultRow cold(FaultRow row, HeatingGroup group, Course cold) {
    return lacking(row.makes(Symptoms.STAYS_COLD, cold), group, cold);
  }

  /** A fault that leaves the machine less heat, with the chance that this is noticed. */
  static FaultRow slow(FaultRow row, HeatingGroup group, Course slow) {
    return lacking(slowly(row, group, slow), group, slow);
  }

  /** A fault that leaves some machines cold and others less heat. */
  static FaultRow coldOrSlow(FaultRow row, HeatingGroup group, Course cold, Course slow) {
    FaultRow both = slowly(row.makes(Symptoms.STAYS_COLD, cold), group, slow);
    return lacking(both, group, s -> 1 - (1 - cold.at(s)) * (1 - slow.at(s)));
  }

  private static FaultRow slowly(FaultRow row, HeatingGroup group, Course slow) {
    FaultRow slower = row.makes(Symptoms.HEATS_SLOWLY, slow);
    return group.medium() == Medium.WATER
        ? share(slower, Symptoms.RUNS_OUT_EARLY, LESS_HOT, slow)
        : slower;
  }

  private static FaultRow lacking(FaultRow row, HeatingGroup group, Course lack) {
    if (group.medium() == Medium.AIR) {
      FaultRow damp = row.makes(Symptoms.DOES_NOT_DRY, lack);
      return share(damp, Symptoms.RUNS_WITHOUT_END, RUNS_ON, lack);
    }
    FaultRow shown = share(row, Meaning.HEAT.symptom(), SHOWN, lack);
    FaultRow bad = share(shown, Symptoms.POOR_RESULT, BADLY, lack);
    FaultRow waits = share(bad, Symptoms.STOPS_IN_CYCLE, WAITS, lack);
    return group.balance().lags() ? share(waits, Symptoms.STAYS_WET, WET, lack) : waits;
  }

  private static FaultRow share(FaultRow row, Symptom symptom, double share, Course of) {
    return row.makes(symptom, severity -> share * of.at(severity));
  }
}
