package kelter.cli.architecture.broken.hydraulics;

import kelter.cli.architecture.broken.electrical.Coil;

final class KnowsNeighbour {
  Coil coil;
}
