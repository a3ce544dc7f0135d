package kelter.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Logs looked at and turned into readings; what is expected was put into them. */
class ReadingsCommandTest {

  private static final Path DEMO = Path.of("..", "demo");
  private static final String LOG = DEMO.resolve("logs/boiler-heating.csv").toString();

  @TempDir private Path folder;

  private String copy(String name) throws IOException {
    Path copy = folder.resolve(Path.of(name).getFileName());
    Files.copy(DEMO.resolve(name), copy);
    return copy.toString();
  }

  /** A log with off, on, a rise; 200 rows each, a row a second, seeded. */
  private String log() throws IOException {
    Random random = new Random(4);
    StringBuilder text = new StringBuilder("t [s];P [W];T\n");
    for (int i = 0; i < 600; i++) {
      double power = i < 200 ? 0 : 2000;
      double temperature = i < 400 ? 20 : 20 + 0.05 * (i - 400);
      text.append("%d;%.1f;%.2f%n".formatted(i, power, temperature + 0.02 * random.nextGaussian()));
    }
    return Files.writeString(folder.resolve("log.csv"), text.toString().replace(',', '.'))
        .toString();
  }

  @Test
  void theDemoLogIsRecognisedAndItsWindowsAreFound() {
    Console console = Console.run("readings", LOG);

    assertEquals(0, console.code(), console.err());
    String said = console.out().replaceAll("\\s+", " ");
    assertTrue(said.contains("columns between ';', decimal comma, headings in row 4"), said);
    assertTrue(said.contains("day, month, year and time of day"), said);
    assertTrue(said.contains("Gaps: 1, the longest: 12 s after row 304"), said);
    assertTrue(said.contains("Outliers, left in: 3388 W in row 216"), said);
    assertTrue(said.contains("Power from 0 to 3029 W at 14:03:39"), said);
    assertFalse(said.contains("Told in steps"), said);
    assertTrue(console.out().contains("|*****"), "a picture");
    assertTrue(console.widest() <= 80, console.out());
    assertEquals("", console.err());
  }

  /** A flow that is switched every minute by its own size, then stands at less than that. */
  @Test
  void aStretchThatSwingsAndALeadInTellOfTheDrift() throws IOException {
    StringBuilder text = new StringBuilder("t [s];Flow [L/min]\n");
    for (int i = 0; i < 800; i++) {
      int flow = i < 400 ? 10 * (i / 60 % 2) : 8;
      text.append(i).append(';').append(flow).append(i % 2 == 0 ? ".1\n" : ".0\n");
    }
    String log = Files.writeString(folder.resolve("swings.csv"), text).toString();
    String[] compare = {"readings", log, "--compare", "0s..350s,450s..799s"};

    String said = Console.run(compare).out().replaceAll("\\s+", " ");
    assertTrue(said.contains("within scatter and drift"), said);
    assertTrue(said.contains("of drift as 0s..350s shows it"), said);
    Console alone = Console.run("readings", log, "--lead-in", "0s..350s");
    assertEquals(1, alone.code());
    assertTrue(alone.err().contains("--compare"), alone.err());
    Console led =
        Console.run("readings", log, "--compare", "0s..59s,450s..799s", "--lead-in", "0s..350s");
    assertEquals(0, led.code(), led.err());
    assertTrue(led.out().replaceAll("\\s+", " ").contains("of drift as 0s..350s shows it"));
  }

  /** 100 rows, a row a second; every tenth is over range, as of a heater that breaks when warm. */
  private String broken() throws IOException {
    StringBuilder text = new StringBuilder("t [s];R [ohm]\n");
    for (int i = 0; i < 100; i++) {
      text.append(i).append(i % 10 == 5 ? ";OL\n" : i % 2 == 0 ? ";26.4\n" : ";26.5\n");
    }
    return Files.writeString(folder.resolve("ol.csv"), text).toString();
  }

