package kelter.cli.program;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import kelter.cli.command.book.Booked;
import kelter.cli.json.ResultFormat;
import kelter.cli.usage.CommandUsage;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonText;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * What every command does where JSON is asked for: a result that tells who made it, a file of a
 * published format, or one sentence.
 */
class FormatJsonTest {

  private static final Path DEMO = Path.of("..", "demo");

  /** They print a file that goes back in, which has a format and a schema of its own. */
  private static final Map<String, String> FILES =
      Map.of(
          "new", "kelter-job/",
          "model learn", "kelter-model/",
          "book learn", "kelter-learned/",
          "book export", "kelter-book-entry/");

  /** It reads requests, and each answer has the result of another command: see AnswersTest. */
  private static final String REQUESTS = "answer";

  @TempDir private Path folder;
  private final Map<String, List<String>> calls = new LinkedHashMap<>();

  /** One call of each command that gives something. */
  @BeforeEach
  void calls() throws IOException {
    String job = DEMO.resolve("jobs/dear-heater.json").toString();
    Path healthy = DEMO.resolve("jobs/healthy-washer.json");
    Path lines = Files.write(folder.resolve("many.jsonl"), Booked.many());
    String book = folder.resolve("book.db").toString();
    assertEquals(0, Console.run("book", "add", "--book", book, lines.toString()).code());
    String entry = ((Json.Str) json(Files.readAllLines(lines).get(0)).members().get("job")).text();
    String learned = folder.resolve("learned.json").toString();
    calls.put("new", List.of("kettle"));
    String open = Files.copy(healthy, folder.resolve("open.json")).toString();
    calls.put("enter", List.of(open, "--saw", "leaks=no"));
    calls.put("check", List.of(job));
    calls.put("diagnose", List.of(job));
    calls.put("weigh", List.of(job));
    calls.put("quote", List.of(job));
    calls.put("prove", List.of(job));
    calls.put("simulate", List.of("-n", "2", "--led", "0", job));
    calls.put("readings", List.of(DEMO.resolve("logs/boiler-heating.csv").toString()));
    calls.put("compute", List.of("heater-resistance", "power=2 kW", "voltage=230 V"));
    calls.put("modules", List.of());
    calls.put("instruments", List.of());
    calls.put("schema", List.of());
    calls.put("model learn", List.of("--in-order", healthy.toString()));
    calls.put("book add", List.of("--book", book, lines.toString()));
    calls.put("book import", List.of("--book", book, lines.toString()));
    calls.put("book list", List.of("--book", book));
    calls.put("book show", List.of("--book", book, entry));
    calls.put("book search", List.of("--book", book, "cold"));
    calls.put("book similar", List.of("--book", book, entry));
    calls.put("book learn", List.of("--book", book, "-o", learned));
    calls.put("book stats", List.of("--book", book));
    calls.put("book export", List.of("--book", book));
    calls.put("book backup", List.of("--book", book, folder.resolve("copy.db").toString()));
    calls.put("book check", List.of("--book", book));
  }

  private static Json.Obj json(String text) {
    return (Json.Obj) JsonText.read(text.getBytes(StandardCharsets.UTF_8), "result", "");
  }

  private static Console asJson(String command, List<String> more) {
    return Console.run(
        Stream.of(Stream.of(command.split(" ")), more.stream(), Stream.of("--format", "json"))
            .flatMap(words -> words)
            .toArray(String[]::new));
  }

  private static void assertMade(Json.Obj result, String command) {
    Json.Obj by = (Json.Obj) result.members().get("made-by");
    assertTrue(by.members().get("kelter") instanceof Json.Str, command);
    List<Json> modules = ((Json.Arr) by.members().get("modules")).items();
    for (Json module : modules) {
      assertEquals(
          List.of("id", "version"), List.copyOf(((Json.Obj) module).members().keySet()), command);
    }
  }

  @Test
  void everyCommandGivesJsonOrRefusesInOneSentence() {
    List<String> tried = new ArrayList<>();
    for (CommandUsage usage : Commands.usages()) {
      String name = usage.name();
      if (usage.hasJson()) {
        if (!name.equals(REQUESTS)) {
          Console console = asJson(name, calls.get(name));
          assertEquals(0, console.code(), name + console.err());
          assertGiven(name, console.out());
        }
      } else {
        Console console = asJson(name, List.of());
        assertEquals(2, console.code(), name);
        assertTrue(console.err().contains("has no result as JSON"), name + console.err());
        assertMade(json(console.out()), name);
      }
      tried.add(name);
    }
    assertEquals(Commands.NAMES, tried);
  }

  private static void assertGiven(String name, String out) {
    String first = name.equals("book export") ? out.lines().findFirst().orElseThrow() : out;
    Json.Obj result = json(first);
    String format = ((Json.Str) result.members().get("format")).text();
    if (FILES.containsKey(name)) {
      assertTrue(format.startsWith(FILES.get(name)), name + " " + format);
    } else {
      assertMade(result, name);
    }
  }

  /** So that no result of a command, nor of an answer, can do without. */
  @ParameterizedTest
  @EnumSource
  void everySchemaWantsToKnowWhoMadeTheResult(ResultFormat format) {
    List<Json> required = ((Json.Arr) json(format.schema()).members().get("required")).items();

    assertTrue(required.contains(new Json.Str("made-by")), format.id());
  }

  @Test
  void whatSpeaksToPeopleIsRefused() {
    String job = DEMO.resolve("jobs/dear-heater.json").toString();
    for (List<String> words :
        List.of(
            List.of("--version"),
            List.of("--help"),
            List.of("help"),
            List.of("diagnose", "--help"),
            List.of("prove", "--led", job))) {
      Console console = asJson(String.join(" ", words), List.of());
      assertEquals(2, console.code(), words + console.out());
      assertTrue(console.err().contains("has no result as JSON; leave --format away"), words + "");
      assertMade(json(console.out()), words.toString());
    }
  }

  @Test
  void aPageBesideDoesNotTakeTheResultAway() {
    String job = DEMO.resolve("jobs/dear-heater.json").toString();
    String page = folder.resolve("quotation.html").toString();
    Console console = asJson("quote", List.of("-o", page, job));

    assertEquals(0, console.code(), console.err());
    assertMade(json(console.out()), "quote -o");
    assertTrue(Files.exists(Path.of(page)));

    Console made = asJson("new", List.of("kettle", "-o", folder.resolve("k.json").toString()));
    assertTrue(made.out().contains("kelter-job/"), made.out());
  }
}
