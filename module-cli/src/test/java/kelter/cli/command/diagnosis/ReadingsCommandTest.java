package kelter.cli.command.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import kelter.cli.program.Console;
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
    assertTrue(console.out().contains("\"kelter-readings/4\""));
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

  /** What is added stands in one piece; without it the file is what it was, to the byte. */
  @Test
  void aJobLaidOutByHandStaysAsItIs() throws IOException {
    Path job = Path.of(copy("jobs/water-boiler.json"));
    String laidOut =
        Files.readString(job)
            .replace("\n", "\r\n")
            .replaceFirst("\\{", "{\r\n\r\n\t")
            .replace("\": \"", "\" :\t\"");
    Files.writeString(job, laidOut);
    String[] call = {
      "readings", log(), "--map", "P=heater.power", "--window", "420s..560s", "--into",
    };
    List<String> words = new ArrayList<>(List.of(call));
    words.add(job.toString());

    Console console = Console.run(words.toArray(String[]::new));

    assertEquals(0, console.code(), console.err());
    String after = Files.readString(job);
    int from = 0;
    while (laidOut.charAt(from) == after.charAt(from)) {
      from++;
    }
    int added = after.length() - laidOut.length();
    assertEquals(laidOut, after.substring(0, from) + after.substring(from + added));
    assertTrue(after.substring(from, from + added).contains("2000.0 W"), after);
    assertFalse(after.replace("\r\n", "").contains("\n"), "line ends are those of the file");
  }

  /** Two megabytes on one line grew to seven before, and were refused then. */
  @Test
  void aLargeJobGrowsByItsReadingsOnly() throws IOException {
    Path job = Path.of(copy("jobs/water-boiler.json"));
    StringBuilder rest = new StringBuilder(",\"x-old\":[0");
    rest.append(",{\"n\":1,\"t\":\"x\"}".repeat(130_000)).append("]}");
    String small = Files.readString(job).replaceAll("\n *", "");
    Files.writeString(job, small.substring(0, small.length() - 1) + rest);
    long before = Files.size(job);

    Console console =
        Console.run(
            "readings",
            log(),
            "--map",
            "P=heater.power",
            "--window",
            "420s..560s",
            "--into",
            job.toString());

    assertEquals(0, console.code(), console.err());
    assertTrue(before > 2_000_000 && Files.size(job) < before + 500, before + ", then more");
    assertEquals(0, Console.run("check", job.toString()).code());
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

  private String written(String text) throws IOException {
    return Files.writeString(folder.resolve("written.csv"), text).toString();
  }

  /** A meter that chooses its range: half of the rows in W, half in kW, about 1 kW throughout. */
  private String ranging() throws IOException {
    StringBuilder text = new StringBuilder("t [s];Value;Unit\n");
    for (int i = 0; i < 100; i++) {
      text.append(i).append(i % 2 == 0 ? ";999.5;W\n" : ";1.0005;kW\n");
    }
    return written(text.toString());
  }

  @Test
  void unitsThatSwitchAreReadInOne() throws IOException {
    String job = copy("jobs/water-boiler.json");
    Console console =
        Console.run("readings", ranging(), "--map", "Value=heater.power", "--into", job);

    assertEquals(0, console.code(), console.err());
    assertTrue(Files.readString(Path.of(job)).contains("\"reading\": \"1000.0 W"), console.out());
  }

  @Test
  void unitsOfMapsAreCheckedAndShownWithoutAJob() throws IOException {
    Console shown = Console.run("readings", ranging(), "--map", "Value=heater.power");
    assertEquals(0, shown.code(), shown.err());
    assertTrue(shown.out().contains("Value in W: heater.power, a power"), shown.out());

    for (String[] wrong :
        new String[][] {
          {"Value[kW]=heater.power", "the log has 'Value' in W, the map in kW"},
          {"Value=heater.resistance", "a resistance is expected"},
          {"Value=heater.powr", "did you mean 'power'?"},
        }) {
      Console refused = Console.run("readings", ranging(), "--map", wrong[0]);
      assertEquals(1, refused.code(), wrong[0]);
      assertTrue(refused.err().replaceAll("\\s+", " ").contains(wrong[1]), refused.err());
    }
    String bare = written("t [s];P\n0;5\n1;6\n2;5\n");
    Console asked = Console.run("readings", bare, "--map", "P=heater.power");
    assertEquals(1, asked.code());
    assertTrue(asked.err().contains("--units 'P=W'"), asked.err());
    Console said = Console.run("readings", bare, "--map", "P=heater.power", "--units", "P=kW");
    assertEquals(0, said.code(), said.err());
    assertTrue(said.out().contains("P in kW: heater.power"), said.out());
  }

  @Test
  void whatALogDoesNotTellIsAskedFor() throws IOException {
    for (String[] each :
        new String[][] {
          {"Time;P (W)\n0;5\n1;6\n2;7\n", "--time s", "--time", "s"},
          {"Time;P (W)\n14:03;5\n14:04;6\n14:05;7\n", "--time hh:mm", "--time", "mm:ss"},
          {"t [s];P (W)\n0;1,234\n1;1,235\n", "--decimal comma", "--decimal", "comma"},
          {"Date;P (W)\n10/11/2026;5\n11/11/2026;6\n", "--dates dmy", "--dates", "mdy"},
        }) {
      String log = written(each[0]);
      Console asked = Console.run("readings", log);
      assertEquals(1, asked.code(), each[0]);
      assertTrue(asked.err().contains(each[1]), asked.err());
      Console said = Console.run("readings", log, each[2], each[3]);
      assertEquals(0, said.code(), said.err());
      assertTrue(said.out().contains("as you said"), said.out());
    }
    Console wrong = Console.run("readings", LOG, "--time", "fortnights");
    assertEquals(1, wrong.code());
    assertTrue(wrong.err().contains("known: s, ms"), wrong.err());
  }

  @Test
  void figuresAtTheEndOfWhatADoubleHoldsLeadToNoNonsense() throws IOException {
    String[] cells = {"1e300", "-1e300", "1e30", "-1e30", "1e-300", "4.9e-324", "9.9e29", "1e999"};
    for (String cell : cells) {
      for (String kind : new String[] {"text", "json"}) {
        StringBuilder text = new StringBuilder("t [s],P (W)\n");
        for (int i = 0; i < 60; i++) {
          text.append(i).append(i % 20 == 7 ? "," + cell + "\n" : ",1.5\n");
        }
        Console console =
            Console.run(
                "readings",
                "--format",
                kind,
                written(text.toString()),
                "--window",
                "0s..30s",
                "--compare",
                "0s..20s,30s..50s");
        assertTrue(console.code() <= 1, cell + console.err());
        String said = console.out() + console.err();
        assertFalse(said.contains("NaN") || said.contains("Infinity"), cell + said);
        // A mistake is told with null where no place in a JSON file is known.
        assertFalse(console.code() == 0 && console.out().contains("null"), cell + said);
      }
    }
  }

  @Test
  void aLogThatIsOverRangeThroughoutIsShown() throws IOException {
    String log = written("t [s];R (Ohm)\n0;0.L\n1;0.L\n2;0.L\n");
    Console console = Console.run("readings", log);
    assertEquals(0, console.code(), console.err());
    assertTrue(console.out().contains("Over range in 3 of 3 rows"), console.out());
    String job = copy("jobs/water-boiler.json");
    Console into = Console.run("readings", log, "--map", "R=heater.resistance", "--into", job);
    assertEquals(1, into.code());
    assertTrue(into.err().replaceAll("\\s+", " ").contains("a reading of OL"), into.err());
  }

  @Test
  void signsThatTheTerminalLacksAreSpeltOut() {
    Console console = Console.run(StandardCharsets.US_ASCII, "readings", LOG);
    assertFalse(console.out().contains("?"), console.out());
  }
}
