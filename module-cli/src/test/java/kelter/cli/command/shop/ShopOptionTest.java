package kelter.cli.command.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import kelter.cli.program.Console;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a shop profile changes, and that nothing changes without one. */
class ShopOptionTest {

  private static final String SHOP =
      """
      {
        "format": "kelter-shop/1",
        "decision-level": "%s",
        "competent-for-live-work": %s,
        "instruments": [
          {
            "id": "bench-meter",
            "functions": [{ "measures": "resistance", "accuracy": "0.05 Ohm" }],
            "calibrated": "2024-01-10",
            "interval": "1 year"
          }
        ]
      }
      """;

  /** Not far above the lower limit for a heater of 2 kW at 230 V, measured cold. */
  private static final String JOB =
      """
      {
        "format": "kelter-job/1",
        "id": "shop-1",
        "date": "2026-03-01",
        "appliance": {
          "kind": "water-boiler",
          "components": [
            { "id": "heater", "nameplate": { "power": "2 kW", "voltage": "230 V" } }
          ]
        },
        "measurements": [
          {
            "of": "heater",
            "observable": "resistance",
            "reading": "24.6 ohm",
            "at": { "temperature": "20 Cel" }%s
          }
        ]
      }
      """;

  /** A machine on which everything was looked at and measured dead, and that heats slowly still. */
  private static final String MEASURED_DEAD =
      """
      {
        "format": "kelter-job/1",
        "id": "shop-2",
        "date": "2026-03-01",
        "appliance": {
          "kind": "water-boiler",
          "nameplate": { "voltage": "230 V" },
          "components": [
            { "id": "heater", "nameplate": { "power": "2 kW" } },
            { "id": "supply" }
          ]
        },
        "measurements": [
          { "of": "heater", "observable": "heats-slowly", "reading": "yes" },
          { "of": "heater", "observable": "resistance", "reading": "26 ohm" },
          { "of": "heater", "observable": "insulation-resistance", "reading": "> 200 MOhm" },
          { "of": "heater", "observable": "trips-rcd", "reading": "no" },
          { "of": "heater", "observable": "scale", "reading": "none" },
          { "of": "heater", "observable": "terminal-burns", "reading": "none" },
          { "of": "heater", "observable": "sheath-damaged", "reading": "no" },
          { "of": "heater", "observable": "marking-differs", "reading": "no" }
        ]
      }
      """;

  @TempDir private Path folder;

  private String job(String instrument) throws IOException {
    return Files.writeString(folder.resolve("job.json"), JOB.formatted(instrument)).toString();
  }

  private String shop(String level, boolean live) throws IOException {
    return Files.writeString(folder.resolve("shop.json"), SHOP.formatted(level, live)).toString();
  }

  private static final String NAMED = ", \"instrument\": \"bench-meter\"";

  @Test
  void theInstrumentOfTheShopDecidesWhatAnOrdinaryOneCannot() throws IOException {
    Console without = Console.run("check", job(""));
    assertTrue(without.out().contains("undecided"), without.out());

    Console with = Console.run("check", "--shop", shop("95 %", false), job(NAMED));
    assertEquals(0, with.code(), with.err());
    assertTrue(with.out().contains(": conforms"), with.out());
    assertTrue(
        with.out().contains("CAUTION: The calibration of 'bench-meter' ran out on 2025-01-09"),
        with.out());
    assertTrue(with.widest() <= 80, with.out());

    Console unknown = Console.run("check", job(NAMED));
    assertEquals(1, unknown.code());
    assertTrue(unknown.err().contains("bench-meter"), unknown.err());
  }

  @Test
  void theDecisionLevelOfTheShopHolds() throws IOException {
    Console console = Console.run("check", "--shop", shop("60 %", false), job(""));
    assertFalse(console.out().contains("undecided"), console.out());
  }

  @Test
  void liveWorkIsProposedOnlyToTheCompetent() throws IOException {
    String job = Files.writeString(folder.resolve("dead.json"), MEASURED_DEAD).toString();
    Console without = Console.run("diagnose", "--format", "json", job);
    Console with = Console.run("diagnose", "--format", "json", "--shop", shop("95 %", true), job);

    assertFalse(without.out().contains("\"hazard\" : \"live\""), without.out());
    assertTrue(with.out().contains("\"hazard\" : \"live\""), with.out());
    assertTrue(with.out().contains("\"cautions\""), with.out());
  }

  @Test
  void aBadProfileIsToldAndNothingElseHappens() throws IOException {
    Path file = Files.writeString(folder.resolve("shop.json"), "{\"format\": \"kelter-shop/2\"}");
    for (String command : new String[] {"check", "diagnose", "weigh"}) {
      Console console = Console.run(command, "--shop", file.toString(), job(""));
      assertEquals(1, console.code());
      assertEquals("", console.out());
      assertTrue(console.err().contains("/format"), console.err());
    }
  }
}
