package kelter.cli.architecture.broken.core.alpha;

import kelter.cli.architecture.broken.core.beta.Second;

/** One half of a cycle. */
public final class First {
  Second second;
}
