package kelter.cli.program;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.cli.command.Command;
import kelter.cli.command.Complaints;
import kelter.cli.command.ExitCode;
import kelter.cli.command.Invocation;
import kelter.cli.command.NamedShop;
import kelter.cli.json.ErrorsJson;
import kelter.cli.json.output.JsonResult;
import kelter.cli.json.output.MadeBy;
import kelter.cli.plugin.PluginFault;
import kelter.cli.terminal.Terminal;
import kelter.cli.text.Layout;
import kelter.cli.usage.CommandLineReader;
import kelter.cli.usage.CommandUsage;
import kelter.cli.usage.Given;
import kelter.cli.usage.HelpText;
import kelter.cli.usage.UsageException;
import kelter.cli.wiring.Opening;
import kelter.core.problem.InputException;
import kelter.core.problem.Mistake;
import kelter.core.problem.Problem;
import kelter.core.quantity.Nearest;

/** The command line: reads the arguments, runs one command, and turns failures into exit codes. */
public final class Kelter {

  /** What it does. */
  static final String SUMMARY =
      "From what can be measured at a machine to what is wrong and what to do.";

  private static final String VERSION = "--version";

  private final Terminal terminal;
  private final Opening opening;
  private final Map<String, String> environment;

  /**
   * A command line in an environment of which nothing is used.
   *
   * @param terminal where results and complaints go
   * @param opening opens the workshop that a command works in
   */
  public Kelter(Terminal terminal, Opening opening) {
    this(terminal, opening, Map.of());
  }

  /**
   * A command line.
   *
   * @param terminal where results and complaints go
   * @param opening opens the workshop that a command works in
   * @param environment the variables of the environment; only KELTER_SHOP is used
   */
  public Kelter(Terminal terminal, Opening opening, Map<String, String> environment) {
    this.terminal = terminal;
    this.opening = opening;
    this.environment = environment;
  }

  /**
   * Runs a command.
   *
   * @param arguments the words of the command line
   * @return the exit code
   */
  public int run(String... arguments) {
    int code = answer(arguments);
    String lost = terminal.lostOutput();
    if (lost.isEmpty()) {
      return code;
    }
    terminal.complain("kelter: the output could not be written: " + lost);
    return code == ExitCode.DONE ? ExitCode.BAD_INPUT : code;
  }

  private int answer(String... arguments) {
    boolean json = CommandLineReader.asksForJson(arguments);
    if (json && forPeople(arguments[0])) {
      return refuse("", UsageException.forPeople(arguments[0]).mistakes(), true);
    }
    if (arguments.length > 0 && arguments[0].equals(VERSION)) {
      terminal.print(
          "kelter " + MadeBy.version() + ", Java " + System.getProperty("java.version") + "\n");
      return ExitCode.DONE;
    }
    if (arguments.length == 0 || forPeople(arguments[0])) {
      terminal.print(overview());
      return ExitCode.DONE;
    }
    String name = Commands.in(arguments);
    if (!Commands.NAMES.contains(name)) {
      return refuse("", List.of(noCommand(name)), json);
    }
    Command command = Commands.named(name);
    if (command.diagnoses()) {
      opening.beginAhead();
    }
    CommandUsage usage = command.usage();
    Given given;
    try {
      int words = name.split(" ").length;
      given = CommandLineReader.read(usage, Arrays.copyOfRange(arguments, words, arguments.length));
    } catch (UsageException wrong) {
      return refuse(name + " ", wrong.mistakes(), json);
    }
    if (given.has(CommandUsage.HELP)) {
      if (json) {
        String help = name + " " + CommandUsage.HELP.name();
        return refuse(name + " ", UsageException.forPeople(help).mistakes(), true);
      }
      terminal.print(HelpText.of(usage, terminal));
      return ExitCode.DONE;
    }
    try {
      return run(
          command, new Invocation(given, opening, terminal, command.diagnoses(), shop(usage)));
    } catch (UsageException wrong) {
      return refuse(name + " ", wrong.mistakes(), json);
    }
  }

  /** Whether a first word asks for what only people read. */
  private static boolean forPeople(String word) {
    return CommandUsage.HELP.isCalled(word) || word.equals("help") || word.equals(VERSION);
  }

