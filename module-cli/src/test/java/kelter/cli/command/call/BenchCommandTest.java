package kelter.cli.command.call;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import kelter.cli.program.Console;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BenchCommandTest {

  private static final String COLD =
      """
      washing
      9
      The wash comes out cold
      y
      n
      heater resistance = OL
      done
      """;

  @TempDir private Path folder;

  @Test
  void aCaseIsLedAndKeptInTheShop() throws IOException {
    String shop = folder.resolve("shop").toString();
    assertEquals(0, Console.run("shop", "init", shop).code());

    Console console = Console.typing(COLD, Map.of("KELTER_SHOP", shop), "bench");
    assertEquals(0, console.code(), console.err());
    assertTrue(console.widest() <= 80, console.out());
    String said = console.out().replaceAll("\\s+", " ");
    assertTrue(said.contains("What kind of machine is it?"), said);
    assertTrue(said.contains("Do first: heater: renew the heater"), said);
    assertTrue(said.contains("washing-machine-1.json"), said);

    Console kept = Console.inShop(shop, "diagnose", "washing-machine-1");
    assertEquals(0, kept.code(), kept.err());
    assertTrue(kept.out().contains("heater open"), kept.out());
  }

  @Test
  void aJobThatIsThereGoesOn() throws IOException {
    Path job = folder.resolve("job.json");
    Files.copy(Path.of("..", "demo", "jobs", "tumble-dryer.json"), job);
    String before = Files.readString(job);

    Console looked = Console.typing("list\ndone\n", Map.of(), "bench", job.toString());
    assertEquals(0, looked.code(), looked.err());
    assertEquals(before, Files.readString(job), "an order changes nothing");

    Console told = Console.typing("what if leaks\nleaks = n\n", Map.of(), "bench", job.toString());
    assertEquals(0, told.code(), told.err());
    String after = Files.readString(job);
    assertTrue(after.contains("\"leaks\": \"no\""), after);
    assertTrue(after.contains(before.substring(0, before.indexOf("symptoms"))), "kept to the byte");
  }

  /** Every answer is in the file before the next question, and an undo takes it out. */
  @Test
  void whatWasTypedIsKeptEvenIfTheLinesEnd() throws IOException {
    Path job = folder.resolve("new.json");
    Console console = Console.typing("toaster\n3\n", Map.of(), "bench", job.toString());
    assertEquals(0, console.code(), console.err());
    assertTrue(Files.readString(job).contains("\"age\": \"3 a\""));

    Path undone = folder.resolve("undone.json");
    assertEquals(
        0, Console.typing("toaster\n3\nundo\n", Map.of(), "bench", undone.toString()).code());
    assertFalse(Files.readString(undone).contains("age"), Files.readString(undone));
  }

  @Test
  void theLockOutHasToBeHeeded() {
    Path job = folder.resolve("gas.json");
    Console console =
        Console.typing(
            "oven\n9\nIt smells of gas\nn\nok\ndone\n", Map.of(), "bench", job.toString());
    String said = console.out().replaceAll("\\s+", " ");
    assertTrue(said.contains("Smell of gas: touch no switch"), said);
    assertTrue(said.contains("Type ok once that is done or kept to."), said);
  }

  @Test
  void whereTheEarthIsAskedForTheClassMayBeTold() throws IOException {
    String job = folder.resolve("vacuum.json").toString();
    Console.run("new", "vacuum-cleaner", "-s", "weak-suction", "-o", job);
    Console.run("done", job, "hose.clear-suction-hose");
    String typed = "ok\ny\nclass II\ndone\n";
    String said =
        Console.typing(typed, Map.of(), "prove", "--led", job).out().replaceAll("\\s+", " ");

    assertTrue(said.contains("it has no earth; then type class II)"), said);
    assertTrue(said.contains("Kept as marked: protection class II."), said);
  }

  @Test
  void aBuildIsTakenByItsNameAndCanBeUndone() throws IOException {
    Path job = folder.resolve("dryer.json");
    Console console = Console.typing("heat pump dryer\n6\n", Map.of(), "bench", job.toString());
    assertEquals(0, console.code(), console.err());
    assertTrue(Files.readString(job).contains("\"air-heater\""), Files.readString(job));
    assertTrue(console.out().contains("it has no air-heater, duct"), console.out());

    Path undone = folder.resolve("undone.json");
    Console back =
        Console.typing("heat pump dryer\nundo\ndryer\n6\n", Map.of(), "bench", undone.toString());
    assertEquals(0, back.code(), back.err());
    assertFalse(Files.readString(undone).contains("lacks"), Files.readString(undone));
  }
}
