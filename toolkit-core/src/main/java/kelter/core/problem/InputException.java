package kelter.core.problem;

import java.util.List;
import java.util.stream.Collectors;

/** The input cannot be used. Carries every mistake that was found, in the order of the input. */
public final class InputException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient List<Problem> problems;

  /**
   * The input cannot be used.
   *
   * @param problems one mistake or more
   */
  public InputException(List<Problem> problems) {
    this.problems = List.copyOf(problems);
  }

  /**
   * The input cannot be used for one reason.
   *
   * @param where where it is
   * @param what what is wrong there
   * @param remedy what would be right, may be empty
   */
  public InputException(String where, String what, String remedy) {
    this(List.of(new Problem(where, what, remedy)));
  }

  /**
   * The input cannot be used for one reason of some sort.
   *
   * @param mistake the sort of mistake
   * @param where where it is
   * @param what what is wrong there
   * @param remedy what would be right, may be empty
   */
  public InputException(Mistake mistake, String where, String what, String remedy) {
    this(List.of(new Problem(mistake, where, what, remedy)));
  }

  /** Each mistake on a line. Put together only when it is asked for: there may be a million. */
  @Override
  public String getMessage() {
    return problems.stream().map(Problem::display).collect(Collectors.joining("\n"));
  }

  /**
   * All mistakes.
   *
   * @return one mistake or more, in the order of the input
   */
  public List<Problem> problems() {
    return problems;
  }
}
