package kelter.cli.command;

import java.nio.file.Path;
import java.util.Optional;
import kelter.cli.terminal.Terminal;
import kelter.cli.wiring.Workshop;
import picocli.CommandLine.Option;

/** The options that every command has, and what they open. */
final class Shared {

  @Option(
      names = "--plugins",
      paramLabel = "DIR",
      description = "also load the modules in this folder")
  private Path plugins;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "text",
      description = "text (default) or json")
  private Format format;

  @Option(names = "--trace", hidden = true, description = "show where a defect happened")
  private boolean trace;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "show this help and stop")
  private boolean help;

  private Terminal terminal;

  void on(Terminal where) {
    this.terminal = where;
  }

  Terminal terminal() {
    return terminal;
  }

  boolean isTraced() {
    return trace;
  }

  boolean isJson() {
    return format == Format.json;
  }

  Workshop workshop() {
    Workshop workshop = Workshop.open(Optional.ofNullable(plugins));
    workshop.refused().forEach(problem -> terminal.complain("kelter: " + problem.display()));
    return workshop;
  }
}
