package kelter.core.option;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import kelter.core.source.Source;

/**
 * Why options come out as they do, for those who ask. Money is in units of the currency of the
 * weighing.
 *
 * @param breakEvenAge the age of the machine, in years, at which the best repair and replacing cost
 *     the same; NaN if there is no repair or one of the two costs less at any age
 * @param influences what moves the answer, the strongest first
 * @param regret by the id of the option, in the order of the weighing, what it costs a year on
 *     average beyond what would have been the cheapest, had all that is unsure been known
 * @param courses what is paid over the years, by option, in the order of the weighing
 * @param rules rules of thumb, and what they say here
 */
public record Reasons(
    double breakEvenAge,
    List<Influence> influences,
    Map<String, Double> regret,
    List<Course> courses,
    List<RuleOfThumb> rules) {

  public Reasons {
    influences = List.copyOf(influences);
    regret = Collections.unmodifiableMap(new LinkedHashMap<>(regret));
    courses = List.copyOf(courses);
    rules = List.copyOf(rules);
  }

  /**
   * A figure that is not known for sure, by itself.
   *
   * @param id the word for the figure; it stays the same when the words change
   * @param what the figure, for a person
   * @param low what it may be at least, for a person
   * @param high what it may be at most, for a person
   * @param savingLow what the best repair saves a year against replacing if the figure is low;
   *     below zero if replacing costs less
   * @param savingHigh the same if the figure is high
   */
  public record Influence(
      String id, String what, String low, String high, double savingLow, double savingHigh) {

    public Influence {
      Objects.requireNonNull(id);
      Objects.requireNonNull(what);
      Objects.requireNonNull(low);
      Objects.requireNonNull(high);
    }

    /**
     * Whether the figure decides between repairing and replacing.
     *
     * @return true if the saving changes its sign
     */
    public boolean decides() {
      return savingLow > 0 != savingHigh > 0;
    }
  }

  /**
   * What an option costs over the years.
   *
   * @param option the id of the option
   * @param paid what has been paid in all, today (at 0) and by the end of each year, in today's
   *     prices
   */
  public record Course(String option, List<Option.Spread> paid) {

    public Course {
      Objects.requireNonNull(option);
      paid = List.copyOf(paid);
    }
  }

  /**
   * A rule of thumb beside the computed answer.
   *
   * @param id the word for the rule; it stays the same when the words change
   * @param rule the rule
   * @param here what it says here, and whether that can be trusted
   * @param source where it comes from
   */
  public record RuleOfThumb(String id, String rule, String here, Source source) {

    public RuleOfThumb {
      Objects.requireNonNull(id);
      Objects.requireNonNull(rule);
      Objects.requireNonNull(here);
      Objects.requireNonNull(source);
    }
  }
}