  @Test
  void rowsOverRangeAreCountedByThemselves() throws IOException {
    Console console = Console.run("readings", broken(), "--window", "10s..29s");

    assertEquals(0, console.code(), console.err());
    String said = console.out().replaceAll("\\s+", " ");
    assertTrue(said.contains("Over range in 10 of 100 rows. "), said);
    assertTrue(said.contains("Over range in 10 of 100 rows: the figures"), said);
    assertTrue(said.contains("Over range in 2 of 20 rows: the figures"), said);
    assertFalse(said.contains("No value"), said);
    String json = Console.run("readings", "--format", "json", broken()).out();
    assertTrue(json.contains("\"over-range\" : 10"), json);
  }

  @Test
  void aMeanThatHidesRowsOverRangeIsNotWrittenIntoAJob() throws IOException {
    String job = copy("jobs/water-boiler.json");
    String before = Files.readString(Path.of(job));

    Console console =
        Console.run("readings", broken(), "--map", "R=heater.resistance", "--into", job);

    assertEquals(1, console.code());
    assertTrue(console.err().contains("over range in 10 rows of window 1"), console.err());
    assertTrue(console.err().contains("--window"), console.err());
    assertEquals(before, Files.readString(Path.of(job)));
    Console without =
        Console.run(
            "readings",
            broken(),
            "--map",
            "R=heater.resistance",
            "--window",
            "6s..14s",
            "--into",
            job);
    assertEquals(0, without.code(), without.err());
  }

  @Test
  void theSameLogGivesTheSameBytes() {
    assertEquals(Console.run("readings", LOG), Console.run("readings", LOG));
  }

  @Test
  void jsonCanBeReadAndHasTheWindows() throws IOException {
    Console console = Console.run("readings", "--format", "json", "--compare", "1,2", log());

    assertEquals(0, console.code(), console.err());
    try (JsonParser parser = new JsonFactory().createParser(console.out())) {
      while (parser.nextToken() != null) {
        continue;
      }
    }
    assertTrue(console.out().contains("\"kelter-readings/2\""));
    assertTrue(console.out().contains("\"difference\" : 2000"), console.out());
  }

  @Test
  void readingsAreWrittenIntoAJobAndNothingElseChanges() throws IOException {
    String job = copy("jobs/water-boiler.json");
    String before = Files.readString(Path.of(job));

    Console console =
        Console.run(
            "readings",
            log(),
            "--map",
            "P=heater.power",
            "--map",
            "T[Cel]=heater.heating-rate",
            "--window",
            "420s..560s",
            "--at",
            "volume=20 L",
            "--into",
            job);

    assertEquals(0, console.code(), console.err());
    assertTrue(console.out().replaceAll("\\s+", " ").contains("2 readings"), console.out());
    String after = Files.readString(Path.of(job));
    // 0.05 K/s are 3 K/min; the power was put in as 2000 W.
    assertTrue(after.contains("\"reading\": \"2000.0 W ± "), after);
    assertTrue(after.matches("(?s).*\"reading\": \"(3.0\\d*|2.99\\d*) K/min ± .*"), after);
    assertTrue(after.contains("\"volume\": \"20 L\""), after);
    String kept = before.replaceAll("\\s+", "");
    String prices = kept.substring(kept.indexOf("\"prices\""));
    assertTrue(after.replaceAll("\\s+", "").endsWith(prices), "what follows is as it was");

    Console check = Console.run("check", job);
    assertEquals(0, check.code(), check.err());
    assertTrue(check.out().contains("power against rated power"), check.out());

    Console again =
        Console.run(
            "readings", log(), "--map", "P=heater.power", "--window", "420s..560s", "--into", job);
    assertTrue(again.out().replaceAll("\\s+", " ").contains("Nothing was written"), again.out());
    assertEquals(after, Files.readString(Path.of(job)));
  }

