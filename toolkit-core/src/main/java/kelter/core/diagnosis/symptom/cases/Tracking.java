package kelter.core.diagnosis.symptom.exact;

import java.util.ArrayList;
import java.util.List;
import kelter.core.diagnosis.symptom.Report;
import kelter.core.diagnosis.symptom.Reports;
import kelter.core.diagnosis.symptom.StateChances;

/**
 * Which symptoms are tracked exactly, each at twice the entries in every table, and which reports
 * are folded into the chances instead.
 *
 * <p>A report that speaks against a symptom is a factor {@code a ((1 - o) [absent] + o)}, with a
 * its chance if absent and o the ratio of its chance if there to that: how often a cause that makes
 * the symptom is overlooked. Folded, each cause is overlooked by itself, {@code a prod (1 - p (1 -
 * o))}, which is a product over the causes and costs no entry. With o = 0 this is exact, and so it
 * is for one cause at a time; where n causes make the symptom at once it counts {@code o^n} for o.
 *
 * <p>A folded report may be masked by tracked symptoms; it then says nothing of the symptom. Cases
 * tell apart which of these maskers are there; everything is summed over them.
 */
final class Tracking {

  /** How many symptoms can be tracked: tables take 3 to that number of entries. */
  static final int MOST = 12;

  /** Up to so many symptoms reports that may be folded are tracked all the same. */
  static final int USUAL = 8;

  /** No symptom. */
  static final int NONE = -1;

  private final Reports reports;
  private final List<Integer> tracked;
  private final List<Integer> folded;
  private final int[] bit;
  private final int deciding;
  private final int[][] live;
  private final double[] overlooked;

  private Tracking(Reports reports, List<Integer> tracked, List<Integer> folded) {
    this.reports = reports;
    this.tracked = tracked;
    this.folded = folded;
    this.bit = new int[reports.count()];
    this.overlooked = new double[bit.length];
    for (int i = 0; i < bit.length; i++) {
      bit[i] = tracked.indexOf(i);
      overlooked[i] = overlooked(reports.report(i));
    }
    int maskers = 0;
    for (int symptom : folded) {
      maskers |= maskers(symptom);
    }
    this.deciding = maskers;
    this.live = new int[1 << Integer.bitCount(deciding)][];
    for (int c = 0; c < live.length; c++) {
      live[c] = live(present(c));
    }
  }

  /**
   * Tracks what must be, and folds the others: those that are folded exactly, and then, while too
   * many are tracked, those that are overlooked least.
   *
   * @param reports the reports
   * @param most to how many symptoms to come down where reports can be folded
   * @throws TooManySymptoms if more than {@link #MOST} have to be tracked
   */
  static Tracking of(Reports reports, int most) {
    Tracking folded = of(reports, most, true);
    Tracking tracked = folded.fits() ? folded : of(reports, most, false);
    if (!tracked.fits()) {
      throw new TooManySymptoms(tracked.tracked.size(), MOST);
    }
    return tracked;
  }

  /**
   * Tracks and folds.
   *
   * @param withMasked whether reports of symptoms may be folded that another hides, which takes
   *     cases
   */
  private static Tracking of(Reports reports, int most, boolean withMasked) {
    List<Integer> tracked = new ArrayList<>();
    List<Integer> folded = new ArrayList<>();
    boolean[] masks = masks(reports);
    for (int i = 0; i < masks.length; i++) {
      if (masks[i] || reports.report(i).tells()) {
        tracked.add(i);
      }
    }
    while (true) {
      int next = next(reports, tracked, masks, tracked.size() > most, withMasked);
      if (next == NONE) {
        break;
      }
      tracked.remove((Integer) next);
      folded.add(next);
    }
    return new Tracking(reports, tracked, folded);
  }

  private boolean fits() {
    return live.length * Math.pow(3, tracked.size()) <= Math.pow(3, MOST);
  }

  /** For each symptom whether it may hide one of which something is said. */
  private static boolean[] masks(Reports reports) {
    boolean[] masks = new boolean[reports.count()];
    for (int i = 0; i < masks.length; i++) {
      if (reports.report(i).tells()) {
        for (int masker : reports.symptom(i).maskers()) {
          masks[masker] = true;
        }
      }
    }
    return masks;
  }

