package kelter.cli.architecture.broken.costing;

import java.io.FileReader;
import java.io.IOException;

final class Loads {
  int load() throws IOException {
    try (FileReader reader = new FileReader("never run", java.nio.charset.StandardCharsets.UTF_8)) {
      return reader.read();
    }
  }
}
