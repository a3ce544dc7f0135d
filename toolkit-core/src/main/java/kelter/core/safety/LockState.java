package kelter.core.safety;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/** What a machine may be used for, the mildest state first. Common practice, no source. */
public enum LockState {
  /** As usual. */
  A("as-usual", "as usual", EnumSet.allOf(Taken.class)),
  /** Unplugged until the named finding is settled. */
  B("unplugged", "unplugged", EnumSet.of(Taken.LOOK, Taken.ASK, Taken.DEAD)),
  /** Isolated by a competent person; dead tests once it is locked off and proved dead. */
  C("isolated", "isolated", EnumSet.of(Taken.LOOK, Taken.ASK, Taken.DEAD)),
  /** Not for this tool: stop and call. Looking only from where nothing can happen. */
  D("stop", "stop", EnumSet.of(Taken.LOOK, Taken.ASK));

  private final String id;
  private final String word;
  private final Set<Taken> allowed;

  LockState(String id, String word, Set<Taken> allowed) {
    this.id = id;
    this.word = word;
    this.allowed = Collections.unmodifiableSet(allowed);
  }

  /**
   * The word for programs; it stays the same when the words change.
   *
   * @return lower-case letters and hyphens
   */
  public String id() {
    return id;
  }

  /**
   * The word that a person sees.
   *
   * @return one or two lower-case words
   */
  public String word() {
    return word;
  }

  /**
   * What may be done in it where a row of the table says nothing else.
   *
   * @return the ways of finding out
   */
  public Set<Taken> allowed() {
    return allowed;
  }

  /**
   * The stricter of two states.
   *
   * @param other another state
   * @return the later one
   */
  public LockState and(LockState other) {
    return compareTo(other) >= 0 ? this : other;
  }
}
