package kelter.core.diagnosis.symptom;

/**
 * What somebody said of a symptom: how likely that was, by what is so. Only the ratios of the three
 * matter to what follows from it.
 *
 * @param ifThere the chance of the report where the symptom is there and not masked, 0 to 1
 * @param ifAbsent the chance of the report where it is absent and not masked, 0 to 1
 * @param ifMasked the chance of the report where another symptom hides it, 0 to 1
 */
public record Report(double ifThere, double ifAbsent, double ifMasked) {

  /** Nobody asked: as likely whatever is so. */
  public static final Report UNASKED = new Report(1, 1, 1);

  /**
   * Checks the chances.
   *
   * @throws IllegalArgumentException if a chance is not from 0 to 1
   */
  public Report {
    Chance.require("the chance of a report where the symptom is there", ifThere);
    Chance.require("the chance of a report where the symptom is absent", ifAbsent);
    Chance.require("the chance of a report where the symptom is masked", ifMasked);
  }

  /** A plain yes. */
  public static Report yes(WrongReports wrong) {
    return new Report(1 - wrong.falseNo(), wrong.falseYes(), wrong.yesWhenMasked());
  }

  /** A plain no. */
  public static Report no(WrongReports wrong) {
    return new Report(wrong.falseNo(), 1 - wrong.falseYes(), 1 - wrong.yesWhenMasked());
  }

  /** Whether somebody was asked, and what was said tells anything. */
  public boolean tells() {
    return ifThere != ifAbsent || ifAbsent != ifMasked;
  }

  /** Whether it speaks for the symptom rather than against it. */
  public boolean saysYes() {
    return ifThere > ifAbsent;
  }

  /** Its chance, by what is so. */
  public double chance(boolean there, boolean masked) {
    return masked ? ifMasked : there ? ifThere : ifAbsent;
  }
}
