package kelter.electrical;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import kelter.core.check.Finding;
import kelter.core.check.Verdict;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Question;
import kelter.core.job.Appliance;
import kelter.core.job.Measurement;
import kelter.core.job.Reading;
import kelter.core.quantity.Quantity;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Observable.Type;
import org.junit.jupiter.api.Test;

/** What is forecast of drives, doors and seals in order meets the limits for them. */
class DrivesInOrderTest {

  @Test
  void whatIsInOrderConforms() {
    int conform = 0;
    for (Appliance machine : DriveMachines.all()) {
      for (Finding finding :
          DriveMachines.findings(Jobs.job(machine, inOrder(machine).toArray(Measurement[]::new)))) {
        assertFalse(finding.verdict() == Verdict.DOES_NOT_CONFORM, finding.toString());
        conform += finding.verdict() == Verdict.CONFORMS ? 1 : 0;
      }
    }
    assertTrue(conform >= 12, conform + " readings were held against limits");
  }

  /** A reading of each figure that is forecast, as it is in order. */
  private static List<Measurement> inOrder(Appliance machine) {
    List<Measurement> all = new ArrayList<>();
    for (FaultModel model : new ElectricalModule().parts().faultModels(machine)) {
      for (Question question : model.questions()) {
        Observable observable = question.observable();
        if (observable.type() == Type.QUANTITY) {
          double si = DriveMachines.inOrder(machine, question.component() + "." + observable.id());
          all.add(
              Jobs.measurement(
                  question.component(),
                  observable.id(),
                  new Reading.Value(Quantity.ofSi(si, 0, observable.kind()), 0)));
        }
      }
    }
    return all;
  }
}
