package kelter.cli.architecture.broken.costing;

import kelter.cli.architecture.broken.electrical.Coil;

final class KnowsNeighbour {
  Coil coil;
}
