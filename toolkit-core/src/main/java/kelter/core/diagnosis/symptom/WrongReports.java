package kelter.core.diagnosis.symptom;

/**
 * How often a report of a symptom is wrong. A report that is worthless with chance b has {@code b /
 * 2} for both of the first.
 *
 * @param falseYes the chance of a yes where the symptom is absent, 0 to 1
 * @param falseNo the chance of a no where it is there, 0 to 1
 * @param yesWhenMasked the chance of a yes where another symptom hides it, there or not, 0 to 1
 */
public record WrongReports(double falseYes, double falseNo, double yesWhenMasked) {

  /**
   * Checks the chances.
   *
   * @throws IllegalArgumentException if a chance is not from 0 to 1
   */
  public WrongReports {
    Chance.require("the chance of a false yes", falseYes);
    Chance.require("the chance of a false no", falseNo);
    Chance.require("the chance of a yes where a symptom is masked", yesWhenMasked);
  }
}
