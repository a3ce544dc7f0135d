package kelter.cli.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import kelter.cli.diagnosis.DiagnosisNote;
import kelter.cli.json.DiagnosisJson;
import kelter.cli.json.output.MadeBy;
import kelter.cli.wiring.Found;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonText;
import kelter.core.workshop.Workshop;
import org.junit.jupiter.api.Test;

class BatchTest {

  private static final Workshop WORKSHOP = Workshop.of(Found.usual().modules());
  private static final MadeBy BY = new MadeBy("1", List.of());
  private static final Path JOBS = Path.of("..", "demo", "jobs");

  private record Told(int code, List<Json.Obj> lines) {
    String text(int line, String name) {
      return ((Json.Str) lines.get(line).members().get(name)).text();
    }
  }

  private static Told run(BatchJob.Jobs jobs, int threads) throws IOException {
    List<String> lines = new ArrayList<>();
    Batch batch =
        new Batch(
            WORKSHOP,
            job ->
                DiagnosisJson.diagnosis(
                    WORKSHOP.open(job.job()), DiagnosisNote.AS_READ.each(job.notes())),
            BY);
    int code = batch.run(jobs, threads, lines::add);
    lines.forEach(line -> assertEquals(line.length() - 1, line.indexOf('\n'), line));
    return new Told(
        code,
        lines.stream()
            .map(line -> (Json.Obj) JsonText.read(line.getBytes(StandardCharsets.UTF_8), "x", ""))
            .toList());
  }

  private static JobLines lines(String text) {
    return new JobLines(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
  }

  private static String kettle(String id) {
    return "{\"format\": \"kelter-job/2\", \"id\": \""
        + id
        + "\","
        + " \"appliance\": {\"kind\": \"kettle\"}, \"symptoms\": {\"leaks\": \"yes\"}}";
  }

  /** More than are read ahead, a slow one among the first. */
  @Test
  void theOrderIsKept() throws IOException {
    List<String> ids = IntStream.range(0, 60).mapToObj(i -> "job-" + i).toList();
    String washer =
        Files.readString(JOBS.resolve("washer-extractor.json")).replaceAll("\\s*\n\\s*", " ");
    String text = washer + "\n" + String.join("\n", ids.stream().map(BatchTest::kettle).toList());
    Told told = run(lines(text), 2);

    assertEquals(0, told.code());
    assertEquals(61, told.lines().size());
    for (int i = 0; i < ids.size(); i++) {
      assertEquals(ids.get(i), told.text(i + 1, "job"));
    }
    assertEquals(told.lines(), run(lines(text), 1).lines(), "one thread says the same");
  }

  /** Each is as it is by itself. */
  @Test
  void aFolderIsReadByName() throws IOException {
    Told told = run(new JobFolder(JOBS), 2);
    List<Path> files;
    try (var all = Files.list(JOBS)) {
      files = all.sorted().toList();
    }
    assertEquals(files.size(), told.lines().size());
    for (int i = 0; i < files.size(); i++) {
      var alone = DiagnosisJson.diagnosis(WORKSHOP.open(WORKSHOP.read(files.get(i))), List.of());
      Json.Obj expected =
          (Json.Obj) JsonText.read(alone.line(BY).getBytes(StandardCharsets.UTF_8), "x", "");
      assertEquals(expected.members().get("ranking"), told.lines().get(i).members().get("ranking"));
    }
  }

  @Test
  void aJobThatCannotBeUsedHasItsMistakesInItsPlace() throws IOException {
    Told told = run(lines(kettle("a") + "\n\n{\"format\": 1}\n{,}\n" + kettle("b") + "\n"), 2);

    assertEquals(1, told.code());
    assertEquals(4, told.lines().size());
    assertEquals("a", told.text(0, "job"));
    assertEquals("kelter-errors/1", told.text(1, "format"));
    assertEquals("kelter-errors/1", told.text(2, "format"));
    assertTrue(JsonText.write(told.lines().get(2)).contains("input line 4"));
    assertEquals("b", told.text(3, "job"));
  }

  @Test
  void aLineThatIsTooLongIsToldAndPassedOver() throws IOException {
    Told told = run(lines("x".repeat(5 * 1024 * 1024) + "\n" + kettle("a")), 1);
    assertEquals(1, told.code());
    assertTrue(JsonText.write(told.lines().get(0)).contains("is longer than 4 MB"));
    assertEquals("a", told.text(1, "job"));
    assertNull(lines("\n \n").next());
  }
}
