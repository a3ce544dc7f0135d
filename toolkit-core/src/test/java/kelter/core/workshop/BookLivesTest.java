package kelter.core.workshop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import kelter.core.book.learned.Learned;
import kelter.core.book.learned.PartLife;
import kelter.core.catalogue.Kind;
import kelter.core.contract.SampleModule;
import kelter.core.option.LearnedLives.LearnedLife;
import org.junit.jupiter.api.Test;

/** Lives of parts of a book, as the weighing takes them. */
class BookLivesTest {

  private static final Kind WASHER =
      Workshop.of(List.of(new SampleModule())).kinds().kind("washing-machine").orElseThrow();

  private static PartLife life(double failures, double low, double high) {
    boolean enough = failures >= 5;
    return new PartLife(
        failures,
        100,
        Optional.of(
            new PartLife.Fitted(
                enough ? OptionalDouble.of(2) : OptionalDouble.empty(),
                1.5,
                2.5,
                enough ? OptionalDouble.of(10) : OptionalDouble.empty(),
                low,
                high)),
        OptionalDouble.empty());
  }

  private static Optional<LearnedLife> heater(Map<String, PartLife> lives) {
    Learned learned =
        new Learned(
            LocalDate.of(2026, 1, 1),
            80,
            0.9,
            300,
            30,
            Map.of(),
            Map.of(),
            Map.of(),
            Map.of(),
            Map.of(),
            Map.of(),
            lives,
            Optional.empty());
    return new BookLives(learned, WASHER).component("heater");
  }

  /**
   * 5 to 20 years is a standard deviation of ln 4 / 3.92 = 0.3537 of the logarithm; a study counts
   * as 0.25, so that it counts (0.25 / 0.3537)^2 = 0.4997. What is known better counts as one.
   */
  @Test
  void aLifeCountsByHowWellItIsKnownAndNeverMoreThanAStudy() {
    LearnedLife wide = heater(Map.of("washing-machine.heater", life(6, 5, 20))).orElseThrow();

    assertEquals(10, wide.scale());
    assertEquals(2, wide.shape());
    assertEquals(0.4997, wide.weight(), 0.0005);
    assertTrue(wide.source().display().contains("from the shop's book, 6 failures"));
    assertTrue(wide.source().display().contains("counted in the shop's own jobs"));
    LearnedLife narrow = heater(Map.of("washing-machine.heater", life(90, 9, 11))).orElseThrow();
    assertEquals(1, narrow.weight());
  }

  @Test
  void fewFailuresOtherKindsAndOtherPartsTellNothing() {
    assertEquals(Optional.empty(), heater(Map.of("washing-machine.heater", life(4, 5, 20))));
    assertEquals(Optional.empty(), heater(Map.of("dishwasher.heater", life(9, 5, 20))));
    assertEquals(Optional.empty(), heater(Map.of("washing-machine.belt", life(9, 5, 20))));
  }
}
