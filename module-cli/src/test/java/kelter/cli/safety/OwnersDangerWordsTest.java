package kelter.cli.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import java.util.TreeSet;
import kelter.core.file.json.JsonText;
import kelter.core.safety.lockout.ActiveRow;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * What owners say of danger on the telephone, and what sounds like it and is none. The sentences
 * were made up here.
 */
class OwnersDangerWordsTest {

  private static final Set<String> OF_WORDS =
      Set.of(
          "shock",
          "shock-elsewhere",
          "burning",
          "smokes-unplugged",
          "gas-smell",
          "water-in-electrics",
          "wet-outlet",
          "trips",
          "trips-unfound",
          "supply-voltage",
          "bare-cord",
          "hot-outlet",
          "lint",
          "interlock",
          "glass",
          "hob-glass",
          "pressure-danger",
          "gas-appliance",
          "refrigerant-leak",
          "battery");

  private static Set<String> rows(String kind, String sentence) {
    byte[] call = Call.of(kind).said(sentence).json("", "", "");
    Set<String> rows = new TreeSet<>();
    for (ActiveRow row :
        Call.WORKSHOP
            .open(Call.WORKSHOP.read(JsonText.read(call, "call", "")).job())
            .lockOut()
            .rows()) {
      if (OF_WORDS.contains(row.row().id())) {
        rows.add(row.row().id());
      }
    }
    return rows;
  }

  @ParameterizedTest
  @CsvFileSource(resources = "danger-words.csv", delimiter = '|', numLinesToSkip = 1)
  void dangerIsHeard(String kind, String row, String sentence) {
    Set<String> rows = rows(kind, sentence);

    assertTrue(rows.contains(row), sentence + " gives " + rows);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "harmless-words.csv", delimiter = '|', numLinesToSkip = 1)
  void whatOnlySoundsLikeItIsNone(String kind, String sentence) {
    assertEquals(Set.of(), rows(kind, sentence), sentence);
  }
}
