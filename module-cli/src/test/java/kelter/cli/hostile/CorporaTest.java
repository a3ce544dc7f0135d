package kelter.cli.hostile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonText;
import kelter.core.problem.InputException;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Two published collections of hostile input: JSONTestSuite by Nicolas Seriot and the Big List of
 * Naughty Strings by Max Woolf, both under the MIT licence, which lies beside them.
 */
class CorporaTest {

  private static final Path DEMO = Path.of("..", "demo");

  private static final Map<String, byte[]> JSON = new LinkedHashMap<>();
  private static final List<String> NAUGHTY = new ArrayList<>();

  @TempDir private Path folder;

  @BeforeAll
  static void read() throws IOException {
    for (String line :
        new String(resource("json-test-suite.txt"), StandardCharsets.UTF_8).lines().toList()) {
      if (!line.startsWith("#")) {
        String[] cells = line.split(" ", 2);
        JSON.put(cells[0], Base64.getDecoder().decode(cells[1]));
      }
    }
    JSON.put("n_structure_100000_opening_arrays", ascii("[".repeat(100_000)));
    JSON.put("n_structure_open_array_object", ascii("[{\"\":".repeat(50_000) + "\n"));
    byte[] list = resource("big-list-of-naughty-strings.json");
    for (Json text : ((Json.Arr) JsonText.read(list, "list", "")).items()) {
      NAUGHTY.add(((Json.Str) text).text());
    }
    assertEquals(318, JSON.size());
    assertEquals(515, NAUGHTY.size());
  }

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }

  private static byte[] resource(String name) throws IOException {
    try (InputStream in = CorporaTest.class.getResourceAsStream(name)) {
      return in.readAllBytes();
    }
  }

  private static Trial run(String given, String... arguments) {
    Trial trial = Trial.run(Clock.systemUTC(), List.of(arguments));
    assertEquals("", trial.wrong(false, given), () -> trial + " of " + given);
    return trial;
  }

  /** What the suite says of each file; where a name occurs twice is a mistake in files of ours. */
  @Test
  void jsonIsReadAsTheSuiteSays() {
    Set<String> refused = new TreeSet<>();
    for (Map.Entry<String, byte[]> file : JSON.entrySet()) {
      String name = file.getKey();
      if (name.startsWith("n_")) {
        assertThrows(InputException.class, () -> JsonText.read(file.getValue(), name, ""), name);
      } else if (name.startsWith("y_")) {
        try {
          JsonText.read(file.getValue(), name, "");
        } catch (InputException mistake) {
          refused.add(name);
        }
      }
    }
    assertEquals(Set.of("y_object_duplicated_key", "y_object_duplicated_key_and_value"), refused);
  }

  @Test
  void jsonAsJobAndShopProfile() throws IOException {
    String heater = DEMO.resolve("jobs/heater-fine.json").toString();
    for (Map.Entry<String, byte[]> each : JSON.entrySet()) {
      Path file = Files.write(folder.resolve("any.json"), each.getValue());
      String given = each.getKey() + new String(each.getValue(), StandardCharsets.UTF_8);
      assertEquals(1, run(given, "check", file.toString()).code(), each.getKey());
      assertEquals(1, run(given, "check", "--shop", file.toString(), heater).code(), each.getKey());
    }
  }

  /** Each in turn as the prices, the stock and a model of a shop. */
  @Test
  void jsonInTheFolderOfAShop() throws IOException {
    String heater = DEMO.resolve("jobs/heater-fine.json").toString();
    Path shop = folder.resolve("shop");
    run("", "shop", "init", shop.toString());
    List<String> names = List.of("prices.json", "stock.json", "models/any.json");
    int next = 0;
    for (Map.Entry<String, byte[]> each : JSON.entrySet()) {
      Path file = shop.resolve(names.get(next++ % names.size()));
      Files.write(file, each.getValue());
      String given = each.getKey() + new String(each.getValue(), StandardCharsets.UTF_8);
      assertEquals(1, run(given, "check", "--shop", shop.toString(), heater).code(), each.getKey());
      Files.delete(file);
    }
  }

  @Test
  void naughtyNamesOfModelsCodesAndJobs() throws IOException {
    Path shop = folder.resolve("shop");
    run("", "shop", "init", shop.toString());
    Files.copy(DEMO.resolve("jobs/healthy-washer.json"), shop.resolve("jobs/washer.json"));
    for (int i = 0; i + 1 < NAUGHTY.size(); i += 5) {
      String name = JsonText.write(new Json.Str(NAUGHTY.get(i))).strip();
      String code = JsonText.write(new Json.Str(NAUGHTY.get(i + 1))).strip();
      String model =
          """
          { "format": "kelter-model/1", "kind": "washer-extractor", "maker": %s, "model": %s,
            "codes": [{ "code": %s, "means": "heat" }],
            "source": { "document": %s, "standing": "invented" } }
          """
              .formatted(name, name, code, name);
      Files.writeString(shop.resolve("models/any.json"), model);
      Path job = folder.resolve("named.json");
      Files.writeString(
          job,
          Files.readString(shop.resolve("jobs/washer.json"))
              .replace("\"Tarnwell\"", name)
              .replace("\"Drum 9\"", name)
              .replace(
                  "\"symptoms\"", "\"displayed\": [{ \"code\": " + code + " }], \"symptoms\""));
      run(model, "check", "--shop", shop.toString(), job.toString());
      if (!NAUGHTY.get(i).startsWith("-")) {
        Files.delete(shop.resolve("models/any.json"));
        run(NAUGHTY.get(i), "check", "--shop", shop.toString(), NAUGHTY.get(i));
      }
    }
  }

  /** As it is where JSON stands, at a place that a job leaves to whoever writes it. */
  @Test
  void jsonWithinAJob() throws IOException {
    byte[] job = Files.readAllBytes(DEMO.resolve("jobs/heater-fine.json"));
    byte[] start = ascii("{ \"x-any\": ");
    int brace = new String(job, StandardCharsets.UTF_8).indexOf('{');
    for (Map.Entry<String, byte[]> each : JSON.entrySet()) {
      byte[] value = each.getValue();
      byte[] all = new byte[start.length + value.length + 1 + job.length - brace - 1];
      System.arraycopy(start, 0, all, 0, start.length);
      System.arraycopy(value, 0, all, start.length, value.length);
      all[start.length + value.length] = ',';
      System.arraycopy(
          job, brace + 1, all, start.length + value.length + 1, job.length - brace - 1);
      Path file = Files.write(folder.resolve("within.json"), all);
      String given = each.getKey() + new String(value, StandardCharsets.UTF_8);
      run(given, "check", "--format", "json", file.toString());
    }
  }

  @Test
  void naughtyQuantities() throws IOException {
    String job = DEMO.resolve("jobs/heater-fine.json").toString();
    for (int i = 0; i + 1 < NAUGHTY.size(); i++) {
      String power = "2kW±" + NAUGHTY.get(i);
      String voltage = NAUGHTY.get(i + 1);
      run(power + voltage, "compute", "heater-resistance", "power=" + power, "voltage=" + voltage);
    }
    for (int i = 0; i < NAUGHTY.size(); i += 16) {
      String text = NAUGHTY.get(i);
      run(text, "diagnose", "--what-if", "heater.resistance=" + text, job);
    }
  }

  @Test
  void naughtyTextsOfAJob() throws IOException {
    Matcher texts =
        Pattern.compile("(\"(maker|model|said|displayed)\": )\"[^\"]*\"")
            .matcher(Files.readString(DEMO.resolve("jobs/heater-fine.json")));
    for (int next = 0; next < NAUGHTY.size(); ) {
      StringBuilder job = new StringBuilder();
      texts.reset();
      while (texts.find()) {
        Json text = new Json.Str(NAUGHTY.get(next++ % NAUGHTY.size()));
        texts.appendReplacement(
            job, Matcher.quoteReplacement(texts.group(1) + JsonText.write(text).strip()));
      }
      Path file = Files.writeString(folder.resolve("naughty.json"), texts.appendTail(job));
      run(job.toString(), "check", "--format", next % 3 == 0 ? "text" : "json", file.toString());
    }
  }

  /** Five columns at a time, and each text once more in a row. */
  @Test
  void naughtyHeadingsAndCellsOfALog() throws IOException {
    for (int next = 0; next < NAUGHTY.size(); next += 5) {
      List<String> five = NAUGHTY.subList(next, Math.min(NAUGHTY.size(), next + 5));
      String cells =
          five.stream()
              .map(text -> ";\"" + text.replace("\"", "\"\"") + "\"")
              .collect(Collectors.joining());
      StringBuilder log = new StringBuilder("time;U (V)" + cells + "\n");
      for (int second = 0; second < 9; second++) {
        String row = second == 5 ? cells : ";1".repeat(five.size());
        log.append(second).append(";23").append(second % 2).append(row).append('\n');
      }
      Path file = Files.writeString(folder.resolve("naughty.csv"), log);
      String format = next % 2 == 0 ? "text" : "json";
      run(log.toString(), "readings", "--format", format, file.toString());
    }
  }
}
