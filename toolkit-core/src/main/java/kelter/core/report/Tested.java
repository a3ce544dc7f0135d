package kelter.core.report;

import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.check.Finding;
import kelter.core.check.Verdict;
import kelter.core.proof.Proof;
import kelter.core.safety.lockout.ReleaseTest;
import kelter.core.safety.lockout.ReleaseTest.Result;

/** How the tests after the work came out, a line for each step; the worst of a step counts. */
final class Tested {

  /** What is said of a step, the worst first. */
  private enum Said {
    NOT_MET("not as it must be"),
    CLOSE("too close to say"),
    NOT_DECIDED("measured, and not decided"),
    WITHOUT_LIMIT("measured; no limit is known for it here"),
    NOT_MEASURED("not measured"),
    MET("as it must be, by what was entered");

    private final String words;

    Said(String words) {
      this.words = words;
    }
  }

  private Tested() {}

  static Point of(Proof proof) {
    Map<String, EnumSet<Said>> steps = new LinkedHashMap<>();
    for (ReleaseTest test : proof.tests()) {
      if (test.result() != Result.NOT_APPLICABLE && !test.title().isEmpty()) {
        steps.computeIfAbsent(test.title(), title -> EnumSet.noneOf(Said.class)).add(said(test));
      }
    }
    List<String> answers =
        steps.entrySet().stream()
            .map(step -> step.getKey() + ": " + worst(step.getValue()) + ".")
            .toList();
    return Point.of("What was looked at and measured after the work?", answers);
  }

  private static String worst(EnumSet<Said> said) {
    String worst = said.iterator().next().words;
    return said.size() == 1 ? worst : "in part " + worst;
  }

  private static Said said(ReleaseTest test) {
    return switch (test.result()) {
      case MET -> Said.MET;
      case NOT_MET -> Said.NOT_MET;
      case UNDECIDED -> undecided(test.against());
      case NOT_MEASURED, NOT_APPLICABLE -> Said.NOT_MEASURED;
    };
  }

  /** A reading is not decided since it lies near its limit, or since nobody knows one. */
  private static Said undecided(Optional<Finding> against) {
    if (against.filter(each -> each.verdict() == Verdict.UNDECIDED).isPresent()) {
      return Said.CLOSE;
    }
    boolean limited =
        against
            .filter(
                each ->
                    Double.isFinite(each.limits().low()) || Double.isFinite(each.limits().high()))
            .isPresent();
    return limited ? Said.NOT_DECIDED : Said.WITHOUT_LIMIT;
  }
}
