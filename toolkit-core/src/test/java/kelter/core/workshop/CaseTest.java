package kelter.core.workshop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.diagnosis.Brings;
import kelter.core.diagnosis.CauseShare;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Remedy;
import kelter.core.diagnosis.model.FaultRow;
import kelter.core.diagnosis.model.Figure;
import kelter.core.diagnosis.model.FigureSet;
import kelter.core.diagnosis.model.ModelDefect;
import kelter.core.diagnosis.model.PartModel;
import kelter.core.diagnosis.model.Work;
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
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.core.source.Standing;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import org.junit.jupiter.api.Test;

/** A case on a lamp with a broken model, by a program on the core. */
class CaseTest {

  private static final Source INVENTED = new Source("made up", Standing.INVENTED);
  private static final Observable DARK =
      Observable.named("dark", "it is dark").how("Look.").by(Procedure.look(1));
  private static final ComponentKind LAMP =
      new ComponentKind("lamp", "lamp", List.of(DARK), List.of(), List.of());
  private static final ComponentKind BATTERY =
      new ComponentKind("battery", "battery", List.of(DARK), List.of(), List.of());

  private static final class Lamp {
    static final FigureSet ALL = new FigureSet("lamp");
    static final Figure DARK = ALL.figure("chance that it is dark", 0.05);
  }

  /**
   * Lamps and batteries, with a model of lamps.
   *
   * @param dark the chance that a lamp with the fault is dark
   */
  private record Lamps(double dark) implements CalculationModule, Part {

    /** Its model says what is no chance. */
    Lamps() {
      this(1.9);
    }

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
      return List.of(LAMP, BATTERY);
    }

    @Override
    public Optional<FaultModel> faultModel(Appliance appliance, Component lamp) {
      if (!lamp.kind().equals(LAMP.id())) {
        return Optional.empty();
      }
      FaultRow open =
          FaultRow.fault("open", "wire open", 0.2)
              .changes(Lamp.DARK.becomes(dark))
              .curedBy(Work.renewing("renew", "renew it", 5, 0.9));
      return Optional.of(
          PartModel.of("light", INVENTED, Lamp.ALL)
              .on(lamp, LAMP)
              .faults(open)
              .looks(DARK, state -> state.of(Lamp.DARK))
              .build());
    }
  }

  private static Job job(String observable) {
    Component lamp =
        new Component("lamp", "lamp", Nameplate.UNREADABLE, Map.of(), Map.of(), INVENTED);
    Appliance torch =
        new Appliance("torch", "", "", "", Optional.empty(), Nameplate.UNREADABLE, List.of(lamp));
    Measurement dark =
        new Measurement(
            "lamp",
            observable,
            List.of(new Reading.YesNo(true)),
            Conditions.NONE,
            Optional.empty(),
            "");
    return new Job("job", "", torch, Complaint.NONE, List.of(), List.of(dark), Optional.empty());
  }

  @Test
  void aBrokenModelIsNamedWithItsModule() {
    Case machine = Workshop.of(List.of(new Lamps())).open(job("dark"));
    ModelDefect defect = assertThrows(ModelDefect.class, machine::diagnosis);
    assertTrue(
        defect.getMessage().startsWith("module lamps, model light, lamp.open at "),
        defect.getMessage());
    assertTrue(defect.getMessage().contains("lamp.dark is 1.9"), defect.getMessage());
    ModelDefect explained = assertThrows(ModelDefect.class, () -> machine.explain("open"));
    assertTrue(explained.getMessage().startsWith("module lamps, "), explained.getMessage());
  }

  @Test
  void aJobThatBreaksTheRulesIsNotTakenOn() {
    Workshop workshop = Workshop.of(List.of(new Lamps()));
    InputException refused = assertThrows(InputException.class, () -> workshop.open(job("darc")));
    assertTrue(refused.getMessage().contains("did you mean 'dark'?"), refused.getMessage());
    assertEquals(1, refused.problems().size());
  }

  @Test
  void withoutAWeigherNothingIsWeighed() {
    Workshop workshop = Workshop.of(List.of(new Lamps()));
    assertThrows(InputException.class, () -> workshop.open(job("dark")).options(1));
  }

  /** The module knows of an open wire; of a flat battery only the program does. */
  @Test
  void causesWithoutModelAreWeighedAndTheirComponentIsNotAssessed() {
    CauseShare flat =
        new CauseShare("battery", "flat", "flat", 0.4, Map.of("light-out", 0.9), INVENTED);
    CauseShare open = new CauseShare("lamp", "open", "open", 0.4, Map.of(), INVENTED);
    Brings brings = new Brings("battery.flat", "lamp.open", 0.3);
    Job unread = unread(new SymptomReport("light-out", SymptomReport.Answer.YES));

    Workshop workshop = Workshop.of(List.of(new Lamps(0.9)));
    Case machine = workshop.open(unread, List.of(flat, open), List.of(brings));

    assertEquals("battery.flat", machine.diagnosis().faults().get(0).fault().key());
    assertEquals(2, machine.diagnosis().faults().size());
    assertEquals(List.of("battery"), machine.notAssessed());
    assertFalse(machine.explain("flat").fault().fault().modelled());
    assertTrue(machine.explain("open").fault().fault().modelled());
    assertEquals(
        List.of("lamp.renew", "battery.flat"),
        machine.remedies().stream().map(Remedy::key).toList());
    assertEquals(1, workshop.open(unread).diagnosis().faults().size());
    assertThrows(
        IllegalArgumentException.class,
        () -> workshop.open(unread, List.of(flat, flat), List.of()));
  }

  /** No module is needed to be told so, nor to have nothing proposed that needs power. */
  @Test
  void aReportOfCurrentOrFireKeepsTheMachineUnplugged() {
    Workshop workshop = Workshop.of(List.of(new Lamps(0.9)));
    for (String danger :
        List.of("shock-felt", "trips-rcd", "trips-breaker", "sparks", "smells-burnt")) {
      for (SymptomReport.Answer answer : SymptomReport.Answer.values()) {
        boolean there = answer != SymptomReport.Answer.NO;
        Case machine = workshop.open(unread(new SymptomReport(danger, answer)));
        assertEquals(there, machine.diagnosis().basis().staysUnplugged(), danger + answer);
        assertEquals(there ? 1 : 0, machine.cautions().size(), danger + answer);
        assertTrue(machine.cautions().stream().allMatch(Caution::keepsUnplugged));
      }
    }
    Case dark = workshop.open(unread(new SymptomReport("light-out", SymptomReport.Answer.YES)));
    assertFalse(dark.diagnosis().basis().staysUnplugged());
    assertEquals(List.of(), dark.cautions());
  }

  private static Job unread(SymptomReport report) {
    Appliance torch =
        new Appliance(
            "torch",
            "",
            "",
            "",
            Optional.empty(),
            Nameplate.UNREADABLE,
            List.of(part("lamp"), part("battery")));
    Complaint complaint = new Complaint(Complaint.Reason.FAULT, "it is dark", "", List.of(report));
    return new Job("job", "", torch, complaint, List.of(), List.of(), Optional.empty());
  }

  private static Component part(String kind) {
    return new Component(kind, kind, Nameplate.UNREADABLE, Map.of(), Map.of(), INVENTED);
  }
}
