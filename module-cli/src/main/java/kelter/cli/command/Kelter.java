package kelter.cli.command;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import kelter.cli.terminal.Terminal;
import kelter.core.problem.InputException;
import kelter.core.quantity.Nearest;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.UsageMessageSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/** The command line: reads the arguments, runs one command, and turns failures into exit codes. */
public final class Kelter {

  /** Done. */
  public static final int DONE = 0;

  /** The input cannot be used. */
  public static final int BAD_INPUT = 1;

  /** The command line cannot be understood. */
  public static final int BAD_USAGE = 2;

  /** A defect of the program. */
  public static final int DEFECT = 3;

  private static final Map<String, Supplier<Command>> COMMANDS = commands();

  private final Terminal terminal;

  /**
   * A command line.
   *
   * @param terminal where results and complaints go
   */
  public Kelter(Terminal terminal) {
    this.terminal = terminal;
  }

  private static Map<String, Supplier<Command>> commands() {
    Map<String, Supplier<Command>> commands = new LinkedHashMap<>();
    commands.put("new", NewCommand::new);
    commands.put("check", CheckCommand::new);
    commands.put("diagnose", DiagnoseCommand::new);
    commands.put("weigh", WeighCommand::new);
    commands.put("simulate", SimulateCommand::new);
    commands.put("readings", ReadingsCommand::new);
    commands.put("compute", ComputeCommand::new);
    commands.put("modules", ModulesCommand::new);
    commands.put("instruments", InstrumentsCommand::new);
    return commands;
  }

  private static CommandSpec root() {
    return CommandSpec.create()
        .name("kelter")
        .addOption(Arguments.help())
        .usageMessage(
            new UsageMessageSpec()
                .description(
                    "From what can be measured at a machine to what is wrong and what to do.")
                .customSynopsis("kelter COMMAND [OPTIONS] [ARGUMENTS]")
                .commandListHeading("%nCommands:%n")
                .optionListHeading("%nOptions:%n")
                .footer(
                    "",
                    "'kelter COMMAND --help' explains a command.",
                    "",
                    "Exit codes: 0 done; 1 the input cannot be used; 2 usage; 3 a defect of kelter.",
                    "",
                    "Kelter says which entered readings meet which limit. It does not replace local",
                    "codes and licensed practice. Gas, refrigerant circuits and fixed wiring are out",
                    "of its reach."));
  }

  /**
   * Runs a command.
   *
   * @param arguments the words of the command line
   * @return the exit code
   */
  public int run(String... arguments) {
    try {
      return parseAndRun(arguments);
    } catch (ParameterException wrong) {
      terminal.complain("kelter: " + message(wrong, arguments));
      terminal.complain("Try 'kelter " + helpOf(wrong.getCommandLine()) + "--help'.");
      return BAD_USAGE;
    }
  }

  private static String message(ParameterException wrong, String... arguments) {
    boolean noCommand = !COMMANDS.containsKey(arguments[0]) && !arguments[0].startsWith("-");
    if (!noCommand) {
      return wrong.getMessage();
    }
    String near =
        Nearest.of(arguments[0], COMMANDS.keySet())
            .map(name -> "; did you mean '" + name + "'?")
            .orElse("");
    return "there is no command '" + arguments[0] + "'" + near;
  }

  private static String helpOf(CommandLine commandLine) {
    String name = commandLine.getCommandName();
    return name.equals("kelter") ? "" : name + " ";
  }

  private int parseAndRun(String... arguments) {
    CommandLine root = new CommandLine(root());
    addCommands(root, arguments);
    ParseResult result = root.parseArgs(arguments);
    ParseResult last = result.hasSubcommand() ? result.subcommand() : result;
    if (last.isUsageHelpRequested() || !result.hasSubcommand()) {
      terminal.print(usage(last.commandSpec().commandLine()));
      return last.isUsageHelpRequested() || arguments.length == 0 ? DONE : BAD_USAGE;
    }
    return run(COMMANDS.get(last.commandSpec().name()).get(), new Invocation(last, terminal));
  }

  // Only the command that is asked for is read, for a quicker start; help shows them all.
  private static void addCommands(CommandLine root, String... arguments) {
    Supplier<Command> asked = arguments.length == 0 ? null : COMMANDS.get(arguments[0]);
    if (asked != null) {
      root.addSubcommand(arguments[0], new CommandLine(asked.get().spec()));
    } else {
      COMMANDS.forEach(
          (name, command) -> root.addSubcommand(name, new CommandLine(command.get().spec())));
    }
  }

  private static String usage(CommandLine commandLine) {
    commandLine.setUsageHelpWidth(Terminal.WIDTH);
    return commandLine.getUsageMessage(CommandLine.Help.Ansi.OFF);
  }

  private int run(Command command, Invocation invocation) {
    try {
      command.run(invocation);
      return DONE;
    } catch (InputException unusable) {
      unusable.problems().forEach(problem -> terminal.complain("kelter: " + problem.display()));
      return BAD_INPUT;
    } catch (RuntimeException | LinkageError defect) {
      terminal.complain("kelter: a defect of the program: " + defect);
      terminal.complain("Run it again with --trace and tell what you see to those who keep it.");
      if (invocation.isTraced()) {
        StringWriter trace = new StringWriter();
        defect.printStackTrace(new PrintWriter(trace));
        terminal.complain(trace.toString());
      }
      return DEFECT;
    }
  }
}
