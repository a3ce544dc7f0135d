package kelter.cli.json;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import kelter.cli.json.output.JsonOutput;
import kelter.cli.json.output.JsonResult;
import kelter.cli.weighing.Weighed;
import kelter.core.option.CarbonBalance;
import kelter.core.option.Option;
import kelter.core.option.Reasons;
import kelter.core.option.Weighing;
import kelter.core.workshop.Case;

/** Repair or replace as JSON. */
public final class WeighingJson {

  /** Behind a unit, as UCUM has it. */
  private static final String A_YEAR = "/a";

  private WeighingJson() {}

  /**
   * Options.
   *
   * @param weighed the job with its options
   * @param machine the job with its findings
   * @return the result
   */
  public static JsonResult of(Weighed weighed, Case machine) {
    Weighing weighing = weighed.weighing();
    Optional<Reasons> reasons = weighed.reasons();
    return new JsonResult(
        ResultFormat.WEIGHING.id(),
        out -> {
          LockOutJson.write(out, machine.lockOut());
          out.text("job", weighed.job().id());
          out.cautions(machine.cautions());
          out.text("currency", weighing.currency().getCurrencyCode());
          out.bool("tax-included", weighing.taxed());
          DiagnosisJson.writeConclusion(out, weighing.conclusion());
          out.textOrNull("recommended", weighing.recommended().map(Option::id));
          out.bool("close", weighing.isClose());
          String unit = weighing.currency().getCurrencyCode();
          out.objects("options", weighing.options(), option -> writeOption(out, option, unit));
          writeAmount(out, "break-even-repair", weighing.breakEvenRepair(), unit);
          if (reasons.isPresent()) {
            out.object("reasons", () -> writeReasons(out, reasons.get(), unit));
          }
          if (weighed.carbon().isPresent()) {
            out.object("carbon", () -> writeCarbon(out, weighed.carbon().get()));
          }
          out.statements("assumptions", weighing.assumptions());
          out.sources(weighing.sources());
        });
  }

  private static void writeCarbon(JsonOutput out, CarbonBalance carbon) throws IOException {
    writeAmount(out, "running-old", carbon.runningOld(), "kg" + A_YEAR);
    writeAmount(out, "running-new", carbon.runningNew(), "kg" + A_YEAR);
    writeAmount(out, "making-new", carbon.makingNew(), "kg");
    writeAmount(out, "making-new-spread", carbon.makingNewPerYear(), "kg" + A_YEAR);
    out.number("pay-back-years", carbon.payBack());
    out.statements("assumptions", carbon.assumptions());
    out.sources(carbon.sources());
  }

  private static void writeOption(JsonOutput out, Option option, String unit) throws IOException {
    out.text("id", option.id());
    out.text("title", option.title());
    out.texts("remedies", option.remedies());
    out.probability("probability-of-cure", option.probabilityOfCure());
    writeAmount(out, "outlay", option.outlay(), unit);
    out.number("years", option.years());
    out.object("annual-cost", () -> writeSpread(out, option.annualCost(), unit + A_YEAR));
    out.probability("probability-cheapest", option.probabilityCheapest());
  }

  private static void writeAmount(JsonOutput out, String name, double value, String unit)
      throws IOException {
    out.object(
        name,
        () -> {
          out.number("value", value);
          out.text("unit", unit);
        });
  }

  private static void writeSpread(JsonOutput out, Option.Spread spread, String unit)
      throws IOException {
    out.number("mean", spread.mean());
    out.number("p5", spread.low());
    out.number("p50", spread.median());
    out.number("p95", spread.high());
    out.text("unit", unit);
  }

  private static void writeReasons(JsonOutput out, Reasons reasons, String unit)
      throws IOException {
    out.number("break-even-age", reasons.breakEvenAge());
    out.objects(
        "influences",
        reasons.influences(),
        influence -> {
          out.word("what", influence.id(), influence.what());
          out.text("low", influence.low());
          out.text("high", influence.high());
          out.number("saving-low", influence.savingLow());
          out.number("saving-high", influence.savingHigh());
          out.text("unit", unit + A_YEAR);
          out.bool("decides", influence.decides());
        });
    out.objects(
        "regret",
        List.copyOf(reasons.regret().entrySet()),
        regret -> {
          out.text("option", regret.getKey());
          out.number("value", regret.getValue());
          out.text("unit", unit + A_YEAR);
        });
    out.objects(
        "rules",
        reasons.rules(),
        rule -> {
          out.word("rule", rule.id(), rule.rule());
          out.text("here", rule.here());
          out.source(rule.source());
        });
    out.objects(
        "courses",
        reasons.courses(),
        course -> {
          out.text("option", course.option());
          out.objects("paid-by-year", course.paid(), paid -> writeSpread(out, paid, unit));
        });
  }
}
