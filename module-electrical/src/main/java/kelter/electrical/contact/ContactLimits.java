package kelter.electrical.contact;

import kelter.core.check.Allowed;
import kelter.core.check.Limits;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.electrical.caution.ElectricalCautions;

/** What contacts and conductors may read on an ordinary meter. */
public final class ContactLimits {

  private static final String BASIS = "test leads taken off";

  /** A closed contact that protects somebody, or a whole thermal link: at most 1 Ohm. */
  public static final Allowed CLOSED =
      Allowed.of(
              "continuity of a closed contact",
              Source.commonPractice("a closed contact or whole thermal link has less than 1 ohm"),
              Limits.atMost(1))
          .resting(BASIS)
          .butIfNot(ElectricalCautions.NEVER_BRIDGE_CONTACT);

  private ContactLimits() {}

  /**
   * A closed contact or a whole conductor: at most 0.5 Ohm.
   *
   * @param title what is held against the limit, for a person
   * @param ifNot what to mind where it reads more
   * @return the limit
   */
  public static Allowed lowPath(String title, Caution ifNot) {
    return Allowed.of(
            title,
            Source.commonPractice("a closed contact or whole conductor has at most 0.5 ohm"),
            Limits.atMost(0.5))
        .resting(BASIS)
        .butIfNot(ifNot);
  }

  /**
   * An open contact: more than 1 MOhm.
   *
   * @param title what is held against the limit, for a person
   * @param ifNot what to mind where it reads less
   * @return the limit
   */
  public static Allowed open(String title, Caution ifNot) {
    return Allowed.of(
            title,
            Source.commonPractice("an open contact has more than 1 Mohm on an ordinary meter"),
            Limits.atLeast(1e6))
        .butIfNot(ifNot);
  }
}
