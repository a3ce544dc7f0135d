package kelter.core.workshop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.catalogue.Kind;
import kelter.core.catalogue.Models;
import kelter.core.check.Allowed;
import kelter.core.check.Check;
import kelter.core.check.Finding;
import kelter.core.check.LimitCheck;
import kelter.core.check.Limits;
import kelter.core.check.Verdict;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.model.FaultRow;
import kelter.core.diagnosis.model.Figure;
import kelter.core.diagnosis.model.FigureSet;
import kelter.core.diagnosis.model.PartModel;
import kelter.core.diagnosis.model.Spread;
import kelter.core.diagnosis.model.Work;
import kelter.core.file.catalogue.KindFile;
import kelter.core.job.Appliance;
import kelter.core.job.Complaint;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.Nameplate;
import kelter.core.job.Reading;
import kelter.core.job.SymptomReport;
import kelter.core.module.About;
import kelter.core.module.CalculationModule;
import kelter.core.module.Part;
import kelter.core.module.Parts;
import kelter.core.problem.InputException;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.shop.Shop;
import kelter.core.source.Source;
import kelter.core.source.Standing;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Span;
import kelter.core.vocabulary.Symptoms;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the kind of a machine adds to a case, by a kind and a module that are made up. */
class KindCaseTest {

  private static final Source INVENTED = new Source("made up", Standing.INVENTED);

  /** Shares of lamp 0.4, glass 0.3, cable 0.2; they and the rest sum to one. */
  private static final String TORCH =
      """
      {
        "format": "kelter-kind/1",
        "id": "torch",
        "title": "hand torch",
        "words": ["flash light"],
        "typical-age": "4 a",
        "parts": [
          { "id": "lamp", "kind": "lamp", "title": "lamp",
            "figures": { "all": { "rating": ["50 Ohm", "100 Ohm", "200 Ohm"] } } },
          { "id": "glass", "kind": "glass", "title": "glass" },
          { "id": "cable", "kind": "cable", "title": "cable" }
        ],
        "nothing-wrong": { "share": 0.06, "symptoms": { "light-out": 0.5 } },
        "something-else": 0.04,
        "causes": [
          { "fault": "lamp.open", "title": "lamp open", "share": 0.4, "symptoms": { "light-out": 0.9 } },
          { "fault": "glass.dirty", "title": "glass dirty", "share": 0.3, "wear": 2, "mend": "clean", "symptoms": { "poor-result": 0.8 } },
          { "fault": "cable.broken", "title": "cable broken", "share": 0.2, "symptoms": { "light-out": 0.7 } }
        ],
        "asked": ["light-out"],
        "source": { "document": "torches that are made up", "standing": "invented" }
      }
      """;

  private static final Characteristic RATING =
      new Characteristic("rating", "resistance of a good lamp", QuantityKind.RESISTANCE);
  private static final Observable RESISTANCE =
      Observable.named("resistance", "resistance of the lamp")
          .logarithmic(QuantityKind.RESISTANCE, new Span(0.1, 1e6))
          .how("Measure it.")
          .by(Procedure.dead(2, new Accuracy(0.01, 0)));
  private static final ComponentKind LAMP =
      new ComponentKind("lamp", "lamp", List.of(RESISTANCE), List.of(RATING), List.of());

  private static final FigureSet WIRE = new FigureSet("wire");
  private static final Figure OF_RATED = WIRE.figure("resistance by the rated one, ratio", 1);

  /**
   * Lamps, whose resistance is that of their rating, and a thousand times it when they are open.
   */
  private static final class Lamps implements CalculationModule, Part {

    @Override
    public About about() {
      return new About("lamps", "lamps", "1");
    }

    @Override
    public Parts parts() {
      return Parts.of(this);
    }

    @Override
    public List<ComponentKind> kinds() {
      return List.of(LAMP);
    }

    @Override
    public List<Check> checks() {
      return List.of(
          LimitCheck.named("lamp-resistance", "Is it what it is rated for?")
              .on(
                  LAMP,
                  RESISTANCE,
                  read -> {
                    double rated = read.component().si(RATING);
                    return Double.isNaN(rated)
                        ? Optional.empty()
                        : Optional.of(
                            Allowed.of(
                                "resistance against the rating",
                                INVENTED,
                                new Limits(0.9 * rated, 1.1 * rated)));
                  }));
    }

