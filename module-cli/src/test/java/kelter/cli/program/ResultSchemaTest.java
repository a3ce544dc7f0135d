package kelter.cli.program;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import kelter.cli.command.book.Booked;
import kelter.cli.json.NextJson;
import kelter.cli.json.PublishedSchema;
import kelter.cli.json.ResultFormat;
import kelter.cli.json.output.MadeBy;
import kelter.cli.wiring.Found;
import kelter.core.file.book.EntryLine;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonText;
import kelter.core.module.CalculationModule;
import kelter.core.workshop.Workshop;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The results of all commands on the demo jobs, held against their schemas. */
class ResultSchemaTest {

  private static final Path DEMO = Path.of("..", "demo");
  private static final Pattern KEBAB = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

  /** Members that a result tells only where there is something to tell. */
  private static final Set<String> MAY_BE_MISSING =
      Set.of("risks", "uncertainty", "reasons", "carbon", "if-declined", "accepted");

  /** Told where most trials give no result, for which no calculation is at hand. */
  private static final Set<String> SELDOM = Set.of("monte-carlo-refused");

  private static final Map<ResultFormat, List<Json.Obj>> RESULTS =
      new EnumMap<>(ResultFormat.class);

  private static final SchemaRegistry REGISTRY =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

  private static final Map<ResultFormat, Schema> SCHEMAS = new EnumMap<>(ResultFormat.class);

  @TempDir private static Path folder;

  @BeforeAll
  static void runEveryCommand() throws IOException {
    try (Stream<Path> jobs = Files.list(DEMO.resolve("jobs"))) {
      for (Path job : jobs.sorted().toList()) {
        runOn(job.toString());
      }
    }
    String heater = DEMO.resolve("jobs/dear-heater.json").toString();
    run("weigh", "--why", "--carbon", heater);
    run("simulate", "-n", "5", "--led", "1", heater);
    run("quote", "--final", "--number", "7", worked("dear-heater"));
    run("quote", "--final", worked("water-boiler"));
    run("quote", "--final", worked("tumble-dryer"));
    run("diagnose", misread());
    readings();
    proof();
    run("compute", "heater-resistance", "power=2 kW", "voltage=230 V");
    run("compute", "heater-resistance", "power=2 kW ± 5 %", "voltage=230 V ± 1 V", "--budget");
    Json.Obj modules = run("modules");
    for (Json module : array(modules, "modules")) {
      for (Json calculation : array(module, "calculations")) {
        run("compute", text(calculation, "id"));
      }
    }
    run("modules", "--coverage");
    book();
    next();
    run("instruments");
    run("schema");
    run(2, "check", "--no-such");
    run(1, "check", broken());
    Path plugins = Files.createDirectory(folder.resolve("plugins"));
    Files.writeString(plugins.resolve("broken.jar"), "no jar");
    run(1, "modules", "--plugins", plugins.toString());
  }

  /** A job with a mistake of a value, at a place of the file. */
  private static String broken() throws IOException {
    String washer = Files.readString(DEMO.resolve("jobs/washer-extractor.json"));
    return Files.writeString(folder.resolve("broken.json"), washer.replace("26.6 ohm", "26.6 kg"))
        .toString();
  }

  private static void runOn(String job) throws IOException {
    run("check", "--risk", job);
    Json.Obj diagnosis = run("diagnose", job);
    Json fault = array(diagnosis, "faults").get(0);
    run("diagnose", "--why", text(fault, "component") + "." + text(fault, "id"), job);
    run("diagnose", "--what-if", reading(job), job);
    run("weigh", "--why", job);
    run("prove", job);
    run("quote", job);
    run("quote", "--form", "json", job);
    run("simulate", "-n", "5", "--led", "0", job);
  }

  /** The first reading of a job, as it could be given to {@code --what-if}. */
  private static String reading(String job) throws IOException {
    Json read = array(json(Files.readString(Path.of(job))), "measurements").get(0);
    Json reading = member(read, "reading");
    String text =
        reading instanceof Json.Arr several
            ? ((Json.Str) several.items().get(0)).text()
            : text(read, "reading");
    return text(read, "of") + "." + text(read, "observable") + "=" + text;
  }

