package kelter.core.file.job;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.file.json.Json;
import kelter.core.job.Measurement;
import kelter.core.job.work.Accepted;
import kelter.core.job.work.Closing;
import kelter.core.job.work.PartUsed;
import kelter.core.job.work.TestDone;
import kelter.core.job.work.WorkDone;

/** Adds what was done to the content of a job file; everything else stays as it is. */
public final class ProgressEdit {

  private static final Json.Obj EMPTY = new Json.Obj(Map.of());

  private ProgressEdit() {}

  /**
   * A reading as somebody writes it down.
   *
   * @param component the id of the component
   * @param observable the word for what was read
   * @param reading the reading as a person writes it
   * @param at by their words the conditions as a person writes them
   * @param instrument the id of the instrument, if one is named
   * @param stage before or after the work
   */
  public record Written(
      String component,
      String observable,
      String reading,
      Map<String, String> at,
      Optional<String> instrument,
      Measurement.Stage stage) {

    /** Copies the conditions. */
    public Written {
      at = Collections.unmodifiableMap(new LinkedHashMap<>(at));
    }
  }

  /**
   * The content with a reading more.
   *
   * @param job the content
   * @param reading the reading
   * @return the content with it behind the others
   */
  public static Json.Obj with(Json.Obj job, Written reading) {
    Json.Obj entry =
        EMPTY
            .with("of", text(reading.component()))
            .with("observable", text(reading.observable()))
            .with("reading", text(reading.reading()));
    if (!reading.at().isEmpty()) {
      Json.Obj at = EMPTY;
      for (Map.Entry<String, String> each : reading.at().entrySet()) {
        at = at.with(each.getKey(), text(each.getValue()));
      }
      entry = entry.with("at", at);
    }
    if (reading.instrument().isPresent()) {
      entry = entry.with("instrument", text(reading.instrument().get()));
    }
    if (reading.stage() != Measurement.Stage.AS_FOUND) {
      entry = entry.with("stage", text(reading.stage().id()));
    }
    return job.with("measurements", more(job, "measurements", entry));
  }

  /**
   * The content without the readings in whose place another one comes.
   *
   * @param job the content
   * @param reading the reading that comes
   * @return the content without what was read of the same observable at the same stage, whatever
   *     the conditions
   */
  public static Json.Obj without(Json.Obj job, Written reading) {
    if (!(job.members().get("measurements") instanceof Json.Arr measurements)) {
      return job;
    }
    List<Json> rest = new ArrayList<>(measurements.items());
    rest.removeIf(each -> each instanceof Json.Obj told && isOfSame(told, reading));
    return job.with("measurements", new Json.Arr(rest));
  }

  /**
   * A job from which a reading was taken.
   *
   * @param job the content without it
   * @param reading what it was, for a person
   */
  public record Taken(Json.Obj job, String reading) {}

  /**
   * The content without its last reading.
   *
   * @param job the content
   * @param stage before or after the work
   * @return the content and the reading; empty if none was taken at that stage
   */
  public static Optional<Taken> withoutLastReading(Json.Obj job, Measurement.Stage stage) {
    List<Json> rest = new ArrayList<>();
    if (job.members().get("measurements") instanceof Json.Arr array) {
      rest.addAll(array.items());
    }
    for (int i = rest.size() - 1; i >= 0; i--) {
      if (rest.get(i) instanceof Json.Obj last && stageOf(last).equals(text(stage.id()))) {
        rest.remove(i);
        String words = word(last, "of") + ": " + word(last, "observable");
        return Optional.of(
            new Taken(
                job.with("measurements", new Json.Arr(rest)),
                words.replace('-', ' ') + ", " + word(last, "reading")));
      }
    }
    return Optional.empty();
  }

  private static Json stageOf(Json.Obj told) {
    return told.members().getOrDefault("stage", text(Measurement.Stage.AS_FOUND.id()));
  }

  private static String word(Json.Obj told, String name) {
    return told.members().get(name) instanceof Json.Str str ? str.text() : "";
  }

  private static boolean isOfSame(Json.Obj told, Written reading) {
    return text(reading.component()).equals(told.members().get("of"))
        && text(reading.observable()).equals(told.members().get("observable"))
        && text(reading.stage().id()).equals(stageOf(told));
  }

  /**
   * The content with a piece of work more.
   *
   * @param job the content
   * @param work the work
   * @return the content with it behind what was done before
   */
  public static Json.Obj with(Json.Obj job, WorkDone work) {
    Json.Obj entry = EMPTY;
    if (work.remedy().isPresent()) {
      entry = entry.with("remedy", text(work.remedy().get()));
    }
    entry = told(entry, "title", work.title());
    if (work.time().isPresent()) {
      entry = entry.with("time", text(work.time().get().format()));
    }
    List<Json> parts = work.parts().stream().map(part -> (Json) part(part)).toList();
    entry = parts.isEmpty() ? entry : entry.with("parts", new Json.Arr(parts));
    entry = words(entry, "found", work.found());
    entry = told(told(told(entry, "by", work.by()), "date", work.date()), "note", work.note());
    return job.with("work", more(job, "work", entry));
  }

