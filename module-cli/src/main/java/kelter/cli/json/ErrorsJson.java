package kelter.cli.json;

import java.io.IOException;
import java.util.List;
import kelter.cli.json.output.JsonOutput;
import kelter.cli.json.output.JsonResult;
import kelter.core.problem.FilePlace;
import kelter.core.problem.Problem;

/** Why there is no result, as a result. */
public final class ErrorsJson {

  private ErrorsJson() {}

  /**
   * What is wrong.
   *
   * @param exitCode the exit code of the process
   * @param problems one mistake or more
   * @return the result
   */
  public static JsonResult of(int exitCode, List<Problem> problems) {
    return new JsonResult(
        ResultFormat.ERRORS.id(),
        out -> {
          out.number("exit-code", exitCode);
          write("errors", out, problems);
        });
  }

  static void write(String name, JsonOutput out, List<Problem> problems) throws IOException {
    out.objects(name, problems, problem -> write(out, problem));
  }

  private static void write(JsonOutput out, Problem problem) throws IOException {
    FilePlace place = problem.place();
    out.text("code", problem.mistake().id());
    out.text("where", problem.where());
    out.text("pointer", isPointer(problem) ? problem.where() : null);
    out.text("file", place.isUnknown() ? null : place.file());
    out.number("line", place.line() == 0 ? Double.NaN : place.line());
    out.number("column", place.column() == 0 ? Double.NaN : place.column());
    out.text("message", problem.what());
    out.text("remedy", problem.remedy());
  }

  /** RFC 6901: the whole document is the empty pointer, all else begins with a slash. */
  private static boolean isPointer(Problem problem) {
    return problem.place().line() > 0
        && (problem.where().isEmpty() || problem.where().startsWith("/"));
  }
}
