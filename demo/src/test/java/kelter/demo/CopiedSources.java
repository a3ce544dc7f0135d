package kelter.demo;

import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The sources in a folder of their own, with a local repository of Maven in which there is nothing
 * of Kelter.
 *
 * @param folder the folder that they and the repository are in
 * @param sources the copy of the sources
 */
record CopiedSources(Path folder, Path sources) {

  private static final Set<String> LEFT_OUT = Set.of("target", ".git", ".idea");

  /** How a command ended and what it printed. */
  record Run(int code, String said) {}

  static CopiedSources in(Path folder) throws IOException {
    Path sources = folder.resolve("kelter");
    copy(Path.of("..").toRealPath(), sources);
    return new CopiedSources(folder, sources);
  }

  Run run(String command) throws IOException, InterruptedException {
    Path said = folder.resolve("said.txt");
    ProcessBuilder builder =
        new ProcessBuilder("sh", "-eu", "-c", command)
            .directory(sources.toFile())
            .redirectErrorStream(true)
            .redirectOutput(said.toFile());
    Map<String, String> environment = builder.environment();
    environment.put("MAVEN_OPTS", "-Dmaven.repo.local=" + localRepository());
    environment.put(
        "PATH",
        Path.of(System.getProperty("kelter.maven"), "bin")
            + File.pathSeparator
            + environment.get("PATH"));
    environment.put("LC_ALL", "C.UTF-8");
    int code = builder.start().waitFor();
    return new Run(code, Files.readString(said, StandardCharsets.UTF_8));
  }

  /** All that Maven has already, by links, but nothing of Kelter. */
  private Path localRepository() throws IOException {
    Path local = folder.resolve("repository");
    if (Files.exists(local)) {
      return local;
    }
    Files.createDirectory(local);
    try (Stream<Path> groups = Files.list(Path.of(System.getProperty("kelter.local")))) {
      for (Path group : groups.toList()) {
        if (!group.getFileName().toString().equals("kelter")) {
          Files.createSymbolicLink(local.resolve(group.getFileName()), group.toRealPath());
        }
      }
    }
    assertFalse(Files.exists(local.resolve("kelter")));
    return local;
  }

  /** Links that lead out of the folder are taken away, so that nothing behind them is. */
  void unlink() throws IOException {
    try (Stream<Path> groups = Files.list(localRepository())) {
      for (Path group : groups.filter(Files::isSymbolicLink).toList()) {
        Files.delete(group);
      }
    }
  }

  private static void copy(Path from, Path to) throws IOException {
    Files.walkFileTree(
        from,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult preVisitDirectory(Path each, BasicFileAttributes attributes)
              throws IOException {
            if (LEFT_OUT.contains(each.getFileName().toString()) && !each.equals(from)) {
              return FileVisitResult.SKIP_SUBTREE;
            }
            Files.createDirectories(to.resolve(from.relativize(each)));
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult visitFile(Path each, BasicFileAttributes attributes)
              throws IOException {
            if (attributes.isRegularFile() && !each.getFileName().toString().equals(".git")) {
              Files.copy(each, to.resolve(from.relativize(each)));
            }
            return FileVisitResult.CONTINUE;
          }
        });
  }
}
