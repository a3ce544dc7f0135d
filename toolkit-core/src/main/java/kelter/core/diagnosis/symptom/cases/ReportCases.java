package kelter.core.diagnosis.symptom.cases;

import java.util.ArrayList;
import java.util.List;
import kelter.core.diagnosis.symptom.Reports;

/**
 * Tells the cases of {@link Tracking} apart. For each symptom that hides others: it is there, or it
 * is absent, unless it does not matter because what it hides is hidden already. For each no that is
 * not folded and not hidden: {@code a ((1 - o) [absent] + o)} is the sum of two cases, absent with
 * {@code a (1 - o)}, and whatever is so with {@code a o}.
 */
final class ReportCases {

  private enum Stand {
    TRACKED,
    THERE,
    ABSENT,
    FOLDED,
    OPEN
  }

  private final Reports reports;
  private final List<Integer> hiding;
  private final List<Integer> asked;
  private final List<Integer> folded;
  private final List<Integer> everywhere;
  private final Stand[] stand;
  private final List<ReportCase> found = new ArrayList<>();

  private ReportCases(Reports reports, List<Integer> folded, List<Integer> everywhere) {
    this.reports = reports;
    this.folded = folded;
    this.everywhere = everywhere;
    this.stand = new Stand[reports.count()];
    this.asked = new ArrayList<>();
    for (int i = 0; i < stand.length; i++) {
      stand[i] = Stand.OPEN;
      if (reports.report(i).tells()) {
        asked.add(i);
      }
    }
    this.hiding = hiding();
  }

  /**
   * The cases.
   *
   * @param reports what was reported
   * @param folded the symptoms whose causes are overlooked
   * @param everywhere those that are tracked in every case
   */
  static List<ReportCase> of(Reports reports, List<Integer> folded, List<Integer> everywhere) {
    ReportCases cases = new ReportCases(reports, folded, everywhere);
    cases.decideHiding(0);
    return List.copyOf(cases.found);
  }

  /** Those that hide one that was asked for; what is not hidden itself goes first. */
  private List<Integer> hiding() {
    List<Integer> all = new ArrayList<>();
    for (int i : asked) {
      for (int masker : reports.symptom(i).maskers()) {
        if (!all.contains(masker)) {
          all.add(masker);
        }
      }
    }
    all.sort((a, b) -> Integer.compare(maskers(a), maskers(b)));
    return all;
  }

  private int maskers(int symptom) {
    return reports.symptom(symptom).maskers().length;
  }

  private void decideHiding(int place) {
    if (place == hiding.size()) {
      decideAsked(0);
      return;
    }
    int symptom = hiding.get(place);
    if (matters(symptom)) {
      stand[symptom] = Stand.THERE;
      decideHiding(place + 1);
      stand[symptom] = Stand.ABSENT;
      decideHiding(place + 1);
    } else {
      decideHiding(place + 1);
    }
    stand[symptom] = Stand.OPEN;
  }

  private boolean matters(int symptom) {
    boolean matters = asked.contains(symptom) && !isHidden(symptom);
    for (int each : asked) {
      for (int masker : reports.symptom(each).maskers()) {
        matters |= masker == symptom && !isHidden(each);
      }
    }
    return matters;
  }

  private boolean isHidden(int symptom) {
    for (int masker : reports.symptom(symptom).maskers()) {
      if (stand[masker] == Stand.THERE) {
        return true;
      }
    }
    return false;
  }

  private void decideAsked(int place) {
    if (place == asked.size()) {
      found.add(asItStands());
      return;
    }
    int symptom = asked.get(place);
    if (hiding.contains(symptom) || isHidden(symptom)) {
      decideAsked(place + 1);
    } else if (folded.contains(symptom)) {
      decide(symptom, Stand.FOLDED, place);
    } else if (isSplit(symptom)) {
      decide(symptom, Stand.ABSENT, place);
      decide(symptom, Stand.OPEN, place);
    } else {
      decide(symptom, Stand.TRACKED, place);
    }
  }

  private void decide(int symptom, Stand as, int place) {
    stand[symptom] = as;
    decideAsked(place + 1);
    stand[symptom] = Stand.OPEN;
  }

  private boolean isSplit(int symptom) {
    return !hiding.contains(symptom)
        && !folded.contains(symptom)
        && !everywhere.contains(symptom)
        && Double.isFinite(Tracking.overlooked(reports.report(symptom)));
  }

  private ReportCase asItStands() {
    List<Integer> tracked = new ArrayList<>();
    List<Integer> overlooked = new ArrayList<>();
    int there = 0;
    int absent = 0;
    boolean[] hidden = new boolean[stand.length];
    boolean[] split = new boolean[stand.length];
    for (int i = 0; i < stand.length; i++) {
      boolean fixed = everywhere.contains(i);
      if (stand[i] == Stand.TRACKED || stand[i] == Stand.THERE || fixed) {
        there |= stand[i] == Stand.THERE ? 1 << tracked.size() : 0;
        absent |= stand[i] == Stand.ABSENT ? 1 << tracked.size() : 0;
        tracked.add(i);
      } else if (stand[i] != Stand.OPEN) {
        overlooked.add(i);
      }
      hidden[i] = isHidden(i);
      split[i] = asked.contains(i) && isSplit(i);
    }
    int[] fold = new int[overlooked.size()];
    double[] how = new double[fold.length];
    for (int i = 0; i < fold.length; i++) {
      fold[i] = overlooked.get(i);
      how[i] = stand[fold[i]] == Stand.FOLDED ? Tracking.overlooked(reports.report(fold[i])) : 0;
    }
    int[] bits = new int[tracked.size()];
    for (int i = 0; i < bits.length; i++) {
      bits[i] = tracked.get(i);
    }
    return new ReportCase(bits, there, absent, fold, how, hidden, split);
  }
}
