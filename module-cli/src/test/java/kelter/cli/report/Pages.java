package kelter.cli.report;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import kelter.cli.safety.Call;
import kelter.core.file.catalogue.WorkStepsFile;
import kelter.core.file.job.JobFile;
import kelter.core.file.job.ProgressEdit;
import kelter.core.file.json.Json;
import kelter.core.job.Measurement;
import kelter.core.job.work.Closing;
import kelter.core.job.work.Outcome;
import kelter.core.job.work.PartUsed;
import kelter.core.job.work.TestDone;
import kelter.core.job.work.WorkDone;
import kelter.core.proof.Proof;
import kelter.core.quantity.Money;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.report.OwnersPage;
import kelter.core.shop.Shop;
import kelter.core.workshop.Case;

/** Pages of reports for tests. */
final class Pages {

  static final String HOSTILE = "\"><script>alert(1)</script><img src=x onerror=alert(2)>{{job}}";

  static final Path WASHER = Path.of("..", "demo", "jobs", "washer-extractor.json");

  private Pages() {}

  static String of(Case machine, List<String> owner, boolean anonymous) {
    Proof proof = Proof.of(machine);
    return ReportPage.of(
        machine,
        proof,
        new ReportPage.Beside(
            OwnersPage.of(
                machine,
                proof,
                WorkStepsFile.shipped(),
                new OwnersPage.Beside("0 555 01 99", !anonymous, Optional.empty())),
            owner,
            anonymous,
            Shop.UNKNOWN,
            Optional.of(machine.explainedOptions(1))));
  }

  static Case open(Path job) {
    return Call.WORKSHOP.open(Call.WORKSHOP.read(job));
  }

  /** A closed job with all that a report can tell. */
  static Case closed() {
    return changed(UnaryOperator.identity());
  }

  /** The same with words of somebody who means harm wherever words may stand. */
  static Case hostile() {
    return changed(
        content -> {
          Json.Obj appliance = (Json.Obj) content.members().get("appliance");
          return content
              .with(
                  "appliance",
                  appliance
                      .with("maker", new Json.Str(HOSTILE))
                      .with("model", new Json.Str(HOSTILE))
                      .with("serial", new Json.Str(HOSTILE)))
              .with("complaint", new Json.Obj(Map.of("said", new Json.Str(HOSTILE))));
        });
  }

  private static Case changed(UnaryOperator<Json.Obj> change) {
    Json.Obj content = change.apply((Json.Obj) JobFile.content(WASHER));
    WorkDone work =
        new WorkDone(
            Optional.of("drain-pump.clean-pump"),
            HOSTILE,
            Optional.of(Quantity.of(25, "min", QuantityKind.TIME)),
            List.of(
                new PartUsed(
                    HOSTILE, 2, Optional.of(Money.parse("4.20 EUR")), PartUsed.Condition.USED)),
            List.of("drain-pump.passages-blocked"),
            HOSTILE,
            "2026-11-28",
            HOSTILE);
    content = ProgressEdit.with(content, work);
    content =
        ProgressEdit.with(
            content,
            new ProgressEdit.Written(
                "drain-pump",
                "flow",
                "18.5 L/min",
                Map.of(),
                Optional.of("bucket-and-watch"),
                Measurement.Stage.AS_LEFT));
    content = ProgressEdit.with(content, new TestDone("cycle", true, HOSTILE));
    Closing closing =
        new Closing(
            "2026-11-28",
            Outcome.NOT_CURED,
            List.of("drain-pump.passages-blocked"),
            Optional.of(Money.parse("96.40 EUR")),
            HOSTILE,
            Optional.of(Quantity.of(1, "a", QuantityKind.AGE)),
            HOSTILE,
            HOSTILE);
    content = ProgressEdit.with(content, closing);
    return Call.WORKSHOP.open(Call.WORKSHOP.read(content).job());
  }
}
