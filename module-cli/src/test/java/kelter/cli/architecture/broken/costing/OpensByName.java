package kelter.cli.architecture.broken.costing;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;

final class OpensByName {
  void write() throws IOException {
    try (PrintWriter writer = new PrintWriter("never run", StandardCharsets.UTF_8)) {
      writer.println();
    }
  }
}
