package kelter.electrical.protection;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kelter.core.safety.ProtectionClass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Limits of EN 50678:2020, all of them from memory: the document was not open. */
class ProtectionTest {

  @ParameterizedTest
  @CsvSource({"1, 0.3", "5, 0.3", "12.5, 0.4", "20, 0.5", "57.5, 1.0", "100, 1.0"})
  void protectiveConductorByLength(double length, double limit) {
    assertEquals(limit, ProtectiveConductorLimit.limit(length, 1.5e-6), 1e-9);
  }

  @Test
  void largerSectionsAreNotCovered() {
    assertThrows(IllegalArgumentException.class, () -> ProtectiveConductorLimit.limit(5, 2.5e-6));
    assertThrows(IllegalArgumentException.class, () -> ProtectiveConductorLimit.limit(0, 1.5e-6));
  }

  @ParameterizedTest
  @CsvSource({"I, false, 1e6", "I, true, 0.3e6", "II, false, 2e6", "III, false, 0.25e6"})
  void insulationByClass(ProtectionClass protectionClass, boolean heaters, double limit) {
    assertEquals(limit, InsulationLimit.limit(protectionClass, heaters), 1e-6);
  }

  @Test
  void whatIsFromMemorySaysSo() {
    assertTrue(InsulationLimit.SOURCE.display().contains("from memory"));
    assertTrue(ProtectiveConductorLimit.SOURCE.display().contains("from memory"));
  }
}