  /** The tracked symptom to be folded next, or none; only exactly unless there are too many. */
  private static int next(
      Reports reports,
      List<Integer> tracked,
      boolean[] masks,
      boolean tooMany,
      boolean withMasked) {
    int best = NONE;
    double least = Double.POSITIVE_INFINITY;
    for (int i : tracked) {
      boolean free = reports.symptom(i).maskers().length == 0;
      double cost = overlooked(reports.report(i)) + (free ? 0 : 1);
      boolean may = !masks[i] && (free || withMasked);
      if (may && (cost == 0 || tooMany) && cost < least) {
        best = i;
        least = cost;
      }
    }
    return best;
  }

  /** How often a cause is overlooked; infinite where a report cannot be folded. */
  private static double overlooked(Report report) {
    boolean folds = !report.saysYes() && report.ifAbsent() > 0;
    return folds ? report.ifThere() / report.ifAbsent() : Double.POSITIVE_INFINITY;
  }

  /** The same symptoms with a report of one of them taken back. */
  Tracking without(int symptom) {
    List<Integer> rest = new ArrayList<>(folded);
    rest.remove((Integer) symptom);
    return new Tracking(reports.without(symptom), tracked, rest);
  }

  /** The same reports with one symptom tracked that may not be yet. */
  Tracking and(int symptom) {
    if (isTracked(symptom)) {
      return this;
    }
    List<Integer> rest = new ArrayList<>(folded);
    rest.remove((Integer) symptom);
    List<Integer> more = new ArrayList<>(tracked);
    more.add(symptom);
    return new Tracking(reports, more, rest);
  }

  Reports reports() {
    return reports;
  }

  boolean isTracked(int symptom) {
    return bit[symptom] != NONE;
  }

  boolean isFolded(int symptom) {
    return folded.contains(symptom);
  }

  SubsetSpace space() {
    return new SubsetSpace(tracked.size(), live.length);
  }

  /** The symptom of a bit. */
  int symptom(int bit) {
    return tracked.get(bit);
  }

  /** The set with one tracked symptom. */
  int set(int symptom) {
    return 1 << bit[symptom];
  }

  /** The set of the tracked symptoms that hide a symptom. */
  int maskers(int symptom) {
    int maskers = 0;
    for (int masker : reports.symptom(symptom).maskers()) {
      maskers |= isTracked(masker) ? set(masker) : 0;
    }
    return maskers;
  }

  /** The set of the tracked symptoms that a state makes. */
  int made(StateChances.Nodes nodes) {
    int made = 0;
    for (int i = 0; i < tracked.size(); i++) {
      made |= nodes.makes(tracked.get(i)) ? 1 << i : 0;
    }
    return made;
  }

  /** The tracked symptoms that decide between the cases. */
  int deciding() {
    return deciding;
  }

  /** Those of them that are there in a case. */
  int present(int number) {
    int present = 0;
    int rest = number;
    for (int i = 0; i < tracked.size(); i++) {
      if ((deciding & 1 << i) != 0) {
        present |= (rest & 1) << i;
        rest >>= 1;
      }
    }
    return present;
  }

  private int[] live(int present) {
    List<Integer> unmasked = new ArrayList<>();
    for (int symptom : folded) {
      if ((maskers(symptom) & present) == 0) {
        unmasked.add(symptom);
      }
    }
    int[] live = new int[unmasked.size()];
    for (int i = 0; i < live.length; i++) {
      live[i] = unmasked.get(i);
    }
    return live;
  }

  /** The chance that a state at one node makes no folded symptom that is noticed, in a case. */
  double unnoticed(int number, StateChances.Nodes nodes, int node) {
    double unnoticed = 1;
    for (int symptom : live[number]) {
      if (nodes.makes(symptom)) {
        unnoticed *= unnoticed(symptom, nodes.chance()[symptom][node]);
      }
    }
    return unnoticed;
  }

  /** The same of what makes symptoms without any group. */
  double unnoticedLeak(int number, boolean sound) {
    double unnoticed = 1;
    for (int symptom : live[number]) {
      double leak =
          sound ? reports.symptom(symptom).leakWhenSound() : reports.symptom(symptom).leak();
      unnoticed *= unnoticed(symptom, leak);
    }
    return unnoticed;
  }

  private double unnoticed(int symptom, double chance) {
    return 1 - chance + chance * overlooked[symptom];
  }

  /** The chance of the folded reports if their symptoms are absent or masked, in a case. */
  double folded(int number) {
    double chance = 1;
    for (int symptom : folded) {
      boolean masked = (maskers(symptom) & present(number)) != 0;
      chance *= reports.report(symptom).chance(false, masked);
    }
    return chance;
  }
}
