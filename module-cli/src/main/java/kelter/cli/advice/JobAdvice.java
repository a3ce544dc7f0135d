package kelter.cli.advice;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.file.job.JobDocument;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonText;
import kelter.core.owner.Terms;
import kelter.core.problem.Problem;
import kelter.core.vocabulary.CalendarDate;

/** What may not be meant in a job file: readings where none are read, and dates to come. */
public final class JobAdvice {

  private static final String OWN = "x-";

  /** What the template of a job leaves to be filled in. */
  private static final String BLANK = "...";

  private static final String CHOICE = " or ";

  private JobAdvice() {}

  /**
   * Looks through a job.
   *
   * @param document the job with its content
   * @param today the day of today, in days since 1970-01-01
   * @return what may not be meant, with JSON pointers
   */
  public static List<Problem> of(JobDocument document, long today) {
    List<Problem> advice = new ArrayList<>();
    toCome("/date", CalendarDate.of(document.job().date()), today, advice);
    if (document.job().prices().isPresent()) {
      Terms terms = document.job().prices().get().terms();
      toCome("/prices/date", terms.priceDate(), today, advice);
    }
    for (Map.Entry<String, Json> member : document.content().members().entrySet()) {
      if (member.getKey().startsWith(OWN) && member.getValue() instanceof Json.Arr array) {
        unread("/" + JsonText.escape(member.getKey()), array, advice);
      }
    }
    return advice;
  }

  private static void toCome(
      String pointer, Optional<LocalDate> date, long today, List<Problem> advice) {
    // Where the day begins earlier than here it is tomorrow already.
    if (date.isPresent() && date.get().toEpochDay() > today + 1) {
      advice.add(
          new Problem(
              pointer,
              "the date %s is to come: by the clock of this machine it is %s"
                  .formatted(date.get(), LocalDate.ofEpochDay(today)),
              "correct the one or the other"));
    }
  }

  private static void unread(String pointer, Json.Arr array, List<Problem> advice) {
    List<Json> filledIn = array.items().stream().filter(JobAdvice::isFilledIn).toList();
    int count = filledIn.size();
    if (count > 0) {
      advice.add(
          new Problem(
              pointer + "/" + array.items().indexOf(filledIn.get(0)),
              (count == 1 ? "a reading was" : count + " readings were")
                  + " not read: what stands under a name with x- is left alone",
              "readings belong into \"measurements\""));
    }
  }

  private static boolean isFilledIn(Json item) {
    if (!(item instanceof Json.Obj entry)
        || !entry.members().containsKey("of")
        || !entry.members().containsKey("observable")) {
      return false;
    }
    Json reading = entry.members().get("reading");
    return reading instanceof Json.Bool
        || reading instanceof Json.Arr several && !several.items().isEmpty()
        || reading instanceof Json.Str text
            && !text.text().isBlank()
            && !text.text().contains(BLANK)
            && !text.text().contains(CHOICE);
  }
}
