package kelter.hydraulics.part;

import java.util.Optional;
import kelter.core.check.Allowed;
import kelter.core.check.LimitRule;
import kelter.core.check.Limits;
import kelter.core.check.Measured;
import kelter.core.source.Source;
import kelter.core.vocabulary.Characteristic;

/**
 * Limits in proportion to a figure of the component; none where it is not known.
 *
 * @param title what is held against what, for a person
 * @param source where the limits come from
 * @param figure the figure, above zero
 * @param ratios the limits as ratios of it
 */
public record FigureRule(String title, Source source, Characteristic figure, Limits ratios)
    implements LimitRule {
  @Override
  public Optional<Allowed> allowed(Measured measured) {
    double known = measured.component().si(figure);
    if (!(known > 0)) {
      String why = "Give the '" + figure.id() + "' of the part to have it judged.";
      return Optional.of(Allowed.without(title, source, why));
    }
    Limits limits = new Limits(ratios.low() * known, ratios.high() * known);
    return Optional.of(Allowed.of(title, source, limits));
  }
}
