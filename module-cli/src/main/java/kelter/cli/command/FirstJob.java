package kelter.cli.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import kelter.core.job.Job;
import kelter.core.problem.InputException;
import kelter.core.quote.CallBack;

/** The job before a call-back, whose file lies beside it. */
public final class FirstJob {

  private FirstJob() {}

  /**
   * What the first job grants; that its file is not there is told.
   *
   * @param invocation the call, whose first argument names the later job
   * @param later that job
   * @return empty where the job is no call-back, or no guarantee holds
   */
  public static Optional<CallBack> grants(Invocation invocation, Job later) {
    Optional<String> first = later.progress().callBackOf();
    if (first.isEmpty()) {
      return Optional.empty();
    }
    Path file = invocation.jobFile().resolveSibling(first.get() + ".json");
    try {
      if (Files.isRegularFile(file)) {
        return CallBack.of(invocation.job(file).job(), later);
      }
    } catch (InputException unreadable) {
      invocation.terminal().complain("kelter: " + unreadable.problems().get(0).display());
    }
    invocation
        .terminal()
        .complain(
            "kelter: it is a call-back of %s, which is not beside it: see whether its guarantee holds"
                .formatted(first.get()));
    return Optional.empty();
  }
}
