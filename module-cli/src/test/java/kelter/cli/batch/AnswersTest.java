package kelter.cli.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import kelter.cli.json.NextJson;
import kelter.cli.json.PublishedSchema;
import kelter.cli.json.output.MadeBy;
import kelter.cli.wiring.Found;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonText;
import kelter.core.workshop.Workshop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AnswersTest {

  private static final Workshop WORKSHOP = Workshop.of(Found.usual().modules());
  private static final MadeBy BY = new MadeBy("1", List.of());
  private static final String KETTLE =
      "{\"format\": \"kelter-job/2\", \"id\": \"k\", \"appliance\": {\"kind\": \"kettle\"},"
          + " \"symptoms\": {\"leaks\": \"yes\"}}";
  private static final String GOOD = request("\"good\"", "next", ", \"job\": " + KETTLE);

  private static String request(String id, String command, String more) {
    return "{\"id\": " + id + ", \"command\": \"" + command + "\"" + more + "}";
  }

  private static List<Json.Obj> answers(String lines) throws IOException {
    List<Json.Obj> all = new ArrayList<>();
    new Answers(AnswersTest::next, BY)
        .run(
            new JobLines(new ByteArrayInputStream(lines.getBytes(StandardCharsets.UTF_8))),
            line -> {
              assertEquals(line.length() - 1, line.indexOf('\n'), line);
              assertEquals(List.of(), schema("answer").validate(line, InputFormat.JSON), line);
              return all.add(
                  (Json.Obj) JsonText.read(line.getBytes(StandardCharsets.UTF_8), "answer", ""));
            });
    return all;
  }

  private static kelter.cli.json.output.JsonResult next(Request request) {
    if (request.readings().contains("defect")) {
      throw new IllegalStateException("a defect");
    }
    return NextJson.of(WORKSHOP.open(WORKSHOP.read(request.job()).job()));
  }

  private static Schema schema(String name) {
    String text =
        PublishedSchema.all().stream()
            .filter(each -> each.name().equals(name))
            .findFirst()
            .orElseThrow()
            .text();
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
        .getSchema(text, InputFormat.JSON);
  }

  private static String text(Json.Obj answer, String name) {
    return JsonText.line(answer.members().get(name)).strip();
  }

  @Test
  void eachRequestHasItsAnswerInTheOrderOfTheRequests() throws IOException {
    List<Json.Obj> answers =
        answers(GOOD + "\n\n" + GOOD.replace("\"good\"", "7.50") + "\r\n" + GOOD);

    assertEquals(3, answers.size());
    assertEquals("\"good\"", text(answers.get(0), "id"));
    assertEquals("7.50", text(answers.get(1), "id"), "an id comes back as it was written");
    assertEquals("0", text(answers.get(2), "exit-code"));
    assertTrue(text(answers.get(2), "result").contains("kelter-next/2"));
  }

  /** The request after it is answered as if nothing had been. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "no JSON",
        "{",
        "[]",
        "7",
        "\"text\"",
        "null",
        "{}",
        "{\"id\": 1}",
        "{\"id\": null, \"command\": \"next\"}",
        "{\"id\": \"\", \"command\": \"modules\"}",
        "{\"id\": {\"a\": 1}, \"command\": \"modules\"}",
        "{\"id\": 1, \"command\": \"erase\"}",
        "{\"id\": 1, \"command\": 5}",
        "{\"id\": 1, \"command\": \"next\"}",
        "{\"id\": 1, \"command\": \"next\", \"job\": []}",
        "{\"id\": 1, \"command\": \"next\", \"job\": {}}",
        "{\"id\": 1, \"command\": \"next\", \"job\": \"/etc/passwd\"}",
        "{\"id\": 1, \"command\": \"modules\", \"job\": {}}",
        "{\"id\": 1, \"command\": \"explain\", \"job\": {}}",
        "{\"id\": 1, \"command\": \"what-if\", \"job\": {}, \"readings\": []}",
        "{\"id\": 1, \"command\": \"what-if\", \"job\": {}, \"readings\": [7]}",
        "{\"id\": 1, \"id\": 2, \"command\": \"modules\"}",
        "{\"id\": 1, \"command\": \"modules\", \"file\": \"/etc/passwd\"}",
        "{\"id\": 1, \"command\": \"modules\"} {\"id\": 2}"
      })
  void whatCannotBeUsedIsToldAndPassedOver(String hostile) throws IOException {
    List<Json.Obj> answers = answers(hostile + "\n" + GOOD);

    assertEquals(2, answers.size());
    assertEquals("1", text(answers.get(0), "exit-code"));
    assertTrue(text(answers.get(0), "result").contains("kelter-errors/1"));
    assertEquals("0", text(answers.get(1), "exit-code"));
  }

  /** What the schema of requests takes, the reader takes, and the other way about. */
  @Test
  void theSchemaOfRequestsSaysTheSame() {
    Schema schema = schema("request");
    assertEquals(List.of(), schema.validate(GOOD, InputFormat.JSON));
    for (String wrong :
        List.of(
            GOOD.replace("next", "erase"),
            GOOD.replace("\"good\"", "null"),
            GOOD.replace("next", "explain"),
            GOOD.replace("next", "what-if"),
            GOOD.replace("next", "modules"),
            request("1", "next", ""),
            request("1", "check", ", \"job\": {}, \"fault\": \"a.b\""))) {
      assertFalse(schema.validate(wrong, InputFormat.JSON).isEmpty(), wrong);
    }
  }

  @Test
  void aLineThatIsTooLongIsToldAndPassedOver() throws IOException {
    List<Json.Obj> answers = answers("x".repeat(5 * 1024 * 1024) + "\n" + GOOD);
    assertTrue(text(answers.get(0), "result").contains("is longer than 4 MB"));
    assertEquals("null", text(answers.get(0), "id"));
    assertEquals("\"good\"", text(answers.get(1), "id"));
  }

  @Test
  void aMistakeInTheJobIsToldAtItsPlaceInTheRequest() throws IOException {
    String wrong = GOOD.replace("\"kettle\"", "\"kettel\"").replace("\"leaks\"", "\"leeks\"");
    String result = text(answers(wrong).get(0), "result");
    assertTrue(result.contains("\"pointer\":\"/job/symptoms/leeks\""), result);
    assertTrue(result.contains("\"line\":1"), result);
  }

  @Test
  void aDefectIsToldAndTheNextOneHasItsTurn() throws IOException {
    String defect =
        request("1", "what-if", ", \"job\": " + KETTLE + ", \"readings\": [\"defect\"]");
    List<Json.Obj> answers = answers(defect + "\n" + GOOD);
    assertEquals("3", text(answers.get(0), "exit-code"));
    assertEquals("1", text(answers.get(0), "id"));
    assertEquals("0", text(answers.get(1), "exit-code"));
  }

  /** Nobody listens any more. */
  @Test
  void itEndsWhereAnAnswerIsLost() throws IOException {
    int[] told = {0};
    new Answers(AnswersTest::next, BY)
        .run(
            new JobLines(
                new ByteArrayInputStream(
                    (GOOD + "\n" + GOOD + "\n").getBytes(StandardCharsets.UTF_8))),
            line -> {
              told[0]++;
              return false;
            });
    assertEquals(1, told[0]);
  }
}
