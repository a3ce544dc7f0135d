package kelter.core.quote;

import java.time.LocalDate;
import java.util.Optional;
import kelter.core.job.Job;
import kelter.core.job.work.Closing;
import kelter.core.problem.Required;
import kelter.core.quantity.Quantity;
import kelter.core.vocabulary.CalendarDate;
import kelter.core.vocabulary.Statement;

/**
 * A job that follows another one whose guarantee is told.
 *
 * @param job the id of the first job
 * @param until the last day of its guarantee
 */
public record CallBack(String job, LocalDate until) {

  private static final double SECONDS_PER_DAY = 86_400;
  private static final String ID = "call-back";
  private static final String TEXT =
      "This is a call-back of %s, whose guarantee runs until %s: for the same defect you pay"
          + " nothing.";

  /** Checks that nothing is null. */
  public CallBack {
    Required.value(job, "first job of a call-back");
    Required.value(until, "end of a guarantee");
  }

  /**
   * What the first job grants to a later one.
   *
   * @param first the first job, closed
   * @param later the job that follows it
   * @return empty where the first gives no guarantee, or it had run out when the owner called again
   */
  public static Optional<CallBack> of(Job first, Job later) {
    Optional<Closing> closing = first.progress().closing();
    Optional<Quantity> guarantee = closing.flatMap(Closing::guarantee);
    if (guarantee.isEmpty()) {
      return Optional.empty();
    }
    LocalDate until = after(LocalDate.parse(closing.get().date()), guarantee.get());
    boolean over = CalendarDate.of(later.date()).filter(until::isBefore).isPresent();
    return over ? Optional.empty() : Optional.of(new CallBack(first.id(), until));
  }

  /** The day so long after another one: months and years by the calendar. */
  private static LocalDate after(LocalDate day, Quantity time) {
    boolean whole = time.value() == Math.rint(time.value());
    return switch (whole ? time.unit().code() : "") {
      case "mo" -> day.plusMonths((long) time.value());
      case "a" -> day.plusYears((long) time.value());
      default -> day.plusDays((long) (time.si() / SECONDS_PER_DAY));
    };
  }

  /**
   * The same for the owner.
   *
   * @return id and a sentence
   */
  public Statement told() {
    return new Statement(ID, TEXT.formatted(job, until));
  }

  /** The same with {@code %s} for what depends on the job. */
  static Statement vocabulary() {
    return new Statement(ID, TEXT);
  }
}
