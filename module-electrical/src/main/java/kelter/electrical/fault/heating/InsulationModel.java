package kelter.electrical.fault.heating;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.Remedy;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.source.Source;
import kelter.core.vocabulary.Observable;
import kelter.electrical.component.HeaterKinds;
import kelter.electrical.component.SupplyKinds;
import kelter.electrical.fault.Ageing;
import kelter.electrical.fault.EarthLeak;
import kelter.electrical.fault.StateModel;
import kelter.electrical.fault.StateModel.Answer;
import kelter.electrical.fault.StateModel.Change;
import kelter.electrical.fault.StateModel.Forecast;
import kelter.electrical.fault.StateModel.Known;

/**
 * The insulation of a part by itself, where no model of a circuit forecasts it: of the whole
 * appliance at its plug where it has no heater whose rating is known, and of a heater without a
 * rating. So every insulation that can be read has a fault that explains a low one.
 */
public final class InsulationModel implements StateModel.Part<InsulationModel.State> {

  private static final Source PRIOR = Source.fromMemory("estimate of how often it is found");

  /** A part in order against earth, Ohm; from memory. */
  private static final double HEALTHY = 3e8;

  private InsulationModel() {}

  /** What leaks to earth beside the insulation in order. */
  static final class State {

    /** Ohm. */
    private double leak = Double.POSITIVE_INFINITY;

    private double insulation() {
      return 1 / (1 / HEALTHY + 1 / leak);
    }
  }

  /** What a leak changes. */
  private record Leaks() implements Change<State> {
    @Override
    public void apply(State state, double s) {
      state.leak = EarthLeak.resistance(s);
    }
  }

  /**
   * How it shows.
   *
   * @param trips whether it is asked of the residual-current device, and not of a tester
   */
  private record Shown(boolean trips) implements Answer<State> {
    @Override
    public Forecast of(State state) {
      return trips
          ? Forecast.chance(EarthLeak.trips(state.insulation()))
          : EarthLeak.shown(state.insulation(), !Double.isInfinite(state.leak));
    }
  }

  /**
   * The insulations that other models leave out.
   *
   * @param appliance the machine
   * @param others the other models of its electrical parts
   * @return one model for each heater and cord whose insulation none of them forecasts
   */
  public static List<FaultModel> of(Appliance appliance, List<FaultModel> others) {
    Set<String> taken = new HashSet<>();
    for (FaultModel other : others) {
      for (Question question : other.questions()) {
        taken.add(question.key());
      }
    }
    List<FaultModel> models = new ArrayList<>();
    for (Component part : appliance.components()) {
      List<Question> left = questions(part);
      if (!left.isEmpty() && !taken.contains(left.get(0).key())) {
        models.add(model(part, left));
      }
    }
    return models;
  }

  /** What can be asked of the insulation of a part, its resistance first; none of other parts. */
  private static List<Question> questions(Component part) {
    if (part.kind().equals(SupplyKinds.CORD.id())) {
      return List.of(ask(part, SupplyKinds.APPLIANCE_INSULATION));
    }
    return HeaterKinds.isHeater(part.kind())
        ? List.of(ask(part, HeaterKinds.INSULATION), ask(part, HeaterKinds.TRIPS))
        : List.of();
  }

  private static Question ask(Component part, Observable observable) {
    return new Question(part.id(), observable, Conditions.NONE);
  }

  private static FaultModel model(Component part, List<Question> questions) {
    boolean cord = part.kind().equals(SupplyKinds.CORD.id());
    Fault leak =
        cord
            ? fault(
                "other-leak",
                part,
                HeatingFaults.OTHER_LEAK,
                HeatingFaults.OTHER_LEAK_PRIOR,
                HeatingRemedies.findLeak(part.id()))
            : fault(
                "leaking",
                part,
                HeatingFaults.LEAKING,
                HeatingFaults.LEAKING_PRIOR,
                HeatingRemedies.renewHeater(
                    part.id(), part.kind().equals(HeaterKinds.AIR_HEATER.id())));
    return new StateModel<>(
        part.id() + "-insulation",
        new InsulationModel(),
        List.of(),
        List.of(new Known<>(leak, new Leaks()).wearing(cord ? Ageing.WIRE : Ageing.HEATER)),
        questions);
  }

  private static Fault fault(String id, Component part, String title, double prior, Remedy remedy) {
    return new Fault(id, part.id(), title, prior, PRIOR, List.of(remedy));
  }

  @Override
  public State healthy() {
    return new State();
  }

  @Override
  public Answer<State> answer(Question question) {
    return new Shown(question.observable().id().equals(HeaterKinds.TRIPS.id()));
  }
}
