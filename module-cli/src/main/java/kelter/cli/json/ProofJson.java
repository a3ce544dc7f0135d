package kelter.cli.json;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kelter.cli.json.output.JsonOutput;
import kelter.cli.json.output.JsonResult;
import kelter.core.check.Finding;
import kelter.core.job.SymptomReport;
import kelter.core.job.work.PartUsed;
import kelter.core.job.work.WorkDone;
import kelter.core.proof.Cure;
import kelter.core.proof.Difference;
import kelter.core.proof.Proof;
import kelter.core.proof.ReadTwice;
import kelter.core.quantity.Money;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.Scale;
import kelter.core.quantity.Unit;
import kelter.core.safety.lockout.ReleaseTest;
import kelter.core.workshop.Case;

/** What was shown after the work, as JSON. */
public final class ProofJson {

  private ProofJson() {}

  /**
   * The text.
   *
   * @param machine the case
   * @param proof what was shown
   * @return the result
   */
  public static JsonResult of(Case machine, Proof proof) {
    return new JsonResult(
        ResultFormat.PROOF.id(),
        out -> {
          LockOutJson.write(out, machine.lockOut());
          out.text("job", machine.job().id());
          out.cautions(machine.cautions());
          out.objects("work", machine.job().progress().work(), work -> write(out, work));
          out.texts("unknown-work", proof.unknown());
          write(out, proof.cure());
          out.objects("readings", proof.readings(), read -> write(out, read));
          out.objects(
              "symptoms",
              proof.symptoms(),
              seen -> {
                out.text("symptom", seen.symptom());
                out.textOrNull("as-found", seen.found().map(SymptomReport.Answer::id));
                out.textOrNull("as-left", seen.left().map(SymptomReport.Answer::id));
              });
          out.objects("tests", proof.tests(), test -> write(out, test));
          out.object(
              "open",
              () -> {
                LockOutJson.writeRereads(
                    "release", out, proof.release().stream().distinct().toList());
                out.texts(
                    "readings",
                    Stream.concat(proof.outside().stream(), proof.toRepeat().stream())
                        .map(each -> each.component() + "." + each.observable().id())
                        .toList());
                out.texts("symptoms", proof.openSymptoms());
                out.texts(
                    "tests", proof.openTests().stream().map(ReleaseTest::step).distinct().toList());
              });
        });
  }

  private static void write(JsonOutput out, WorkDone work) throws IOException {
    out.textOrNull("remedy", work.remedy());
    out.text("title", work.title());
    out.textOrNull("time", work.time().map(Quantity::format));
    out.objects("parts", work.parts(), part -> write(out, part));
    out.texts("found", work.found());
    out.text("by", work.by());
    out.text("date", work.date());
  }

  private static void write(JsonOutput out, PartUsed part) throws IOException {
    out.text("title", part.title());
    out.number("count", part.count());
    out.textOrNull("price", part.price().map(Money::format));
    out.text("condition", part.condition().id());
  }

  private static void write(JsonOutput out, Optional<Cure> cure) throws IOException {
    out.object(
        "cure",
        () -> {
          out.probability("probability", cure.map(Cure::chance).orElse(Double.NaN));
          out.bool("read", cure.filter(Cure::read).isPresent());
          Cure.Outcome outcome = cure.map(Cure::outcome).orElse(Cure.Outcome.NOTHING_DONE);
          out.word("words", outcome.id(), outcome.words());
          out.objects(
              "still",
              cure.map(Cure::still).orElse(List.of()),
              still -> {
                out.text("fault", still.fault().fault().key());
                out.probability("probability", still.fault().probability());
                out.number("severity", still.fault().severity().mean());
                out.probability(
                    "probability-as-found",
                    still.before().map(each -> each.probability()).orElse(0.0));
                out.number(
                    "severity-as-found",
                    still.before().map(each -> each.severity().mean()).orElse(Double.NaN));
              });
        });
  }

  private static void write(JsonOutput out, ReadTwice read) throws IOException {
    out.text("component", read.component());
    out.text("observable", read.observable().id());
    side(out, "as-found", read.found().map(each -> each.shown()), read.foundAgainst());
    side(out, "as-left", read.left().map(each -> each.shown()), read.leftAgainst());
    out.texts("superseded", read.superseded().stream().map(each -> each.shown()).toList());
    Unit unit =
        read.leftAgainst()
            .or(read::foundAgainst)
            .map(Finding::unit)
            .orElse(read.observable().kind().unit());
    out.object(
        "difference", () -> difference(out, read.difference(), read.observable().kind(), unit));
    out.text("change", read.change().id());
    out.bool("spoke", read.spoke());
  }

  private static void difference(
      JsonOutput out, Optional<Difference> difference, QuantityKind kind, Unit unit)
      throws IOException {
    double value = difference.map(each -> each.estimate().value()).orElse(Double.NaN);
    double u = difference.map(each -> each.estimate().standardUncertainty()).orElse(Double.NaN);
    out.number("value", value / unit.factor());
    out.number("u", u / unit.factor());
    out.text("unit", kind.scale() == Scale.TEMPERATURE ? "K" : unit.code());
    out.bool("same-instrument", difference.filter(Difference::shared).isPresent());
  }

  private static void side(
      JsonOutput out, String name, Optional<String> shown, Optional<Finding> against)
      throws IOException {
    out.object(
        name,
        () -> {
          out.textOrNull("shown", shown);
          out.word(
              "verdict",
              against.map(each -> each.verdict().id()).orElse(null),
              against.map(each -> each.verdict().words()).orElse(null));
          out.textOrNull("finding", against.map(Finding::id));
        });
  }

  private static void write(JsonOutput out, ReleaseTest test) throws IOException {
    out.text("step", test.step());
    out.text("text", test.text());
    out.textOrNull("component", Optional.of(test.component()).filter(each -> !each.isEmpty()));
    out.textOrNull("observable", Optional.of(test.observable()).filter(each -> !each.isEmpty()));
    out.textOrNull("shown", test.against().map(Finding::shown));
    out.textOrNull("source", test.against().map(each -> each.source().display()));
    out.text("result", test.result().id());
    out.text("note", test.note());
  }
}
