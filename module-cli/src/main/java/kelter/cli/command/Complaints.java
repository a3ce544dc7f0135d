package kelter.cli.command;

import java.util.List;
import kelter.cli.terminal.Terminal;
import kelter.core.problem.Problem;

/** Tells what is wrong, each mistake on a line of its own, and not more than a person reads. */
public final class Complaints {

  /** So many mistakes are told one by one. */
  static final int MOST = 20;

  private Complaints() {}

  /**
   * Tells mistakes.
   *
   * @param mistakes the mistakes; of more than twenty the first twenty are told, and how many more
   *     there are
   * @param terminal where to
   */
  public static void tell(List<Problem> mistakes, Terminal terminal) {
    int told = Math.min(MOST, mistakes.size());
    for (int i = 0; i < told; i++) {
      terminal.complain("kelter: " + mistakes.get(i).display());
    }
    if (told < mistakes.size()) {
      terminal.complain("kelter: and " + (mistakes.size() - told) + " more; correct these first");
    }
  }
}
