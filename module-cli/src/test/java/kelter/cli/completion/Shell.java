package kelter.cli.completion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** A shell of this machine that tries a script. */
public record Shell(Path folder) {

  private static final String ASKING =
      """
      source ./kelter.bash
      COMP_WORDS=("$@")
      COMP_CWORD=$(($# - 1))
      _kelter
      printf '%s\\n' "${COMPREPLY[@]}"
      """;

  /** Whether a program is on the path. */
  public static boolean has(String program) {
    return Arrays.stream(System.getenv("PATH").split(":"))
        .anyMatch(place -> Files.isExecutable(Path.of(place, program)));
  }

  /** What bash proposes for the last of some words, by a script. */
  public List<String> proposals(String script, String... words)
      throws IOException, InterruptedException {
    Files.writeString(folder.resolve("kelter.bash"), script);
    List<String> call = new ArrayList<>(List.of("--noprofile", "--norc", "-c", ASKING, "ask"));
    call.addAll(List.of(words));
    return run("bash", call).lines().filter(line -> !line.isEmpty()).toList();
  }

  /** Holds that a shell can read a script, without doing what stands in it. */
  public void assertReads(String shell, String script) throws IOException, InterruptedException {
    Files.writeString(folder.resolve("script"), script);
    run(shell, List.of("-n", "script"));
  }

  private String run(String program, List<String> words) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(List.of(program));
    command.addAll(words);
    Path out = folder.resolve("out.txt");
    Process process =
        new ProcessBuilder(command)
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .redirectOutput(out.toFile())
            .start();
    assertTrue(process.waitFor(1, TimeUnit.MINUTES), "it comes back");
    String said = Files.readString(out, StandardCharsets.UTF_8);
    assertEquals(0, process.exitValue(), said);
    return said;
  }
}
