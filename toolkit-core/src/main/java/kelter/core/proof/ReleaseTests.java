package kelter.core.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kelter.core.check.Finding;
import kelter.core.job.Component;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.Measurement.Stage;
import kelter.core.job.work.TestDone;
import kelter.core.proof.ReleaseTest.Result;
import kelter.core.safety.ProtectionClass;
import kelter.core.safety.lockout.Retest;
import kelter.core.safety.lockout.StepsFor;
import kelter.core.workshop.Case;

/** The tests on the way back to power as they stand. */
final class ReleaseTests {

  /** What only a machine with a protective conductor has. */
  private static final Set<String> OF_CLASS_ONE =
      Set.of("protective-conductor-resistance", "protective-conductor-current");

  /** The step that only says to keep what was read. */
  private static final String WRITING_DOWN = "record";

  private final Case machine;
  private final Job job;

  ReleaseTests(Case machine) {
    this.machine = machine;
    this.job = machine.job();
  }

  /** All tests, in order. */
  List<ReleaseTest> all() {
    List<ReleaseTest> tests = new ArrayList<>();
    for (StepsFor step : machine.backToPower()) {
      if (step.id().equals(WRITING_DOWN)) {
        continue;
      }
      if (step.read().isEmpty()) {
        tests.add(looked(step));
      }
      for (Retest retest : step.read()) {
        tests.addAll(read(step, retest));
      }
    }
    return tests;
  }

  private ReleaseTest looked(StepsFor step) {
    Optional<TestDone> done =
        job.progress().tests().stream().filter(each -> each.step().equals(step.id())).findFirst();
    Result result =
        done.map(each -> each.met() ? Result.MET : Result.NOT_MET).orElse(Result.NOT_MEASURED);
    return new ReleaseTest(
        step.id(),
        step.title(),
        step.text(),
        step.powered(),
        "",
        "",
        Optional.empty(),
        result,
        done.map(TestDone::note).orElse(""));
  }

  private List<ReleaseTest> read(StepsFor step, Retest retest) {
    Optional<ProtectionClass> of = job.appliance().nameplate().protectionClass();
    boolean without = of.isPresent() && of.get() != ProtectionClass.I;
    List<ReleaseTest> tests = new ArrayList<>();
    for (Component component : job.appliance().components()) {
      boolean readable =
          retest.of().contains(component.kind())
              && machine.vocabulary().observable(component.kind(), retest.observable()).isPresent();
      if (readable && without && OF_CLASS_ONE.contains(retest.observable())) {
        tests.add(
            test(step, component, retest, Optional.empty(), Result.NOT_APPLICABLE)
                .noting("class " + of.get().name() + ": no protective conductor"));
      } else if (readable) {
        tests.add(read(step, component, retest));
      }
    }
    return tests.isEmpty() ? List.of(looked(step)) : tests;
  }

  private ReleaseTest read(StepsFor step, Component component, Retest retest) {
    Optional<TestDone> written =
        job.progress().tests().stream().filter(each -> each.step().equals(step.id())).findFirst();
    if (written.isPresent() && !written.get().met()) {
      return test(step, component, retest, Optional.empty(), Result.NOT_MET)
          .noting(written.get().note());
    }
    Optional<Measurement> last = Optional.empty();
    for (Measurement each : job.measurements(component.id(), retest.observable())) {
      last = each.stage() == Stage.AS_LEFT ? Optional.of(each) : last;
    }
    List<Finding> findings =
        last.map(machine::judged).orElse(List.of()).stream()
            .filter(each -> each.component().equals(component.id()))
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

  private static ReleaseTest test(
      StepsFor step, Component component, Retest retest, Optional<Finding> against, Result result) {
    return new ReleaseTest(
        step.id(),
        step.title(),
        step.text(),
        step.powered(),
        component.id(),
        retest.observable(),
        against,
        result,
        "");
  }
}
