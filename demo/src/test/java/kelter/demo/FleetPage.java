package kelter.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Follows the page of the fleet, with its tests, in a copy of the sources. It takes minutes, so
 * {@code mvn -Dfleet test} runs it alone.
 */
class FleetPage {

  private static final Pattern SPARK = Pattern.compile("<spark.version>(.*?)</spark.version>");

  @TempDir private Path folder;

  private CopiedSources copied;

  @AfterEach
  void unlink() throws IOException {
    copied.unlink();
  }

  @Test
  void everyCommandDoesWhatThePageSays() throws IOException, InterruptedException {
    copied = CopiedSources.in(folder);
    Path fleet = copied.sources().resolve("demo/fleet");
    assumeSpark(Files.readString(fleet.resolve("pom.xml")));
    long begun = System.nanoTime();
    String said = "";
    int commands = 0;
    for (PageBlock block : PageBlock.of(Files.readString(fleet.resolve("README.md")))) {
      if (block.language().equals("sh")) {
        CopiedSources.Run run = copied.run(block.text());
        said = run.said();
        assertEquals(0, run.code(), block.text() + said);
        assertFalse(said.contains("WARN"), said);
        said.lines().filter(FleetPage::isFigure).forEach(System.out::println);
        commands++;
      } else {
        block.assertPrinted(said);
      }
    }
    assertEquals(2, commands);
    assertNothingLeft(fleet.resolve("target/spark"));
    System.out.printf("The page of the fleet took %.0f s.%n", (System.nanoTime() - begun) / 1e9);
  }

  private void assumeSpark(String pom) throws IOException, InterruptedException {
    Matcher version = SPARK.matcher(pom);
    assertTrue(version.find(), pom);
    CopiedSources.Run got =
        copied.run(
            "mvn -B -q org.apache.maven.plugins:maven-dependency-plugin:3.9.0:get"
                + " -Dartifact=org.apache.spark:spark-core_2.13:"
                + version.group(1));
    if (got.code() != 0) {
      System.out.println("Spark cannot be had here; the fleet was not tried.\n" + got.said());
    }
    assumeTrue(got.code() == 0, "Spark cannot be had here");
  }

  private static boolean isFigure(String line) {
    return line.matches("\\d+ (jobs|parts).*") || line.startsWith("[INFO] Tests run:");
  }

  private static void assertNothingLeft(Path spark) throws IOException {
    if (Files.exists(spark)) {
      try (Stream<Path> left = Files.list(spark)) {
        assertEquals(0, left.count(), "Spark left files in " + spark);
      }
    }
  }
}
