package kelter.core.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The classes of IEC 61140, clause 7, as nameplates and people write them. */
class ProtectionClassTest {

  @ParameterizedTest
  @CsvSource({
    "I, I",
    "1, I",
    "class I, I",
    "II, II",
    "2, II",
    "class II, II",
    "Class 2, II",
    "ii, II",
    "III, III",
    "CLASS 3, III",
    "' 2 ', II"
  })
  void asPeopleWriteThem(String text, ProtectionClass expected) {
    assertEquals(Optional.of(expected), ProtectionClass.of(text));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "class", "0", "4", "IV", "IIII", "22", "two"})
  void whatIsNone(String text) {
    assertEquals(Optional.empty(), ProtectionClass.of(text));
  }
}
