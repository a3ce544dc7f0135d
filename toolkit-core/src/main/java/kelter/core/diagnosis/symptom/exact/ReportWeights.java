package kelter.core.diagnosis.symptom.exact;

import kelter.core.diagnosis.symptom.Background;
import kelter.core.diagnosis.symptom.cases.SubsetSpace;
import kelter.core.diagnosis.symptom.cases.Tracking;

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
    return of(tracking, chances(tracking));
  }

  /** Only what is there where a symptom is that is tracked in every case. */
  static ReportWeights whereThere(Tracking tracking, int symptom) {
    return of(tracking, where(tracking, symptom, chances(tracking), true));
  }

  /** Only what is there where a symptom is not that is tracked in every case. */
  static ReportWeights whereAbsent(Tracking tracking, int symptom) {
    return of(tracking, where(tracking, symptom, chances(tracking), false));
  }

  /**
   * Only what is there where nothing but groups makes a symptom that is weighed, or where nothing
   * at all is wrong.
   */
  static ReportWeights withoutLeak(Tracking tracking) {
    double[] made = chances(tracking);
    double ofSound = ofSound(tracking, made.clone());
    for (int c = 0; c < tracking.space().cases(); c++) {
      double absent = tracking.number(c).unnoticedLeak(tracking.reports(), false);
      for (int symptom : tracking.weighed()) {
        boolean folded = tracking.number(c).folds(symptom);
        absent *= folded ? 1 : 1 - tracking.reports().symptom(symptom).leak();
      }
      multiply(made, tracking.space(), c, absent);
    }
    return new ReportWeights(made, ofSound);
  }

  private static ReportWeights of(Tracking tracking, double[] chances) {
    double ofSound = ofSound(tracking, chances.clone());
    for (int c = 0; c < tracking.space().cases(); c++) {
      leak(tracking, c, false, chances);
      double unnoticed = tracking.number(c).unnoticedLeak(tracking.reports(), false);
      multiply(chances, tracking.space(), c, unnoticed);
    }
    return new ReportWeights(chances, ofSound);
  }

  private static double ofSound(Tracking tracking, double[] chances) {
    double ofSound = 0;
    for (int c = 0; c < tracking.space().cases(); c++) {
      leak(tracking, c, true, chances);
      double unnoticed = tracking.number(c).unnoticedLeak(tracking.reports(), true);
      ofSound += unnoticed * chances[tracking.space().start(c)];
    }
    return ofSound;
  }

  private static void multiply(double[] weights, SubsetSpace space, int number, double factor) {
    for (int i = space.start(number); i < space.start(number + 1); i++) {
      weights[i] *= factor;
    }
  }

  /** r: the chance of the reports by the set of symptoms that are there. */
  private static double[] chances(Tracking tracking) {
    SubsetSpace space = tracking.space();
    double[] chances = space.zero();
    for (int c = 0; c < space.cases(); c++) {
      double untracked = tracking.number(c).chance(tracking.reports());
      for (int set = 0; set < space.subsets(c); set++) {
        chances[space.start(c) + set] =
            untracked * tracking.number(c).chance(tracking.reports(), set);
      }
    }
    return chances;
  }

  /** A function where a symptom is there, or is not, and 0 elsewhere. */
  private static double[] where(Tracking tracking, int symptom, double[] function, boolean there) {
    SubsetSpace space = tracking.space();
    for (int c = 0; c < space.cases(); c++) {
      int own = tracking.number(c).set(symptom);
      for (int set = 0; set < space.subsets(c); set++) {
        if ((set & own) != 0 != there) {
          function[space.start(c) + set] = 0;
        }
      }
    }
    return function;
  }

  private static void leak(Tracking tracking, int number, boolean sound, double[] weights) {
    int[] tracked = tracking.number(number).tracked();
    int start = tracking.space().start(number);
    for (int bit = 0; bit < tracked.length; bit++) {
      Background symptom = tracking.reports().symptom(tracked[bit]);
      double leak = sound ? symptom.leakWhenSound() : symptom.leak();
      for (int set = 0; set < 1 << tracked.length; set++) {
        if ((set & 1 << bit) == 0) {
          weights[start + set] =
              leak * weights[start + (set | 1 << bit)] + (1 - leak) * weights[start + set];
        }
      }
    }
  }

  /** Only what no group makes: t where a symptom that is tracked everywhere is not made. */
  double[] notMade(Tracking tracking, int symptom) {
    return where(tracking, symptom, ofMade.clone(), false);
  }
}
