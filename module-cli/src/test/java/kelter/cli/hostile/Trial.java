package kelter.cli.hostile;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import kelter.cli.command.ExitCode;
import kelter.cli.program.Kelter;
import kelter.cli.terminal.Terminal;
import kelter.cli.wiring.Opening;
import kelter.core.text.HarmlessText;

/**
 * A command that was run in this process, and what must hold of any.
 *
 * @param arguments the words of the command line
 * @param code the exit code
 * @param out standard output
 * @param err standard error
 * @param thrown what came out of it, which nothing may
 */
record Trial(List<String> arguments, int code, String out, String err, Optional<Throwable> thrown) {

  private static final Pattern NOT_FINITE = Pattern.compile("\\b(NaN|Infinity)\\b|\u221e");

  private static final Pattern GIVEN_SO =
      Pattern.compile("NaN|Infinity|\u221e", Pattern.CASE_INSENSITIVE);

  Trial {
    arguments = List.copyOf(arguments);
  }

  /** Runs a command at a time. */
  static Trial run(Clock clock, List<String> arguments) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Terminal terminal =
        new Terminal(
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8),
            StandardCharsets.UTF_8,
            false,
            false,
            Terminal.WIDTH);
    int code = ExitCode.DEFECT;
    Optional<Throwable> thrown = Optional.empty();
    try {
      code =
          new Kelter(terminal, new Opening(terminal, clock)).run(arguments.toArray(String[]::new));
    } catch (Throwable uncaught) { // Errors too: each would end the tool with a trace.
      thrown = Optional.of(uncaught);
    }
    return new Trial(
        arguments,
        code,
        out.toString(StandardCharsets.UTF_8),
        err.toString(StandardCharsets.UTF_8),
        thrown);
  }

  /**
   * What is wrong with the answer, whatever was asked.
   *
   * @param mayBeUsage whether the command line itself was hostile
   * @param given all that was given, since the answer may repeat it
   * @return the fault in words, empty if there is none
   */
  String wrong(boolean mayBeUsage, String given) {
    if (thrown.isPresent()) {
      return "uncaught: " + trace(thrown.get());
    }
    if (code < ExitCode.DONE || code > (mayBeUsage ? ExitCode.BAD_USAGE : ExitCode.BAD_INPUT)) {
      return "ends with " + code + ": " + err;
    }
    if (code != ExitCode.DONE && err.isBlank()) {
      return "ends with " + code + " without a word";
    }
    if ((out + err).replace("\n", "").codePoints().anyMatch(HarmlessText::isHarmful)) {
      return "writes signs that do something";
    }
    if (NOT_FINITE.matcher(out + ofOurs()).find() && !GIVEN_SO.matcher(given).find()) {
      return "tells a figure that is none";
    }
    boolean json = arguments.contains("json") && arguments.contains("--format");
    // Help and the version are told in words, whatever stands beside them.
    boolean words =
        arguments.indexOf("help") == 0
            || arguments.indexOf("--version") == 0
            || arguments.contains("--help");
    return json && code == ExitCode.DONE && !words ? wrongJson() : "";
  }

  /** Complaints but those that tell what a plugin gave. */
  private String ofOurs() {
    return err.lines()
        .filter(line -> !line.startsWith("kelter: plugin "))
        .collect(Collectors.joining("\n"));
  }

  private static String trace(Throwable thrown) {
    StringWriter trace = new StringWriter();
    thrown.printStackTrace(new PrintWriter(trace));
    return trace.toString();
  }

  /** Jackson as it comes takes what RFC 8259 says, so no figure that is none. */
  private String wrongJson() {
    try (JsonParser parser = new JsonFactory().createParser(out)) {
      if (parser.nextToken() != JsonToken.START_OBJECT) {
        return "writes no JSON object";
      }
      parser.skipChildren();
      return parser.nextToken() == null ? "" : "writes more than one JSON document";
    } catch (IOException unreadable) {
      return "writes JSON that cannot be read: " + unreadable.getMessage();
    }
  }
}
