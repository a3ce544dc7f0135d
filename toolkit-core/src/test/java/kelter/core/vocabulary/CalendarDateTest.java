package kelter.core.vocabulary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Held against {@code LocalDate} of the platform, which writes ISO 8601 by its own format. */
class CalendarDateTest {

  @Test
  void everyDayOfFourCenturiesIsRead() {
    LocalDate last = LocalDate.of(2400, 1, 1);
    for (LocalDate day = LocalDate.of(2000, 1, 1); day.isBefore(last); day = day.plusDays(1)) {
      assertEquals(Optional.of(day), CalendarDate.of(day.toString()));
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "2026",
        "2026-1-2",
        "2026-02-29",
        "2026-00-10",
        "2026-13-10",
        "2026-06-31",
        "2026/06/30",
        "26-06-30xx",
        "2026-06-3O",
        "+026-06-30",
        "2026-06-30T10:00",
        "２０２６-06-30"
      })
  void whatIsNoDateIsNotRead(String text) {
    assertTrue(CalendarDate.of(text).isEmpty());
  }

  @ParameterizedTest
  @ValueSource(strings = {"0000-01-01", "0026-03-01", "1899-12-31"})
  void aYearThatWasMistypedIsRefused(String text) {
    assertThrows(IllegalArgumentException.class, () -> CalendarDate.require(text));
  }
}
