package kelter.core.job.rule;

import java.util.List;
import kelter.core.problem.Mistake;
import kelter.core.problem.Place;
import kelter.core.problem.Problem;

/**
 * A place in a job that a program made, told in words, which are put together for a mistake only.
 *
 * @param within what it is a part of; null if it is not told
 * @param part what it is
 * @param name its name, may be empty
 * @param problems where mistakes are noted
 */
record Spot(Spot within, String part, String name, List<Problem> problems) implements Place {

  static Spot of(String part, List<Problem> problems) {
    return new Spot(null, part, "", problems);
  }

  Spot in(String inner) {
    return in(inner, "");
  }

  Spot in(String inner, String innerName) {
    return new Spot(this, inner, innerName, problems);
  }

  Spot in(String inner, int number) {
    return in(inner + " " + number);
  }

  @Override
  public void problem(Mistake mistake, String what, String remedy) {
    problems.add(new Problem(mistake, where(), what, remedy));
  }

  private String where() {
    String here = name.isEmpty() ? part : part + " '" + name + "'";
    return within == null ? here : within.where() + ", " + here;
  }
}
