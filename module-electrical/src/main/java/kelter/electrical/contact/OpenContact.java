package kelter.electrical.contact;

import java.util.Optional;
import kelter.core.check.Allowed;
import kelter.core.check.LimitRule;
import kelter.core.check.Limits;
import kelter.core.check.Measured;
import kelter.core.safety.Caution;
import kelter.core.source.Source;

/**
 * An open contact: more than 1 MOhm on an ordinary meter.
 *
 * @param title what is held against the limit, for a person
 * @param ifNot what to mind where it reads less
 */
public record OpenContact(String title, Caution ifNot) implements LimitRule {

  private static final Source SOURCE =
      Source.commonPractice("an open contact has more than 1 Mohm on an ordinary meter");

  @Override
  public Optional<Allowed> allowed(Measured measured) {
    return Optional.of(Allowed.of(title, SOURCE, Limits.atLeast(1e6)).butIfNot(ifNot));
  }
}
