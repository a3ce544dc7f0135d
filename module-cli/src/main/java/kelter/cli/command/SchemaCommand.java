package kelter.cli.command;

import java.util.List;
import kelter.cli.json.PublishedSchema;
import kelter.cli.terminal.Terminal;
import kelter.cli.text.Layout;
import kelter.cli.usage.CommandArgument;
import kelter.cli.usage.CommandUsage;
import kelter.cli.usage.ValueKind;
import kelter.core.problem.InputException;
import kelter.core.quantity.Nearest;

/** {@code kelter schema [NAME]}: the JSON Schemas of all files and results. */
final class SchemaCommand implements Command {

  @Override
  public CommandUsage usage() {
    return new CommandUsage(
        "schema",
        "Show the JSON Schema of a file or a result.",
        "Without a name it lists the schemas.",
        List.of(),
        List.of(new CommandArgument("NAME", ValueKind.SCHEMA, true, false, "the name of a schema")),
        List.of("kelter schema", "kelter schema diagnosis"));
  }

  @Override
  public void run(Invocation invocation) {
    List<PublishedSchema> schemas = PublishedSchema.all();
    List<String> arguments = invocation.given().arguments();
    Terminal terminal = invocation.terminal();
    if (!arguments.isEmpty()) {
      terminal.printJson(named(arguments.get(0), schemas).text());
    } else if (invocation.isJson()) {
      invocation.tell(PublishedSchema.list(schemas));
    } else {
      Layout layout = new Layout(terminal);
      schemas.forEach(schema -> layout.hanging("", schema.name() + ": " + schema.title()));
      terminal.print(layout.toString());
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
