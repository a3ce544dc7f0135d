package kelter.cli.program;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import kelter.cli.wiring.LampPlugin;
import kelter.cli.wiring.PluginJar;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whatever a plugin does wrong is told as its own, with the call and the reason. */
class BadPluginsTest {

  private static final String FLICKERS =
      "new kelter.core.vocabulary.Symptom(\"flickers\", \"flickers\", \"Does it flicker?\", 0.01, 0.01,"
          + " kelter.core.vocabulary.Symptom.Misreports.PLAIN, ";

  @TempDir private Path folder;
  private Path plugins;
  private Path job;
  private Path lampJob;

  @BeforeEach
  void jobs() throws IOException {
    plugins = Files.createDirectory(folder.resolve("plugins"));
    String heater = Files.readString(Path.of("..", "demo", "jobs", "dear-heater.json"));
    job = Files.writeString(folder.resolve("job.json"), heater);
    lampJob =
        Files.writeString(
            folder.resolve("lamp.json"),
            heater
                .replace(
                    "\"components\": [",
                    "\"components\": [ { \"id\": \"lamp\", \"kind\": \"strip-light\" }, ")
                .replace(
                    "\"measurements\": [",
                    "\"measurements\": [ { \"of\": \"lamp\", \"observable\": \"dark\","
                        + " \"reading\": \"yes\" }, "));
  }

  private Console run(LampPlugin plugin, String... arguments) {
    PluginJar.compile(plugins.resolve("bad.jar"), plugin.sources());
    String[] all = java.util.Arrays.copyOf(arguments, arguments.length + 2);
    all[arguments.length] = "--plugins";
    all[arguments.length + 1] = plugins.toString();
    return Console.run(all);
  }

  /** What it says but for the modules that were there. */
  private static String result(Console said) {
    return said.out().replaceFirst("(?s)\"made-by\" : \\{.*?\n  \\},", "");
  }

  private static void assertJson(Console said) throws IOException {
    try (JsonParser parser = new JsonFactory().createParser(said.out())) {
      while (parser.nextToken() != null) {
        continue;
      }
    }
  }

  /** One line of complaint, which names the plugin, says all of that, and hides no other. */
  private static void assertTold(Console said, String... words) {
    assertEquals(1, said.err().lines().filter(l -> l.contains("bad.jar")).count(), said.err());
    assertTrue(said.err().startsWith("kelter: plugin bad.jar"), said.err());
    for (String each : words) {
      assertTrue(said.err().contains(each), said.err());
    }
    assertFalse(said.err().contains("defect"), said.err());
  }

  @Test
  void aGoodOneTakesPart() throws IOException {
    Console said = run(new LampPlugin(), "diagnose", "--format", "json", lampJob.toString());
    assertEquals(0, said.code(), said.err());
    assertFalse(said.err().contains("bad.jar"), said.err());
    assertTrue(said.out().contains("lamp.open") || said.out().contains("\"open\""), said.out());
  }

  @Test
  void itsSymptomsAreWordsOfAJob() throws IOException {
    LampPlugin flickers =
        new LampPlugin().with("symptoms", "return List.of(" + FLICKERS + "List.of(\"leaks\")));");
    String lamp = Files.readString(lampJob).replace("stays-cold", "flickers");
    Files.writeString(lampJob, lamp);
    Console said = run(flickers, "check", lampJob.toString());
    assertEquals(0, said.code(), said.err());
    assertTrue(said.out().contains("Reported:  flickers"), said.out());
    assertTrue(run(flickers, "modules").out().contains("Does it flicker?"), "modules");
  }

