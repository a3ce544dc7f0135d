package kelter.cli.command.entry;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kelter.core.file.job.MarkedEdit;
import kelter.core.file.job.PriceEdit;
import kelter.core.file.job.ProgressEdit;
import kelter.core.file.json.Json;
import kelter.core.job.Measurement;
import kelter.core.quantity.Money;

/** A reading or an answer as it stands on the command line, and how it goes into a job. */
public final class Entry {

  /** How a reading is written. */
  public static final String READING_FORM = "PART.OBSERVABLE=READING";

  /** What is told of a part that is not there. */
  public static final String LACKS_HELP =
      "a part that such machines may have and this one has not, such as air-heater";

  /** What may stand behind a reading. */
  public static final String BEHIND_READING =
      "behind it, if you like, 'at temperature=70 Cel' and 'with METER'";

  private static final Pattern READING =
      Pattern.compile(
          "([a-z0-9-]+)\\.([a-z0-9-]+) *= *(.*?)(?: +at +(.*?))?(?: +with +([a-z0-9-]+))?");
  private static final Pattern PLATED =
      Pattern.compile("(?:([a-z0-9-]+)\\.)?([a-z0-9-]+) *= *(.+)");
  private static final Pattern PRICED = Pattern.compile("([a-z0-9-]+(?:\\.[a-z0-9-]+)?) *= *(.+)");
  private static final Pattern ANSWER = Pattern.compile("([^=]+?) *= *(yes|no|sometimes)");

  private Entry() {}

  /**
   * Matches what was told.
   *
   * @throws IllegalArgumentException if it has another form
   */
  public static Matcher matched(Pattern pattern, String told, String form) {
    Matcher matcher = pattern.matcher(told.strip());
    if (!matcher.matches()) {
      throw new IllegalArgumentException("is not of the form " + form);
    }
    return matcher;
  }

  /**
   * A reading.
   *
   * @throws IllegalArgumentException if it has another form
   */
  public static ProgressEdit.Written written(String told, Measurement.Stage stage) {
    Matcher matcher = matched(READING, told, READING_FORM + ", such as heater.resistance=26.4 ohm");
    Map<String, String> at = new LinkedHashMap<>();
    if (matcher.group(4) != null) {
      for (String each : matcher.group(4).split(",")) {
        int equals = each.indexOf('=');
        if (equals < 0) {
          throw new IllegalArgumentException("behind 'at' write WORD=VALUE, such as flow=0 L/min");
        }
        at.put(each.substring(0, equals).strip(), each.substring(equals + 1).strip());
      }
    }
    return new ProgressEdit.Written(
        matcher.group(1),
        matcher.group(2),
        matcher.group(3),
        at,
        Optional.ofNullable(matcher.group(5)),
        stage);
  }

  /**
   * Adds a reading.
   *
   * @throws IllegalArgumentException if it has another form
   */
  public static UnaryOperator<Json.Obj> reading(String told, Measurement.Stage stage) {
    ProgressEdit.Written written = written(told, stage);
    return content -> ProgressEdit.with(content, written);
  }

  /**
   * Adds what stands on a nameplate.
   *
   * @throws IllegalArgumentException if it has another form, or is of a part that cannot be there
   */
  public static UnaryOperator<Json.Obj> plate(String told, JobEdits job) {
    Matcher matcher = matched(PLATED, told, "WORD=VALUE or PART.WORD=VALUE, such as power=2.2 kW");
    Optional.ofNullable(matcher.group(1)).ifPresent(job::requirePart);
    return content ->
        MarkedEdit.plate(
            content, Optional.ofNullable(matcher.group(1)), matcher.group(2), matcher.group(3));
  }

  /**
   * Adds what a part is rated for.
   *
   * @throws IllegalArgumentException if it has another form, or is of a part that cannot be there
   */
  public static UnaryOperator<Json.Obj> figure(String told, JobEdits job) {
    Matcher matcher = matched(PLATED, told, "PART.WORD=VALUE, such as fan.power=30 W");
    if (matcher.group(1) == null) {
      throw new IllegalArgumentException("names no part; write PART.WORD=VALUE");
    }
    job.requirePart(matcher.group(1));
    return content ->
        MarkedEdit.figure(content, matcher.group(1), matcher.group(2), matcher.group(3));
  }

  /**
   * Adds a price.
   *
   * @throws IllegalArgumentException if it has another form, is no amount of money, or is for no
   *     work that is known
   */
  public static UnaryOperator<Json.Obj> price(String told, JobEdits job) {
    Matcher matcher =
        matched(PRICED, told, "PART.REMEDY=AMOUNT, or WORD=VALUE such as call-out=95 USD");
    String word = matcher.group(1);
    String value = matcher.group(2).strip();
    if (word.contains(".")) {
      job.requireWork(word);
    }
    Optional<String> currency =
        value.endsWith("%")
            ? Optional.empty()
            : Optional.of(Money.parse(value).currency().getCurrencyCode());
    return content -> PriceEdit.with(content, word, value, currency);
  }

  /**
   * Tells that the machine has not a part.
   *
   * @throws IllegalArgumentException if such machines have none
   */
  public static UnaryOperator<Json.Obj> lacking(String part, JobEdits job) {
    job.requirePart(part);
    return content -> MarkedEdit.lacking(content, part);
  }

  /**
   * Adds what the machine does.
   *
   * @throws IllegalArgumentException if it has another form, or names no symptom by its id
   */
  public static UnaryOperator<Json.Obj> symptom(
      String told, Measurement.Stage stage, JobEdits job) {
    Matcher matcher = matched(ANSWER, told, "SYMPTOM=no, or yes, or sometimes");
    String symptom = job.symptom(matcher.group(1));
    String answer = matcher.group(2);
    return stage == Measurement.Stage.AS_LEFT
        ? content -> ProgressEdit.withSymptom(content, symptom, answer)
        : content -> ProgressEdit.withReport(content, symptom, answer);
  }
}
