package kelter.electrical;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kelter.core.check.DecisionRule;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.engine.DiagnosisEngine;
import kelter.core.job.Appliance;
import kelter.core.job.Complaint;
import kelter.core.job.Job;
import kelter.core.safety.Caution;
import kelter.core.safety.Hazard;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Observable.Type;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Vocabulary;
import kelter.electrical.outofreach.OutOfReach;
import org.junit.jupiter.api.Test;

/** What each procedure says before anybody measures. */
class ProcedureTest {

  private static final ElectricalModule MODULE = new ElectricalModule();

  private static List<Observable> observables() {
    return MODULE.parts().kinds().stream().flatMap(kind -> kind.observables().stream()).toList();
  }

  private static Observable observable(String kind, String id) {
    return new Vocabulary(MODULE.parts().kinds()).observable(kind, id).orElseThrow();
  }

  /** Applies to each procedure of a hazard, of which there must be some. */
  private static void each(Hazard hazard, Consumer<Observable> rule) {
    List<Observable> all =
        observables().stream().filter(o -> o.procedure().hazard() == hazard).toList();
    assertTrue(all.size() > 3, hazard + " " + all.size());
    all.forEach(rule);
  }

  private static void says(Observable observable, String... words) {
    for (String word : words) {
      assertTrue(
          observable.procedure().whole().contains(word),
          observable.id() + " does not say '" + word + "': " + observable.procedure().whole());
    }
  }

  @Test
  void deadProceduresSayWhoWithWhatHowLongAndHowToProve() {
    each(
        Hazard.DEAD,
        observable -> {
          says(
              observable,
              "Dead, by whoever",
              "Plug out, or where it is wired isolated and locked off; wait ",
              " s for the filter",
              "prove dead",
              "CAT II",
              "IEC 61010");
          says(observable, "two-pole tester that you have tried on a live point before and after");
          assertTrue(observable.procedure().cautions().contains(Caution.UNPLUG), observable.id());
        });
  }

  @Test
  void liveProceduresSayWhoWithWhatAndThatClipsGoOnDead() {
    each(
        Hazard.LIVE,
        observable ->
            says(
                observable,
                "Live, only by those competent for live work",
                "local code",
                "CAT III",
                "Plug out, or where it is wired isolated and locked off; wait ",
                "prove dead"));
  }

  @Test
  void runningProceduresLeaveTheMachineClosed() {
    each(
        Hazard.RUNNING,
        observable -> says(observable, "Running, by any technician", "closed", "CAT II"));
  }

  @Test
  void whatIsMeasuredWithAnInstrumentIsNeverALook() {
    each(
        Hazard.NONE, observable -> assertTrue(observable.type() != Type.QUANTITY, observable.id()));
  }

  @Test
  void partsBesideAMotorCapacitorSayHowToDischargeIt() {
    says(observable("run-capacitor", "capacitance"), "discharge tool of 20 kOhm", "34 V");
    for (String id :
        List.of(
            "winding-resistance",
            "auxiliary-resistance",
            "insulation-resistance",
            "turning-by-hand")) {
      says(observable("motor", id), "discharge tool of 20 kOhm", "34 V");
    }
  }

  /**
   * Arithmetic on the RC law from the peak of 400 V + 10 %, 622 V, to the 34 V of IEC 60335-1,
   * 22.5, with 20 % more capacitance and 5 % more resistance: ln(622/34) = 2.907, so that 2.2 µF
   * through 1 MOhm take 8.1 s and 100 µF through 20 kOhm 7.3 s. Nobody is told less than 10 s.
   */
  @Test
  void theTimesToWaitAreThoseOfTheLaw() {
    assertEquals(
        10, seconds(observable("solenoid", "coil-resistance").procedure(), "wait (\\d+) s"));
    assertEquals(
        10,
        seconds(observable("run-capacitor", "capacitance").procedure(), "capacitor for (\\d+) s"));
  }

  private static double seconds(Procedure procedure, String pattern) {
    Matcher matcher = Pattern.compile(pattern).matcher(procedure.whole());
    assertTrue(matcher.find(), procedure.whole());
    return Double.parseDouble(matcher.group(1));
  }

  /** Whoever is not competent for live work by the shop profile is never sent there. */
  @Test
  void liveProceduresAppearOnlyWhereTheShopIsCompetent() {
    EngineSettings usual = EngineSettings.USUAL;
    EngineSettings competent = usual.forLiveWork(true);
    List<Hazard> seen = new ArrayList<>();
    for (Appliance machine : SampleMachines.all()) {
      assertFalse(hazards(machine, usual).contains(Hazard.LIVE));
      seen.addAll(hazards(machine, competent));
    }
    assertTrue(seen.contains(Hazard.LIVE));
  }

  private static List<Hazard> hazards(Appliance machine, EngineSettings settings) {
    Job job = Jobs.job(machine);
    Job complained =
        new Job(
            job.id(),
            job.date(),
            machine,
            new Complaint("does not work", ""),
            List.of(),
            List.of(),
            job.prices());
    Diagnosis diagnosis =
        new DiagnosisEngine(settings).diagnose(complained, MODULE.parts().faultModels(machine));
    return diagnosis.next().stream()
        .map(next -> next.question().observable().procedure().hazard())
        .toList();
  }

  @Test
  void whatIsOutOfReachHasACautionAndNoProcedure() {
    OutOfReach outOfReach = new OutOfReach();
    for (String id :
        List.of("high-voltage-capacitor", "gas-part", "refrigerant-circuit", "fixed-wiring")) {
      var kind =
          MODULE.parts().kinds().stream().filter(one -> one.id().equals(id)).findFirst().get();
      assertTrue(kind.observables().isEmpty(), id);
      Job job = Jobs.job(Jobs.appliance(Jobs.component("part", id)));
      Caution caution = outOfReach.apply(job, DecisionRule.USUAL).get(0).cautions().get(0);
      assertEquals(Caution.Signal.DANGER, caution.signal());
    }
  }
}
