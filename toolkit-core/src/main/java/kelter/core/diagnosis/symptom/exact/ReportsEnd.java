package kelter.core.diagnosis.symptom.exact;

import kelter.core.diagnosis.symptom.cases.Tracking;

/**
 * Where all rows of groups end: what the reports make of what is there. Posteriors of the same
 * reports share it, and with it what they make of groups that they have in common. One thread at a
 * time may ask.
 */
final class ReportsEnd {

  private final Tracking tracking;
  private final double soundFactor;
  private final ReportWeights weights;
  private final CausesBehind all;
  private CausesBehind madeByGroups;
  private WeighedSets sets;

  ReportsEnd(Tracking tracking, double soundFactor) {
    this.tracking = tracking;
    this.soundFactor = soundFactor;
    this.weights = ReportWeights.of(tracking);
    this.all = CausesBehind.none(weights, soundFactor);
  }

  double soundFactor() {
    return soundFactor;
  }

  ReportWeights weights() {
    return weights;
  }

  /** All that is there. */
  CausesBehind all() {
    return all;
  }

  /** Only what is there where groups make all symptoms, or where nothing at all is wrong. */
  CausesBehind madeByGroups() {
    if (madeByGroups == null) {
      madeByGroups = CausesBehind.none(ReportWeights.withoutLeak(tracking), soundFactor);
    }
    return madeByGroups;
  }

  /** The sets of symptoms over the cases. */
  WeighedSets sets() {
    if (sets == null) {
      sets = new WeighedSets(tracking);
    }
    return sets;
  }
}