  /** A demo job with work in it, and tax rounded per line. */
  private static String worked(String name) throws IOException {
    String job = Files.readString(DEMO.resolve("jobs/" + name + ".json"));
    return Files.writeString(
            folder.resolve(name + "-worked.json"),
            job.replace(
                "\"prices\": {",
                """
                "work": [{ "title": "Mended", "time": "40 min", "date": "2026-11-28",
                  "parts": [{ "title": "Link", "price": "4 EUR" }] }],
                "accepted": { "option": 1, "title": "Mend it", "most": "90 EUR",
                  "date": "2026-11-27" },
                "prices": { "tax-rounding": "per line", "tax-rate-parts": "9 %","""))
        .toString();
  }

  /** The washer with a resistance that its heating denies, so that a reading is suspected. */
  private static String misread() throws IOException {
    String washer = Files.readString(DEMO.resolve("jobs/washer-extractor.json"));
    return Files.writeString(folder.resolve("misread.json"), washer.replace("26.6 ohm", "300 ohm"))
        .toString();
  }

  /** Logs with gaps and outliers, over range, and without times; windows, changes, readings. */
  private static void readings() throws IOException {
    String log = DEMO.resolve("logs/boiler-heating.csv").toString();
    Path job = Files.copy(DEMO.resolve("jobs/water-boiler.json"), folder.resolve("boiler.json"));
    run("readings", log, "--compare", "1,2");
    run(
        "readings",
        log,
        "--map",
        "Power=heater.power",
        "--map",
        "Voltage=heater.power.voltage",
        "--window",
        "14:05..14:08",
        "--into",
        job.toString());
    StringBuilder broken = new StringBuilder("R [ohm];Note\n");
    for (int i = 0; i < 100; i++) {
      broken.append(i % 10 == 5 ? "OL" : "26.4").append(";x\n");
    }
    Path over = Files.writeString(folder.resolve("over.csv"), broken);
    run("readings", over.toString(), "--every", "1 s", "--window", "10s..29s");
  }

  /** Work with parts, readings as left with the meter of those as found, and a test. */
  private static void proof() throws IOException {
    String job =
        Files.copy(DEMO.resolve("jobs/dear-heater.json"), folder.resolve("proved.json")).toString();
    String[] done = {"--part", "2 x Seal = 3.10 EUR", "--time", "25 min", "--by", "N. N."};
    String work = text(array(run("diagnose", job), "plan").get(0), "remedy");
    String[] words =
        Stream.concat(Stream.of("done", job, work), Stream.of(done)).toArray(String[]::new);
    Console recorded = Console.run(words);
    assertEquals(0, recorded.code(), recorded.err());
    run(
        "prove",
        job,
        "--read",
        reading(job),
        "--read",
        "supply-cord.protective-conductor-resistance=0.1 ohm",
        "--test",
        "look=met: all screws",
        "--saw",
        "stays-cold=no");
  }

  /** A question with a reading beside it, a reading, and work: no command but answer tells it. */
  private static void next() throws IOException {
    Workshop workshop = Workshop.of(Found.usual().modules());
    MadeBy by = new MadeBy("1", workshop.modules().stream().map(CalculationModule::about).toList());
    try (Stream<Path> jobs = Files.list(DEMO.resolve("jobs"))) {
      for (Path job : jobs.sorted().toList()) {
        String text = NextJson.of(workshop.open(workshop.read(job))).text(by);
        RESULTS.computeIfAbsent(ResultFormat.NEXT, any -> new ArrayList<>()).add(json(text));
      }
    }
  }

