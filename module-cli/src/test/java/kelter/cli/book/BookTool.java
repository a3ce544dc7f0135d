package kelter.cli.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import kelter.core.file.book.EntryLine;

/** Commands of the job book as processes of the built tool. */
final class BookTool {

  private static final Path TOOL = Path.of("target", "kelter", "bin", "kelter").toAbsolutePath();
  private static final long PATIENCE_SECONDS = 120;

  private final Path folder;

  /** In a folder, where what is said is kept too. */
  BookTool(Path folder) {
    assertTrue(Files.exists(TOOL), "build the tool first: mvn -B package -DskipTests");
    this.folder = folder;
  }

  /** What a process that ended said. */
  record Said(int code, String out, String err) {

    /** A clear sentence and exit code 1, and nothing that only a programmer reads. */
    void refusedFor(String reason) {
      assertEquals(1, code, err);
      assertTrue(err.contains(reason), err);
      assertTrue(err.lines().allMatch(line -> line.startsWith("kelter: ")), err);
      assertTrue(!err.contains("Exception") && !err.contains("defect"), err);
    }

    void succeeded() {
      assertEquals(0, code, err);
    }
  }

  /** A process that may be killed. */
  record Running(Process process, Path out, Path err) {

    void kill() throws InterruptedException {
      process.destroyForcibly().waitFor();
    }

    Said end() throws IOException, InterruptedException {
      assertTrue(process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS), "it does not end");
      return new Said(process.exitValue(), Files.readString(out), Files.readString(err));
    }
  }

  /** Starts {@code kelter book ...}. */
  Running start(String... words) throws IOException {
    return start(List.of(), words);
  }

  /** Starts {@code kelter book ...} by a command that runs what follows it. */
  Running start(List<String> by, String... words) throws IOException {
    List<String> command = new ArrayList<>(by);
    command.add(TOOL.toString());
    command.add("book");
    command.addAll(List.of(words));
    Path out = Files.createTempFile(folder, "said-", ".out");
    Path err = Files.createTempFile(folder, "said-", ".err");
    ProcessBuilder builder =
        new ProcessBuilder(command).redirectOutput(out.toFile()).redirectError(err.toFile());
    builder.environment().remove("KELTER_SHOP");
    return new Running(builder.start(), out, err);
  }

  Said run(String... words) throws IOException, InterruptedException {
    return start(words).end();
  }

  /** A file with the entries of some numbers. */
  Path lines(String name, int from, int to) throws IOException {
    Stream<String> lines =
        IntStream.range(from, to).mapToObj(i -> EntryLine.write(Entries.full("job-" + i)));
    return Files.write(folder.resolve(name), lines.toList());
  }
}
