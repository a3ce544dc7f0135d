package kelter.core.job;

import java.util.ArrayList;
import java.util.List;
import kelter.core.problem.Required;

/**
 * Why somebody was called: what the owner says, what the machine displays, and what was answered to
 * the questions of the trade.
 *
 * @param reason why the call was made
 * @param said what the owner says, may be empty
 * @param displayed what the machine displays, may be empty
 * @param symptoms what was said of symptoms, each symptom once; what the machine shows of itself is
 *     one too
 */
public record Complaint(
    Reason reason, String said, String displayed, List<SymptomReport> symptoms) {

  /** Why somebody was called. */
  public enum Reason {
    /** Something is wrong. */
    FAULT("fault"),
    /** A routine check: nobody complains. */
    INSPECTION("inspection");

    private final String id;

    Reason(String id) {
      this.id = id;
    }

    /**
     * The word in a file.
     *
     * @return lower-case letters
     */
    public String id() {
      return id;
    }
  }

  /** Something is wrong, and nobody has said what. */
  public static final Complaint UNSAID = new Complaint("", "");

  /** A routine check: nobody complains. */
  public static final Complaint NONE = new Complaint(Reason.INSPECTION, "", "", List.of());

  public Complaint {
    Required.value(reason, "reason of a complaint");
    Required.value(said, "what the owner says of a complaint");
    Required.value(displayed, "what the machine displays of a complaint");
    symptoms = Required.list(symptoms, "symptoms of a complaint");
  }

  /**
   * Something is wrong, and no symptom was asked for.
   *
   * @param said what the owner says, may be empty
   * @param displayed what the machine displays, may be empty
   */
  public Complaint(String said, String displayed) {
    this(Reason.FAULT, said, displayed, List.of());
  }

  /**
   * Whether something is said to be wrong.
   *
   * @return false for a routine check in which no symptom is reported as there
   */
  public boolean isMade() {
    boolean reported = false;
    for (SymptomReport report : symptoms) {
      reported |= report.answer() != SymptomReport.Answer.NO;
    }
    return reason == Reason.FAULT || reported;
  }

  /**
   * The same with another report in place of any of the same symptom.
   *
   * @param report what was said
   * @return the complaint
   */
  public Complaint with(SymptomReport report) {
    List<SymptomReport> all = new ArrayList<>(without(report.symptom()).symptoms);
    all.add(report);
    return new Complaint(reason, said, displayed, all);
  }

  /**
   * The same as if a symptom had not been asked for.
   *
   * @param symptom the id of the symptom
   * @return the complaint
   */
  public Complaint without(String symptom) {
    List<SymptomReport> others = new ArrayList<>();
    for (SymptomReport report : symptoms) {
      if (!report.symptom().equals(symptom)) {
        others.add(report);
      }
    }
    return new Complaint(reason, said, displayed, others);
  }
}
