package kelter.cli.program;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kelter.cli.json.ResultFormat;
import kelter.cli.json.output.MadeBy;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a program reads that asked for JSON and gets no result. */
class ErrorsAsJsonTest {

  @TempDir private Path folder;

  private static Json.Obj json(String text) {
    return (Json.Obj) JsonText.read(text.getBytes(StandardCharsets.UTF_8), "result", "");
  }

  private static List<Json.Obj> errors(int code, String... words) {
    String[] all =
        Stream.concat(Stream.of(words), Stream.of("--format", "json")).toArray(String[]::new);
    Console said = Console.run(all);
    assertEquals(code, said.code(), said.out() + said.err());
    assertFalse(said.err().isEmpty(), "a person is told as well");
    var schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(ResultFormat.ERRORS.schema(), InputFormat.JSON);
    assertEquals(List.of(), schema.validate(said.out(), InputFormat.JSON), said.out());
    Json.Obj result = json(said.out());
    assertEquals(new Json.Num(String.valueOf(code)), result.members().get("exit-code"));
    return ((Json.Arr) result.members().get("errors"))
        .items().stream().map(Json.Obj.class::cast).toList();
  }

  private static String text(Json.Obj error, String name) {
    return ((Json.Str) error.members().get(name)).text();
  }

  private static void assertPlace(Json.Obj error, String pointer, int line, int column) {
    assertEquals(pointer, text(error, "pointer"));
    assertEquals(new Json.Num(String.valueOf(line)), error.members().get("line"));
    assertEquals(new Json.Num(String.valueOf(column)), error.members().get("column"));
  }

  private String job(String text) throws IOException {
    return Files.writeString(folder.resolve("job.json"), text).toString();
  }

  /** Lines and columns are counted in the text that stands here, from 1. */
  @Test
  void mistakesOfAJobHavePointersLinesAndColumns() throws IOException {
    String job =
        job(
            """
            {
              "format": "kelter-job/2",
              "id": "a-1",
              "appliance": { "kind": "kettle", "components": [
                { "id": "heater", "figures": { "volume": "2 kg" } }
              ] },
              "sympotms": { "leaks": "yes" },
              "symptoms": { "leaks": "maybe", "leeks": 4 }
            }
            """);
    List<Json.Obj> errors = errors(1, "diagnose", job);

    Json.Obj name =
        errors.stream().filter(e -> text(e, "code").equals("unknown-name")).findFirst().get();
    assertPlace(name, "/sympotms", 7, 3);
    assertEquals("did you mean 'symptoms'?", text(name, "remedy"));
    Json.Obj unit =
        errors.stream().filter(e -> text(e, "pointer").endsWith("/volume")).findFirst().get();
    assertPlace(unit, "/appliance/components/0/figures/volume", 5, 36);
    assertEquals("unusable", text(unit, "code"));
    assertEquals(job, text(unit, "file"));
    Json.Obj word =
        errors.stream().filter(e -> text(e, "pointer").equals("/symptoms/leaks")).findFirst().get();
    assertEquals("unknown-word", text(word, "code"));
  }

  /** The comma stands before the bracket of the third line. */
  @Test
  void aTextThatIsNoJsonHasALine() throws IOException {
    Json.Obj error = errors(1, "check", job("{\n  \"format\": \"kelter-job/2\",\n}\n")).get(0);

    assertEquals("not-json", text(error, "code"));
    assertEquals("", text(error, "pointer"));
    assertEquals(new Json.Num("3"), error.members().get("line"));
  }

  @Test
  void otherSortsHaveNoPlace() {
    Json.Obj file = errors(1, "check", folder.resolve("none.json").toString()).get(0);
    assertEquals("file", text(file, "code"));
    assertEquals(new Json.Null(), file.members().get("pointer"));
    assertEquals(new Json.Null(), file.members().get("line"));
    assertEquals(
        "missing", text(errors(1, "compute", "heater-resistance", "power=2 kW").get(0), "code"));
    assertEquals(
        "unknown-name",
        text(
            errors(1, "compute", "heater-resistance", "power=2 kW", "voltage=230 V", "volts=1 V")
                .get(0),
            "code"));
  }

