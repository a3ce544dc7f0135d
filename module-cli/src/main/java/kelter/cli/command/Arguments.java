package kelter.cli.command;

import java.nio.file.Path;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.Model.UsageMessageSpec;

/** The parts from which the commands declare what they take. */
final class Arguments {

  private static final String HELP_TEXT = "show this help and stop";

  private Arguments() {}

  /** A command with the options that every command has. */
  static CommandSpec command(String name, String[] description, String... examples) {
    String[] footer = new String[examples.length + 2];
    footer[0] = "";
    footer[1] = examples.length == 1 ? "Example:" : "Examples:";
    for (int i = 0; i < examples.length; i++) {
      footer[i + 2] = "  " + examples[i];
    }
    return CommandSpec.create()
        .name(name)
        .usageMessage(new UsageMessageSpec().description(description).footer(footer))
        .addOption(
            OptionSpec.builder(Invocation.PLUGINS)
                .paramLabel("DIR")
                .type(Path.class)
                .description("also load the modules in this folder")
                .build())
        .addOption(
            OptionSpec.builder(Invocation.FORMAT)
                .paramLabel("FORMAT")
                .type(Invocation.Format.class)
                .description("text (default) or json")
                .build())
        .addOption(OptionSpec.builder(Invocation.TRACE).type(boolean.class).hidden(true).build())
        .addOption(help());
  }

  static OptionSpec help() {
    return OptionSpec.builder("-h", "--help")
        .type(boolean.class)
        .usageHelp(true)
        .description(HELP_TEXT)
        .build();
  }

  static PositionalParamSpec parameter(String label, Class<?> type, String description) {
    return PositionalParamSpec.builder()
        .index("0")
        .arity("1")
        .required(true)
        .paramLabel(label)
        .type(type)
        .description(description)
        .build();
  }

  static OptionSpec shop() {
    return OptionSpec.builder(Invocation.SHOP)
        .paramLabel("FILE")
        .type(Path.class)
        .description("the shop profile: instruments, decision level, live work")
        .build();
  }

  static PositionalParamSpec jobFile(String description) {
    return parameter("JOB", Path.class, description);
  }

  static String[] lines(String... lines) {
    return lines;
  }
}
