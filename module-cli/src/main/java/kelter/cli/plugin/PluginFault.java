package kelter.cli.plugin;

import kelter.core.problem.Problem;

/**
 * A plugin failed in the middle of something that others take part in. It was told already; what
 * failed is left out from now on, so that the whole can be tried once more without it.
 */
public final class PluginFault extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient Problem problem;
  private final boolean leftOut;

  PluginFault(Problem problem, boolean leftOut, Throwable cause) {
    super(problem.display(), cause);
    this.problem = problem;
    this.leftOut = leftOut;
  }

  /**
   * What it did wrong.
   *
   * @return the plugin, the call and the reason
   */
  public Problem problem() {
    return problem;
  }

  /**
   * Whether there is anything left to do without it.
   *
   * @return true if the same will not fail again
   */
  public boolean isLeftOut() {
    return leftOut;
  }

  /**
   * The fault of a plugin behind a failure.
   *
   * @param failure what was thrown
   * @return the fault, or null if no plugin is at the bottom of it
   */
  public static PluginFault behind(Throwable failure) {
    Throwable cause = failure;
    while (cause != null && !(cause instanceof PluginFault)) {
      cause = cause.getCause() == cause ? null : cause.getCause();
    }
    return (PluginFault) cause;
  }
}
