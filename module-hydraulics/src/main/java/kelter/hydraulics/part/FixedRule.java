package kelter.hydraulics.part;

import java.util.Optional;
import kelter.core.check.Allowed;
import kelter.core.check.LimitRule;
import kelter.core.check.Limits;
import kelter.core.check.Measured;
import kelter.core.source.Source;

/**
 * Limits that are the same on every machine.
 *
 * @param title what is held against what, for a person
 * @param source where the limits come from
 * @param limits the limits in the coherent SI unit
 */
public record FixedRule(String title, Source source, Limits limits) implements LimitRule {
  @Override
  public Optional<Allowed> allowed(Measured measured) {
    return Optional.of(Allowed.of(title, source, limits));
  }
}
