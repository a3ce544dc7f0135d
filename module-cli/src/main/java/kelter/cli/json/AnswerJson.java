package kelter.cli.json;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import kelter.cli.json.output.JsonResult;
import kelter.core.file.json.Json;

/** What is told for a request: the result of a command beside the id of the request. */
public final class AnswerJson {

  private static final String FORMAT = "kelter-answer/1";

  private AnswerJson() {}

  /**
   * An answer.
   *
   * @param id the id of the request; null where it could not be read
   * @param exitCode how the command would have ended as a process of its own
   * @param result its result or its errors, JSON
   * @return the answer
   */
  public static JsonResult of(Json id, int exitCode, String result) {
    return new JsonResult(
        FORMAT,
        out -> {
          out.json("id", id);
          out.number("exit-code", exitCode);
          out.written("result", result.strip());
        });
  }

  /** The JSON Schema of an answer. */
  static String schema() {
    return resource("kelter-answer-1.schema.json");
  }

  /** The JSON Schema of a request. */
  static String requestSchema() {
    return resource("kelter-request-1.schema.json");
  }

  private static String resource(String name) {
    try (InputStream in = AnswerJson.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
