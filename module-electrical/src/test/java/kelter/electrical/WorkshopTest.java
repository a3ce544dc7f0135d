package kelter.electrical;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import kelter.core.diagnosis.Diagnosis.NextMeasurement;
import kelter.core.job.Appliance;
import kelter.core.job.Complaint;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Hazard;
import kelter.core.workshop.Case;
import kelter.core.workshop.Workshop;
import org.junit.jupiter.api.Test;

/** A program on the core gets the rules that protect people without asking for them. */
class WorkshopTest {

  private static final Workshop WORKSHOP = Workshop.of(List.of(new ElectricalModule()));

  private static Case machine(double megohm) {
    Appliance dryer = Jobs.appliance(Jobs.heater(), Jobs.component("cord", "supply-cord"));
    Measurement insulation =
        Jobs.measurement(
            "heater",
            "insulation-resistance",
            Jobs.value(megohm, "MOhm", QuantityKind.INSULATION_RESISTANCE, 0.01));
    Job job =
        new Job(
            "job-1",
            "",
            dryer,
            new Complaint("stays cold", ""),
            List.of(),
            List.of(insulation),
            Optional.empty());
    return WORKSHOP.open(job);
  }

  private static boolean runs(Case machine) {
    return machine.diagnosis().next().stream()
        .map(NextMeasurement::question)
        .anyMatch(q -> q.observable().procedure().hazard().compareTo(Hazard.DEAD) > 0);
  }

  /** 0.02 MOhm lies below every limit of EN 50678 (0.25 MOhm is the least, from memory). */
  @Test
  void aMachineThatLeaksIsNotSwitchedOnToBeMeasured() {
    Case leaking = machine(0.02);
    assertTrue(leaking.findings().stream().anyMatch(finding -> finding.keepsUnplugged()));
    assertFalse(leaking.diagnosis().next().isEmpty());
    assertFalse(runs(leaking));
    assertTrue(leaking.diagnosis().basis().staysUnplugged());
    assertTrue(runs(machine(200)));
  }

  @Test
  void findingsAndDiagnosisAreMadeOnce() {
    Case machine = machine(200);
    assertSame(machine.diagnosis(), machine.diagnosis());
    assertSame(machine.findings(), machine.findings());
    assertEquals(List.of(), machine.notAssessed());
  }
}
