package kelter.cli.command.tool;

import java.util.List;
import kelter.cli.command.Command;
import kelter.cli.command.Invocation;
import kelter.cli.json.PublishedSchema;
import kelter.cli.json.StrictJobSchema;
import kelter.cli.terminal.Terminal;
import kelter.cli.text.Layout;
import kelter.cli.usage.CommandArgument;
import kelter.cli.usage.CommandOption;
import kelter.cli.usage.CommandUsage;
import kelter.cli.usage.ValueKind;
import kelter.core.problem.InputException;
import kelter.core.quantity.Nearest;

/** {@code kelter schema [NAME]}: the JSON Schemas of all files and results. */
public final class SchemaCommand implements Command {

  private static final CommandOption STRICT =
      CommandOption.flag(
          "--strict",
          "the schema of a job with the words of the modules: parts, observables, units, grades,"
              + " conditions, symptoms");

  private static final String JOB = "job";

  @Override
  public CommandUsage usage() {
    return new CommandUsage(
        "schema",
        "Show the JSON Schema of a file or a result.",
        "Without a name it lists the schemas.",
        List.of(STRICT),
        List.of(new CommandArgument("NAME", ValueKind.SCHEMA, true, false, "the name of a schema")),
        List.of("kelter schema", "kelter schema diagnosis", "kelter schema --strict job"));
  }

  @Override
  public void run(Invocation invocation) {
    List<PublishedSchema> schemas = PublishedSchema.all();
    List<String> arguments = invocation.given().arguments();
    Terminal terminal = invocation.terminal();
    if (invocation.given().has(STRICT)) {
      requireJob(arguments);
      terminal.printJson(StrictJobSchema.of(invocation.workshop().vocabulary()));
    } else if (!arguments.isEmpty()) {
      terminal.printJson(named(arguments.get(0), schemas).text());
    } else if (invocation.isJson()) {
      invocation.tell(PublishedSchema.list(schemas));
    } else {
      Layout layout = new Layout(terminal);
      schemas.forEach(schema -> layout.hanging("", schema.name() + ": " + schema.title()));
      terminal.print(layout.toString());
    }
  }

  private static void requireJob(List<String> arguments) {
    if (!arguments.equals(List.of(JOB))) {
      throw new InputException(
          STRICT.name(), "is for the schema of a job", "write 'kelter schema --strict job'");
    }
  }

  private static PublishedSchema named(String name, List<PublishedSchema> schemas) {
    for (PublishedSchema schema : schemas) {
      if (schema.name().equals(name)) {
        return schema;
      }
    }
    String remedy =
        Nearest.of(name, schemas.stream().map(PublishedSchema::name).toList())
            .map(near -> "did you mean '" + near + "'?")
            .orElse("'kelter schema' lists the names");
    throw new InputException(name, "is not the name of a schema", remedy);
  }
}
