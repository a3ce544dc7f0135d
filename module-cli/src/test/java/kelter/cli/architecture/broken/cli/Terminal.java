package kelter.cli.architecture.broken.cli;

import com.google.inject.Injector;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** May do all this. */
public final class Terminal {
  Injector injector;

  void print(Path path) throws IOException {
    System.out.println(Files.size(path));
  }
}