    @Override
    public Optional<FaultModel> faultModel(Appliance appliance, Component lamp) {
      double rated = lamp.si(RATING);
      if (!lamp.kind().equals(LAMP.id()) || Double.isNaN(rated)) {
        return Optional.empty();
      }
      FaultRow open =
          FaultRow.fault("open", "wire open", 0.02)
              .changes(OF_RATED.becomes(1000))
              .makes(Symptoms.LIGHT_OUT, 0.5, 0.9)
              .curedBy(Work.renewing("renew", "renew the lamp", 5, 0.9));
      return Optional.of(
          PartModel.of(lamp, LAMP, INVENTED, WIRE)
              .faults(open)
              .looks(RESISTANCE, state -> rated * state.of(OF_RATED), Spread.constant(0.02))
              .build());
    }
  }

  @TempDir Path folder;

  private Workshop workshop() {
    return workshop(TORCH);
  }

  private Workshop workshop(String kind) {
    try {
      Path file = Files.writeString(folder.resolve("torch.json"), kind);
      Workshop modules = Workshop.of(List.of(new Lamps()));
      List<Kind> kinds = List.of(KindFile.read(file, modules.vocabulary()));
      return modules.in(Shop.UNKNOWN.with(Optional.empty(), List.of(), Models.NONE, kinds));
    } catch (IOException unwritable) {
      throw new AssertionError(unwritable);
    }
  }

  private static Job job(Appliance machine, List<Measurement> readings, String... yes) {
    List<SymptomReport> reports = new ArrayList<>();
    for (String symptom : yes) {
      reports.add(new SymptomReport(symptom, SymptomReport.Answer.YES));
    }
    return new Job(
        "job",
        "",
        machine,
        new Complaint(Complaint.Reason.FAULT, "", "", reports),
        List.of(),
        readings,
        Optional.empty());
  }

  private static Appliance torch(Optional<Quantity> age, Component... parts) {
    return new Appliance("torch", "", "", "", age, Nameplate.UNREADABLE, List.of(parts));
  }

  private static Component lamp(String id, Map<String, Quantity> figures) {
    return new Component(id, "lamp", Nameplate.UNREADABLE, figures, Map.of(), INVENTED);
  }

  private static Measurement read(String lamp, double ohm) {
    return new Measurement(
        lamp,
        "resistance",
        List.of(new Reading.Value(Quantity.of(ohm, "Ohm", QuantityKind.RESISTANCE), 0)),
        Conditions.NONE,
        Optional.empty(),
        "");
  }

  private static double probability(Diagnosis diagnosis, String key) {
    return diagnosis.faults().stream()
        .filter(each -> each.fault().key().equals(key))
        .mapToDouble(Diagnosis.FaultProbability::probability)
        .sum();
  }

  /** The parts of the kind are there without being listed, and may be read. */
  @Test
  void aJobNeedsNotListTheParts() {
    Case machine = workshop().open(job(torch(Optional.empty()), List.of(read("lamp", 1e5))));
    assertTrue(machine.job().appliance().component("lamp").isPresent());
    assertTrue(machine.job().appliance().component("glass").isEmpty(), "no module observes it");
    assertTrue(probability(machine.diagnosis(), "lamp.open") > 0.9);
  }

  /**
   * Arithmetic: light-out is named with 0.9 for the lamp, 0.7 for the cable, its leak 0.02 for the
   * glass and 0.5 where nothing is wrong; wrong reports and pairs move that by a few points.
   */
  @Test
  void theCausesHaveTheOddsOfTheKind() {
    Diagnosis diagnosis =
        workshop().open(job(torch(Optional.empty()), List.of(), "light-out")).diagnosis();
    double lamp = 0.4 * 0.9;
    double cable = 0.2 * 0.7;
    double all = lamp + cable + 0.06 * 0.5 + 0.34 * 0.03;
    assertEquals(lamp / all, probability(diagnosis, "lamp.open"), 0.04);
    assertEquals(cable / all, probability(diagnosis, "cable.broken"), 0.04);
  }

  /**
   * Dirt has the shape 2, so that at twice the typical age its share doubles before all are
   * rescaled: 0.6 of 0.4 + 0.6 + 0.2, times 0.9.
   */
  @Test
  void wearScalesAShareAboutTheTypicalAge() {
    Diagnosis old =
        workshop()
            .open(job(torch(Optional.of(Quantity.of(8, "a", QuantityKind.AGE))), List.of()))
            .diagnosis();
    assertEquals(0.6 / 1.2 * 0.9, probability(old, "glass.dirty"), 0.02);
    assertEquals(0.06, old.healthy(), 0.002);
  }

