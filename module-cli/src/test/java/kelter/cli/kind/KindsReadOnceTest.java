package kelter.cli.kind;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import kelter.cli.wiring.Found;
import kelter.core.catalogue.Kind;
import kelter.core.catalogue.Kinds;
import kelter.core.workshop.Workshop;
import org.junit.jupiter.api.Test;

/**
 * Which parts a job tells and which only stand in is told by the identity of their source, so that
 * two jobs that are opened side by side need the same kind.
 */
class KindsReadOnceTest {

  private final AtomicInteger read = new AtomicInteger();
  private Kinds kinds;

  private static Kind kettle() {
    return Workshop.of(Found.usual().modules()).kinds().kind("kettle").orElseThrow();
  }

  /** While the first one reads, another one comes in between and is done before it. */
  @Test
  void whoReadsSideBySideGetsTheSameKind() {
    Kind first = kettle();
    Kind second = kettle();
    assertNotSame(first, second);
    kinds =
        new Kinds(
            List.of(),
            List.of("kettle"),
            id -> {
              if (read.getAndIncrement() == 0) {
                assertSame(first, kinds.kind(id).orElseThrow());
                return Optional.of(second);
              }
              return Optional.of(first);
            });

    assertSame(first, kinds.kind("kettle").orElseThrow());
    assertSame(first, kinds.kind("kettle").orElseThrow());
    assertEquals(2, read.get());
  }
}