  /**
   * The content without the piece of work that was recorded last.
   *
   * @param job the content
   * @return the content; the same if no work is recorded
   */
  public static Json.Obj withoutLastWork(Json.Obj job) {
    if (!(job.members().get("work") instanceof Json.Arr work) || work.items().isEmpty()) {
      return job;
    }
    List<Json> rest = work.items().subList(0, work.items().size() - 1);
    return rest.isEmpty() ? without(job, "work") : job.with("work", new Json.Arr(rest));
  }

  /**
   * The content without the tests, which more work has overtaken.
   *
   * @param job the content
   * @return the content
   */
  public static Json.Obj withoutTests(Json.Obj job) {
    return without(job, "tests");
  }

  private static Json.Obj without(Json.Obj job, String name) {
    Map<String, Json> rest = new LinkedHashMap<>(job.members());
    rest.remove(name);
    return new Json.Obj(rest);
  }

  private static Json.Obj part(PartUsed part) {
    Json.Obj entry = EMPTY.with("title", text(part.title()));
    if (part.count() > 1) {
      entry = entry.with("count", new Json.Num(Integer.toString(part.count())));
    }
    if (part.price().isPresent()) {
      entry = entry.with("price", text(part.price().get().format()));
    }
    return part.condition() == PartUsed.Condition.NEW
        ? entry
        : entry.with("condition", text(part.condition().id()));
  }

  /**
   * The content with a test; one of the same step that stands there is replaced.
   *
   * @param job the content
   * @param test the test
   * @return the content with it
   */
  public static Json.Obj with(Json.Obj job, TestDone test) {
    Json result = text(test.met() ? "met" : "not met");
    Json entry =
        test.note().isBlank()
            ? result
            : EMPTY.with("result", result).with("note", text(test.note()));
    return job.with("tests", object(job, "tests").with(test.step(), entry));
  }

  /**
   * The content with what the owner says of a symptom, in the place of what was said before.
   *
   * @param job the content
   * @param symptom its id
   * @param answer yes, no or sometimes
   * @return the content with it
   */
  public static Json.Obj withReport(Json.Obj job, String symptom, String answer) {
    return job.with("symptoms", object(job, "symptoms").with(symptom, text(answer)));
  }

  /**
   * The content with what a symptom does after the work.
   *
   * @param job the content
   * @param symptom its id
   * @param answer yes, no or sometimes
   * @return the content with it
   */
  public static Json.Obj withSymptom(Json.Obj job, String symptom, String answer) {
    return job.with("symptoms-left", object(job, "symptoms-left").with(symptom, text(answer)));
  }

  /**
   * The content of a job that is closed.
   *
   * @param job the content
   * @param closing how it ended
   * @return the content with that
   */
  public static Json.Obj with(Json.Obj job, Closing closing) {
    Json.Obj entry =
        EMPTY.with("date", text(closing.date())).with("outcome", text(closing.outcome().id()));
    entry = words(entry, "causes", closing.causes());
    if (closing.charged().isPresent()) {
      entry = entry.with("charged", text(closing.charged().get().format()));
    }
    entry = told(entry, "old-parts", closing.oldParts());
    if (closing.guarantee().isPresent()) {
      entry = entry.with("guarantee", text(closing.guarantee().get().format()));
    }
    return job.with("closed", told(told(entry, "by", closing.by()), "note", closing.note()));
  }

  /**
   * The content with the offer that the owner took, in the place of one taken before.
   *
   * @param job the content
   * @param accepted the offer
   * @return the content with it
   */
  public static Json.Obj with(Json.Obj job, Accepted accepted) {
    Json.Obj entry =
        EMPTY
            .with("option", new Json.Num(Integer.toString(accepted.option())))
            .with("title", text(accepted.title()));
    if (accepted.most().isPresent()) {
      entry = entry.with("most", text(accepted.most().get().format()));
    }
    return job.with("accepted", entry.with("date", text(accepted.date())));
  }

  private static Json text(String words) {
    return new Json.Str(words);
  }

  private static Json.Obj told(Json.Obj entry, String name, String words) {
    return words.isBlank() ? entry : entry.with(name, text(words));
  }

  private static Json.Obj words(Json.Obj entry, String name, List<String> words) {
    return words.isEmpty()
        ? entry
        : entry.with(name, new Json.Arr(words.stream().map(ProgressEdit::text).toList()));
  }

  private static Json.Obj object(Json.Obj job, String name) {
    return job.members().get(name) instanceof Json.Obj object ? object : EMPTY;
  }

  private static Json.Arr more(Json.Obj job, String name, Json entry) {
    List<Json> all = new ArrayList<>();
    if (job.members().get(name) instanceof Json.Arr array) {
      all.addAll(array.items());
    }
    all.add(entry);
    return new Json.Arr(all);
  }
}
