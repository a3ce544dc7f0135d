package kelter.core.job;

import java.util.List;
import java.util.Optional;
import kelter.core.job.work.Accepted;
import kelter.core.job.work.Closing;
import kelter.core.job.work.TestDone;
import kelter.core.job.work.WorkDone;
import kelter.core.problem.Required;

/**
 * What was done in a job and what came of it. Readings after the work stand among the measurements
 * of the job, with their stage.
 *
 * @param work what was done, in its order
 * @param tests the tests without a figure that were made after the work, each step once
 * @param symptoms what the machine does after the work, each symptom once
 * @param closing how it ended, once it is closed
 * @param callBackOf the id of the job that it follows, if the owner called again
 * @param accepted the offer that the owner took before the work, if that is told
 */
public record Progress(
    List<WorkDone> work,
    List<TestDone> tests,
    List<SymptomReport> symptoms,
    Optional<Closing> closing,
    Optional<String> callBackOf,
    Optional<Accepted> accepted) {

  /** Nothing was done yet. */
  public static final Progress NONE =
      new Progress(
          List.of(), List.of(), List.of(), Optional.empty(), Optional.empty(), Optional.empty());

  /** Checks that nothing is null. */
  public Progress {
    work = Required.list(work, "work of a job");
    tests = Required.list(tests, "tests of a job");
    symptoms = Required.list(symptoms, "symptoms after the work");
    Required.optional(closing, "closing of a job");
    Required.optional(callBackOf, "job before a call-back");
    Required.optional(accepted, "accepted offer of a job");
  }

  /**
   * Whether anything was mended.
   *
   * @return true if work was recorded
   */
  public boolean isWorked() {
    return !work.isEmpty();
  }
}
