package kelter.core.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CoverageFactorTest {

  /** JCGM 100:2008, table G.2, columns 90 %, 95 %, 95.45 % and 99 %; rows written from memory. */
  @ParameterizedTest
  @CsvSource({
    "1, 6.31, 12.71, 13.97, 63.66",
    "2, 2.92, 4.30, 4.53, 9.92",
    "5, 2.02, 2.57, 2.65, 4.03",
    "10, 1.81, 2.23, 2.28, 3.17",
    "20, 1.72, 2.09, 2.13, 2.85",
    "50, 1.68, 2.01, 2.05, 2.68",
    "Infinity, 1.645, 1.960, 2.000, 2.576"
  })
  void tableOfStudentsT(double dof, double k90, double k95, double k9545, double k99) {
    assertEquals(k90, CoverageFactor.of(0.90, dof), 5.1e-3);
    assertEquals(k95, CoverageFactor.of(0.95, dof), 5.1e-3);
    assertEquals(k9545, CoverageFactor.of(0.9545, dof), 5.1e-3);
    assertEquals(k99, CoverageFactor.of(0.99, dof), 5.1e-3);
  }

  /** JCGM 100:2008, H.1.6: 16.7 effective degrees of freedom are cut to 16, t99 = 2.92. */
  @Test
  void degreesOfFreedomAreCut() {
    assertEquals(2.92, CoverageFactor.of(0.99, 16.7), 5e-3);
  }

  @ParameterizedTest
  @CsvSource({"0, 5", "1, 5", "NaN, 5", "0.95, 0.99", "0.95, NaN"})
  void figuresThatGiveNoFactorAreRefused(double probability, double dof) {
    assertThrows(IllegalArgumentException.class, () -> CoverageFactor.of(probability, dof));
  }
}
