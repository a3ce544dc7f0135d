package kelter.electrical.fault.heating;

import java.util.ArrayList;
import java.util.List;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.SharedQuantity;
import kelter.core.job.Appliance;
import kelter.core.quantity.QuantityFormat;
import kelter.core.source.Source;
import kelter.electrical.fault.StateModel;
import kelter.electrical.fault.StateModel.Moving;

/**
 * The heating of an appliance: heater, thermal links, relays, temperature sensors and supply. Every
 * forecast comes from one operating point of the circuit; the voltage of the mains, where no
 * reading states it, moves power, current and the rate of heating together.
 */
public final class HeatingModel {

  /** How much the mains of one house differ from their rated voltage, as a ratio. */
  private static final double MAINS_DEVIATION = 0.03;

  private static final Moving<HeatingState> MAINS =
      new Moving<>(
          new SharedQuantity(
              "mains-voltage",
              "voltage of the mains, 3 % of the rated one",
              Source.commonPractice(
                  "the mains of one house lie within 3 % of the rated voltage two times of three;"
                      + " EN 50160 allows 10 % for 95 % of a week")),
          (state, deviate) -> state.mains *= 1 + MAINS_DEVIATION * deviate);

  private static final Source TOLERANCE =
      Source.commonPractice(
          "heaters of one rating differ by 5 % in resistance, by 3 % where a service figure is known");

  private static final Source OPEN_TOLERANCE =
      Source.commonPractice(
          "heaters of one rating differ by 5 % in resistance; the nameplate has a range of voltages, and"
              + " the one that its power belongs to was taken");

  private HeatingModel() {}

  /** The mains of one house, which may lie anywhere in a rated range. */
  private static Moving<HeatingState> mains(HeatingGroup group) {
    double open = group.rating().mainsOpenness();
    if (open == 0) {
      return MAINS;
    }
    double deviation = Math.hypot(MAINS_DEVIATION, open);
    String percent = QuantityFormat.plain(Math.round(1000 * deviation) / 10.0);
    return new Moving<>(
        new SharedQuantity(
            MAINS.quantity().id(),
            "voltage of the mains, " + percent + " % of the middle of the rated range",
            Source.commonPractice(
                "the mains of one house lie within 3 % of a voltage two times of three, and that may"
                    + " be any of the rated range")),
        (state, deviate) -> state.mains *= 1 + deviation * deviate);
  }

  private static Moving<HeatingState> heater(HeatingGroup group) {
    double tolerance = HeaterAnswer.tolerance(group.rating());
    String percent = QuantityFormat.plain(Math.round(1000 * tolerance) / 10.0);
    return new Moving<>(
        new SharedQuantity(
            "heater-tolerance",
            "resistance of this heater within its tolerance, " + percent + " %",
            group.rating().openness() > 0 ? OPEN_TOLERANCE : TOLERANCE),
        (state, deviate) -> state.ofThisHeater = Math.pow(1 + tolerance, deviate));
  }

  /**
   * The heatings of an appliance.
   *
   * @param appliance the machine
   * @return one model for each heater whose rating is known
   */
  public static List<FaultModel> of(Appliance appliance) {
    List<FaultModel> models = new ArrayList<>();
    for (HeatingGroup group : HeatingGroup.of(appliance)) {
      models.add(of(group));
    }
    return models;
  }

  private static FaultModel of(HeatingGroup group) {
    HeatingAnswers answers = new HeatingAnswers(group);
    return new StateModel<>(
        group.heater().id(),
        answers,
        List.of(mains(group), heater(group)),
        HeatingFaults.of(group),
        answers.questions());
  }
}
