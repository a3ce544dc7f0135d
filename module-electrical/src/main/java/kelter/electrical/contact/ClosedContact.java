package kelter.electrical.contact;

import java.util.Optional;
import kelter.core.check.Allowed;
import kelter.core.check.LimitRule;
import kelter.core.check.Limits;
import kelter.core.check.Measured;
import kelter.core.source.Source;
import kelter.electrical.caution.ElectricalCautions;

/** What a closed contact or a whole thermal link may have at most: 1 Ohm on an ordinary meter. */
public enum ClosedContact implements LimitRule {
  /** The rule. */
  RULE;

  private static final Source SOURCE =
      Source.commonPractice("a closed contact or whole thermal link has less than 1 ohm");

  @Override
  public Optional<Allowed> allowed(Measured measured) {
    return Optional.of(
        Allowed.of("continuity of a closed contact", SOURCE, Limits.atMost(1))
            .resting("test leads taken off")
            .butIfNot(ElectricalCautions.NEVER_BRIDGE_CONTACT));
  }
}
