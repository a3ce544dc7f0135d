package kelter.hydraulics.fault.wash;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Forecaster;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.SharedQuantity;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.job.Nameplate;
import kelter.core.problem.InputException;
import kelter.core.source.Source;
import kelter.core.vocabulary.Observable;
import kelter.hydraulics.part.WashPumpKind;

/**
 * What can be wrong in the circuit of the wash water, and how it would show: heads, pressures,
 * speed and power from one operating point, the rest from what is in the way.
 *
 * @param component the id of the wash pump
 * @param wash the pump, passage and jets in order
 */
public record WashModel(String component, WashCircuit wash) implements FaultModel {

  private static final Source STRENGTH =
      Source.commonPractice(
          "four fifths of the variance of the head between pumps of one kind are the pump's own");

  /**
   * The model of a wash pump.
   *
   * @param component a wash pump
   * @param machine the nameplate of the machine that it sits in
   * @return the model, with a typical curve and jets where the component has none, or empty if the
   *     pump could not lift the water even in order
   */
  public static Optional<FaultModel> of(Component component, Nameplate machine) {
    Optional<WashCircuit> wash = WashCircuit.of(component, machine);
    return wash.isPresent()
        ? Optional.of(new WashModel(component.id(), wash.get()))
        : Optional.empty();
  }

  @Override
  public String id() {
    return component + "-wash-water";
  }

  @Override
  public List<Fault> faults() {
    List<Fault> faults = new ArrayList<>();
    for (WashFault fault : WashFault.values()) {
      faults.add(fault.on(component, wash.known()));
    }
    return List.copyOf(faults);
  }

  @Override
  public List<Question> questions() {
    List<Question> questions = new ArrayList<>();
    for (Observable observable : WashPumpKind.KIND.observables()) {
      if (canTell(observable)) {
        questions.add(new Question(component, observable, Conditions.NONE));
      }
    }
    return List.copyOf(questions);
  }

  private boolean canTell(Observable observable) {
    if (observable.id().equals(WashPumpKind.POWER.id())) {
      return wash.ratedPower().isPresent();
    }
    if (observable.id().equals(WashPumpKind.CURRENT.id())) {
      return wash.current().isPresent();
    }
    if (observable.id().equals(WashPumpKind.SPEED.id())) {
      return wash.ratedSpeed().isPresent();
    }
    return !observable.id().equals(WashPumpKind.ARM_SPEED.id()) || wash.ratedArmSpeed().isPresent();
  }

  /**
   * The strength of this very pump moves its head, its flow rate and all that follows from them.
   * What mains and water do to a pump at work is less than a quarter of what pumps differ.
   */
  @Override
  public List<SharedQuantity> shared() {
    long percent = Math.round(100 * WashForecaster.strength(wash));
    return List.of(
        new SharedQuantity(
            "pump-strength",
            "strength of this pump among its kind, " + percent + " % of its head at no flow",
            STRENGTH));
  }

  @Override
  public Forecaster forecaster(List<Question> questions) {
    try {
      return new WashForecaster(wash, questions);
    } catch (IllegalArgumentException impossible) {
      throw new InputException(
          component, impossible.getMessage(), "correct the conditions of the reading");
    }
  }
}
