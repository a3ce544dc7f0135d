package kelter.electrical.fault.heating;

import java.util.List;
import kelter.core.diagnosis.FaultModel;
import kelter.core.job.Appliance;
import kelter.electrical.fault.StateModel;

/**
 * The heating of an appliance: heater, thermal links, relays, temperature sensors and supply. Every
 * forecast comes from one operating point of the circuit.
 */
public final class HeatingModel {

  private HeatingModel() {}

  /**
   * The heatings of an appliance.
   *
   * @param appliance the machine
   * @return one model for each heater whose rating is known
   */
  public static List<FaultModel> of(Appliance appliance) {
    return HeatingGroup.of(appliance).stream().map(HeatingModel::of).toList();
  }

  private static FaultModel of(HeatingGroup group) {
    HeatingAnswers answers = new HeatingAnswers(group);
    return new StateModel<>(
        group.heater().id(),
        () -> new HeatingState(group),
        HeatingFaults.of(group),
        answers.questions(),
        answers::answer);
  }
}
