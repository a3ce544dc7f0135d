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
   * JSON was asked of what speaks to people.
   *
   * @param what what was called
   * @return what is wrong
   */
  public static UsageException forPeople(String what) {
    return new UsageException(
        List.of(
            "'%s' has no result as JSON; leave %s away"
                .formatted(what, CommandUsage.FORMAT.name())));
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
