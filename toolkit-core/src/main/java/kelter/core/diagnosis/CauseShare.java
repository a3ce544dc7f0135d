package kelter.core.diagnosis;

import java.util.Map;
import java.util.Objects;
import kelter.core.source.Source;
import kelter.core.vocabulary.Ids;

/**
 * A cause of complaints of which no fault model speaks, such as a duct that is crushed: how often
 * it is met, and what the machine then does. No measurement of it is known.
 *
 * <p>It stands beside the faults of models and has its share from the same whole. What no known
 * fault explains, and what makes symptoms for a reason that nobody looks for, stay what is left
 * when all causes are named; neither is lowered by a cause that is given here.
 *
 * @param component the id of the component, be it one of the appliance or not
 * @param fault what is wrong, unique among the faults of the component
 * @param title what is wrong, for a person
 * @param share the chance, above 0 and below 1, that it is behind a complaint
 * @param symptoms by the id of a symptom of the whole machine the chance, 0 to 1, that the cause
 *     makes it, at middling severity
 * @param work what mends it, for a person
 * @param needsPart whether that needs a part
 * @param source where share and chances come from
 */
public record CauseShare(
    String component,
    String fault,
    String title,
    double share,
    Map<String, Double> symptoms,
    String work,
    boolean needsPart,
    Source source) {

  /**
   * A cause of which nobody knows what mends it.
   *
   * @param component the id of the component, be it one of the appliance or not
   * @param fault what is wrong, unique among the faults of the component
   * @param title what is wrong, for a person
   * @param share the chance, above 0 and below 1, that it is behind a complaint
   * @param symptoms by the id of a symptom the chance, 0 to 1, that the cause makes it
   * @param source where share and chances come from
   * @throws IllegalArgumentException as the record does
   */
  public CauseShare(
      String component,
      String fault,
      String title,
      double share,
      Map<String, Double> symptoms,
      Source source) {
    this(component, fault, title, share, symptoms, "find and mend: " + title, false, source);
  }

  /**
   * Checks words and chances.
   *
   * @throws IllegalArgumentException if a word is not an id, the share is not above 0 and below 1,
   *     or the chance of a symptom is not from 0 to 1
   */
  public CauseShare {
    Ids.require(component);
    Ids.require(fault);
    Objects.requireNonNull(title);
    symptoms = Map.copyOf(symptoms);
    Objects.requireNonNull(work);
    Objects.requireNonNull(source);
    String key = component + "." + fault;
    if (!(share > 0 && share < 1)) {
      throw new IllegalArgumentException(
          key + ": a share of " + share + "; above 0 and below 1 is allowed");
    }
    for (Map.Entry<String, Double> each : symptoms.entrySet()) {
      Ids.require(each.getKey());
      if (!(each.getValue() >= 0 && each.getValue() <= 1)) {
        throw new IllegalArgumentException(
            key
                + " makes "
                + each.getKey()
                + " with a chance of "
                + each.getValue()
                + "; 0 to 1 is allowed");
      }
    }
  }

  /**
   * Its name within an appliance.
   *
   * @return component and fault, joined by a full stop
   */
  public String key() {
    return component + "." + fault;
  }
}
