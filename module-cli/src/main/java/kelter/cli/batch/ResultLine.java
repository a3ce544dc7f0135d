package kelter.cli.batch;

import java.util.List;
import java.util.concurrent.Callable;
import kelter.cli.json.ErrorsJson;
import kelter.cli.json.output.JsonResult;
import kelter.cli.json.output.MadeBy;
import kelter.core.problem.InputException;
import kelter.core.problem.Mistake;
import kelter.core.problem.Problem;

/**
 * A result on a line, or the mistakes in its place.
 *
 * @param text JSON with a line end
 * @param code 0 done; 1 the input cannot be used; 3 a defect of the program
 */
record ResultLine(String text, int code) {

  private static final int BAD_INPUT = 1;
  private static final int DEFECT = 3;

  /**
   * Does work. Whatever goes wrong is told and goes no further, so that the next line has its turn.
   *
   * @param name what the input is called where a defect is told
   * @param by who makes the result
   * @param work makes the result
   * @return the line
   */
  static ResultLine of(String name, MadeBy by, Callable<JsonResult> work) {
    try {
      return new ResultLine(work.call().line(by), 0);
    } catch (InputException unusable) {
      return new ResultLine(ErrorsJson.of(BAD_INPUT, unusable.problems()).line(by), BAD_INPUT);
    } catch (Exception | LinkageError | StackOverflowError defect) {
      Problem told = new Problem(Mistake.DEFECT, name, defect.toString(), "");
      return new ResultLine(ErrorsJson.of(DEFECT, List.of(told)).line(by), DEFECT);
    }
  }
}
