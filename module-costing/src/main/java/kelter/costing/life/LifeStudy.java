package kelter.costing.life;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import kelter.core.source.Source;
import kelter.core.source.Standing;
import kelter.core.vocabulary.Ids;

/**
 * What one study found about how long a kind of appliance is kept.
 *
 * @param kind the kind of appliance
 * @param mean the mean life, in years, above zero
 * @param shape the Weibull shape, if the study gives one
 * @param year the year that the figure speaks of
 * @param place where it was found
 * @param study author and year of the study
 */
public record LifeStudy(
    String kind, double mean, OptionalDouble shape, int year, String place, String study) {

  /**
   * Checks the figures.
   *
   * @throws IllegalArgumentException if the mean is not above zero
   */
  public LifeStudy {
    Ids.require(kind);
    Objects.requireNonNull(shape);
    Objects.requireNonNull(place);
    Objects.requireNonNull(study);
    if (!(mean > 0)) {
      throw new IllegalArgumentException(
          "%s: a mean life of %s a; it must be above zero".formatted(kind, mean));
    }
  }

  /**
   * Where the figure comes from.
   *
   * @return the study, known through a table that cites it
   */
  public Source source() {
    return new Source(study + ", " + place + " " + year, Standing.SECOND_HAND);
  }

  /**
   * Where several figures come from, one source for each study.
   *
   * @param studies the figures
   * @return the studies in the order of their first figure, each with its places and years
   */
  public static List<Source> sources(List<LifeStudy> studies) {
    Map<String, Set<String>> found = new LinkedHashMap<>();
    for (LifeStudy each : studies) {
      found
          .computeIfAbsent(each.study(), study -> new TreeSet<>())
          .add(each.place() + " " + each.year());
    }
    return found.entrySet().stream()
        .map(each -> each.getKey() + ": " + String.join("; ", each.getValue()))
        .map(document -> new Source(document, Standing.SECOND_HAND))
        .toList();
  }
}
