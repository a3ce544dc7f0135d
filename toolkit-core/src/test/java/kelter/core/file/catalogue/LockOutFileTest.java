package kelter.core.file.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import kelter.core.file.json.JsonText;
import kelter.core.problem.InputException;
import kelter.core.safety.LockState;
import kelter.core.safety.Taken;
import kelter.core.safety.lockout.table.LockOutRow;
import kelter.core.safety.lockout.table.LockOutTable;
import kelter.core.safety.lockout.table.Told;
import kelter.core.source.Standing;
import kelter.core.vocabulary.Symptom;
import kelter.core.vocabulary.Symptoms;
import org.junit.jupiter.api.Test;

/** The lock-out table that comes with Kelter, and how it is read. */
class LockOutFileTest {

  private static final LockOutTable TABLE = LockOutFile.shipped();

  private static String text() throws IOException {
    try (InputStream in =
        LockOutFile.class.getResourceAsStream("/kelter/core/safety/lock-out.json")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static LockOutTable read(String text) {
    return LockOutFile.read(JsonText.read(text.getBytes(StandardCharsets.UTF_8), "table", ""));
  }

  @Test
  void isAsItsSchemaSays() throws IOException {
    var schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(LockOutFile.schema(), InputFormat.JSON);
    assertEquals(List.of(), schema.validate(text(), InputFormat.JSON));
  }

  /** The page has rows 1 to 24; 0 is for what modules add. */
  @Test
  void everyRowOfThePageIsThere() {
    Set<Integer> numbers = new TreeSet<>();
    TABLE.rows().forEach(row -> numbers.add(row.number()));
    Set<Integer> all = new TreeSet<>();
    for (int number = 0; number <= 24; number++) {
      all.add(number);
    }
    assertEquals(all, numbers);
  }

  @Test
  void aStricterStateNeverAllowsMore() {
    for (LockOutRow row : TABLE.rows()) {
      assertFalse(row.allowed().contains(Taken.LIVE), row.id());
      boolean charge = row.heldBut().isPresent();
      if (row.state() != LockState.A && !charge) {
        assertFalse(row.allowed().contains(Taken.RUNNING), row.id());
        assertFalse(row.allowed().contains(Taken.POWERED), row.id());
      }
      if (row.state() == LockState.D) {
        assertFalse(row.allowed().contains(Taken.DEAD), row.id());
      }
    }
  }

  @Test
  void everySignCanBeAsked() {
    Set<String> known = new HashSet<>();
    Symptoms.ALL.forEach(symptom -> known.add(symptom.id()));
    Symptoms.SIGNS.forEach(symptom -> known.add(symptom.id()));
    Set<String> asked = new HashSet<>();
    for (LockOutRow row : TABLE.rows()) {
      for (Told told : row.when().told()) {
        assertTrue(known.contains(told.symptom()), told.symptom());
        asked.add(told.symptom());
      }
      assertFalse(row.until().words().isBlank(), row.id());
      assertTrue(row.source().standing() != Standing.INVENTED, row.id());
    }
    for (Symptom sign : Symptoms.SIGNS) {
      assertTrue(asked.contains(sign.id()), sign.id());
    }
  }

  /** What says that gas smells must never tell anybody to work a switch. */
  @Test
  void gasIsNeverSwitchedOff() {
    String text = TABLE.row("gas-smell").orElseThrow().text().usual();
    assertTrue(text.contains("touch no switch"), text);
    assertFalse(text.contains("switch off"), text);
  }

  @Test
  void everyMistakeIsToldAtOnce() throws IOException {
    String wrong =
        text()
            .replaceFirst("\"state\": \"B\"", "\"state\": \"E\"")
            .replaceFirst("\"allowed\": \"k\"", "\"allowed\": \"kx\"")
            .replaceFirst("\"first\":", "\"frist\":");
    InputException refused = assertThrows(InputException.class, () -> read(wrong));
    assertTrue(refused.problems().size() >= 3, refused.getMessage());
    assertTrue(refused.getMessage().contains("frist"), refused.getMessage());
    assertTrue(refused.getMessage().contains("letter of no test"), refused.getMessage());
  }

  @Test
  void aRowDoesNotAllowLiveTestsNorLongTexts() throws IOException {
    String live = text().replaceFirst("\"allowed\": \"k\"", "\"allowed\": \"kv\"");
    assertThrows(InputException.class, () -> read(live));
    String words = "word ".repeat(21).strip();
    String longer = text().replaceFirst("It trips: do not plug in until the leak is found.", words);
    assertThrows(InputException.class, () -> read(longer));
  }
}
