package kelter.cli.architecture.broken.core.beta;

import kelter.cli.architecture.broken.core.alpha.First;

/** The other half of a cycle. */
public final class Second {
  First first;
}
