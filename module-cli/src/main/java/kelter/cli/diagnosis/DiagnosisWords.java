package kelter.cli.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.StringJoiner;
import java.util.function.Function;
import kelter.cli.text.Figures;
import kelter.core.diagnosis.Conclusion;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.Question;
import kelter.core.job.Job;
import kelter.core.job.Prices;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityFormat;
import kelter.core.workshop.Case;

/** The words for states, readings and work that all texts of a diagnosis share. */
final class DiagnosisWords {

  private DiagnosisWords() {}

  /** Whether it is decided, and if not, for which reason and what to do about it. */
  static String conclusion(Diagnosis diagnosis) {
    Conclusion conclusion = diagnosis.basis().conclusion();
    String words =
        switch (conclusion.reason()) {
          case DECIDED -> "Decided";
          case NOT_SEPARABLE -> "Not decided, several causes look alike";
          case NO_CAUSE_FITS -> "Not decided, no known cause fits";
          case INSTRUMENT_TOO_COARSE -> "Not decided, the instrument is too coarse";
          case NOT_MEASURED -> "Not decided, too little was measured";
        };
    return words + ": " + conclusion.action() + ".";
  }

  /** What is wrong in a state, with how bad it is in some words where the readings tell of it. */
  static String describe(
      Diagnosis.RankedState state, Function<Diagnosis.Severity, String> severity) {
    List<String> parts = new ArrayList<>();
    for (Diagnosis.PresentFault present : state.faults()) {
      Fault fault = present.fault();
      boolean told = fault.modelled() && present.severity().isTold();
      parts.add(named(fault) + (told ? severity.apply(present.severity()) : ""));
    }
    if (state.unexplained()) {
      parts.add("something that no known fault explains");
    }
    return parts.isEmpty() ? "nothing wrong" : String.join("; and ", parts);
  }

  /** Part and fault; said where no measurement can tell of it. */
  static String named(Fault fault) {
    String part = fault.component().replace('-', ' ');
    boolean saysPart = fault.title().toLowerCase(Locale.ROOT).replace('-', ' ').contains(part);
    return (saysPart ? "" : fault.component() + ": ")
        + fault.title()
        + (fault.modelled() ? "" : " (no measurement of it is known here)");
  }

  static String conditions(Question question) {
    StringJoiner stated = new StringJoiner(", ", " (at ", ")");
    stated.setEmptyValue("");
    for (Map.Entry<String, Quantity> figure : question.conditions().figures().entrySet()) {
      stated.add(figure.getKey().replace('-', ' ') + " " + figure.getValue().display());
    }
    return stated.toString();
  }

  static String unbroken(String words) {
    return words.replace(' ', '\u00a0');
  }

  /** A step of the plan with its chance, time and cost. */
  static String work(Job job, Diagnosis.PlanStep step) {
    String cost =
        Double.isNaN(step.cost())
            ? "price not stated"
            : price(step.cost(), job.prices().orElseThrow());
    return "%s: %s. Chance of a cure %s; %s\u00a0min, %s."
        .formatted(
            step.remedy().component(),
            step.remedy().title(),
            Figures.percent(step.probabilityOfCure()),
            QuantityFormat.fixed(step.remedy().minutes(), 0),
            cost);
  }

  private static String price(double amount, Prices prices) {
    return "about %s\u00a0%s %s"
        .formatted(
            QuantityFormat.fixed(amount, 0),
            prices.currency().getCurrencyCode(),
            prices.tax().isKnown() ? "with tax" : "before tax");
  }

  /**
   * What to do where no work is proposed.
   *
   * @param machine the case
   * @param usual what is said where work may be proposed and none is worth it
   * @return who takes it over where nothing on it is to be mended here
   */
  static String noWork(Case machine, String usual) {
    return machine.lockOut().barsAll()
        ? "Not to be mended here: hand it over. First: "
            + machine.lockOut().rows().get(0).row().first()
        : usual;
  }
}