  @Test
  void mapsAreRememberedInTheShopProfileAndUsedAgain() throws IOException {
    String job = copy("jobs/water-boiler.json");
    String shop = copy("logs/kelter-shop.json");

    Console first =
        Console.run(
            "readings",
            LOG,
            "--shop",
            shop,
            "--map",
            "Water=heater.heating-rate",
            "--instrument",
            "plug-in-meter",
            "--window",
            "14:04:00..14:07:00",
            "--into",
            job);
    assertEquals(0, first.code(), first.err());
    assertTrue(first.out().contains("Remembered"), first.out());
    assertTrue(first.out().contains("heater power: 3"), "what the profile knows is used too");
    String written = Files.readString(Path.of(job));
    assertTrue(written.contains("\"id\": \"plug-in-meter\""), "the job stands by itself");
    assertEquals(0, Console.run("check", job).code());
    assertTrue(Files.readString(Path.of(shop)).contains("heating-rate"));

    Console second =
        Console.run(
            "readings", LOG, "--shop", shop, "--window", "14:08:00..14:10:00", "--into", job);
    assertEquals(0, second.code(), second.err());
    assertTrue(second.out().contains("heating-rate"), second.out());
    assertFalse(second.out().contains("Remembered"), second.out());
  }

  @Test
  void whatCannotBeUsedIsToldAndNothingIsWritten() throws IOException {
    String job = copy("jobs/water-boiler.json");
    String shop = copy("logs/kelter-shop.json");
    String jobBefore = Files.readString(Path.of(job));
    String shopBefore = Files.readString(Path.of(shop));

    for (String[] wrong :
        new String[][] {
          {"--map", "Pwer=heater.power", "did you mean 'Power'?"},
          {"--map", "Power=heatr.power", "no component 'heatr'; did you mean 'heater'?"},
          {"--map", "Power=heater.powr", "did you mean 'power'?"},
          {"--map", "Power=heater.resistance", "a resistance is expected"},
          {"--map", "Power=heater", "is not of the form"},
          {"--map", "Power=heater.power", "name one, for instance --window"},
          {"--window", "99", "there is no such window"},
          {"--window", "5min", "is not a span"},
          {"--compare", "1", "is not two stretches"},
          {"--instrument", "none", "no column"},
          {"--encoding", "UTF-99", "not known"},
          {"--steady", "0 %", "tolerance"},
        }) {
      boolean mapped = !wrong[0].equals("--instrument");
      Console console =
          mapped
              ? Console.run("readings", LOG, wrong[0], wrong[1], "--shop", shop, "--into", job)
              : Console.run("readings", LOG, wrong[0], wrong[1], "--into", job);
      assertEquals(1, console.code(), wrong[1]);
      assertEquals("", console.out(), wrong[1]);
      assertTrue(console.err().contains(wrong[2]), wrong[1] + ": " + console.err());
      assertEquals(jobBefore, Files.readString(Path.of(job)), wrong[1]);
      assertEquals(shopBefore, Files.readString(Path.of(shop)), wrong[1]);
    }
  }

  @Test
  void aBadLogIsToldWithRowAndColumnAndNothingIsWritten() throws IOException {
    String job = copy("jobs/water-boiler.json");
    String before = Files.readString(Path.of(job));
    Path bad = folder.resolve("bad.csv");
    Files.writeString(bad, Files.readString(Path.of(log())) + "600;a lot;20.1\n599;2000.0;20.1\n");

    Console console =
        Console.run(
            "readings", bad.toString(), "--map", "P=heater.power", "--window", "2", "--into", job);

    assertEquals(1, console.code());
    assertTrue(
        console.err().contains("row 602, column 2 (P): 'a lot' is not a figure"), console.err());
    assertEquals(before, Files.readString(Path.of(job)));
  }

  @Test
  void signsThatTheTerminalLacksAreSpeltOut() {
    Console console = Console.run(StandardCharsets.US_ASCII, "readings", LOG);
    assertFalse(console.out().contains("?"), console.out());
  }
}
