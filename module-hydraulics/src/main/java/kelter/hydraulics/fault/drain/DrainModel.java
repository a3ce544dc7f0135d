package kelter.hydraulics.fault.drain;

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
import kelter.hydraulics.part.DrainPumpKind;

/**
 * What can be wrong on the way of the water out, and how it would show: head, flow and power from
 * one operating point, the rest from what is in the way.
 *
 * @param component the id of the drain pump
 * @param path the pump and hose in order
 */
public record DrainModel(String component, DrainPath path) implements FaultModel {

  private static final Source STRENGTH =
      Source.commonPractice(
          "four fifths of the variance of the head between pumps of one kind are the pump's own");

  /**
   * The model of a drain pump.
   *
   * @param component a drain pump
   * @param machine the nameplate of the machine that it sits in
   * @return the model, with a typical curve where the component has none, or empty if the pump
   *     could not lift the water even in order
   */
  public static Optional<FaultModel> of(Component component, Nameplate machine) {
    Optional<DrainPath> path = DrainPath.of(component, machine);
    return path.isPresent()
        ? Optional.of(new DrainModel(component.id(), path.get()))
        : Optional.empty();
  }

  @Override
  public String id() {
    return component + "-water-out";
  }

  @Override
  public List<Fault> faults() {
    List<Fault> faults = new ArrayList<>();
    for (DrainFault fault : DrainFault.values()) {
      faults.add(fault.on(component, path.curveKnown()));
    }
    return List.copyOf(faults);
  }

  /** A check valve that is stuck shut is not stuck open. */
  @Override
  public boolean mayMeet(int one, int other) {
    return one == other || !DrainFault.isOfValve(one) || !DrainFault.isOfValve(other);
  }

  @Override
  public List<Question> questions() {
    List<Question> questions = new ArrayList<>();
    for (Observable observable : DrainPumpKind.KIND.observables()) {
      if (canTell(observable)) {
        questions.add(new Question(component, observable, Conditions.NONE));
      }
    }
    return List.copyOf(questions);
  }

  private boolean canTell(Observable observable) {
    if (observable.id().equals(DrainPumpKind.CURRENT.id())) {
      return path.current().isPresent();
    }
    return !observable.id().equals(DrainPumpKind.DRAIN_TIME.id()) || path.drainVolume().isPresent();
  }

  /**
   * The strength of this very pump moves its head, its flow rate and all that follows from them.
   * What mains and water do to a pump at work is less than a quarter of what pumps differ.
   */
  @Override
  public List<SharedQuantity> shared() {
    long percent = Math.round(100 * DrainForecaster.strength(path));
    return List.of(
        new SharedQuantity(
            "pump-strength",
            "strength of this pump among its kind, " + percent + " % of its head at no flow",
            STRENGTH));
  }

  @Override
  public Forecaster forecaster(List<Question> questions) {
    try {
      return new DrainForecaster(path, questions);
    } catch (IllegalArgumentException impossible) {
      throw new InputException(
          component, impossible.getMessage(), "correct the conditions of the reading");
    }
  }
}
