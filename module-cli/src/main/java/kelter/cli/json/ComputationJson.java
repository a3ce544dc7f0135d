package kelter.cli.json;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import kelter.cli.json.output.JsonOutput;
import kelter.cli.json.output.JsonResult;
import kelter.core.module.Calculation;
import kelter.core.module.Computation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.module.UncertaintyAnalysis;
import kelter.core.quantity.QuantityKind;
import kelter.core.uncertainty.Budget;
import kelter.core.uncertainty.ErrorEffect;
import kelter.core.uncertainty.montecarlo.MonteCarlo;

/** A calculation as JSON. */
public final class ComputationJson {

  private ComputationJson() {}

  /**
   * A calculation.
   *
   * @param computation what was computed
   * @param analysis its uncertainty in full, if it was asked for
   * @return the result
   */
  public static JsonResult of(Computation computation, Optional<UncertaintyAnalysis> analysis) {
    return new JsonResult(
        ResultFormat.COMPUTATION.id(),
        out -> {
          out.text("calculation", computation.calculation().id());
          out.objects(
              "results",
              computation.results(),
              result -> {
                out.text("id", result.output().id());
                out.number("value", result.quantity().value());
                out.text("unit", result.quantity().unit().code());
                out.number("u", result.quantity().standardUncertainty());
              });
          out.objects(
              "inputs",
              computation.inputs(),
              input -> {
                out.text("id", input.parameter().id());
                out.text("text", input.text());
                out.bool("given", input.given());
              });
          if (analysis.isPresent()) {
            out.object("uncertainty", () -> writeAnalysis(out, analysis.get()));
          }
          out.text("formula", computation.calculation().formula());
          out.text("range", computation.calculation().range());
          out.source(computation.calculation().source());
          out.cautions(computation.calculation().cautions());
        });
  }

  /**
   * What a calculation takes and gives, without running it.
   *
   * @param calculation the calculation
   * @return the result
   */
  public static JsonResult describe(Calculation calculation) {
    return new JsonResult(
        ResultFormat.CALCULATION.id(),
        out -> {
          out.text("calculation", calculation.id());
          out.text("title", calculation.title());
          out.objects("parameters", calculation.parameters(), each -> writeParameter(out, each));
          out.objects(
              "outputs",
              calculation.outputs(),
              output -> {
                out.text("id", output.id());
                out.text("title", output.title());
                out.text("measures", output.kind().name());
                out.text("unit", output.kind().unit().code());
              });
          out.text("formula", calculation.formula());
          out.text("range", calculation.range());
          out.source(calculation.source());
          out.cautions(calculation.cautions());
        });
  }

  private static void writeParameter(JsonOutput out, Parameter parameter) throws IOException {
    out.text("id", parameter.id());
    out.text("title", parameter.title());
    if (parameter.choices().isEmpty()) {
      out.text("measures", parameter.kind().name());
      out.text("unit", parameter.kind().unit().code());
      out.value("low", parameter.low(), parameter.kind(), parameter.kind().unit());
      out.value("high", parameter.high(), parameter.kind(), parameter.kind().unit());
    } else {
      out.texts("choices", parameter.choices());
    }
    if (parameter.usual().isPresent()) {
      out.text("usual", parameter.usual().get());
    }
  }

  private static void writeAnalysis(JsonOutput out, UncertaintyAnalysis analysis)
      throws IOException {
    out.text("seed", Long.toString(analysis.settings().seed()));
    if (analysis.refused().isPresent()) {
      out.text("monte-carlo-refused", analysis.refused().get());
    }
    List<Output> outputs = analysis.computation().calculation().outputs();
    out.objects(
        "budgets",
        outputs,
        output -> {
          int place = outputs.indexOf(output);
          writeBudget(out, analysis, output, analysis.budgets().get(place));
          if (!analysis.outcomes().isEmpty()) {
            MonteCarlo.Outcome outcome = analysis.outcomes().get(place);
            out.object("monte-carlo", () -> writeOutcome(out, output.kind(), outcome));
          }
        });
  }

  private static void writeBudget(
      JsonOutput out, UncertaintyAnalysis analysis, Output output, Budget budget)
      throws IOException {
    double factor = output.kind().unit().factor();
    out.text("id", output.id());
    out.value("value", budget.result().value(), output.kind(), output.kind().unit());
    out.text("unit", output.kind().unit().code());
    out.number("u", budget.result().standardUncertainty() / factor);
    out.number("degrees-of-freedom", budget.degreesOfFreedom());
    out.number("coverage-probability", budget.coverageProbability());
    out.number("coverage-factor", budget.coverageFactor());
    out.number("expanded", budget.expanded() / factor);
    out.objects("lines", budget.lines(), line -> writeLine(out, analysis, output, line));
  }

  private static void writeLine(
      JsonOutput out, UncertaintyAnalysis analysis, Output output, Budget.Line line)
      throws IOException {
    ErrorEffect effect = line.effect();
    double factor = output.kind().unit().factor();
    List<Computation.Input> inputs = analysis.computation().inputs();
    out.text("effect", effect.title());
    out.word("distribution", effect.shape().id(), effect.shape().words());
    out.number("degrees-of-freedom", effect.degreesOfFreedom());
    out.objects(
        "inputs",
        effect.inputs(),
        place -> {
          QuantityKind kind = inputs.get(place).parameter().kind();
          out.text("id", inputs.get(place).parameter().id());
          out.value("value", inputs.get(place).quantity().value(), kind, kind.unit());
          out.text("unit", kind.unit().code());
          out.number("u", effect.moves().get(place) / kind.unit().factor());
        });
    if (effect.inputs().size() == 1) {
      QuantityKind kind = inputs.get(effect.inputs().get(0)).parameter().kind();
      out.number("sensitivity", line.sensitivity() * kind.unit().factor() / factor);
    }
    out.number("contribution", line.contribution() / factor);
    out.number("share", line.share());
  }

  private static void writeOutcome(JsonOutput out, QuantityKind kind, MonteCarlo.Outcome outcome)
      throws IOException {
    double factor = kind.unit().factor();
    out.value("mean", outcome.mean(), kind, kind.unit());
    out.number("u", outcome.standardUncertainty() / factor);
    out.value("low", outcome.low(), kind, kind.unit());
    out.value("high", outcome.high(), kind, kind.unit());
    out.number("trials", outcome.trials());
    out.number("undefined", outcome.undefined());
    out.number("steady-within", outcome.toTwoDigits().noise() / factor);
    out.number("low-difference", outcome.toTwoDigits().lowDifference() / factor);
    out.number("high-difference", outcome.toTwoDigits().highDifference() / factor);
    out.object(
        "first-order-holds",
        () -> {
          out.number("tolerance-of-one-digit", outcome.toOneDigit().tolerance() / factor);
          out.word(
              "to-one-digit",
              outcome.toOneDigit().holds().id(),
              outcome.toOneDigit().holds().words());
          out.number("tolerance-of-two-digits", outcome.toTwoDigits().tolerance() / factor);
          out.word(
              "to-two-digits",
              outcome.toTwoDigits().holds().id(),
              outcome.toTwoDigits().holds().words());
        });
  }
}
