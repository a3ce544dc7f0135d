package kelter.core.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.OptionalDouble;
import kelter.core.job.SymptomReport.Answer;
import org.junit.jupiter.api.Test;

/** How like jobs are. */
class LikenessTest {

  private static BookedMachine machine(String maker, String model, double age) {
    return new BookedMachine(
        "kettle",
        maker,
        model,
        "",
        OptionalDouble.of(age),
        OptionalDouble.empty(),
        OptionalDouble.empty());
  }

  private final Likeness wanted =
      new Likeness(machine("Ostvik", "B-2", 7), Map.of("leaks", Answer.YES, "loud", Answer.NO));

  /** By hand: 1 for the symptom, 1.5 for the model, 1 for the age. */
  @Test
  void theSameIsTheLikest() {
    assertEquals(
        3.5, wanted.of(Map.of("leaks", Answer.SOMETIMES), machine("ostvik", "b2", 7)), 1e-12);
  }

  @Test
  void aContradictionTakesAPoint() {
    double agreed = wanted.of(Map.of("leaks", Answer.YES), machine("", "", 7));
    double denied = wanted.of(Map.of("leaks", Answer.NO), machine("", "", 7));

    assertEquals(2, agreed - denied, 1e-12);
    assertEquals(1, wanted.of(Map.of("loud", Answer.NO), machine("", "", 7)), 1e-12);
  }

  /** Eight and sixteen, one added to each age: half of the point at twice the age. */
  @Test
  void ageCountsByItsRatio() {
    assertEquals(0.5, wanted.of(Map.of(), machine("", "", 15)), 1e-12);
    assertEquals(0.5, wanted.of(Map.of(), machine("", "", 3)), 1e-12);
  }

  @Test
  void theModelOfAnotherMakerIsAnotherModel() {
    assertTrue(
        wanted.of(Map.of(), machine("Tarnwell", "B-2", 7))
            < wanted.of(Map.of(), machine("Ostvik", "C", 7)));
  }
}
