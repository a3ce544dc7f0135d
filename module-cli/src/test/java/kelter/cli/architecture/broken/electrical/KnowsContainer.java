package kelter.cli.architecture.broken.electrical;

import com.google.inject.Injector;

final class KnowsContainer {
  Injector injector;
}
