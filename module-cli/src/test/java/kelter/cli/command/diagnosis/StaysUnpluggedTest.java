package kelter.cli.command.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import kelter.cli.program.Console;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Where a finding says to leave the machine unplugged, nothing is proposed that needs it to run.
 */
class StaysUnpluggedTest {

  private static final Path WASHER = Path.of("..", "demo", "jobs", "washer-extractor.json");
  private static final String GOOD = "> 200 MOhm";

  @TempDir private Path folder;

  private String job(String insulation) throws IOException {
    String text = Files.readString(WASHER);
    assertTrue(text.contains(GOOD), text);
    return Files.writeString(folder.resolve("job.json"), text.replace(GOOD, insulation)).toString();
  }

  @Test
  void noRunningMeasurementIsProposedAfterInsulationThatFails() throws IOException {
    String job = job("0.1 MOhm");

    String json = Console.run("diagnose", "--format", "json", job).out();
    assertTrue(json.contains("\"stays-unplugged\" : true"), json);
    assertFalse(json.contains("\"hazard\" : \"running\""), json);
    assertFalse(json.contains("\"hazard\" : \"live\""), json);
    assertTrue(json.contains("\"hazard\" : \"dead\""), json);

    Console text = Console.run("diagnose", "--full", job);
    assertEquals(0, text.code());
    String said = text.out().replaceAll("\\s+", " ");
    assertTrue(said.contains("The machine stays unplugged after these findings"), said);
    assertFalse(said.contains(" min, running;"), said);
  }

  @Test
  void aTingleIsEnough() throws IOException {
    String job = reporting("shock-felt", "yes");

    String json = Console.run("diagnose", "--format", "json", job).out();
    assertTrue(json.contains("\"stays-unplugged\" : true"), json);
    assertFalse(json.contains("\"hazard\" : \"running\""), json);

    String said = Console.run("check", job).out().replaceAll("\\s+", " ");
    assertTrue(said.contains("tingle at touchable metal yes: does not conform"), said);
    assertTrue(said.contains("Somebody felt current at touchable metal"), said);
    assertFalse(said.contains("It is reported that"), said);
  }

  private String reporting(String symptom, String answer) throws IOException {
    return reporting(WASHER, symptom, answer);
  }

  private String reporting(Path job, String symptom, String answer) throws IOException {
    String text = Files.readString(job);
    String before = "\"symptoms\": {";
    assertTrue(text.contains(before), text);
    String with = before + " \"%s\": \"%s\",".formatted(symptom, answer);
    return Files.writeString(folder.resolve("told.json"), text.replace(before, with)).toString();
  }

  @ParameterizedTest
  @CsvSource({
    "trips-rcd, yes, It trips: do not plug in",
    "trips-breaker, sometimes, It trips: do not plug in",
    "sparks, yes, Do not plug in",
    "smells-burnt, yes, Do not plug in"
  })
  void soIsAReportOfCurrentOrFire(String symptom, String answer, String words) throws IOException {
    String job = reporting(symptom, answer);

    String json = Console.run("diagnose", "--format", "json", job).out();
    assertTrue(json.contains("\"stays-unplugged\" : true"), json);
    assertFalse(json.contains("\"hazard\" : \"running\""), json);
    for (String command : new String[] {"check", "diagnose"}) {
      String said = Console.run(command, job).out().replaceAll("\\s+", " ");
      assertTrue(said.startsWith("! DANGER: " + words), said);
    }
    String said = Console.run("diagnose", "--full", job).out().replaceAll("\\s+", " ");
    assertTrue(said.contains("The machine stays unplugged after what was reported"), said);
  }