  /** A book of an entry that tells all there is, and of its call-back. */
  private static void book() throws IOException {
    String first = EntryLine.write(Booked.full("first"));
    String again =
        first.replace("\"job\":\"first\"", "\"job\":\"again\",\"call-back-of\":\"first\"");
    Path file = Files.writeString(folder.resolve("jobs.jsonl"), first + "\n" + again + "\n");
    String book = folder.resolve("book.db").toString();
    run("book", "add", "--book", book, file.toString());
    run("book", "import", "--book", book, file.toString());
    run("book", "list", "--book", book);
    run("book", "search", "--book", book, "cold");
    run("book", "similar", "--book", book, "again");
    run("book", "similar", "--book", book, "first");
    run("book", "backup", "--book", book, folder.resolve("copy.db").toString());
    run("book", "check", "--book", book);
    run("book", "stats", "--book", book);
    Path many = Files.write(folder.resolve("many.jsonl"), Booked.many());
    String filled = folder.resolve("filled.db").toString();
    run("book", "add", "--book", filled, many.toString());
    run("book", "stats", "--book", filled, "--hour-costs", "38 EUR");
  }

  private static Json.Obj run(String... words) {
    return run(0, words);
  }

  private static Json.Obj run(int code, String... words) {
    String[] all =
        Stream.concat(Stream.of(words), Stream.of("--format", "json")).toArray(String[]::new);
    Console console = Console.run(all);
    assertEquals(code, console.code(), String.join(" ", words) + "\n" + console.err());
    Json.Obj result = json(console.out());
    RESULTS.computeIfAbsent(format(result), any -> new ArrayList<>()).add(result);
    return result;
  }

