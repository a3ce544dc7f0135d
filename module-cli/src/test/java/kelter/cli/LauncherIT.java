package kelter.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import kelter.cli.wiring.LampPlugin;
import kelter.cli.wiring.PluginJar;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The launcher where it lies or runs oddly, and plugins that end the process or hold it up. */
@DisabledOnOs(OS.WINDOWS)
class LauncherIT {

  /** A question mark in the place of a sign, not behind a question. */
  private static final Pattern NOT_WRITTEN = Pattern.compile("\\?\\w|\\W\\?");

  private static final Path TOOL = Path.of("target", "kelter").toAbsolutePath();
  private static final Path JOB =
      Path.of("..", "demo", "jobs", "washer-extractor.json").toAbsolutePath().normalize();
  private static final String UMLAUT = "u=$(printf '\\303\\274'); ";

  @TempDir private Path folder;

  private record Run(int code, String out, String err) {}

  /** Runs a shell script in the folder, with the tool as $1 and the job as $2. */
  private Run shell(String script) throws IOException, InterruptedException {
    List<String> command =
        new ArrayList<>(List.of("sh", "-c", script, "sh", TOOL.toString(), JOB.toString()));
    Path out = folder.resolve("out.txt");
    Path err = folder.resolve("err.txt");
    Process process =
        new ProcessBuilder(command)
            .directory(folder.toFile())
            .redirectOutput(out.toFile())
            .redirectError(err.toFile())
            .start();
    assertTrue(process.waitFor(2, TimeUnit.MINUTES), "it comes back");
    return new Run(
        process.exitValue(),
        new String(Files.readAllBytes(out), StandardCharsets.UTF_8),
        new String(Files.readAllBytes(err), StandardCharsets.UTF_8));
  }

  private static void assertDiagnosed(Run run) {
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("Take along: heater with its seal"), run.out() + run.err());
  }

  @Test
  void aFolderWithUmlautsInThePlainLocale() throws IOException, InterruptedException {
    for (String with :
        List.of(
            "LC_ALL=C", "LC_ALL=POSIX", "LC_ALL=xx_XX.UTF-8", "LC_ALL=C KELTER_RUNTIME=system")) {
      Run run =
          shell(
              UMLAUT
                  + "[ -d k$u ] || { cp -R \"$1\" k$u; cp \"$2\" j$u.json; }; "
                  + with
                  + " k$u/bin/kelter diagnose j$u.json");
      assertDiagnosed(run);
      if (with.startsWith("LC_ALL=C")) {
        assertTrue(StandardCharsets.US_ASCII.newEncoder().canEncode(run.out()), run.out());
        assertFalse(NOT_WRITTEN.matcher(run.out()).find(), run.out());
      }
    }
  }

  @Test
  void startedFromItsOwnFolder() throws IOException, InterruptedException {
    assertDiagnosed(shell("cd \"$1/bin\" && sh kelter diagnose \"$2\""));
  }

  @Test
  void aFolderThatStartsWithAHyphen() throws IOException, InterruptedException {
    assertDiagnosed(shell("cp -R \"$1\" ./-k; sh -- -k/bin/kelter diagnose \"$2\""));
    assertDiagnosed(shell("KELTER_RUNTIME=system sh -- -k/bin/kelter diagnose \"$2\""));
    Run job = shell("cp \"$2\" ./-j.json; -k/bin/kelter diagnose -j.json");
    assertEquals(2, job.code());
    assertTrue(job.err().contains("for the file of that name write './-j.json'"), job.err());
    assertDiagnosed(shell("true; -k/bin/kelter diagnose -- -j.json"));
  }

  @Test
  void aDamagedClassArchive() throws IOException, InterruptedException {
    shell("cp -R \"$1\" k");
    Path archive = folder.resolve("k/runtime/lib/server/classes.jsa");
    if (!Files.exists(archive)) {
      return; // Built without a runtime image.
    }
    long length = Files.size(archive);
    for (int tenth = 1; tenth < 10; tenth += 2) {
      try (RandomAccessFile file = new RandomAccessFile(archive.toFile(), "rw")) {
        file.seek(length * tenth / 10);
        byte[] noise = new byte[4096];
        new java.util.Random(tenth).nextBytes(noise);
        file.write(noise);
      }
      assertDiagnosed(shell("k/bin/kelter diagnose \"$2\""));
    }
    Files.write(archive, new byte[100]);
    assertDiagnosed(shell("k/bin/kelter diagnose \"$2\""));
  }

  @Test
  void aMissingJarIsNamed() throws IOException, InterruptedException {
    Run run =
        shell(
            "cp -R \"$1\" k; rm k/lib/kelter-electrical*.jar;"
                + " KELTER_RUNTIME=system k/bin/kelter diagnose \"$2\"");
    assertEquals(3, run.code());
    assertEquals("", run.out());
    assertTrue(
        run.err().matches("kelter: .*/lib/kelter-electrical-.*jar is missing; .*\n"), run.err());
    if (Files.exists(TOOL.resolve("runtime"))) {
      assertDiagnosed(
          shell(
              "rm -f k/runtime/lib/modules; rm -R k/lib; cp -R \"$1/lib\" k/lib; k/bin/kelter diagnose \"$2\""));
    }
  }

  private Run with(LampPlugin plugin) throws IOException, InterruptedException {
    PluginJar.compile(folder.resolve("plugins/bad.jar"), plugin.sources());
    return shell(
        "\"$1/bin/kelter\" diagnose --format json --plugins plugins --plugin-seconds 2 \"$2\"");
  }

  private static void assertEnded(Run run, String words) {
    assertEquals(1, run.code(), run.err());
    assertEquals("", run.out());
    assertTrue(run.err().startsWith("kelter: plugin bad.jar, "), run.err());
    assertTrue(run.err().contains(words), run.err());
  }

  @Test
  void aPluginThatEndsTheProcess() throws IOException, InterruptedException {
    for (String piece : List.of("construct", "about", "parts", "checks", "calculations")) {
      assertEnded(
          with(new LampPlugin().with(piece, "if (spins) System.exit(0); throw new Error();")),
          "calls System.exit");
    }
    assertEnded(
        with(
            new LampPlugin()
                .with(
                    "about",
                    "new Thread(() -> System.exit(0), \"own\").start();"
                        + " try { Thread.sleep(60000); } catch (InterruptedException e) { }"
                        + " return null;")),
        "thread own: calls System.exit");
  }

  @Test
  void aPluginThatDoesNotComeBack() throws IOException, InterruptedException {
    for (String piece : List.of("construct", "about", "kinds")) {
      Run run = with(new LampPlugin().with(piece, "while (spins) { } throw new Error();"));
      assertEnded(run, "does not come back within 2 s");
    }
  }

  @Test
  void aPluginThatDoesNotLetItEnd() throws IOException, InterruptedException {
    Run run =
        with(
            new LampPlugin()
                .with(
                    "construct",
                    "Runtime.getRuntime().addShutdownHook("
                        + "new Thread(() -> { while (spins) { } }, \"late\"));"));
    assertEquals(1, run.code());
    assertTrue(run.out().endsWith("}\n"), "the result is there");
    assertTrue(
        run.err().contains("plugin bad.jar, thread late: does not let Kelter end"), run.err());
  }
}