  /** The shop that the environment names, for a command that goes by a shop. */
  private Optional<String> shop(CommandUsage usage) {
    String named = environment.getOrDefault(NamedShop.VARIABLE, "");
    return !named.isBlank() && usage.options().contains(NamedShop.OPTION)
        ? Optional.of(named)
        : Optional.empty();
  }

  private static String noCommand(String word) {
    if (word.startsWith("-")) {
      return "the command stands first, before '" + word + "'";
    }
    return "there is no command '"
        + word
        + "'"
        + meant(word).map(name -> "; did you mean '" + name + "'?").orElse("");
  }

  private static Optional<String> meant(String word) {
    return Commands.NAMES.stream()
        .filter(name -> name.startsWith(word + " "))
        .findFirst()
        .or(() -> Nearest.of(word, Commands.NAMES));
  }

  private int refuse(String command, List<String> mistakes, boolean json) {
    String help = "Try 'kelter " + command + "--help'.";
    List<Problem> problems = new ArrayList<>();
    for (String mistake : mistakes) {
      terminal.complain("kelter: " + mistake);
      problems.add(new Problem(Mistake.USAGE, "", mistake, help));
    }
    terminal.complain(help);
    if (json) {
      JsonResult errors = ErrorsJson.of(ExitCode.BAD_USAGE, problems);
      terminal.printJson(errors.text(MadeBy.loaded(List.of())));
    }
    return ExitCode.BAD_USAGE;
  }

  /** Tells on standard output why there is no result, where a result as JSON was asked for. */
  private static int without(int code, List<Problem> why, Invocation invocation) {
    if (invocation.isJson()) {
      invocation.tellAsFarAsLoaded(ErrorsJson.of(code, why));
    }
    return code;
  }

  private String overview() {
    Layout layout = new Layout(terminal);
    layout.line("kelter COMMAND [OPTIONS] [ARGUMENTS]").blank().line(SUMMARY);
    List<HelpText.Row> commands = new ArrayList<>();
    for (String name : Commands.NAMES) {
      commands.add(new HelpText.Row(name, Commands.named(name).usage().summary()));
    }
    HelpText.table(layout, "Commands", commands, terminal);
    return layout
        .blank()
        .line("'kelter COMMAND --help' explains a command, 'kelter --version' tells the version.")
        .blank()
        .line("Exit codes: " + ExitCode.MEANING)
        .blank()
        .line(
            "Kelter says which entered readings meet which limit. It does not replace local"
                + " codes and licensed practice. Gas, refrigerant circuits and fixed wiring are"
                + " out of its reach.")
        .toString();
  }

  private int run(Command command, Invocation invocation) {
    try {
      command.run(invocation);
      return invocation.exitCode();
    } catch (InputException unusable) {
      List<Problem> problems = invocation.placed(unusable).problems();
      Complaints.tell(problems, terminal);
      return without(ExitCode.BAD_INPUT, problems, invocation);
    } catch (UsageException wrong) {
      throw wrong;
    } catch (RuntimeException | LinkageError defect) {
      if (invocation.hasPlugins()) {
        PluginFault fault = PluginFault.behind(defect);
        if (fault != null) {
          return without(fault, command, invocation);
        }
      }
      return defect(defect, invocation);
    }
  }

  /** Once more without what a plugin failed at; it was told when it failed. */
  private int without(PluginFault fault, Command command, Invocation invocation) {
    if (!fault.isLeftOut()) {
      return without(ExitCode.BAD_INPUT, List.of(fault.problem()), invocation);
    }
    invocation.again();
    return run(command, invocation);
  }

  private int defect(Throwable defect, Invocation invocation) {
    terminal.complain("kelter: a defect of the program: " + defect);
    terminal.complain("Run it again with --trace and tell what you see to those who keep it.");
    if (invocation.isTraced()) {
      StringWriter trace = new StringWriter();
      defect.printStackTrace(new PrintWriter(trace));
      terminal.trace(trace.toString());
    }
    Problem told = new Problem(Mistake.DEFECT, "", defect.toString(), "");
    return without(ExitCode.DEFECT, List.of(told), invocation);
  }
}