  private static ResultFormat format(Json.Obj result) {
    String id = text(result, "format");
    return Stream.of(ResultFormat.values())
        .filter(format -> format.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no schema for " + id));
  }

  private static Json.Obj json(String text) {
    return (Json.Obj) JsonText.read(text.getBytes(StandardCharsets.UTF_8), "result", "");
  }

  private static Json member(Json object, String name) {
    return ((Json.Obj) object).members().get(name);
  }

  private static String text(Json object, String name) {
    return ((Json.Str) member(object, name)).text();
  }

  private static List<Json> array(Json object, String name) {
    return ((Json.Arr) member(object, name)).items();
  }

  private static List<String> problems(ResultFormat format, Json result) {
    return SCHEMAS
        .computeIfAbsent(format, any -> REGISTRY.getSchema(format.schema(), InputFormat.JSON))
        .validate(JsonText.write(result), InputFormat.JSON)
        .stream()
        .map(Object::toString)
        .toList();
  }

  @ParameterizedTest
  @EnumSource
  void everyResultIsAsItsSchemaSays(ResultFormat format) {
    for (Json.Obj result : RESULTS.get(format)) {
      assertEquals(List.of(), problems(format, result));
    }
  }

  /** So that no part of a schema goes untried, and none is left when a result changes. */
  @ParameterizedTest
  @EnumSource
  void everyMemberOfASchemaIsInSomeResult(ResultFormat format) {
    Set<String> told = new TreeSet<>();
    RESULTS
        .get(format)
        .forEach(result -> eachObject(result, (path, it) -> told.addAll(it.members().keySet())));
    Set<String> known = new TreeSet<>();
    eachObject(
        json(format.schema()),
        (path, it) -> {
          if (it.members().get("properties") instanceof Json.Obj properties) {
            known.addAll(properties.members().keySet());
          }
        });

    known.removeAll(told);
    known.removeAll(SELDOM);
    assertEquals(Set.of(), known);
  }

  @ParameterizedTest
  @EnumSource
  void allNamesAreKebabCase(ResultFormat format) {
    eachObject(
        RESULTS.get(format).get(0),
        (path, it) ->
            it.members().keySet().forEach(name -> assertTrue(KEBAB.matcher(name).matches(), name)));
  }

  @ParameterizedTest
  @EnumSource
  void aMemberWithAnotherNameIsRefusedAtEachPlace(ResultFormat format) {
    Json.Obj result = RESULTS.get(format).get(0);
    Set<String> tried = new TreeSet<>();
    eachObject(
        result,
        (path, it) -> {
          if (tried.add(path.replaceAll("\\d+", "#"))) {
            Json changed = replaced(result, it, it.with("camelCase", new Json.Str("1 V")));
            assertFalse(problems(format, changed).isEmpty(), path);
          }
        });
  }

  @ParameterizedTest
  @EnumSource
  void aMissingMemberIsRefused(ResultFormat format) {
    Json.Obj result = RESULTS.get(format).get(0);
    for (String name : result.members().keySet()) {
      Map<String, Json> less = new LinkedHashMap<>(result.members());
      less.remove(name);
      assertEquals(
          MAY_BE_MISSING.contains(name), problems(format, new Json.Obj(less)).isEmpty(), name);
    }
  }

  @Test
  void aWordThatIsNoneOfTheWordsIsRefused() {
    refused(ResultFormat.FINDINGS, "verdict", new Json.Str("passes"));
    refused(ResultFormat.DIAGNOSIS, "standing", new Json.Str("a rumour"));
    refused(ResultFormat.DIAGNOSIS, "hazard", new Json.Str("none"));
    refused(ResultFormat.WHAT_IF, "reason", new Json.Str("DECIDED"));
    refused(ResultFormat.COMPUTATION, "format", new Json.Str("kelter-computation/3"));
  }

  /** The ids that kelter modules tells beforehand, by the member of results that has them. */
  private static Map<String, Set<String>> toldBeforehand() {
    Json.Obj modules = RESULTS.get(ResultFormat.MODULES).get(0);
    Map<String, Set<String>> words = new LinkedHashMap<>();
    words.put("cautions", ids(array(modules, "cautions"), "id"));
    for (Json each : array(modules, "words")) {
      words.put(text(each, "member"), ids(array(each, "values"), "id"));
    }
    for (String ofWeighing : List.of("what-id", "rule-id", "assumptions")) {
      words.put(ofWeighing, words.get("weighing"));
    }
    return words;
  }

  private static Set<String> ids(List<Json> items, String member) {
    Set<String> ids = new TreeSet<>();
    for (Json item : items) {
      if (item instanceof Json.Obj object && object.members().get(member) instanceof Json.Str id) {
        ids.add(id.text());
      }
    }
    return ids;
  }

  /** The ids of a member, or of its items. */
  private static Set<String> ids(String name, Json value) {
    if (value instanceof Json.Arr array) {
      return ids(array.items(), name.equals("tests") ? "step" : "id");
    }
    return value instanceof Json.Str id ? Set.of(id.text()) : Set.of();
  }

  @ParameterizedTest
  @EnumSource
  void everyIdBesideWordsIsToldBeforehand(ResultFormat format) {
    Map<String, Set<String>> words = toldBeforehand();
    for (Json.Obj result : RESULTS.get(format)) {
      eachObject(
          result,
          (path, it) ->
              it.members()
                  .forEach(
                      (name, value) -> {
                        boolean only = value instanceof Json.Arr || name.endsWith("-id");
                        if (only && words.containsKey(name)) {
                          Set<String> unknown = new TreeSet<>(ids(name, value));
                          unknown.removeAll(words.get(name));
                          assertEquals(Set.of(), unknown, path + "/" + name);
                        }
                      }));
    }
  }

  /** What a schema lists is what the core may tell, no more and no less. */
  @ParameterizedTest
  @EnumSource
  void aSchemaListsTheIdsThatAreToldBeforehand(ResultFormat format) {
    Map<String, Set<String>> words = toldBeforehand();
    eachObject(
        json(format.schema()),
        (path, it) -> {
          String name = path.substring(path.lastIndexOf('/') + 1);
          Json of = path.endsWith("/properties/" + name) ? it : null;
          if (of == null || !words.containsKey(name)) {
            return;
          }
          if (name.endsWith("-id") && it.members().containsKey("enum")) {
            assertEquals(words.get(name), texts(array(it, "enum")), path);
          } else if (it.members().get("items") instanceof Json.Obj items
              && items.members().get("properties") instanceof Json.Obj properties
              && member(properties, "id") instanceof Json.Obj id
              && id.members().containsKey("enum")) {
            assertEquals(words.get(name), texts(array(id, "enum")), path);
          }
        });
  }

  private static Set<String> texts(List<Json> items) {
    Set<String> texts = new TreeSet<>();
    items.stream()
        .filter(Json.Str.class::isInstance)
        .forEach(item -> texts.add(((Json.Str) item).text()));
    return texts;
  }

  @Test
  void whatIsNoProbabilityIsRefused() {
    refused(ResultFormat.DIAGNOSIS, "probability", new Json.Num("1.0000000000000004"));
    refused(ResultFormat.EXPLANATION, "probability", new Json.Null());
    refused(ResultFormat.WEIGHING, "probability-of-cure", new Json.Num("-0.1"));
  }

  private static void refused(ResultFormat format, String name, Json value) {
    Json.Obj result =
        RESULTS.get(format).stream()
            .filter(each -> !holders(each, name).isEmpty())
            .findFirst()
            .orElseThrow();
    Json.Obj holder = holders(result, name).get(0);
    assertFalse(
        problems(format, replaced(result, holder, holder.with(name, value))).isEmpty(), name);
  }

  private static List<Json.Obj> holders(Json.Obj result, String name) {
    List<Json.Obj> holders = new ArrayList<>();
    eachObject(
        result,
        (path, it) -> {
          if (it.members().containsKey(name)) {
            holders.add(it);
          }
        });
    return holders;
  }

  /** Where two schemas define the same word, they define the same thing. */
  @Test
  void aDefinitionIsTheSameInEverySchema() {
    Map<String, Json> definitions = new LinkedHashMap<>();
    for (ResultFormat format : ResultFormat.values()) {
      if (member(json(format.schema()), "$defs") instanceof Json.Obj own) {
        own.members()
            .forEach(
                (name, definition) -> {
                  Json known = definitions.putIfAbsent(name, definition);
                  assertTrue(known == null || known.equals(definition), format + " " + name);
                });
      }
    }
  }

  @Test
  void schemaShowsWhatItLists() {
    List<Json> listed = array(run("schema"), "schemas");

    assertEquals(14 + ResultFormat.values().length, listed.size());
    for (Json each : listed) {
      Console console = Console.run("schema", text(each, "name"));
      assertEquals(0, console.code(), console.err());
      assertEquals(text(each, "id"), text(json(console.out()), "$id"));
      assertTrue(Console.run("schema").out().contains(text(each, "name") + ": "));
    }
    assertEquals(PublishedSchema.all().get(0).text(), Console.run("schema", "job").out());
    assertTrue(Console.run("schema", "diagnosi").err().contains("did you mean 'diagnosis'?"));
  }

  /** The objects of a value with their places in it. */
  private static void eachObject(Json value, BiConsumer<String, Json.Obj> to) {
    eachObject("", value, to);
  }

  private static void eachObject(String path, Json value, BiConsumer<String, Json.Obj> to) {
    if (value instanceof Json.Obj object) {
      to.accept(path, object);
      object.members().forEach((name, member) -> eachObject(path + "/" + name, member, to));
    } else if (value instanceof Json.Arr array) {
      for (int i = 0; i < array.items().size(); i++) {
        eachObject(path + "/" + i, array.items().get(i), to);
      }
    }
  }

  /** The value with one of its objects replaced, which is told by its identity. */
  private static Json replaced(Json value, Json.Obj old, Json.Obj by) {
    if (value == old) {
      return by;
    }
    if (value instanceof Json.Obj object) {
      Map<String, Json> members = new LinkedHashMap<>(object.members());
      members.replaceAll((name, member) -> replaced(member, old, by));
      return new Json.Obj(members);
    }
    if (value instanceof Json.Arr array) {
      return new Json.Arr(array.items().stream().map(item -> replaced(item, old, by)).toList());
    }
    return value;
  }
}
