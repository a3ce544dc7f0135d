package kelter.core.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Check values of the page on locking out, to its printed digits. */
class DischargeWaitTest {

  /** What the tolerances of unmarked parts make of a nominal time: 1.2 times 1.05. */
  private static final double TOLERANCE = 1.26;

  @ParameterizedTest
  @CsvSource({
    "2.2e-6, 1e6, 230, 0, 34, 5.18, 6.52",
    "2.2e-6, 1e6, 120, 0, 34, 3.75, 4.72",
    "2.2e-6, 1e6, 230, 272, 34, 5.34, 6.72"
  })
  void ofAFilter(
      double c, double r, double nominal, double read, double to, double time, double told) {
    double seconds = DischargeWait.seconds(c, r, DischargeWait.start(nominal, read), to);
    assertEquals(time, seconds / TOLERANCE, 0.006);
    assertEquals(told, seconds, 0.006);
    assertEquals(10, DischargeWait.told(seconds));
  }

  @Test
  void ofADcLink() {
    double mains = DischargeWait.seconds(470e-6, 220e3, DischargeWait.start(230, 0), 60);
    assertEquals(184.6, mains / TOLERANCE, 0.06);
    assertEquals(232.6, mains, 0.06);
    assertEquals(233, DischargeWait.told(mains));
    double bus = DischargeWait.seconds(470e-6, 220e3, 420, 60);
    assertEquals(201.2, bus / TOLERANCE, 0.06);
    assertEquals(253.5, bus, 0.06);
  }

  @ParameterizedTest
  @CsvSource({"230, 358", "400, 622", "120, 187", "240, 373"})
  void theSupplyIsAtItsWorst(double nominal, double peak) {
    assertEquals(peak, DischargeWait.start(nominal, 0), 0.5);
  }
}
