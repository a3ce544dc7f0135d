package kelter.cli.program;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.Iterator;
import java.util.Map;
import java.util.Optional;
import kelter.cli.terminal.Terminal;
import kelter.cli.wiring.Opening;

/** Runs a command and keeps what it says. */
public record Console(int code, String out, String err) {

  public static Console run(String... arguments) {
    return run(StandardCharsets.UTF_8, arguments);
  }

  public static Console run(Charset charset, String... arguments) {
    return run(charset, Terminal.WIDTH, arguments);
  }

  public static Console narrow(int width, String... arguments) {
    return run(StandardCharsets.UTF_8, width, arguments);
  }

  /** With lines that are typed, shown behind their prompts. */
  public static Console typing(String lines, Map<String, String> environment, String... arguments) {
    return run(StandardCharsets.UTF_8, Terminal.WIDTH, environment, lines, arguments);
  }

  /** With a variable of the environment that names a shop. */
  public static Console inShop(String named, String... arguments) {
    return run(StandardCharsets.UTF_8, Terminal.WIDTH, Map.of("KELTER_SHOP", named), arguments);
  }

  private static Console run(Charset charset, int width, String... arguments) {
    return run(charset, width, Map.of(), arguments);
  }

  private static Console run(
      Charset charset, int width, Map<String, String> environment, String... arguments) {
    return run(charset, width, environment, "", arguments);
  }

  private static Console run(
      Charset charset,
      int width,
      Map<String, String> environment,
      String typed,
      String... arguments) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Terminal terminal =
        new Terminal(
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8),
            charset,
            false,
            false,
            width);
    Iterator<String> lines = typed.lines().iterator();
    terminal.readFrom(
        prompt -> {
          Optional<String> line = lines.hasNext() ? Optional.of(lines.next()) : Optional.empty();
          terminal.print(prompt + line.orElse("") + "\n");
          return line;
        });
    int code =
        new Kelter(terminal, new Opening(terminal, Clock.systemUTC()), environment).run(arguments);
    return new Console(code, out.toString(charset), err.toString(charset));
  }

  public int widest() {
    return (out + err).lines().mapToInt(String::length).max().orElse(0);
  }
}
