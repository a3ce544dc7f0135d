package kelter.core.book;

import java.time.LocalDate;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import kelter.core.job.Market;
import kelter.core.job.SymptomReport.Answer;
import kelter.core.problem.Required;
import kelter.core.quantity.Money;
import kelter.core.vocabulary.Ids;

/**
 * What a closed job tells. It names no person; whoever writes complaint and notes leaves persons
 * out of them.
 *
 * @param job the id of the job
 * @param called the day of the call
 * @param closed the day on which the job was closed, not before the call
 * @param machine the machine
 * @param market where it stands
 * @param complaint what the owner said; may be empty
 * @param notes what the technician wrote; may be empty
 * @param symptoms by the id of a symptom what was answered
 * @param displayed what the machine displayed, by its meaning or as it was shown
 * @param outcome how the job ended
 * @param causes what was confirmed; empty where nothing was found, or nothing was wrong
 * @param work what was done, in order
 * @param readings what was read, in order
 * @param predictions by {@code component.fault} the probability, 0 to 1, that was told before the
 *     work
 * @param charged what the owner paid
 * @param callBackOf the id of the job whose complaint came back
 */
public record BookEntry(
    String job,
    Optional<LocalDate> called,
    LocalDate closed,
    BookedMachine machine,
    Optional<Market> market,
    String complaint,
    String notes,
    Map<String, Answer> symptoms,
    List<String> displayed,
    Outcome outcome,
    List<ConfirmedCause> causes,
    List<WorkDone> work,
    List<ReadingTaken> readings,
    Map<String, Double> predictions,
    Optional<Money> charged,
    Optional<String> callBackOf) {

  /** The longest complaint or notes, characters. */
  public static final int LONGEST = 20_000;

  private static final int LONGEST_SHOWN = 200;
  private static final int MOST = 1_000;

  /**
   * Checks words and figures.
   *
   * @throws IllegalArgumentException if one is not allowed, with what is
   */
  public BookEntry {
    Ids.require(Required.value(job, "job of an entry"));
    Required.optional(called, "day of the call");
    Required.value(closed, "day of closing");
    Required.value(machine, "machine of an entry");
    Required.optional(market, "market of an entry");
    Texts.require("complaint", complaint, LONGEST);
    Texts.require("notes", notes, LONGEST);
    symptoms = sorted(Required.map(symptoms, "symptoms"));
    displayed = limited("displayed", Required.list(displayed, "displayed"));
    Required.value(outcome, "outcome of an entry");
    causes = limited("causes", Required.list(causes, "causes"));
    work = limited("work", Required.list(work, "work"));
    readings = limited("readings", Required.list(readings, "readings"));
    predictions = sorted(Required.map(predictions, "predictions"));
    Required.optional(charged, "what was charged");
    Required.optional(callBackOf, "job that came back").ifPresent(Ids::require);
    if (called.isPresent() && called.get().isAfter(closed)) {
      throw new IllegalArgumentException(
          "closed on %s, before the call on %s".formatted(closed, called.get()));
    }
    if (callBackOf.isPresent() && callBackOf.get().equals(job)) {
      throw new IllegalArgumentException("'" + job + "' is a call-back of itself");
    }
    if (outcome == Outcome.NOTHING_WRONG && !causes.isEmpty()) {
      throw new IllegalArgumentException(
          "nothing was wrong, and still a cause is confirmed: " + causes.get(0).key());
    }
    symptoms.keySet().forEach(Ids::require);
    displayed.forEach(each -> Texts.require("what is displayed", each, LONGEST_SHOWN));
    requireOnce(causes);
    predictions.forEach(BookEntry::requireChance);
  }

  /**
   * The same entry for others, who have no business with the serial number.
   *
   * @return this entry where it has no serial number, or a copy without it
   */
  public BookEntry withoutSerial() {
    return machine.serial().isEmpty() ? this : with(job, machine.withoutSerial(), callBackOf);
  }

  /**
   * The same entry of one of several books that count their jobs alike.
   *
   * @param prefix what its id, and that of the job whose complaint came back, begin with
   * @return the entry
   * @throws IllegalArgumentException if what begins so is no id
   */
  public BookEntry prefixed(String prefix) {
    return with(prefix + job, machine, callBackOf.map(prefix::concat));
  }

  private BookEntry with(String named, BookedMachine booked, Optional<String> before) {
    return new BookEntry(
        named,
        called,
        closed,
        booked,
        market,
        complaint,
        notes,
        symptoms,
        displayed,
        outcome,
        causes,
        work,
        readings,
        predictions,
        charged,
        before);
  }

  private static <T> Map<String, T> sorted(Map<String, T> members) {
    if (members.size() > MOST) {
      throw new IllegalArgumentException(
          members.size() + " members; up to " + MOST + " are allowed");
    }
    return Collections.unmodifiableMap(new TreeMap<>(members));
  }

  private static <T> List<T> limited(String what, List<T> items) {
    if (items.size() > MOST) {
      throw new IllegalArgumentException(
          what + " has " + items.size() + " items; up to " + MOST + " are allowed");
    }
    return items;
  }

  private static void requireOnce(List<ConfirmedCause> causes) {
    Set<String> seen = new HashSet<>();
    for (ConfirmedCause cause : causes) {
      if (!seen.add(cause.key())) {
        throw new IllegalArgumentException("the cause " + cause.key() + " occurs twice");
      }
    }
  }

  private static void requireChance(String fault, double probability) {
    int stop = fault.indexOf('.');
    if (stop < 0 || !Ids.isId(fault.substring(0, stop)) || !Ids.isId(fault.substring(stop + 1))) {
      throw new IllegalArgumentException(
          "'" + fault + "' is no fault; write component.fault, for instance heater.element-open");
    }
    if (!(probability >= 0 && probability <= 1)) {
      throw new IllegalArgumentException(
          fault + " has a probability of " + probability + "; 0 to 1 is allowed");
    }
  }
}
