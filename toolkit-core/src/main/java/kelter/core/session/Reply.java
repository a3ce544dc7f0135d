package kelter.core.session;

import java.util.List;
import kelter.core.problem.Required;

/**
 * What came of a line that somebody typed.
 *
 * @param session the session as it goes on; the same if the line changed nothing
 * @param told what to say to that, a line each
 * @param ended whether the session was left
 */
public record Reply(Session session, List<String> told, boolean ended) {

  /** Checks that nothing is null. */
  public Reply {
    Required.value(session, "session of a reply");
    told = Required.list(told, "what a reply tells");
  }

  static Reply to(Session session, String... told) {
    return new Reply(session, List.of(told), false);
  }
}
