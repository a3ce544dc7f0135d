package kelter.core.file.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import kelter.core.file.json.Json;
import kelter.core.job.Progress;
import kelter.core.job.SymptomReport;
import kelter.core.job.work.Accepted;
import kelter.core.job.work.Closing;
import kelter.core.job.work.Outcome;
import kelter.core.job.work.PartUsed;
import kelter.core.job.work.TestDone;
import kelter.core.job.work.WorkDone;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import kelter.core.quantity.Money;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was done stands in the job file, and a closed job is not changed. */
class ProgressFileTest {

  @Test
  void readsWhatWasDone() {
    Progress progress = StatedJob.parse(Samples.FULL, Samples.VOCABULARY).job().progress();

    assertEquals(
        new WorkDone(
            Optional.of("pump.renew"),
            "Circulation pump renewed",
            Optional.of(Quantity.of(35, "min", QuantityKind.TIME)),
            List.of(
                new PartUsed(
                    "Pump", 1, Optional.of(Money.parse("1200.50 NOK")), PartUsed.Condition.NEW)),
            List.of("pump.worn"),
            "K. Lund",
            "2026-02-28",
            "old one kept"),
        progress.work().get(0));
    assertEquals(Optional.empty(), progress.work().get(1).remedy());
    assertEquals(
        List.of(new TestDone("look", true, ""), new TestDone("cycle", false, "drips at the door")),
        progress.tests());
    assertEquals(List.of(new SymptomReport("loud", SymptomReport.Answer.NO)), progress.symptoms());
    Closing closing = progress.closing().orElseThrow();
    assertEquals(Outcome.NOT_CURED, closing.outcome());
    assertEquals(List.of("pump.worn"), closing.causes());
    assertEquals(Optional.of(Money.parse("2900 NOK")), closing.charged());
    assertEquals(1, QuantityKind.AGE.unit().fromSi(closing.guarantee().orElseThrow().si()), 1e-12);
    assertEquals(Optional.of("quay-11"), progress.callBackOf());
    assertEquals(
        Optional.of(
            new Accepted(1, "Renew the pump", Optional.of(Money.parse("2950 NOK")), "2026-02-26")),
        progress.accepted());
  }

  @Test
  void tellsEveryMistakeWhereItStands() {
    String wrong =
        Samples.FULL
            .replace("\"remedy\": \"pump.renew\"", "\"remedy\": \"pump\"")
            .replace("{ \"title\": \"Hose clip put right\" }", "{ \"note\": \"nothing\" }")
            .replace("\"count\": 1,", "\"count\": 0,")
            .replace("\"look\": \"met\"", "\"lok\": \"met\"")
            .replace("\"outcome\": \"not-cured\"", "\"outcome\": \"fixed\"")
            .replace("\"charged\": \"2 900 NOK\"", "\"charged\": \"-1 NOK\"")
            .replace("\"most\": \"2 950 NOK\"", "\"most\": \"-1 NOK\"")
            .replace("\"option\": 1", "\"option\": 0")
            .replace("\"date\": \"2026-03-09\"", "\"date\": \"2026-02-30\"");
    InputException refused =
        assertThrows(InputException.class, () -> StatedJob.parse(wrong, Samples.VOCABULARY));

    assertEquals(
        List.of(
            "/work/0/remedy",
            "/work/0/parts/0",
            "/work/1",
            "/tests/lok",
            "/closed/date",
            "/closed/outcome",
            "/closed/charged",
            "/accepted/most",
            "/accepted"),
        refused.problems().stream().map(Problem::where).map(ProgressFileTest::pointer).toList());
  }

  private static String pointer(String where) {
    return where.replaceAll(".*?(/\\S+).*", "$1");
  }

  @Test
  void keepsAClosedJobAsItIs(@TempDir Path folder) throws IOException {
    Path file = Files.writeString(folder.resolve("job.json"), Samples.FULL);

    InputException refused =
        assertThrows(
            InputException.class,
            () -> JobFile.change(file, content -> ((Json.Obj) content).with("note", content)));

    assertTrue(refused.getMessage().contains("closed on 2026-03-09"), refused.getMessage());
    assertEquals(Samples.FULL, Files.readString(file));
  }
}
