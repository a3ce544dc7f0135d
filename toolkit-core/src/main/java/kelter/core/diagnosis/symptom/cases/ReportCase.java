package kelter.core.diagnosis.symptom.cases;

import java.util.Arrays;
import kelter.core.diagnosis.symptom.Reports;
import kelter.core.diagnosis.symptom.StateChances;

/**
 * One way in which the reports can have come about: which symptoms that hide others are there, and
 * which reports of an absence were given because the symptom is absent. In a case every symptom is
 * tracked, or its causes are overlooked each by itself (always, where the symptom is absent), or it
 * does not matter.
 *
 * @param tracked the symptoms that are tracked, in the order of their bits
 * @param there the bits of those that are there
 * @param absent the bits of those that are not there
 * @param folded the symptoms whose causes are overlooked
 * @param overlooked for each of these how often a cause of it is overlooked; 0 where the symptom is
 *     absent
 * @param hidden for each symptom of the machine whether one that is there hides it
 * @param split for each symptom whether its report is told apart by cases
 */
public record ReportCase(
    int[] tracked,
    int there,
    int absent,
    int[] folded,
    double[] overlooked,
    boolean[] hidden,
    boolean[] split) {

  /** The bit of a symptom, as a set; 0 where it is not tracked. */
  public int set(int symptom) {
    for (int bit = 0; bit < tracked.length; bit++) {
      if (tracked[bit] == symptom) {
        return 1 << bit;
      }
    }
    return 0;
  }

  public boolean folds(int symptom) {
    for (int each : folded) {
      if (each == symptom) {
        return true;
      }
    }
    return false;
  }

  /** The set of the tracked symptoms that a state makes. */
  public int made(StateChances.Nodes nodes) {
    int made = 0;
    for (int bit = 0; bit < tracked.length; bit++) {
      made |= nodes.makes(tracked[bit]) ? 1 << bit : 0;
    }
    return made;
  }

  /** How the symptoms stand here that a state makes: cases with the same are alike for it. */
  public String stands(StateChances.Nodes nodes) {
    StringBuilder stands = new StringBuilder();
    for (int symptom = 0; symptom < hidden.length; symptom++) {
      if (nodes.makes(symptom)) {
        stands.append(set(symptom) != 0 ? 't' : folds(symptom) ? 'f' : 'o');
      }
    }
    return stands.toString();
  }

  /** For each node of a state the chance that it makes no folded symptom that is noticed. */
  public double[] unnoticed(StateChances.Nodes nodes) {
    double[] unnoticed = new double[nodes.share().length];
    Arrays.fill(unnoticed, 1);
    for (int i = 0; i < folded.length; i++) {
      double[] chance = nodes.chance()[folded[i]];
      for (int node = 0; chance != null && node < unnoticed.length; node++) {
        unnoticed[node] *= unnoticed(i, chance[node]);
      }
    }
    return unnoticed;
  }

  /** The same of what makes symptoms without any group. */
  public double unnoticedLeak(Reports reports, boolean sound) {
    double unnoticed = 1;
    for (int i = 0; i < folded.length; i++) {
      double leak =
          sound ? reports.symptom(folded[i]).leakWhenSound() : reports.symptom(folded[i]).leak();
      unnoticed *= unnoticed(i, leak);
    }
    return unnoticed;
  }

  private double unnoticed(int place, double chance) {
    return 1 - chance + chance * overlooked[place];
  }

  /** The chance of the reports of what is not tracked here. */
  public double chance(Reports reports) {
    double chance = 1;
    for (int i = 0; i < reports.count(); i++) {
      if (set(i) == 0) {
        chance *= untracked(reports, i);
      }
    }
    return chance;
  }

  private double untracked(Reports reports, int symptom) {
    if (!split[symptom] || hidden[symptom]) {
      return reports.report(symptom).chance(false, hidden[symptom]);
    }
    double ifThere = reports.report(symptom).ifThere();
    return folds(symptom) ? reports.report(symptom).ifAbsent() - ifThere : ifThere;
  }

  /** The chance of the reports of what is tracked here, by the set of what is there. */
  public double chance(Reports reports, int set) {
    if ((set & there) != there || (set & absent) != 0) {
      return 0;
    }
    double chance = 1;
    for (int bit = 0; bit < tracked.length; bit++) {
      int symptom = tracked[bit];
      chance *= reports.report(symptom).chance((set & 1 << bit) != 0, hidden[symptom]);
    }
    return chance;
  }

  /** The same where one folded symptom no longer matters. */
  ReportCase without(int symptom) {
    if (!folds(symptom)) {
      return this;
    }
    int[] rest = new int[folded.length - 1];
    double[] restOverlooked = new double[rest.length];
    int place = 0;
    for (int i = 0; i < folded.length; i++) {
      if (folded[i] != symptom) {
        rest[place] = folded[i];
        restOverlooked[place++] = overlooked[i];
      }
    }
    return new ReportCase(tracked, there, absent, rest, restOverlooked, hidden, split);
  }
}
