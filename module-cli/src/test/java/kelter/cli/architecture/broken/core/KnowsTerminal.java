package kelter.cli.architecture.broken.core;

import kelter.cli.architecture.broken.cli.Terminal;

final class KnowsTerminal {
  final Terminal terminal = new Terminal();
}
