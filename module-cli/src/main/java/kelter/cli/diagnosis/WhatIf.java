package kelter.cli.diagnosis;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import kelter.core.file.job.VersionOne;
import kelter.core.job.Complaint;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.Reading;
import kelter.core.job.ReadingParser;
import kelter.core.job.SymptomReport;
import kelter.core.job.SymptomReport.Answer;
import kelter.core.job.rule.SymptomRules;
import kelter.core.problem.InputException;
import kelter.core.problem.Mistake;
import kelter.core.problem.Place;
import kelter.core.problem.Problem;
import kelter.core.quantity.Nearest;
import kelter.core.quantity.QuantityFormat;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Symptom;
import kelter.core.vocabulary.Vocabulary;

/**
 * Readings that were not taken, and answers that were not given, put into a job as if they were.
 */
public final class WhatIf {

  private static final String NOT_ASKED = "not-asked";

  private final Job job;
  private final Vocabulary vocabulary;
  private final List<Problem> problems = new ArrayList<>();

  private WhatIf(Job job, Vocabulary vocabulary) {
    this.job = job;
    this.vocabulary = vocabulary;
  }

  /**
   * A job in which some readings or reports of symptoms are others, or are there.
   *
   * @param job the job, which stays as it is
   * @param vocabulary the words of all modules
   * @param readings {@code component.observable=reading} or {@code symptom=answer}, each; an answer
   *     is yes, no, sometimes or not-asked
   * @return the other job; conditions of a reading that is replaced are kept
   * @throws InputException with all that is wrong with the readings
   */
  public static Job in(Job job, Vocabulary vocabulary, List<String> readings) {
    WhatIf whatIf = new WhatIf(job, vocabulary);
    List<Measurement> measurements = new ArrayList<>(job.measurements());
    Complaint complaint = job.complaint();
    for (String reading : readings) {
      if (isOfTheMachine(reading)) {
        complaint = whatIf.reported(reading, complaint);
      } else {
        whatIf.measurement(reading).ifPresent(measurement -> replace(measurements, measurement));
      }
    }
    if (!whatIf.problems.isEmpty()) {
      throw new InputException(whatIf.problems);
    }
    return job.with(complaint, measurements);
  }

  /** Whether a symptom is told: no component stands before what is read. */
  private static boolean isOfTheMachine(String text) {
    int equals = text.indexOf('=');
    return equals > 0 && text.lastIndexOf('.', equals) < 0;
  }

  private Complaint reported(String text, Complaint complaint) {
    int equals = text.indexOf('=');
    Place at = (mistake, what, remedy) -> problem(mistake, text, what, remedy);
    Optional<Symptom> symptom =
        SymptomRules.symptom(text.substring(0, equals).strip(), vocabulary, at);
    String word = text.substring(equals + 1).strip().toLowerCase(Locale.ROOT).replace(' ', '-');
    Map<String, Answer> answers = new LinkedHashMap<>();
    for (Answer answer : Answer.values()) {
      answers.put(answer.id(), answer);
    }
    List<String> known = new ArrayList<>(answers.keySet());
    known.add(NOT_ASKED);
    if (!at.isKnown(word, known, "report of a symptom") || symptom.isEmpty()) {
      return complaint;
    }
    String id = symptom.get().id();
    return word.equals(NOT_ASKED)
        ? complaint.without(id)
        : complaint.with(new SymptomReport(id, answers.get(word)));
  }

  private static void replace(List<Measurement> measurements, Measurement other) {
    Conditions conditions = Conditions.NONE;
    for (Measurement each : List.copyOf(measurements)) {
      if (each.component().equals(other.component())
          && each.observable().equals(other.observable())) {
        conditions = each.conditions();
        measurements.remove(each);
      }
    }
    measurements.add(
        new Measurement(
            other.component(),
            other.observable(),
            other.readings(),
            conditions,
            Optional.empty(),
            ""));
  }

  private Optional<Measurement> measurement(String text) {
    int equals = text.indexOf('=');
    int dot = text.indexOf('.');
    if (dot <= 0 || equals < dot) {
      problem(
          text,
          "is no reading",
          "write it as component.observable=reading, or a symptom as stays-cold=yes");
      return Optional.empty();
    }
    String id = text.substring(0, dot).strip();
    Optional<Component> component = job.appliance().component(id);
    List<String> ids = job.appliance().components().stream().map(Component::id).toList();
    if (component.isEmpty()) {
      unknown(text, "component '" + id + "' of this appliance", id, ids);
      return Optional.empty();
    }
    return observable(text, component.get(), text.substring(dot + 1, equals).strip())
        .flatMap(o -> reading(text, id, o, text.substring(equals + 1).strip()));
  }

  private Optional<Observable> observable(String text, Component component, String id) {
    Optional<Symptom> moved = VersionOne.symptom(component.kind(), id);
    if (moved.isPresent()) {
      problem(
          text,
          "'%s' of %s is a symptom of the whole machine"
              .formatted(id, QuantityFormat.withArticle(component.kind())),
          "write for instance " + moved.get().id() + "=yes");
      return Optional.empty();
    }
    Optional<Observable> found = vocabulary.observable(component.kind(), id);
    if (found.isEmpty()) {
      List<String> known =
          vocabulary
              .kind(component.kind())
              .map(ComponentKind::observables)
              .orElse(List.of())
              .stream()
              .map(Observable::id)
              .toList();
      unknown(
          text,
          "observable '" + id + "' of " + QuantityFormat.withArticle(component.kind()),
          id,
          known);
    }
    return found;
  }

  private Optional<Measurement> reading(
      String text, String component, Observable observable, String written) {
    try {
      Reading reading = ReadingParser.parse(written, observable);
      return Optional.of(
          new Measurement(
              component, observable.id(), List.of(reading), Conditions.NONE, Optional.empty(), ""));
    } catch (IllegalArgumentException e) {
      problem(text, e.getMessage(), "");
      return Optional.empty();
    }
  }

  private void unknown(String text, String what, String word, List<String> known) {
    String near =
        Nearest.of(word, known)
            .map(other -> "did you mean '" + other + "'?")
            .orElse("known are: " + String.join(", ", known));
    problem(Mistake.UNKNOWN_WORD, text, "there is no " + what, near);
  }

  private void problem(String text, String what, String remedy) {
    problem(Mistake.UNUSABLE, text, what, remedy);
  }

  private void problem(Mistake mistake, String text, String what, String remedy) {
    problems.add(new Problem(mistake, "--what-if \"" + text + "\"", what, remedy));
  }
}
