package kelter.cli.command.call;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import kelter.cli.program.Console;
import kelter.core.file.catalogue.WorkStepsFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SheetCommandTest {

  private static final Path JOBS = Path.of("..", "demo", "jobs");

  @TempDir private Path folder;

  private static String demo(String name) {
    return JOBS.resolve(name + ".json").toString();
  }

  @ParameterizedTest
  @ValueSource(ints = {40, 60, 80})
  void theSheetGoesFromBringingToRunning(int width) {
    Console console = Console.narrow(width, "sheet", demo("dear-heater"));
    assertEquals(0, console.code(), console.err());
    assertTrue(console.widest() <= width, console.out());
    String said = console.out().replaceAll("\\s+", " ");
    int place = 0;
    for (String heading :
        List.of("Bring", "Isolate", "Open", "Look at,", "Do", "Close", "Back to power", "Run")) {
      int next = said.indexOf(" " + heading + " ", place);
      assertTrue(next > place, heading + ": " + said);
      place = next;
    }
    assertTrue(said.contains("renew the heater with its seal"), said);
    assertTrue(said.contains("Take off: rear panel"), said);
  }

  /** No sentence says that a machine may be used. */
  @Test
  void noSheetCallsAMachineSafe() {
    for (String name : List.of("dear-heater", "water-boiler", "washer-extractor")) {
      String said = Console.run("sheet", demo(name)).out().toLowerCase();
      for (String word : List.of(" is safe", "fit to use", "complies", "compliant")) {
        assertFalse(said.contains(word), name + word);
      }
    }
  }

  @Test
  void aMachineThatTripsSaysSoFirst() {
    assertTrue(Console.run("sheet", demo("water-boiler")).out().startsWith("! DANGER: "));
  }

  @Test
  void theWorkCanBeNamed() {
    String said =
        Console.run("sheet", "--work", "heater.renew-heater", demo("washer-extractor")).out();
    assertTrue(said.contains("Work: renew the heater"), said);
    Console wrong = Console.run("sheet", "--work", "heater.renew-heatr", demo("washer-extractor"));
    assertEquals(1, wrong.code());
    assertTrue(wrong.err().contains("did you mean 'heater.renew-heater'?"), wrong.err());
  }

  /** What is in the van is taken; the rest by chance, second trip and price. */
  @Test
  void theBagCountsTheVan() throws IOException {
    String shop = folder.resolve("shop").toString();
    assertEquals(0, Console.run("shop", "init", shop).code());
    Files.writeString(
        Path.of(shop, "stock.json"),
        """
        { "format": "kelter-stock/1", "parts": [
          { "part": "belt 1270", "for": "thermal-link.renew-thermal-link", "number": 2 } ] }
        """);
    String said =
        Console.inShop(shop, "sheet", "--bag", demo("tumble-dryer")).out().replaceAll("\\s+", " ");
    assertTrue(said.contains("[ ] thermal cut-out"), said);
    assertTrue(said.contains("in the van: 2"), said);
    String alone = Console.run("sheet", "--bag", demo("dear-heater")).out();
    assertTrue(alone.contains("[ ] heater: renew the heater"), alone);
  }

  @Test
  void theStepsKeepTheirSchema() throws IOException {
    Path file =
        Path.of("..", "toolkit-core", "src", "main", "resources", "kelter", "core", "sheet");
    var schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(WorkStepsFile.schema(), InputFormat.JSON);
    assertEquals(
        List.of(),
        schema.validate(Files.readString(file.resolve("work-steps.json")), InputFormat.JSON));
    assertTrue(WorkStepsFile.shipped().parts().size() > 20);
  }

  /** A drive that was read at a low voltage is charged again by the next test under power. */
  @Test
  void aSheetWaitsForTheDriveAlthoughItWasMeasured() {
    String said = Console.run("sheet", demo("washer-extractor")).out().replaceAll("\\s+", " ");
    assertTrue(said.contains("DC link: Wait 233 s, then measure."), said);
  }

  @Test
  void aPageHoldsWhatTheTerminalShows() throws IOException {
    Path page = folder.resolve("sheet.html");
    Console console = Console.run("sheet", "-o", page.toString(), demo("dear-heater"));
    assertEquals(0, console.code(), console.err());
    assertEquals("", console.out());
    String html = Files.readString(page);
    for (String line : Console.run("sheet", demo("dear-heater")).out().split("\\R")) {
      String step = line.replaceFirst("^ *\\d+\\. ", "");
      if (!step.equals(line) && step.length() < 60) {
        assertTrue(html.contains(step.strip()), step);
      }
    }
    assertTrue(html.contains("<b>DANGER</b> Electric shock."), html);
    assertFalse(html.contains("{{"), html);
    assertFalse(html.matches("(?s).*(src=|href=|<script|url\\().*"), "it loads nothing");
  }

  /** What somebody wrote into a job is text on the page, whatever it looks like. */
  @Test
  void aPageEscapesWhatAJobSays() throws IOException {
    Path job = folder.resolve("hostile.json");
    String text = Files.readString(Path.of(demo("dear-heater")));
    Files.writeString(
        job, text.replace("\"Fenwark\"", "\"<script>alert('x')</script>&\\u202e{{work}}\""));
    Path page = folder.resolve("hostile.html");
    Console console = Console.run("sheet", "-o", page.toString(), job.toString());
    assertEquals(0, console.code(), console.err());
    String html = Files.readString(page);
    assertFalse(html.contains("<script"), html);
    assertFalse(html.contains("\u202e"), html);
    assertTrue(html.contains("&lt;script&gt;alert("), html);
  }

  @Test
  void onlyAPageIsWritten() {
    Path other = folder.resolve("sheet.txt");
    Console console = Console.run("sheet", "-o", other.toString(), demo("dear-heater"));
    assertEquals(1, console.code());
    assertTrue(console.err().contains("let it end in .html"), console.err());
    assertFalse(Files.exists(other));
  }

  /** A pulley and a drum are where a motor drives one, not at the fan of a refrigerator. */
  @ParameterizedTest
  @CsvSource({
    "refrigerator, evaporator-fan.renew-motor, false",
    "refrigerator, condenser-fan.renew-motor, false",
    "washing-machine, motor.renew-motor, true",
    "tumble-dryer, motor.renew-motor, true"
  })
  void aDrumIsHeldWhereThereIsOne(String kind, String work, boolean drum) {
    Path job = folder.resolve("job.json");
    Console made = Console.run("new", kind, "-s", "does-not-start", "-o", job.toString());
    assertEquals(0, made.code(), made.err());

    Console sheet = Console.run("sheet", "--work", work, job.toString());
    assertEquals(0, sheet.code(), sheet.err());
    assertEquals(drum, sheet.out().contains("A drum and its weights"), sheet.out());
    assertEquals(drum, sheet.out().contains("pulley"), sheet.out());
    assertTrue(sheet.out().contains("Capacitors hold a charge"), sheet.out());
  }

  /** The keypad and the board are two parts, though both belong to one component. */
  @Test
  void twoPartsOfAComponentAreToldApart() {
    Path job = folder.resolve("job.json");
    Console.run(
        "new",
        "washing-machine",
        "-s",
        "control-dead",
        "-s",
        "does-not-start",
        "-o",
        job.toString());
    String said = Console.run("diagnose", job.toString()).out().replaceAll("\\s+", " ");
    String bag = said.substring(said.indexOf("Take along:"), said.indexOf("Readings:"));

    assertTrue(bag.contains("keypad of the control board ("), bag);
    assertEquals(2, bag.split("control board \\(", -1).length - 1, bag);
  }
}
