package kelter.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Follows the page of the outside module to the letter, in a copy of the sources, with a local
 * repository of Maven in which there is nothing of Kelter: every command of the page must end well
 * and print what the page says. It takes more than a minute, so {@code mvn -Doutside test} runs it
 * alone.
 */
class FollowedPage {

  private static final Pattern BLOCK =
      Pattern.compile("^```(\\w*)\\n(.*?)^```$", Pattern.MULTILINE | Pattern.DOTALL);
  private static final Set<String> LEFT_OUT = Set.of("target", ".git", ".idea");

  @TempDir private Path folder;

  private record Run(int code, String said) {}

  /** A block of the page: a command, what it prints, or code. */
  private record Block(String language, String text) {}

  private static List<Block> blocks(String page) {
    List<Block> blocks = new ArrayList<>();
    Matcher matcher = BLOCK.matcher(page);
    while (matcher.find()) {
      blocks.add(new Block(matcher.group(1), matcher.group(2)));
    }
    return blocks;
  }

  @Test
  void everyCommandDoesWhatThePageSays() throws IOException, InterruptedException {
    Path sources = folder.resolve("kelter");
    copy(Path.of("..").toRealPath(), sources);
    Path module = sources.resolve("demo").resolve("outside-module");
    String page = Files.readString(module.resolve("README.md"));
    long begun = System.nanoTime();
    String said = "";
    int commands = 0;
    for (Block block : blocks(page)) {
      switch (block.language()) {
        case "sh" -> {
          Run run = run(sources, block.text());
          said = run.said();
          assertEquals(0, run.code(), block.text() + said);
          commands++;
        }
        case "" -> assertPrinted(block.text(), said);
        case "java" -> assertStands(block.text(), module);
        default -> throw new AssertionError("nobody knows what to do with " + block);
      }
    }
    assertTrue(commands >= 5, "too few commands were found on the page: " + commands);
    System.out.printf("The page took %.0f s.%n", (System.nanoTime() - begun) / 1e9);
    assertJavaModules(page, sources);
    assertMistakesEndTheBuild(sources, module);
  }

  private static void assertPrinted(String lines, String said) {
    lines
        .lines()
        .filter(line -> !line.isBlank())
        .forEach(
            line -> assertTrue(said.contains(line), "'" + line + "' is not printed:\n" + said));
  }

  private static void assertStands(String code, Path module) throws IOException {
    try (Stream<Path> files = Files.walk(module.resolve("src"))) {
      for (Path file : files.filter(each -> each.toString().endsWith(".java")).toList()) {
        if (Files.readString(file).contains(code)) {
          return;
        }
      }
    }
    throw new AssertionError("the page shows what is in no file:\n" + code);
  }

  /** What the page says of Java is what the tool's own Java has, where the tool has one. */
  private void assertJavaModules(String page, Path sources)
      throws IOException, InterruptedException {
    Path java = sources.resolve("module-cli/target/kelter/runtime/bin/java");
    if (!Files.exists(java)) {
      System.out.println("The tool has no Java of its own here; its modules were not compared.");
      return;
    }
    Set<String> there = new TreeSet<>();
    for (String line : run(sources, java + " --list-modules").said().lines().toList()) {
      String name = line.split("@")[0];
      if (name.matches("(java|jdk)\\..*")) {
        there.add(name);
      }
    }
    String told = page.substring(page.indexOf("**Of Java**"), page.indexOf("**Of Kelter**"));
    Set<String> listed = new TreeSet<>();
    Matcher names = Pattern.compile("`((?:java|jdk)\\.[\\w.]+)`").matcher(told);
    while (names.find()) {
      listed.add(names.group(1));
    }
    assertEquals(there, listed);
  }

  /** A test of the contract that is not found, and a module that nobody provides. */
  private void assertMistakesEndTheBuild(Path sources, Path module)
      throws IOException, InterruptedException {
    String build = "mvn -B -f demo/outside-module/pom.xml clean verify";
    Path test = module.resolve("src/test/java/coffee/grinder/GrinderContractTest.java");
    String sound = Files.readString(test);
    Files.delete(test);
    Path renamed = test.resolveSibling("GrinderRules.java");
    Files.writeString(renamed, sound.replace("GrinderContractTest", "GrinderRules"));
    Run unfound = run(sources, build);
    assertNotEquals(0, unfound.code());
    assertTrue(unfound.said().contains("The contract did not run"), unfound.said());
    Files.delete(renamed);
    Files.writeString(test, sound);

    Path descriptor = module.resolve("src/main/java/module-info.java");
    String provides = Files.readString(descriptor);
    Files.writeString(descriptor, provides.replaceAll("(?s)\\n\\s*provides.*?;", ""));
    Run unprovided = run(sources, build);
    assertNotEquals(0, unprovided.code());
    assertTrue(unprovided.said().contains("lacks 'provides kelter.core"), unprovided.said());
  }

  private Run run(Path sources, String command) throws IOException, InterruptedException {
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

  /** Links that lead out of the folder are taken away here, so that nothing behind them is. */
  @AfterEach
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
