package kelter.electrical;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import kelter.core.check.Check;
import kelter.core.check.DecisionRule;
import kelter.core.check.Finding;
import kelter.core.check.Verdict;
import kelter.core.job.Appliance;
import kelter.core.job.Complaint;
import kelter.core.job.Job;
import kelter.core.job.SymptomReport;
import kelter.core.job.SymptomReport.Answer;
import kelter.electrical.caution.ElectricalCautions;
import org.junit.jupiter.api.Test;

/** What is made of a shock or a tingle that somebody felt. */
class WarningSignTest {

  private static List<Finding> findings(Appliance appliance, Complaint complaint) {
    Check check =
        new ElectricalModule()
            .parts().checks().stream()
                .filter(c -> c.id().equals("warning-sign"))
                .findFirst()
                .orElseThrow();
    return check.apply(
        new Job("job-1", "", appliance, complaint, List.of(), List.of(), Optional.empty()),
        DecisionRule.USUAL);
  }

  private static Complaint shock(Answer answer) {
    return Complaint.UNSAID.with(new SymptomReport("shock-felt", answer));
  }

  @Test
  void aShockTakesTheMachineOutOfUse() {
    for (Answer answer : List.of(Answer.YES, Answer.SOMETIMES)) {
      Finding finding = findings(SampleMachines.WASHER, shock(answer)).get(0);
      assertEquals(Verdict.DOES_NOT_CONFORM, finding.judgement().verdict());
      assertEquals("cord", finding.component());
      assertTrue(finding.cautions().contains(ElectricalCautions.TINGLE));
      assertEquals("out of use until the cause is found and mended", finding.remark());
    }
  }

  @Test
  void itDoesSoWithoutACordInTheJob() {
    Finding finding = findings(SampleMachines.DRYER, shock(Answer.YES)).get(0);
    assertTrue(finding.cautions().contains(ElectricalCautions.TINGLE));
  }

  @Test
  void whereNobodyFeltAnythingNothingIsWarnedOf() {
    Finding finding = findings(SampleMachines.WASHER, shock(Answer.NO)).get(0);
    assertEquals(Verdict.CONFORMS, finding.judgement().verdict());
    assertTrue(finding.cautions().isEmpty());
    assertEquals("", finding.remark());
    assertTrue(findings(SampleMachines.WASHER, Complaint.UNSAID).isEmpty());
    assertTrue(findings(Jobs.appliance(), shock(Answer.YES)).isEmpty());
  }
}
