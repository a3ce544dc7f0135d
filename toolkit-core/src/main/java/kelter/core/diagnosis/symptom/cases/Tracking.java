package kelter.core.diagnosis.symptom.cases;

import java.util.ArrayList;
import java.util.List;
import kelter.core.diagnosis.symptom.Report;
import kelter.core.diagnosis.symptom.Reports;

/**
 * Which symptoms are weighed without loss, which reports are folded into the chances instead, and
 * in which cases the reports can have come about.
 *
 * <p>A report that speaks against a symptom is a factor {@code a ((1 - o) [absent] + o)}, with a
 * its chance if absent and o the ratio of its chance if there to that: how often a cause that makes
 * the symptom is overlooked. Folded, each cause is overlooked by itself, {@code a prod (1 - p (1 -
 * o))}, which is a product over the causes and costs no entry. With o = 0 this is exact, and so it
 * is for one cause at a time; where n causes make the symptom at once it counts {@code o^n} for o.
 *
 * <p>Of what is not folded, a symptom that is reported as there is tracked, at three times the work
 * and twice the entries. What hides others and what is reported as absent is told apart by cases
 * ({@link ReportCases}), in which it is absent, which is a product over the causes, or there, where
 * what it hides need not be tracked. Everything is summed over the cases.
 */
public final class Tracking {

  /** How many symptoms can be tracked: tables take 3 to that number of entries. */
  public static final int MOST = 12;

  /** Up to so many symptoms reports that may be folded are weighed all the same. */
  public static final int USUAL = 8;

  private static final int NONE = -1;

  private final Reports reports;
  private final List<Integer> weighed;
  private final List<Integer> folded;
  private final List<Integer> everywhere;
  private final List<ReportCase> cases;
  private final SubsetSpace space;

  private Tracking(
      Reports reports,
      List<Integer> weighed,
      List<Integer> folded,
      List<Integer> everywhere,
      List<ReportCase> cases,
      SubsetSpace space) {
    this.reports = reports;
    this.weighed = weighed;
    this.folded = folded;
    this.everywhere = everywhere;
    this.cases = cases;
    this.space = space;
  }

  private Tracking(
      Reports reports, List<Integer> weighed, List<Integer> folded, List<Integer> everywhere) {
    this.reports = reports;
    this.weighed = weighed;
    this.folded = folded;
    this.everywhere = everywhere;
    this.cases = ReportCases.of(reports, folded, everywhere);
    int[] bits = new int[cases.size()];
    for (int c = 0; c < bits.length; c++) {
      bits[c] = cases.get(c).tracked().length;
    }
    if (!fits(bits)) {
      throw new TooManySymptoms(weighed.size(), MOST);
    }
    this.space = new SubsetSpace(bits);
  }

  /**
   * Weighs what must be, and folds the others: those that are folded exactly, and then, while too
   * many are weighed, those that are overlooked least.
   *
   * @param reports the reports
   * @param most to how many symptoms to come down where reports can be folded
   * @throws TooManySymptoms if more than {@link #MOST} have to be tracked
   */
  public static Tracking of(Reports reports, int most) {
    List<Integer> weighed = new ArrayList<>();
    List<Integer> folded = new ArrayList<>();
    boolean[] hiding = hiding(reports);
    for (int i = 0; i < hiding.length; i++) {
      if (hiding[i] || reports.report(i).tells()) {
        weighed.add(i);
      }
    }
    while (true) {
      int next = next(reports, weighed, hiding, weighed.size() > most);
      if (next == NONE) {
        return new Tracking(reports, weighed, folded, List.of());
      }
      weighed.remove((Integer) next);
      folded.add(next);
    }
  }

  private static boolean fits(int[] bits) {
    double entries = 0;
    for (int each : bits) {
      entries += Math.pow(3, each);
    }
    return entries <= Math.pow(3, MOST);
  }

  /** For each symptom whether it may hide one of which something is said. */
  private static boolean[] hiding(Reports reports) {
    boolean[] hiding = new boolean[reports.count()];
    for (int i = 0; i < hiding.length; i++) {
      if (reports.report(i).tells()) {
        for (int masker : reports.symptom(i).maskers()) {
          hiding[masker] = true;
        }
      }
    }
    return hiding;
  }

  /** The symptom to be folded next, or none; only exactly unless there are too many. */
  private static int next(
      Reports reports, List<Integer> weighed, boolean[] hiding, boolean tooMany) {
    int best = NONE;
    double least = Double.POSITIVE_INFINITY;
    for (int i : weighed) {
      boolean free = reports.symptom(i).maskers().length == 0;
      double cost = overlooked(reports.report(i)) + (free ? 0 : 1);
      if (!hiding[i] && (cost == 0 || tooMany) && cost < least) {
        best = i;
        least = cost;
      }
    }
    return best;
  }

  /** How often a cause is overlooked; infinite where a report cannot be folded. */
  public static double overlooked(Report report) {
    boolean folds = !report.saysYes() && report.ifAbsent() > 0;
    return folds ? report.ifThere() / report.ifAbsent() : Double.POSITIVE_INFINITY;
  }

  /** The same cases with a report of one symptom taken back. */
  public Tracking without(int symptom) {
    if (!isFolded(symptom)) {
      return new Tracking(reports.without(symptom), weighed, folded, everywhere, cases, space);
    }
    List<Integer> rest = new ArrayList<>(folded);
    rest.remove((Integer) symptom);
    List<ReportCase> restCases = new ArrayList<>();
    for (ReportCase each : cases) {
      restCases.add(each.without(symptom));
    }
    return new Tracking(reports.without(symptom), weighed, rest, everywhere, restCases, space);
  }

  /** The same reports with one symptom tracked in every case that may not be yet. */
  public Tracking and(int symptom) {
    if (isTracked(symptom)) {
      return this;
    }
    List<Integer> rest = new ArrayList<>(folded);
    rest.remove((Integer) symptom);
    List<Integer> more = new ArrayList<>(weighed);
    if (!more.contains(symptom)) {
      more.add(symptom);
    }
    List<Integer> all = new ArrayList<>(everywhere);
    all.add(symptom);
    return new Tracking(reports, more, rest, all);
  }

  public Reports reports() {
    return reports;
  }

  /** Whether a symptom is tracked in every case. */
  public boolean isTracked(int symptom) {
    return everywhere.contains(symptom);
  }

  public boolean isFolded(int symptom) {
    return folded.contains(symptom);
  }

  public SubsetSpace space() {
    return space;
  }

  public ReportCase number(int number) {
    return cases.get(number);
  }

  /** The symptoms that are not folded. */
  public List<Integer> weighed() {
    return weighed;
  }
}
