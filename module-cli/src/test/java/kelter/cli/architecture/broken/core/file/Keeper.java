package kelter.cli.architecture.broken.core.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

final class Keeper {
  void keep(Path path) throws IOException {
    Files.writeString(path, "never run");
  }
}
