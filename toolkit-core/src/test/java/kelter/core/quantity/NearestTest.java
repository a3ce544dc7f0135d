package kelter.core.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Suggestions for misspelt words. */
class NearestTest {

  private static final List<String> KNOWN = List.of("flow", "head", "power", "pressure");

  @Test
  void oneSwapOneDropAndOneChangeAreNear() {
    assertEquals(Optional.of("flow"), Nearest.of("folw", KNOWN));
    assertEquals(Optional.of("head"), Nearest.of("hed", KNOWN));
    assertEquals(Optional.of("pressure"), Nearest.of("Presure", KNOWN));
  }

  @Test
  void theOnlyOneWithTheWordInItIsMeant() {
    List<String> parts = List.of("air-heater", "door-switch", "float-switch", "heater-relay-2");
    assertEquals(Optional.of("door-switch"), Nearest.of("Door", parts));
    assertEquals(Optional.empty(), Nearest.of("switch", parts));
    assertEquals(Optional.empty(), Nearest.of("heater", parts));
  }

  @Test
  void nothingNearIsNothing() {
    assertEquals(Optional.empty(), Nearest.of("voltage", KNOWN));
    assertEquals(Optional.empty(), Nearest.of("x".repeat(1000), KNOWN));
    assertEquals(Optional.empty(), Nearest.of("", List.of("head")));
  }

  @Test
  void amongEquallyNearWordsTheFirstInOrderIsTaken() {
    assertEquals(Optional.of("aa"), Nearest.of("a", List.of("ac", "aa", "ab")));
  }
}
