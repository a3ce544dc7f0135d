package kelter.cli.architecture.broken.hydraulics;

import com.google.inject.Injector;

final class KnowsContainer {
  Injector injector;
}
