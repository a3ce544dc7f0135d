package kelter.cli.batch;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.function.Function;
import java.util.function.Predicate;
import kelter.cli.json.AnswerJson;
import kelter.cli.json.output.JsonResult;
import kelter.cli.json.output.MadeBy;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonPlaces;
import kelter.core.file.json.JsonText;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;

/**
 * Answers requests of another program, one after the other: a line for each, at once. What is wrong
 * with a request is its answer, and the next one has its turn.
 */
public final class Answers {

  private static final String START = "a request is an object";

  private final Function<Request, JsonResult> work;
  private final MadeBy by;

  /**
   * Answers.
   *
   * @param work does what a request asks for; places in mistakes are those in its job
   * @param by who makes the results
   */
  public Answers(Function<Request, JsonResult> work, MadeBy by) {
    this.work = work;
    this.by = by;
  }

  /**
   * Answers until there are no more requests.
   *
   * @param requests a request in JSON on each line
   * @param told takes a line of JSON for each, with its line end; tells whether it arrived, so that
   *     nothing more is done where nobody listens
   * @throws IOException if the requests cannot be read
   */
  public void run(JobLines requests, Predicate<String> told) throws IOException {
    BatchJob line = requests.next();
    while (line != null && told.test(answer(line))) {
      line = requests.next();
    }
  }

  private String answer(BatchJob line) {
    Asked asked = new Asked(line);
    ResultLine result = ResultLine.of(line.name(), by, asked::result);
    return AnswerJson.of(asked.id, result.code(), result.text()).line(by);
  }

  /** A line on its way to a result. */
  private final class Asked {
    private final BatchJob line;
    private Json id = new Json.Null();

    private Asked(BatchJob line) {
      this.line = line;
    }

    private JsonResult result() throws Exception {
      byte[] bytes = line.bytes().call();
      Json content = JsonText.read(bytes, line.name(), START);
      id = Request.id(content);
      try {
        return done(Request.read(content));
      } catch (InputException mistakes) {
        String text = new String(bytes, StandardCharsets.UTF_8);
        throw JsonPlaces.found(line.name(), text, mistakes);
      }
    }

    private JsonResult done(Request request) {
      try {
        return work.apply(request);
      } catch (InputException mistakes) {
        throw new InputException(mistakes.problems().stream().map(Answers::inJob).toList());
      }
    }
  }

  /** A mistake in the job of a request, told at its place in the request. */
  private static Problem inJob(Problem problem) {
    return problem.where().startsWith("/")
        ? new Problem(
            problem.mistake(),
            "/job" + problem.where(),
            problem.what(),
            problem.remedy(),
            problem.place())
        : problem;
  }
}
