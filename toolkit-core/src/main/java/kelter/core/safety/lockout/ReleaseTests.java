package kelter.core.safety.lockout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kelter.core.check.Finding;
import kelter.core.check.Limits;
import kelter.core.job.Measurement;
import kelter.core.job.Measurement.Stage;
import kelter.core.job.work.TestDone;
import kelter.core.safety.ProtectionClass;
import kelter.core.safety.lockout.ReleaseTest.Result;
import kelter.core.safety.lockout.table.Retest;
import kelter.core.vocabulary.Observable;

/** The tests on the way back to power as they stand. */
record ReleaseTests(Situation situation) {

  /** What only a machine with a protective conductor has. */
  private static final Set<String> OF_CLASS_ONE =
      Set.of("protective-conductor-resistance", "protective-conductor-current");

  /** The step that only says to keep what was read. */
  private static final String WRITING_DOWN = "record";

  /** All tests, in order. */
  List<ReleaseTest> of(List<StepsFor> steps) {
    List<ReleaseTest> tests = new ArrayList<>();
    for (StepsFor step : steps) {
      if (step.id().equals(WRITING_DOWN)) {
        continue;
      }
      if (step.read().isEmpty()) {
        tests.add(looked(step, Optional.empty()));
      }
      for (Retest retest : step.read()) {
        tests.addAll(read(step, retest));
      }
    }
    return tests;
  }

  /**
   * The tests that are open before anything is read under power: all up to the first that is read
   * under power.
   */
  static List<ReleaseTest> openBeforePower(List<ReleaseTest> tests) {
    List<ReleaseTest> open = new ArrayList<>();
    for (ReleaseTest test : tests) {
      if (test.powered() && test.awaited().isPresent()) {
        return open;
      }
      if (test.isOpen()) {
        open.add(test);
      }
    }
    return open;
  }

  private Optional<TestDone> written(StepsFor step) {
    return situation.job().progress().tests().stream()
        .filter(each -> each.step().equals(step.id()))
        .findFirst();
  }

  /**
   * What somebody wrote. A figure in it is held against its limit, whatever else was written; where
   * several are read at the step, they stand in its order with semicolons between, and one that is
   * neither told nor said to be met was not measured.
   */
  private ReleaseTest looked(StepsFor step, Optional<Retest> awaited) {
    Optional<TestDone> done = written(step);
    Optional<Observable> observable = awaited.flatMap(this::observable);
    Optional<Limits> limits = awaited.flatMap(this::limits);
    Result said =
        done.map(each -> each.met() ? Result.MET : Result.NOT_MET).orElse(Result.NOT_MEASURED);
    Result result = said;
    if (awaited.isPresent() && said == Result.MET) {
      List<String> told = List.of(done.get().note().split(";"));
      int place = step.read().indexOf(awaited.get());
      String own = place < told.size() ? told.get(place) : "";
      Retest first = step.read().get(0);
      boolean apart =
          done.get().note().contains(";")
              || NotedFigure.of(told.get(0), observable(first), limits(first)).isPresent();
      result =
          NotedFigure.of(own, observable, limits)
              .map(NotedFigure::result)
              .orElse(apart && !isSaidMet(own) ? Result.NOT_MEASURED : said);
    }
    return new ReleaseTest(
        step.id(),
        step.title(),
        step.text(),
        step.powered(),
        "",
        "",
        observable,
        limits,
        Optional.empty(),
        result,
        done.map(TestDone::note).orElse("").replaceFirst(";\\s*$", ""));
  }

  private static boolean isSaidMet(String own) {
    return own.strip().startsWith(ReleaseTest.MET_ALONE);
  }

  private List<ReleaseTest> read(StepsFor step, Retest retest) {
    Optional<ProtectionClass> of = situation.job().appliance().nameplate().protectionClass();
    boolean without = of.isPresent() && of.get() != ProtectionClass.I;
    List<ReleaseTest> tests = new ArrayList<>();
    for (String component : situation.readable(retest.of(), retest.observable())) {
      if (without && OF_CLASS_ONE.contains(retest.observable())) {
        tests.add(
            test(step, component, retest, Optional.empty(), Result.NOT_APPLICABLE)
                .noting("class " + of.get().name() + ": no protective conductor"));
      } else {
        tests.add(read(step, component, retest));
      }
    }
    return tests.isEmpty() ? List.of(looked(step, Optional.of(retest))) : tests;
  }

  private ReleaseTest read(StepsFor step, String component, Retest retest) {
    Optional<TestDone> written = written(step);
    if (written.isPresent() && !written.get().met()) {
      return test(step, component, retest, Optional.empty(), Result.NOT_MET)
          .noting(written.get().note());
    }
    Optional<Measurement> last = Optional.empty();
    for (Measurement each : situation.job().measurements(component, retest.observable())) {
      last = each.stage() == Stage.AS_LEFT ? Optional.of(each) : last;
    }
    List<Finding> findings =
        last.map(situation.judge()).orElse(List.of()).stream()
            .filter(each -> each.component().equals(component))
            .filter(each -> each.observable().equals(retest.observable()))
            .toList();
    Result result = Result.of(findings);
    Optional<Finding> deciding =
        findings.stream().filter(each -> Result.of(each.verdict()) == result).findFirst();
    if (last.isPresent() && result == Result.NOT_MEASURED) {
      String why = deciding.map(Finding::remark).orElse("no limit is known for it");
      return test(step, component, retest, deciding, Result.UNDECIDED)
          .noting("read " + last.get().shown() + "; " + why);
    }
    String note = written.isPresent() && last.isEmpty() ? "written as met, without a reading" : "";
    return test(step, component, retest, deciding, result).noting(note);
  }

  private Optional<Limits> limits(Retest retest) {
    return new MachineFigures(situation).limits(retest.observable());
  }

  private Optional<Observable> observable(Retest retest) {
    return retest.of().stream()
        .flatMap(kind -> situation.vocabulary().observable(kind, retest.observable()).stream())
        .findFirst();
  }

  private ReleaseTest test(
      StepsFor step, String component, Retest retest, Optional<Finding> against, Result result) {
    return new ReleaseTest(
        step.id(),
        step.title(),
        step.text(),
        step.powered(),
        component,
        retest.observable(),
        observable(retest),
        Optional.empty(),
        against,
        result,
        "");
  }
}
