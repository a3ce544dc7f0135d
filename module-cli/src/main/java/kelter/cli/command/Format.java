package kelter.cli.command;

/** How a result is shown. */
enum Format {
  text,
  json
}
