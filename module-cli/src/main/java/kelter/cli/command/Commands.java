package kelter.cli.command;

import java.util.List;

/** The commands by name. Only the one that is asked for is made, for a quicker start. */
final class Commands {

  /** The names, in the order in which a job goes through them. */
  static final List<String> NAMES =
      List.of(
          "new",
          "check",
          "diagnose",
          "weigh",
          "simulate",
          "readings",
          "compute",
          "modules",
          "instruments",
          "schema");

  private Commands() {}

  /** The command of this name, one of {@link #NAMES}. */
  static Command named(String name) {
    return switch (name) {
      case "new" -> new NewCommand();
      case "check" -> new CheckCommand();
      case "diagnose" -> new DiagnoseCommand();
      case "weigh" -> new WeighCommand();
      case "simulate" -> new SimulateCommand();
      case "readings" -> new ReadingsCommand();
      case "compute" -> new ComputeCommand();
      case "modules" -> new ModulesCommand();
      case "instruments" -> new InstrumentsCommand();
      case "schema" -> new SchemaCommand();
      default -> throw new IllegalArgumentException("no command has the name '" + name + "'");
    };
  }
}
