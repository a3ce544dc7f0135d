package kelter.core.contract;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kelter.core.module.About;
import kelter.core.module.Calculation;
import kelter.core.module.CalculationModule;
import kelter.core.module.Output;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.testkit.ledger.Ledger;
import kelter.testkit.ledger.NoOutsideCheck;
import kelter.testkit.ledger.OutsideCheck;
import kelter.testkit.ledger.Worth;
import org.junit.jupiter.api.Test;

/** What is not accounted for is found. */
class LedgerTest {

  private record Two() implements CalculationModule {

    @Override
    public About about() {
      return new About("two", "Two calculations", "1");
    }

    @Override
    public List<Calculation> calculations() {
      return List.of(one("sum"), one("ratio"));
    }

    private static Calculation one(String id) {
      Output output = new Output(id, id, QuantityKind.POWER);
      Source source = Source.published("a|b");
      return new Calculation(
          id, id, "1", "all", source, List.of(), List.of(output), List.of(), p -> new double[] {1});
    }
  }

  private static final class Whole {

    @OutsideCheck(of = "sum", against = "a book", worth = Worth.FROM_MEMORY)
    @OutsideCheck(of = "sum", against = "a table")
    @NoOutsideCheck(of = "ratio", because = "it is new")
    @Test
    void held() {
      // Only its declarations are read.
    }
  }

  private static final class Broken {

    @OutsideCheck(of = "sum", against = "a book")
    @NoOutsideCheck(of = "sum", because = "it is new")
    @Test
    void both() {
      // Only its declarations are read.
    }

    @OutsideCheck(of = "product", against = "a book")
    void noTest() {
      // Only its declarations are read.
    }
  }

  @Test
  void whatIsDeclaredIsInThePage() {
    Ledger ledger = Ledger.of(new Two(), List.of(Whole.class));

    assertEquals(List.of(), ledger.breaches());
    assertTrue(ledger.page().contains("Of 2 calculations\n\n- 1: seen in print"), ledger.page());
    assertTrue(
        ledger
            .page()
            .contains(
                "| `sum` | sum | a\\|b | published | a table `Whole.held`; a book (from memory)"
                    + " `Whole.held` |"),
        ledger.page());
    assertTrue(ledger.page().contains("| none: it is new `Whole.held` |"), ledger.page());
  }

  @Test
  void whatIsMissingDoubledOrUnknownIsFound() {
    assertEquals(
        List.of(
            "Broken.noTest is no test",
            "sum: one test holds it against something, another says that none can",
            "ratio: no test says against what it holds it, or why against nothing",
            "product: the module has no such calculation"),
        Ledger.of(new Two(), List.of(Broken.class)).breaches());
  }
}
