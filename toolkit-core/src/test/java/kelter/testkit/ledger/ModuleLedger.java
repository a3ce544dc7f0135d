package kelter.testkit.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import kelter.core.module.CalculationModule;
import org.junit.jupiter.api.Test;

/** Holds the ledger of a module against its calculations and tests. */
public abstract class ModuleLedger {

  /**
   * Which module.
   *
   * @return the module
   */
  protected abstract CalculationModule module();

  /**
   * Each calculation has a check from outside, or a reason why none.
   *
   * @throws IOException if the tests cannot be read
   */
  @Test
  final void everyCalculationIsAccountedFor() throws IOException {
    assertEquals(List.of(), Ledger.of(module()).breaches());
  }

  /**
   * The page in the folder of the module is the one that the code makes today; with {@code
   * -Dkelter.ledger=write} it is written first.
   *
   * @throws IOException if tests or page cannot be read
   */
  @Test
  final void thePageIsUpToDate() throws IOException {
    String page = Ledger.of(module()).page();
    if ("write".equals(System.getProperty("kelter.ledger"))) {
      Files.writeString(Ledger.FILE, page, StandardCharsets.UTF_8);
    }
    assertEquals(
        page,
        Files.readString(Ledger.FILE, StandardCharsets.UTF_8),
        "run this test with -Dkelter.ledger=write");
  }
}
