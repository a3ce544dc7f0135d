package kelter.core.quote;

import java.util.List;
import kelter.core.diagnosis.Remedy;
import kelter.core.problem.Required;

/**
 * One thing that the owner may choose.
 *
 * @param id {@value #MEND}, {@value #FIRST}, {@value #FIND} or {@value #LEAVE}
 * @param title what is offered, in the words of the owner
 * @param work what may be done, in its order; empty where nothing is
 * @param maximum whether the price is the most that can come of it; if not, it is fixed
 * @param bill the price
 */
public record Offer(String id, String title, List<Remedy> work, boolean maximum, Bill bill) {

  /** To mend it, with all that may be needed. */
  public static final String MEND = "mend";

  /** The first piece of work only, whatever comes of it; offered where the cause is decided. */
  public static final String FIRST = "first-step";

  /** To find the cause, or what keeps the machine unplugged. */
  public static final String FIND = "find";

  /** To leave it as it is. */
  public static final String LEAVE = "leave";

  /** The title of that. */
  static final String AS_IT_IS = "Leave it as it is";

  /** Checks that nothing is null. */
  public Offer {
    Required.value(id, "id of an offer");
    Required.value(title, "title of an offer");
    work = Required.list(work, "work of an offer");
    Required.value(bill, "bill of an offer");
  }

  /**
   * How long the work takes at the bench, tests included.
   *
   * @return minutes, not the time until the machine is back
   */
  public double minutes() {
    return work.stream().mapToDouble(Remedy::minutes).sum();
  }
}
