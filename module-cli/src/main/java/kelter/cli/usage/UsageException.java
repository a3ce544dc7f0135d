package kelter.cli.usage;

import java.util.List;

/** A command line cannot be understood. */
public final class UsageException extends RuntimeException {

  private static final long serialVersionUID = 1;

  private final transient List<String> mistakes;

  /**
   * All that is wrong with a command line.
   *
   * @param mistakes each in one line
   */
  public UsageException(List<String> mistakes) {
    super(String.join("; ", mistakes));
    this.mistakes = List.copyOf(mistakes);
  }

  /**
   * All that is wrong.
   *
   * @return each in one line
   */
  public List<String> mistakes() {
    return mistakes;
  }
}
