package kelter.hydraulics.bench;

import kelter.core.diagnosis.FaultModel;
import kelter.core.job.Appliance;
import kelter.hydraulics.HydraulicsModule;
import kelter.hydraulics.SampleMachines;
import kelter.testkit.ConfusionTrial;

/** Prints which fault is named first for each fault of the room, at two severities. */
public final class ConfusionMatrix {

  private ConfusionMatrix() {}

  /**
   * Prints the tables.
   *
   * @param arguments the number of trials for each fault, 50 where none is given
   */
  public static void main(String[] arguments) {
    int trials = arguments.length == 0 ? 50 : Integer.parseInt(arguments[0]);
    for (Appliance appliance : SampleMachines.all()) {
      for (FaultModel model : new HydraulicsModule().parts().faultModels(appliance)) {
        new ConfusionTrial(appliance, model).print(trials, System.out);
      }
    }
  }
}
