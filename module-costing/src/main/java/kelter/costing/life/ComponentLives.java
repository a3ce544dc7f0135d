package kelter.costing.life;

import java.util.Map;
import java.util.Optional;
import kelter.core.source.Source;

/**
 * How long components of household machines last. No study is known: all figures are from memory,
 * and right within a factor of two at best. A weighing counts them as much as the assumption that a
 * component lasts as long as its machine.
 */
public final class ComponentLives {

  /** Where the figures come from. */
  public static final Source SOURCE =
      Source.fromMemory("lives of components in household machines, within a factor of two");

  /** What turns, rubs and leaks wears: the older, the likelier it fails. */
  private static final double WEARING = 2;

  /** What carries current fails more at random. */
  private static final double ELECTRICAL = 1.5;

  /** Mean lives in years. */
  private static final Map<String, Weibull> ALL =
      Map.ofEntries(
          Map.entry("drain-pump", Weibull.ofMean(11, WEARING)),
          Map.entry("wash-pump", Weibull.ofMean(12, WEARING)),
          Map.entry("inlet-valve", Weibull.ofMean(15, WEARING)),
          Map.entry("motor", Weibull.ofMean(16, WEARING)),
          Map.entry("door-switch", Weibull.ofMean(15, WEARING)),
          Map.entry("heater", Weibull.ofMean(11, ELECTRICAL)),
          Map.entry("air-heater", Weibull.ofMean(12, ELECTRICAL)),
          Map.entry("run-capacitor", Weibull.ofMean(14, ELECTRICAL)),
          Map.entry("relay", Weibull.ofMean(15, ELECTRICAL)),
          Map.entry("solenoid", Weibull.ofMean(15, ELECTRICAL)),
          Map.entry("level-sensor", Weibull.ofMean(15, ELECTRICAL)),
          Map.entry("temperature-sensor", Weibull.ofMean(18, ELECTRICAL)));

  private ComponentLives() {}

  /**
   * The life of a kind of component.
   *
   * @param kind the kind, as in a job
   * @return its life in a household, in years; empty if nothing is remembered
   */
  public static Optional<Weibull> of(String kind) {
    return Optional.ofNullable(ALL.get(kind));
  }
}
