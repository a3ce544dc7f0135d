package kelter.cli.command;

import java.util.function.Supplier;
import kelter.cli.json.output.JsonResult;
import kelter.cli.usage.CommandUsage;

/**
 * A command. What it takes is declared by code and not by annotations, which would be read by
 * reflection at every start.
 */
public interface Command {

  /**
   * What it takes.
   *
   * @return its usage
   */
  CommandUsage usage();

  /**
   * Whether it diagnoses, so that the workshop is worth wiring ahead.
   *
   * @return true if it does
   */
  default boolean diagnoses() {
    return false;
  }

  /**
   * Does it.
   *
   * @param invocation what was given on the command line
   * @throws kelter.core.problem.InputException if the input cannot be used
   */
  void run(Invocation invocation);

  /**
   * Shows a result in the form that was asked for.
   *
   * @param invocation what was given on the command line
   * @param json makes the result as JSON
   * @param text makes the result for a person
   */
  static void show(Invocation invocation, Supplier<JsonResult> json, Supplier<String> text) {
    if (invocation.isJson()) {
      invocation.tell(json.get());
    } else {
      invocation.terminal().print(text.get());
    }
  }

  /**
   * Shows what also is a file, in the form that was asked for.
   *
   * @param invocation what was given on the command line
   * @param file makes the content of the file, JSON
   * @param text makes the result for a person
   */
  static void showFile(Invocation invocation, Supplier<String> file, Supplier<String> text) {
    if (invocation.isJson()) {
      invocation.terminal().printJson(file.get());
    } else {
      invocation.terminal().print(text.get());
    }
  }
}