  @Test
  void everyMistakeOfACommandLineIsTold() {
    List<Json.Obj> errors = errors(2, "check", "--no-such", "a", "b", "c");
    assertTrue(errors.size() >= 2, errors.toString());
    errors.forEach(error -> assertEquals("usage", text(error, "code")));
    assertEquals("Try 'kelter check --help'.", text(errors.get(0), "remedy"));
    assertEquals("usage", text(errors(2, "chekc").get(0), "code"));
  }

  @Test
  void withoutJsonNothingIsToldOnStandardOutput() {
    assertEquals("", Console.run("check", "--no-such", "a").out());
    assertEquals("", Console.run("check", folder.resolve("none.json").toString()).out());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "bench",
        "sheet job.json",
        "report job.json",
        "close job.json",
        "completion bash",
        "man",
        "shop init x"
      })
  void aCommandForPeopleSaysSo(String command) {
    String told = text(errors(2, command.split(" ")).get(0), "message");
    assertTrue(told.contains("has no result as JSON; leave --format away"), told);
    String[] help =
        Stream.concat(Stream.of(command.split(" ")), Stream.of("--help")).toArray(String[]::new);
    assertFalse(Console.run(help).out().contains("--format"));
  }

  /** Nothing is left over: the others have results, or write a file that is JSON. */
  @Test
  void allOtherCommandsHaveJson() {
    Set<String> forPeople =
        Commands.usages().stream()
            .filter(usage -> !usage.hasJson())
            .map(usage -> usage.name())
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(
        Set.of(
            "bench",
            "close",
            "completion",
            "done",
            "man",
            "reopen",
            "report",
            "sheet",
            "shop forget",
            "shop init",
            "shop person"),
        forPeople);
  }

  private static Set<String> ids(Json.Obj result, String array) {
    return ((Json.Arr) result.members().get(array))
        .items().stream()
            .map(item -> text((Json.Obj) item, "id"))
            .collect(Collectors.toCollection(TreeSet::new));
  }

  /** Words that the demo's jobs and the README use. */
  @Test
  void modulesTellTheWordsOfJobs() {
    Json.Obj modules = json(Console.run("modules", "--format", "json").out());

    assertTrue(ids(modules, "kinds").containsAll(Set.of("kettle", "washer-extractor")));
    assertTrue(ids(modules, "components").containsAll(Set.of("heater", "drain-pump")));
    assertTrue(ids(modules, "symptoms").containsAll(Set.of("leaks", "stays-cold")));
    Json.Obj pump =
        ((Json.Arr) modules.members().get("components"))
            .items().stream()
                .map(Json.Obj.class::cast)
                .filter(kind -> text(kind, "id").equals("drain-pump"))
                .findFirst()
                .orElseThrow();
    Json.Obj head =
        ((Json.Arr) pump.members().get("observables"))
            .items().stream()
                .map(Json.Obj.class::cast)
                .filter(each -> text(each, "id").equals("head"))
                .findFirst()
                .orElseThrow();
    assertEquals("m", text(head, "unit"));
    assertTrue(ids(head, "conditions").containsAll(Set.of("flow", "temperature")));
    List<Json> units = ((Json.Arr) modules.members().get("units")).items();
    assertTrue(units.containsAll(List.of(new Json.Str("Ohm"), new Json.Str("[psi]"))));
  }

  @Test
  void aResultTellsWhoMadeIt() {
    Json.Obj result = json(Console.run("instruments", "--format", "json").out());
    Json.Obj by = (Json.Obj) result.members().get("made-by");

    assertEquals(MadeBy.version(), text(by, "kelter"));
    assertEquals(Set.of("costing", "electrical", "hydraulics"), ids(by, "modules"));
  }
}
