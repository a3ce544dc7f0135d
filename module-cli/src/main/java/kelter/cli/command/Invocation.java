package kelter.cli.command;

import java.nio.file.Path;
import java.util.Optional;
import kelter.cli.terminal.Terminal;
import kelter.cli.wiring.Workshop;
import kelter.core.file.ShopFile;
import kelter.core.shop.Shop;
import picocli.CommandLine.ParseResult;

/**
 * One call of a command: what was given on the command line, and where the result goes.
 *
 * @param given the arguments of the command
 * @param terminal where results and complaints go
 */
record Invocation(ParseResult given, Terminal terminal) {

  static final String PLUGINS = "--plugins";
  static final String FORMAT = "--format";
  static final String SHOP = "--shop";
  static final String TRACE = "--trace";

  /** How a result is shown. */
  enum Format {
    text,
    json
  }

  boolean isTraced() {
    return given.hasMatchedOption(TRACE);
  }

  boolean isJson() {
    return given.matchedOptionValue(FORMAT, Format.text) == Format.json;
  }

  /** The first argument that is not an option. */
  <T> T argument() {
    return given.matchedPositional(0).getValue();
  }

  <T> Optional<T> option(String name) {
    return Optional.ofNullable(given.matchedOptionValue(name, (T) null));
  }

  Workshop workshop() {
    Optional<Path> plugins = option(PLUGINS);
    Optional<Path> profile = option(SHOP);
    Shop shop = profile.map(file -> ShopFile.read(file).shop()).orElse(Shop.UNKNOWN);
    Workshop workshop = Workshop.open(plugins, shop);
    workshop.refused().forEach(problem -> terminal.complain("kelter: " + problem.display()));
    return workshop;
  }
}
