package kelter.electrical.fault;

import java.util.List;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Forecaster;
import kelter.core.diagnosis.Question;
import kelter.core.job.Appliance;

/**
 * The heating of an appliance: heater, thermal links, relays, temperature sensors and supply. Every
 * forecast comes from one operating point of the circuit.
 */
public final class HeatingModel implements FaultModel {

  private final HeatingGroup group;
  private final HeatingAnswers answers;
  private final List<HeatingFaults.Known> known;
  private final List<Question> questions;

  private HeatingModel(HeatingGroup group) {
    this.group = group;
    this.answers = new HeatingAnswers(group);
    this.known = HeatingFaults.of(group);
    this.questions = answers.questions();
  }

  /**
   * The heatings of an appliance.
   *
   * @param appliance the machine
   * @return one model for each heater whose rating is known
   */
  public static List<FaultModel> of(Appliance appliance) {
    return HeatingGroup.of(appliance).stream().<FaultModel>map(HeatingModel::new).toList();
  }

  @Override
  public String id() {
    return group.heater().id();
  }

  @Override
  public List<Fault> faults() {
    return known.stream().map(HeatingFaults.Known::fault).toList();
  }

  @Override
  public List<Question> questions() {
    return questions;
  }

  @Override
  public Forecaster forecaster(List<Question> asked) {
    List<HeatingAnswers.Answer> ready = asked.stream().map(answers::answer).toList();
    return (severity, value, spread) -> {
      HeatingState state = new HeatingState(group);
      for (int i = 0; i < known.size(); i++) {
        if (severity[i] > 0) {
          known.get(i).change().apply(state, severity[i]);
        }
      }
      for (int i = 0; i < ready.size(); i++) {
        HeatingAnswers.Forecast forecast = ready.get(i).of(state);
        value[i] = forecast.value();
        spread[i] = forecast.spread();
      }
    };
  }
}
