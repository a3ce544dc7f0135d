package kelter.hydraulics.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import org.junit.jupiter.api.Test;

class FaultEffectsTest {

  /** The table in the documentation is the one that the code makes today. */
  @Test
  void theTableIsUpToDate() throws IOException {
    assertEquals(
        FaultEffects.table(),
        Files.readString(FaultEffects.FILE, StandardCharsets.UTF_8),
        "run kelter.hydraulics.bench.FaultEffects in the folder of the module");
  }
}
