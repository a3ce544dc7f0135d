package kelter.cli.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.Reading;
import kelter.core.job.ReadingParser;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import kelter.core.quantity.Nearest;
import kelter.core.quantity.QuantityFormat;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Vocabulary;

/** Readings that were not taken, put into a job as if they had been. */
public final class WhatIf {

  private final Job job;
  private final Vocabulary vocabulary;
  private final List<Problem> problems = new ArrayList<>();

  private WhatIf(Job job, Vocabulary vocabulary) {
    this.job = job;
    this.vocabulary = vocabulary;
  }

  /**
   * A job in which some readings are others, or are there.
   *
   * @param job the job, which stays as it is
   * @param vocabulary the words of all modules
   * @param readings {@code component.observable=reading}, each
   * @return the other job; conditions of a reading that is replaced are kept
   * @throws InputException with all that is wrong with the readings
   */
  public static Job in(Job job, Vocabulary vocabulary, List<String> readings) {
    WhatIf whatIf = new WhatIf(job, vocabulary);
    List<Measurement> measurements = new ArrayList<>(job.measurements());
    for (String reading : readings) {
      whatIf.measurement(reading).ifPresent(measurement -> replace(measurements, measurement));
    }
    if (!whatIf.problems.isEmpty()) {
      throw new InputException(whatIf.problems);
    }
    return new Job(
        job.id(),
        job.date(),
        job.appliance(),
        job.complaint(),
        job.instruments(),
        measurements,
        job.prices(),
        job.use());
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
      problem(text, "is no reading", "write it as component.observable=reading");
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
    problem(text, "there is no " + what, near);
  }

  private void problem(String text, String what, String remedy) {
    problems.add(new Problem("--what-if \"" + text + "\"", what, remedy));
  }
}