  @Test
  void toLeaveItAsItIsIsNoChoiceAfterSuchAReport() throws IOException {
    String sound = Files.readString(WASHER.resolveSibling("healthy-washer.json"));
    String prices = "\"parts\": {";
    assertTrue(sound.contains(prices), sound);
    Path healthy =
        Files.writeString(
            folder.resolve("sound.json"),
            sound.replace(
                prices,
                prices
                    + " \"supply-cord.renew-plug\": \"30 EUR\","
                    + " \"belt.renew-belt\": \"30 EUR\","));
    String job = reporting(healthy, "smells-burnt", "yes");

    String said = Console.run("weigh", job).out();
    assertTrue(said.startsWith("! DANGER: Do not plug in, do not run"), said);
    String before = Console.run("weigh", "--format", "json", healthy.toString()).out();
    assertTrue(before.contains("\"do-nothing\""), before);
    String after = Console.run("weigh", "--format", "json", job).out();
    assertFalse(after.contains("\"do-nothing\""), after);
  }

  @ParameterizedTest
  @ValueSource(strings = {"no", "not asked"})
  void nothingIsToFearOfWhatIsNotThere(String answer) throws IOException {
    String said = Console.run("diagnose", reporting("trips-rcd", answer)).out();
    assertFalse(said.contains("DANGER: It trips"), said);
    assertFalse(said.contains("stays unplugged"), said);
  }

  /**
   * A machine in order but for its insulation: to leave it as it is is offered before, not after.
   */
  @Test
  void toLeaveItAsItIsIsNoChoice() throws IOException {
    String healthy = Files.readString(WASHER.resolveSibling("healthy-washer.json"));
    Path sound = Files.writeString(folder.resolve("sound.json"), healthy);
    Path leaks = Files.writeString(folder.resolve("leaks.json"), healthy.replace(GOOD, "0.1 MOhm"));

    String before = Console.run("weigh", "--format", "json", sound.toString()).out();
    String after = Console.run("weigh", "--format", "json", leaks.toString()).out();

    assertTrue(before.contains("\"do-nothing\""), before);
    assertFalse(after.contains("\"do-nothing\""), after);
    assertTrue(after.contains("Insulation too low: do not plug in."), after);
    String said = Console.run("weigh", leaks.toString()).out();
    assertTrue(said.startsWith("! DANGER: Insulation too low: do not plug in."), said);
  }

  @Test
  void insulationIsNotReadWithAMultimeterNorOhmsWithAnInsulationTester() throws IOException {
    String text = Files.readString(WASHER);
    for (String[] wrong :
        new String[][] {
          {"insulation-resistance", "true-rms-meter"}, {"resistance", "insulation-tester"}
        }) {
      Path job =
          Files.writeString(
              folder.resolve("meter.json"),
              text.replace(
                  "{ \"of\": \"drain-pump\", \"observable\": \"noise\"",
                  "{ \"of\": \"heater\", \"observable\": \"%s\", \"reading\": \"26 Ohm\", \"instrument\": \"%s\" }, { \"of\": \"drain-pump\", \"observable\": \"noise\""
                      .formatted(wrong[0], wrong[1])));
      Console console = Console.run("check", job.toString());
      assertEquals(1, console.code(), console.out());
      assertTrue(console.err().contains("'" + wrong[1] + "' measures"), console.err());
    }
  }

  @Test
  void aMachineThatMayRunIsMeasuredRunning() throws IOException {
    String washer = WASHER.resolveSibling("heater-coarse.json").toString();

    String json = Console.run("diagnose", "--format", "json", washer).out();

    assertTrue(json.contains("\"stays-unplugged\" : false"), json);
    assertTrue(json.contains("\"hazard\" : \"running\""), json);
    assertFalse(json.contains("\"hazard\" : \"live\""), json);
  }

  @Test
  void aCompetentTechnicianIsNotSentToAMachineThatMustStayUnplugged() throws IOException {
    Path shop =
        Files.writeString(
            folder.resolve("shop.json"),
            "{ \"format\": \"kelter-shop/1\", \"competent-for-live-work\": true }");

    String json =
        Console.run("diagnose", "--format", "json", "--shop", shop.toString(), job("0.1 MOhm"))
            .out();

    assertFalse(json.contains("\"hazard\" : \"live\""), json);
    assertFalse(json.contains("\"hazard\" : \"running\""), json);
  }
}
