package kelter.cli.architecture.broken.hydraulics.flow;

import kelter.cli.architecture.broken.hydraulics.valve.Valve;

final class KnowsPart {
  Valve valve;
}
