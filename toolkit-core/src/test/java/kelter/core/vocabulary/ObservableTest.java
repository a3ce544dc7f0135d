package kelter.core.vocabulary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class ObservableTest {

  /** A reading of it would have two places on the scale. */
  @Test
  void aGradeHasEachWordOnce() {
    Observable.Draft twice =
        Observable.named("glaze", "face of the deck").graded("smooth", "smooth", "worn");
    IllegalArgumentException refused =
        assertThrows(IllegalArgumentException.class, () -> twice.asked(1, "Look at it."));
    assertEquals(
        "glaze: a grade has each word once, not [smooth, smooth, worn]", refused.getMessage());
  }
}