  /** What a machine lacks gives its share to all others alike. */
  @Test
  void aPartThatTheMachineLacksIsNoCause() {
    Appliance whole = torch(Optional.empty());
    Appliance lacking =
        new Appliance(
            "torch",
            "",
            "",
            "",
            Optional.empty(),
            Nameplate.UNREADABLE,
            List.of(),
            List.of("glass"));
    Diagnosis diagnosis = workshop().open(job(lacking, List.of())).diagnosis();
    assertEquals(0, probability(diagnosis, "glass.dirty"));
    assertEquals(0.9 * 0.4 / 0.6, probability(diagnosis, "lamp.open"), 0.02);
    assertEquals(
        0.4, probability(workshop().open(job(whole, List.of())).diagnosis(), "lamp.open"), 0.02);
  }

  /** Two lamps share the share of the one that the kind has. */
  @Test
  void severalComponentsStandForOnePart() {
    Appliance two = torch(Optional.empty(), lamp("left", Map.of()), lamp("right", Map.of()));
    Case machine = workshop().open(job(two, List.of()));
    assertTrue(machine.job().appliance().component("lamp").isEmpty());
    assertEquals(0.2, probability(machine.diagnosis(), "left.open"), 0.01);
    assertEquals(0.2, probability(machine.diagnosis(), "right.open"), 0.01);
  }

  /**
   * A lamp of 150 ohm may well be rated for that: neither verdict nor fault, where 150 ohm of a
   * lamp that is rated for 100 does not conform.
   */
  @Test
  void aTypicalFigureIsOpen() {
    Workshop workshop = workshop();
    Case typical = workshop.open(job(torch(Optional.empty()), List.of(read("lamp", 150))));
    Finding open = typical.findings().get(0);
    assertEquals(Verdict.UNDECIDED, open.verdict());
    assertEquals(Standing.FROM_MEMORY, open.source().standing());
    assertEquals(45, open.limits().low(), 1e-6);
    assertEquals(220, open.limits().high(), 1e-6);
    assertTrue(
        open.remark().contains("rating of lamp: 100 Ohm (50 Ohm to 200 Ohm)"), open.remark());
    assertTrue(typical.standIns().toString().contains("rating of lamp"), "told");

    Quantity rated = Quantity.of(100, "Ohm", QuantityKind.RESISTANCE);
    Case stated =
        workshop.open(
            job(
                torch(Optional.empty(), lamp("lamp", Map.of("rating", rated))),
                List.of(read("lamp", 150))));
    assertEquals(Verdict.DOES_NOT_CONFORM, stated.findings().get(0).verdict());
    assertTrue(
        stated.diagnosis().unexplained().misfit() < typical.diagnosis().unexplained().misfit(),
        "150 ohm are odd only where 100 are stated");
  }

  @Test
  void aTypicalFigureStillTellsWhatLiesBeyondItsSpan() {
    Case machine = workshop().open(job(torch(Optional.empty()), List.of(read("lamp", 1e5))));
    assertEquals(Verdict.DOES_NOT_CONFORM, machine.findings().get(0).verdict());
  }

  @Test
  void everyMistakeOfAKindIsTold() {
    String wrong =
        TORCH
            .replace("\"light-out\": 0.9", "\"lights-out\": 0.9")
            .replace("glass.dirty", "gless.dirty")
            .replace("\"50 Ohm\", \"100 Ohm\"", "\"500 Ohm\", \"100 Ohm\"")
            .replace("\"share\": 0.2", "\"share\": 1.2");
    InputException mistakes = assertThrows(InputException.class, () -> workshop(wrong));
    String told = mistakes.problems().toString();
    assertTrue(told.contains("did you mean 'light-out'?"), told);
    assertTrue(told.contains("did you mean 'glass'?"), told);
    assertTrue(told.contains("do not rise"), told);
    assertTrue(told.contains("above 0 and below 1"), told);
  }

  @Test
  void aKindIsFoundByItsWords() {
    Workshop workshop = workshop();
    assertEquals("torch", workshop.kinds().meant("Flash-Light").get(0).id());
    assertEquals("torch", workshop.kinds().meant("hand").get(0).id());
    assertEquals(List.of(), workshop.kinds().meant("balloon"));
  }
}
