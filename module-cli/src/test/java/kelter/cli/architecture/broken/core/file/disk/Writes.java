package kelter.cli.architecture.broken.core.file.disk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

final class Writes {
  void write(Path path) throws IOException {
    Files.writeString(path, "never run");
  }
}
