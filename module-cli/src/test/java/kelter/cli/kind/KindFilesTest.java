package kelter.cli.kind;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kelter.cli.wiring.Found;
import kelter.core.catalogue.Kind;
import kelter.core.catalogue.KindCause;
import kelter.core.catalogue.KindPart;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.file.catalogue.KindFile;
import kelter.core.job.Appliance;
import kelter.core.job.Complaint;
import kelter.core.job.Job;
import kelter.core.job.Market;
import kelter.core.job.Nameplate;
import kelter.core.job.SymptomReport;
import kelter.core.owner.Use;
import kelter.core.workshop.Coverage;
import kelter.core.workshop.Workshop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every word and figure of every kind of machine that comes with Kelter. */
class KindFilesTest {

  private static final Path FOLDER =
      Path.of("..", "toolkit-core", "src", "main", "resources", "kelter", "core", "kind");
  private static final Workshop WORKSHOP = Workshop.of(Found.usual().modules());

  /** Names that a kind may have for its rows of the lock-out table. */
  private static final Set<String> ROWS =
      Set.of(
          "lint",
          "interlock",
          "cracked-glass",
          "relief-valve",
          "pressure-heater",
          "steam-boiler",
          "store",
          "gas",
          "refrigerant-circuit",
          "microwave-oven",
          "dc-link",
          "fixed-wiring");

  static List<String> kinds() {
    return KindFile.shipped();
  }

  private static Kind kind(String id) {
    return WORKSHOP.kinds().kind(id).orElseThrow();
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void isReadWithTheWordsOfTheModules(String id) throws IOException {
    Kind kind = kind(id);

    assertEquals(id, kind.id());
    assertTrue(kind.causes().size() >= 10, id);
    assertTrue(kind.asked().size() >= 3 && kind.asked().size() <= 8, id);
    assertTrue(ROWS.containsAll(kind.lockOut()), id + " " + kind.lockOut());
    assertTrue(kind.symptoms().containsAll(kind.asked()), id);
    var schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(KindFile.schema(), InputFormat.JSON);
    assertEquals(List.of(), schema.validate(text(id), InputFormat.JSON), id);
  }

  private static String text(String id) throws IOException {
    return Files.readString(FOLDER.resolve(id + ".json"));
  }

  /** Causes, nothing wrong and something else are all there is. */
  @ParameterizedTest
  @MethodSource("kinds")
  void sharesSumToOne(String id) {
    Kind kind = kind(id);
    double sum = kind.nothingWrong().share() + kind.somethingElse();
    for (KindCause cause : kind.causes()) {
      sum += cause.share();
    }
    assertEquals(1, sum, 5e-4, id);
  }

  /** A symptom that the kind never asks for and no other cause makes would tell too much. */
  @ParameterizedTest
  @MethodSource("kinds")
  void everyPartOfACauseIsReachedAndTitled(String id) {
    Kind kind = kind(id);
    Set<String> covers = new HashSet<>();
    kind.covers().forEach(cover -> covers.add(cover.id()));
    for (KindPart part : kind.parts()) {
      assertTrue(part.title().length() > 2, id + " " + part.id());
      assertTrue(part.behind().isEmpty() || covers.contains(part.behind().get()), part.id());
    }
    for (KindCause cause : kind.causes()) {
      assertTrue(kind.part(cause.part()).isPresent(), id + " " + cause.key());
    }
  }

  /** So few calls are behind causes that nobody can measure. */
  @Test
  void nearlyAllCausesHaveAModel() {
    for (Coverage coverage : WORKSHOP.coverage()) {
      assertTrue(
          coverage.share() >= 0.95,
          () ->
              coverage.kind().id()
                  + ": "
                  + coverage.share()
                  + " "
                  + coverage.without().stream().map(KindCause::key).toList());
    }
    assertEquals(KindFile.shipped().size(), WORKSHOP.coverage().size());
  }

  /** In each market, with no more than one symptom told. */
  @ParameterizedTest
  @MethodSource("kinds")
  void isDiagnosedFromTheCallOn(String id) {
    Kind kind = kind(id);
    for (Market market : Market.values()) {
      Diagnosis nothing = WORKSHOP.open(job(kind, market, Map.of())).diagnosis();
      assertEquals(1, nothing.healthy() / kind.nothingWrong().share(), 0.02, id);
      for (String symptom : kind.asked()) {
        Diagnosis diagnosis =
            WORKSHOP.open(job(kind, market, Map.of(symptom, SymptomReport.Answer.YES))).diagnosis();
        assertTrue(!diagnosis.ranking().isEmpty(), id + " " + symptom);
        assertTrue(diagnosis.unexplained().probability() < 0.5, id + " " + symptom);
      }
    }
  }

  private static Job job(Kind kind, Market market, Map<String, SymptomReport.Answer> symptoms) {
    List<SymptomReport> reports = new ArrayList<>();
    symptoms.forEach((symptom, answer) -> reports.add(new SymptomReport(symptom, answer)));
    return new Job(
        "call",
        "",
        new Appliance(kind.id(), "", "", "", Optional.empty(), Nameplate.UNREADABLE, List.of()),
        new Complaint(Complaint.Reason.FAULT, "", "", reports),
        List.of(),
        List.of(),
        Optional.empty(),
        Use.UNKNOWN,
        Optional.of(market));
  }
}
