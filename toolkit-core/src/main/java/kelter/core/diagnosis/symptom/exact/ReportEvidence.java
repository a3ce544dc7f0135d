package kelter.core.diagnosis.symptom.exact;

/**
 * What each report says for or against a fault: the difference, in bits, of its log odds with all
 * reports and with this one taken back. A report that another group explains says nearly nothing;
 * what several say together is not the sum of what each says.
 */
final class ReportEvidence {

  private final SymptomPosterior all;
  private final SymptomPosterior without;

  /**
   * Takes a report back.
   *
   * @param all the posterior with all reports
   * @param symptom the symptom that was reported
   */
  public ReportEvidence(SymptomPosterior all, int symptom) {
    this.all = all;
    this.without = all.without(symptom);
  }

  /**
   * What the report says for a group being in one of some states.
   *
   * @param group the group
   * @param in for each of its states whether it is one of them
   * @return bits; above 0 if it speaks for them; NaN if they were certain or impossible
   */
  public double bits(int group, boolean... in) {
    return (logOdds(all, group, in) - logOdds(without, group, in)) / Math.log(2);
  }

  private static double logOdds(SymptomPosterior posterior, int group, boolean[] in) {
    double there = 0;
    double absent = 0;
    for (int state = 0; state < in.length; state++) {
      if (in[state]) {
        there += posterior.marginal(group, state);
      } else {
        absent += posterior.marginal(group, state);
      }
    }
    return Math.log(there) - Math.log(absent);
  }

  /**
   * What the report says for a joint state.
   *
   * @param states the state of each group
   * @return bits; above 0 if it speaks for the state
   */
  public double bitsOfJoint(int... states) {
    return (logOdds(all.joint(states)) - logOdds(without.joint(states))) / Math.log(2);
  }

  private static double logOdds(double probability) {
    return Math.log(probability) - Math.log1p(-probability);
  }
}
