package kelter.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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

  @TempDir private Path folder;

  private CopiedSources copied;

  @AfterEach
  void unlink() throws IOException {
    copied.unlink();
  }

  @Test
  void everyCommandDoesWhatThePageSays() throws IOException, InterruptedException {
    copied = CopiedSources.in(folder);
    Path sources = copied.sources();
    Path module = sources.resolve("demo").resolve("outside-module");
    String page = Files.readString(module.resolve("README.md"));
    long begun = System.nanoTime();
    String said = "";
    int commands = 0;
    for (PageBlock block : PageBlock.of(page)) {
      switch (block.language()) {
        case "sh" -> {
          CopiedSources.Run run = copied.run(block.text());
          said = run.said();
          assertEquals(0, run.code(), block.text() + said);
          commands++;
        }
        case "" -> block.assertPrinted(said);
        case "java" -> assertStands(block.text(), module);
        default -> throw new AssertionError("nobody knows what to do with " + block);
      }
    }
    assertTrue(commands >= 5, "too few commands were found on the page: " + commands);
    System.out.printf("The page took %.0f s.%n", (System.nanoTime() - begun) / 1e9);
    assertJavaModules(page, sources);
    assertMistakesEndTheBuild(sources, module);
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
    for (String line : copied.run(java + " --list-modules").said().lines().toList()) {
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
    CopiedSources.Run unfound = copied.run(build);
    assertNotEquals(0, unfound.code());
    assertTrue(unfound.said().contains("The contract did not run"), unfound.said());
    Files.delete(renamed);
    Files.writeString(test, sound);

    Path descriptor = module.resolve("src/main/java/module-info.java");
    String provides = Files.readString(descriptor);
    Files.writeString(descriptor, provides.replaceAll("(?s)\\n\\s*provides.*?;", ""));
    CopiedSources.Run unprovided = copied.run(build);
    assertNotEquals(0, unprovided.code());
    assertTrue(unprovided.said().contains("lacks 'provides kelter.core"), unprovided.said());
  }
}
