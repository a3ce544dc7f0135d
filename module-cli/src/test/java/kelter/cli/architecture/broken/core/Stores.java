package kelter.cli.architecture.broken.core;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

final class Stores {
  void store(Path path) throws IOException {
    Files.writeString(path, "never run");
  }
}