  /** Faults while it is loaded: it is left out, the heater is diagnosed, 'modules' ends with 1. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "construct | if (spins) throw new IllegalStateException(\"not today\"); | loading | not today",
        "construct | deep(0); | loading | StackOverflowError",
        "about | return null; | about() | gives null",
        "about | throw new UnsupportedOperationException(); | about() | UnsupportedOperationException",
        "about | return new About(\"No Id\", \"x\", \"1\"); | about() | No Id",
        "calculations | return null; | calculations() | list of calculations is null",
        "calculations | return java.util.Arrays.asList(CURRENT, null); | calculations() | number 2 is null",
        "calculations | deep(0); return List.of(); | calculations() | StackOverflowError",
        "about | throw new kelter.core.problem.InputException(\"a\", \"b\", \"c\"); | about() | InputException",
        "parts | return null; | parts() | list of parts is null",
        "parts | throw new NoSuchMethodError(\"gone\"); | parts() | NoSuchMethodError: gone",
        "kinds | return null; | kinds() | list of kinds is null",
        "checks | return null; | checks() | list of checks is null",
        "weigher | return null; | weigher() | gives null",
        "about | return new About(\"electrical\", \"x\", \"1\"); | bad.jar | a module 'electrical' is loaded already",
        "symptoms | return null; | symptoms() | list of symptoms is null",
        "symptoms | return List.of(kelter.core.vocabulary.Symptoms.LEAKS); | bad.jar | there is a symptom 'leaks' already",
        "symptoms | return List.of("
            + FLICKERS
            + "List.of(\"dims\"))); | bad.jar | is hidden by one that nobody knows",
        "calculation | heater-resistance | bad.jar | there is a calculation 'heater-resistance' already",
        "kind | heater | bad.jar | the kind of component 'heater' has another meaning already",
        "check | door-switch-opens | bad.jar | there is a check 'door-switch-opens' already",
        "calculations | return List.of(CURRENT, CURRENT); | bad.jar | there is a calculation 'lamp-current' already",
      })
  void whileItIsLoaded(String piece, String java, String call, String reason) throws IOException {
    LampPlugin bad = new LampPlugin().with(piece, java);
    Console modules = run(bad, "modules");
    assertEquals(1, modules.code(), modules.err());
    assertTold(modules, call, reason, "left out");
    assertTrue(modules.out().contains("heater-resistance"), "the rest is there");
    assertFalse(modules.out().contains("Lamps"), modules.out());

    Console diagnosis = run(bad, "diagnose", "--format", "json", job.toString());
    assertEquals(0, diagnosis.code(), diagnosis.err());
    assertTold(diagnosis, call, reason);
    assertJson(diagnosis);
    assertEquals(
        result(Console.run("diagnose", "--format", "json", job.toString())), result(diagnosis));
  }

  /** Faults at work: what failed is left out, the heater is diagnosed. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "apply | throw new IllegalStateException(\"no light\"); | check 'lamp-lit' | IllegalStateException: no light",
        "apply | throw new IllegalArgumentException(\"no light\"); | check 'lamp-lit' | no light",
        "apply | return null; | check 'lamp-lit' | list of findings is null",
        "apply | return java.util.Collections.singletonList(null); | check 'lamp-lit' | number 1 is null",
        "apply | deep(0); return List.of(); | check 'lamp-lit' | StackOverflowError",
        "apply | return java.util.Collections.nCopies(20000, found(QuantityKind.POWER, kelter.core.check.Verdict.CONFORMS, 1).get(0)); | check 'lamp-lit' | gives 20000 findings",
        "apply | return found(null, kelter.core.check.Verdict.CONFORMS, 1); | check 'lamp-lit' | what a finding measured is null",
        "apply | return found(QuantityKind.POWER, null, 1); | check 'lamp-lit' | the verdict of a judgement is null",
        "apply | return found(QuantityKind.POWER, kelter.core.check.Verdict.CONFORMS, 0 / 0d); | check 'lamp-lit' | probability of conformity of NaN",
        "apply | return found(QuantityKind.VOLTAGE, kelter.core.check.Verdict.CONFORMS, 1); | check 'lamp-lit' | a voltage is not told in W",
        "models | throw new IllegalStateException(\"no model\"); | faultModels() | no model",
        "models | return null; | faultModels() | NullPointerException",
        "models | deep(0); return null; | faultModels() | StackOverflowError",
        "forecast | 0 / 0d | fault model 'lamp-of-plugin' | NaN",
        "forecast | 1.9 | fault model 'lamp-of-plugin' | 1.9",
        "forecast | deep(0) | fault model 'lamp-of-plugin' | StackOverflowError",
        "forecast | List.<Double>of().get(0) | fault model 'lamp-of-plugin' | IndexOutOfBoundsException",
        "forecast | Double.parseDouble(null) | fault model 'lamp-of-plugin' | NullPointerException",
      })
  void atWork(String piece, String java, String call, String reason) throws IOException {
    Console said =
        run(new LampPlugin().with(piece, java), "diagnose", "--format", "json", lampJob.toString());
    assertEquals(0, said.code(), said.err());
    assertTold(said, call, reason, "left out");
    assertJson(said);
    assertTrue(said.out().contains("\"wrong-part\""), "the heater is diagnosed");
  }

  @Test
  void aModelThatClaimsAnothersId() throws IOException {
    Console said =
        run(
            new LampPlugin().with("model", "heater"),
            "diagnose",
            "--format",
            "json",
            lampJob.toString());
    assertEquals(0, said.code(), said.err());
    assertTold(said, "fault model 'heater'", "has the id of another module's model");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "return null; | gives null",
        "return new double[] {0 / 0d}; | gives NaN for 'current'",
        "return new double[0]; | gives 0 values for 1 outputs",
        "return new double[] {deep(0)}; | StackOverflowError",
        "throw new ClassCastException(\"odd\"); | ClassCastException: odd",
      })
  void aCalculation(String law, String reason) {
    Console said =
        run(
            new LampPlugin().with("law", law),
            "compute",
            "lamp-current",
            "power=60W",
            "voltage=230V");
    assertEquals(1, said.code(), said.err());
    assertEquals("", said.out());
    assertTold(said, "calculation 'lamp-current'", reason);
  }

  @Test
  void aLawMayRefuseValuesThatDoNotGoTogether() {
    Console said =
        run(
            new LampPlugin()
                .with("law", "throw new IllegalArgumentException(\"power: too much\");"),
            "compute",
            "lamp-current",
            "power=60W",
            "voltage=230V");
    assertEquals(1, said.code());
    assertEquals("kelter: lamp-current: power: too much\n", said.err());
  }

  @Test
  void anotherWeighsWhereItsWeigherFails() throws IOException {
    LampPlugin bad =
        new LampPlugin()
            .with("about", "return new About(\"aaa-first\", \"Lamps\", \"1\");")
            .with("weigher", "return Optional.of(this);");
    Console said = run(bad, "weigh", "--format", "json", job.toString());
    assertEquals(0, said.code(), said.err());
    assertTold(said, "weigher, weigh()", "cannot weigh", "left out");
    assertEquals(result(Console.run("weigh", "--format", "json", job.toString())), result(said));
  }

  @Test
  void whatItPrintsStaysOutOfResults() throws IOException {
    LampPlugin bad =
        new LampPlugin()
            .with("apply", "System.out.println(\"hello \\u001b[31m\"); return List.of();")
            .with("construct", "System.out.print(\"}\");");
    Console said = run(bad, "diagnose", "--format", "json", lampJob.toString());
    assertEquals(0, said.code(), said.err());
    assertJson(said);
    assertFalse(said.out().contains("hello"), said.out());
    assertTrue(
        said.err()
            .contains(
                "plugin bad.jar, check 'lamp-lit': writes to standard output: 'hello <U+001B>[31m'"),
        said.err());
    assertTrue(said.err().contains("loading: writes to standard output: '}'"), said.err());
  }

  @Test
  void titlesOfItAreHarmless() {
    LampPlugin bad =
        new LampPlugin()
            .with(
                "about",
                "return new About(\"lamps\", \"\\u001b[31mLamps\\nDANGER\", \"\\u202e1\");");
    Console said = run(bad, "modules");
    assertEquals(0, said.code(), said.err());
    assertTrue(said.out().contains("lamps <U+202E>1: <U+001B>[31mLamps<U+000A>DANGER"), said.out());
  }

  @Test
  void aShopProfileMayNameTheFolder() throws IOException {
    PluginJar.compile(plugins.resolve("bad.jar"), new LampPlugin().sources());
    Path shop =
        Files.writeString(
            folder.resolve("shop.json"),
            "{\"format\": \"kelter-shop/1\", \"plugins\": \"plugins\"}");
    Console with = Console.run("check", "--shop", shop.toString(), lampJob.toString());
    assertEquals(0, with.code(), with.err());
    assertEquals(1, Console.run("check", lampJob.toString()).code(), "nothing is loaded unnamed");
  }
}
