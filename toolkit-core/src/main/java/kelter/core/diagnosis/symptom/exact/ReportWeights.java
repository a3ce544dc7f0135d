package kelter.core.diagnosis.symptom.exact;

import kelter.core.diagnosis.symptom.Background;
import kelter.core.diagnosis.symptom.Report;

/**
 * What the reports say of the set of symptoms that the groups make: {@code t(C)} is the chance of
 * the reports if exactly the tracked symptoms C are made by groups.
 *
 * <p>With {@code r(E)}, the chance of the reports if exactly E are there, t starts as r, and for
 * each symptom i with leak l and each C without it {@code t(C) <- l t(C + i) + (1 - l) t(C)}. Of a
 * sound machine {@code t0 = t(none)} with the leaks of a sound machine.
 *
 * @param ofMade t, in the space of {@link Tracking}
 * @param ofSound t0
 */
record ReportWeights(double[] ofMade, double ofSound) {

  /** All that is there. */
  static ReportWeights of(Tracking tracking) {
    return of(tracking, 0, 0);
  }

  /** Only what is there where a tracked symptom is. */
  static ReportWeights whereThere(Tracking tracking, int symptom) {
    return of(tracking, tracking.set(symptom), 0);
  }

  /** Only what is there where a tracked symptom is not. */
  static ReportWeights whereAbsent(Tracking tracking, int symptom) {
    return of(tracking, 0, tracking.set(symptom));
  }

  /**
   * Only what is there where nothing but groups makes a tracked symptom, or where nothing at all is
   * wrong.
   */
  static ReportWeights withoutLeak(Tracking tracking) {
    double[] made = chances(tracking, 0, 0);
    double[] sound = made.clone();
    double absent = 1;
    for (int bit = 0; bit < tracking.space().bits(); bit++) {
      Background symptom = tracking.reports().symptom(tracking.symptom(bit));
      absent *= 1 - symptom.leak();
      leak(sound, 1 << bit, symptom.leakWhenSound());
    }
    for (int i = 0; i < made.length; i++) {
      made[i] *= absent;
    }
    return of(tracking, made, sound);
  }

  private static ReportWeights of(Tracking tracking, int has, int lacks) {
    double[] made = chances(tracking, has, lacks);
    double[] sound = made.clone();
    for (int bit = 0; bit < tracking.space().bits(); bit++) {
      Background symptom = tracking.reports().symptom(tracking.symptom(bit));
      leak(made, 1 << bit, symptom.leak());
      leak(sound, 1 << bit, symptom.leakWhenSound());
    }
    return of(tracking, made, sound);
  }

  /** With the leaks of the folded symptoms. */
  private static ReportWeights of(Tracking tracking, double[] made, double[] sound) {
    SubsetSpace space = tracking.space();
    double ofSound = 0;
    for (int c = 0; c < space.cases(); c++) {
      int start = c << space.bits();
      ofSound += tracking.unnoticedLeak(c, true) * sound[start];
      double unnoticed = tracking.unnoticedLeak(c, false);
      for (int set = 0; set < space.subsets(); set++) {
        made[start + set] *= unnoticed;
      }
    }
    return new ReportWeights(made, ofSound);
  }

  /** r: the chance of the reports by the set of symptoms that are there. */
  private static double[] chances(Tracking tracking, int has, int lacks) {
    SubsetSpace space = tracking.space();
    double[] chances = space.zero();
    for (int c = 0; c < space.cases(); c++) {
      double folded = tracking.folded(c);
      for (int set = 0; set < space.subsets(); set++) {
        boolean counts =
            (set & tracking.deciding()) == tracking.present(c)
                && (set & has) == has
                && (set & lacks) == 0;
        chances[(c << space.bits()) + set] = counts ? folded * chance(tracking, set) : 0;
      }
    }
    return chances;
  }

  private static double chance(Tracking tracking, int set) {
    double chance = 1;
    for (int bit = 0; bit < tracking.space().bits(); bit++) {
      int symptom = tracking.symptom(bit);
      Report report = tracking.reports().report(symptom);
      chance *= report.chance((set & 1 << bit) != 0, (set & tracking.maskers(symptom)) != 0);
    }
    return chance;
  }

  private static void leak(double[] weights, int symptom, double leak) {
    for (int set = 0; set < weights.length; set++) {
      if ((set & symptom) == 0) {
        weights[set] = leak * weights[set | symptom] + (1 - leak) * weights[set];
      }
    }
  }

  /** Only what no group makes: t where a tracked symptom is not made, 0 where it is. */
  double[] notMade(int symptom) {
    double[] notMade = ofMade.clone();
    for (int set = 0; set < notMade.length; set++) {
      notMade[set] = (set & symptom) == 0 ? notMade[set] : 0;
    }
    return notMade;
  }
}
