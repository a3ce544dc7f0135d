package kelter.electrical.contact;

import java.util.Optional;
import kelter.core.check.Allowed;
import kelter.core.check.LimitRule;
import kelter.core.check.Limits;
import kelter.core.check.Measured;
import kelter.core.safety.Caution;
import kelter.core.source.Source;

/**
 * A closed contact or a whole conductor: at most 0.5 Ohm on an ordinary meter.
 *
 * @param title what is held against the limit, for a person
 * @param ifNot what to mind where it reads more
 */
public record LowPath(String title, Caution ifNot) implements LimitRule {

  private static final Source SOURCE =
      Source.commonPractice("a closed contact or whole conductor has at most 0.5 ohm");

  @Override
  public Optional<Allowed> allowed(Measured measured) {
    return Optional.of(
        Allowed.of(title, SOURCE, Limits.atMost(0.5))
            .resting("test leads taken off")
            .butIfNot(ifNot));
  }
}
