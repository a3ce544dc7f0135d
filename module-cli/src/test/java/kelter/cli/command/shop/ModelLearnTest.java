package kelter.cli.command.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import kelter.cli.program.Console;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A model is learned from a machine in order, and used for the next one of its kind. */
class ModelLearnTest {

  /** A machine of which nothing is stated but what was read: a pump at two flows and a coil. */
  private static final String JOB =
      """
      {
        "format": "kelter-job/2",
        "id": "%s",
        "date": "2026-03-01",
        "reason": "%s",
        "appliance": {
          "kind": "washing-machine",
          "maker": "Ostvik",
          "model": "W 5",
          "components": [{ "id": "drain-pump" }, { "id": "solenoid" }]
        },
        "measurements": [
          { "of": "drain-pump", "observable": "head", "reading": "%s", "at": { "flow": "0 L/min" } },
          { "of": "drain-pump", "observable": "head", "reading": "%s", "at": { "flow": "12 L/min" } },
          { "of": "solenoid", "observable": "coil-resistance", "reading": "%s",
            "at": { "temperature": "30 Cel" } }
        ]
      }
      """;

  private static final String SOUND =
      JOB.formatted("good-1", "inspection", "2.1 m", "1.7 m", "4.0 kOhm");
  private static final String WORN = JOB.formatted("worn-1", "fault", "1.2 m", "0.4 m", "4.0 kOhm");

  @TempDir private Path temporary;
  private Path shop;

  @BeforeEach
  void make() throws IOException {
    shop = temporary.resolve("shop");
    Console.run("shop", "init", shop.toString());
    job("good-1", SOUND);
    job("worn-1", WORN);
  }

  private void job(String id, String text) throws IOException {
    Files.writeString(shop.resolve("jobs/" + id + ".json"), text);
  }

  private Console inShop(String... arguments) {
    return Console.inShop(shop.toString(), arguments);
  }

  private static String words(Console console) {
    return (console.out() + console.err()).replaceAll("\\s+", " ");
  }

  @Test
  void whatIsLearnedIsUsedInTheChecksOfTheNextMachine() throws IOException {
    assertFalse(words(inShop("check", "worn-1")).contains("against its curve"));

    Console learned = inShop("model", "learn", "good-1");
    assertEquals(0, learned.code(), learned.err());
    assertTrue(words(learned).contains("drain-pump head, curve of 2 points"), learned.out());
    // 4 kOhm at 30 °C is 4 / (1 + 0.00393 * 10) = 3.849 kOhm at 20 °C.
    assertTrue(words(learned).contains("coil-resistance 3.849 kohm"), learned.out());

    Console worn = inShop("check", "--format", "json", "worn-1");
    assertEquals(0, worn.code(), worn.err());
    String text = words(inShop("check", "worn-1"));
    assertTrue(text.contains("Head of the pump against its curve 1.2"), text);
    assertTrue(text.contains("does not conform"), text);
    assertTrue(text.contains("measured on a machine in order, job good-1, 2026-03-01"), text);
    assertTrue(words(inShop("diagnose", "worn-1")).contains("drain-pump"), text);
  }

  @Test
  void aMachineOutOfOrderTeachesNothing() throws IOException {
    Console fault = inShop("model", "learn", "worn-1");
    assertEquals(1, fault.code());
    assertTrue(fault.err().contains("is no inspection"), fault.err());
    assertTrue(fault.err().contains("--in-order"), fault.err());
    assertEquals(0, models());

    inShop("model", "learn", "good-1", "-o", shop.resolve("models/w5.json").toString());
    Console bad = inShop("model", "learn", "--in-order", "worn-1", "-o", "unused.json");
    assertEquals(1, bad.code());
    assertFalse(bad.err().contains("is no inspection"), bad.err());
    assertTrue(bad.err().contains("drain-pump.head: does not conform"), bad.err());
    assertTrue(bad.err().contains("% likely; at most 20 % is allowed"), bad.err());
  }

  private long models() throws IOException {
    try (var files = Files.list(shop.resolve("models"))) {
      return files.count();
    }
  }

  @Test
  void inOrderStandsForAnInspection() throws IOException {
    job("mended-1", SOUND.replace("good-1", "mended-1").replace("inspection", "fault"));
    assertEquals(1, inShop("model", "learn", "mended-1").code());
    assertEquals(0, inShop("model", "learn", "--in-order", "mended-1").code());
    assertEquals(1, models());
  }

  @Test
  void nothingIsOverwritten() throws IOException {
    assertEquals(0, inShop("model", "learn", "good-1").code());
    Path file = shop.resolve("models/ostvik-w-5.json");
    final String before = Files.readString(file);

    Console again = inShop("model", "learn", "good-1");
    assertEquals(1, again.code());
    assertTrue(again.err().contains("has a model of it already"), again.err());
    Console there = inShop("model", "learn", "good-1", "-o", file.toString());
    assertEquals(1, there.code());
    assertTrue(there.err().contains("is there already"), there.err());
    assertEquals(before, Files.readString(file));
  }

  @Test
  void withoutAShopItGoesToTheTerminalOrTheFile() throws IOException {
    String job = shop.resolve("jobs/good-1.json").toString();
    Console shown = Console.run("model", "learn", job);
    assertTrue(shown.out().contains("\"format\": \"kelter-model/1\""), shown.out());

    Path file = temporary.resolve("w5.json");
    Console written = Console.run("model", "learn", job, "--output", file.toString());
    assertEquals(0, written.code(), written.err());
    assertEquals(shown.out(), Files.readString(file));
    assertTrue(written.widest() <= 80, written.out());
  }

  @Test
  void aMachineWithoutANameTeachesNothing() throws IOException {
    job("good-1", SOUND.replace("Ostvik", ""));
    Console console = inShop("model", "learn", "good-1");
    assertEquals(1, console.code());
    assertTrue(console.err().contains("write maker and model into the job"), console.err());
  }
}
