package kelter.cli.command;

/** What a run ends with, for whoever called it. */
public final class ExitCode {

  /** Done. */
  public static final int DONE = 0;

  /** The input cannot be used, or the result cannot be written. */
  public static final int BAD_INPUT = 1;

  /** The command line cannot be understood. */
  public static final int BAD_USAGE = 2;

  /** A defect of the program. */
  public static final int DEFECT = 3;

  /** What the exit codes mean. */
  public static final String MEANING =
      "0 done; 1 the input cannot be used; 2 usage; 3 a defect of kelter.";

  private ExitCode() {}
}
