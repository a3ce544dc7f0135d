package kelter.cli.program;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The launcher for Windows, which nobody could run here, read beside the one for sh. */
class LaunchersTest {

  private static final Path BIN = Path.of("src", "dist", "bin");

  private String shell;
  private String windows;

  @BeforeEach
  void read() throws IOException {
    shell = Files.readString(BIN.resolve("kelter"));
    windows = Files.readString(BIN.resolve("kelter.cmd"));
  }

  private static MatchResult found(String pattern, String text) {
    Matcher matcher = Pattern.compile(pattern).matcher(text);
    assertTrue(matcher.find(), pattern);
    return matcher.toMatchResult();
  }

  @Test
  void bothGiveTheCommandsThatGoThroughManyJobsTheSameCollector() {
    MatchResult sh = found("\\n  (book:[a-z:| ]+) \\| diagnose:-\\) collector=\\$little ;;", shell);
    String little = found("\nlittle='(.*)'", shell).group(1);
    MatchResult cmd =
        found(
            "for %%W in \\(([a-z ]+)\\) do if /i \"%~1:%~2\"==\"book:%%W\""
                + " set \"KELTER_COLLECTOR=(.*)\"",
            windows);
    Map<String, Set<String>> commands = new LinkedHashMap<>();
    commands.put("sh", new TreeSet<>(Set.of(sh.group(1).replace("book:", "").split(" \\| "))));
    commands.put("cmd", new TreeSet<>(Set.of(cmd.group(1).split(" "))));

    assertEquals(commands.get("sh"), commands.get("cmd"));
    assertEquals(little, cmd.group(2));
    found("diagnose:\\?\\*\\) \\[ -d \"\\$2\" \\] && collector=\\$little", shell);
    for (String many :
        List.of(
            "if /i \"%~1:%~2\"==\"diagnose:-\"",
            "if /i \"%~1\"==\"diagnose\" if exist \"%~2\\\"")) {
      assertTrue(windows.contains(many + " set \"KELTER_COLLECTOR=" + little + "\""), many);
    }
    assertEquals(
        found("\ncollector='(.*)'", shell).group(1),
        found("set \"KELTER_COLLECTOR=(.*?)\"\r\n", windows).group(1));
  }

  @Test
  void bothGiveTheSameCommandsTheThoroughCompiler() {
    String late =
        found("\nlate='(.*)'\n", shell).group(1)
            + found("\nlate=\"\\$late(.*)\"\n", shell).group(1);
    found("diagnose:-\\) compiler=\"-XX:TieredStopAtLevel=4 \\$late\" ;;", shell);
    found("readings:\\*\\) compiler='-XX:TieredStopAtLevel=4' ;;", shell);
    assertEquals(
        "-XX:TieredStopAtLevel=4 " + late,
        found("if /i \"%~1:%~2\"==\"diagnose:-\" set \"KELTER_COMPILER=(.*)\"", windows).group(1));
    assertEquals(
        "-XX:TieredStopAtLevel=4",
        found("if /i \"%~1\"==\"readings\" set \"KELTER_COMPILER=(.*)\"", windows).group(1));
    assertEquals(
        found("\ncompiler='(.*)'", shell).group(1),
        found("set \"KELTER_COMPILER=(.*?)\"\r\n", windows).group(1));
  }

  /** What Java is told that is not a place, in the order of the one for sh. */
  @Test
  void bothTellJavaTheSame() {
    String sh = shell.substring(shell.lastIndexOf("exec \"$java\""));
    String cmd = found("set \"KELTER_FLAGS=(.*)\"", windows).group(1);
    String told =
        sh.replaceAll("\\\\?\n *", " ")
            .replace("exec \"$java\"", "")
            .replaceAll("-Dkelter.*", "")
            .replace("$compiler", "%KELTER_COMPILER%")
            .replace("$collector", "%KELTER_COLLECTOR%")
            .replaceAll(" +", " ")
            .strip();

    assertEquals(told, cmd);
  }
}
