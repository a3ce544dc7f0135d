package kelter.core.diagnosis.model;

import java.util.ArrayList;
import java.util.List;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Forecaster;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.SharedQuantity;

/** The model that {@link PartModel} makes. */
final class Model implements FaultModel {

  private final String id;
  private final FigurePlaces layout;
  private final double[] inOrder;
  private final List<Cause> causes;
  private final List<Shared> shared;
  private final List<Row<?>> rows;

  /** A fault and what it changes. */
  record Cause(Fault fault, List<String> apart, PlacedEffects change) {

    boolean isApartFrom(Cause other) {
      return apart.contains(other.fault.id()) && fault.component().equals(other.fault.component());
    }
  }

  /** What is shared and what it changes. */
  record Shared(SharedQuantity quantity, PlacedEffects change) {}

  Model(
      String id, FigurePlaces layout, List<Cause> causes, List<Shared> shared, List<Row<?>> rows) {
    this.id = id;
    this.layout = layout;
    this.inOrder = layout.inOrder();
    this.causes = causes;
    this.shared = shared;
    this.rows = rows;
  }

  @Override
  public String id() {
    return id;
  }

  @Override
  public List<Fault> faults() {
    List<Fault> faults = new ArrayList<>();
    for (Cause cause : causes) {
      faults.add(cause.fault);
    }
    return List.copyOf(faults);
  }

  @Override
  public List<Question> questions() {
    List<Question> questions = new ArrayList<>();
    for (Row<?> row : rows) {
      questions.add(row.question());
    }
    return List.copyOf(questions);
  }

  @Override
  public List<SharedQuantity> shared() {
    List<SharedQuantity> quantities = new ArrayList<>();
    for (Shared one : shared) {
      quantities.add(one.quantity);
    }
    return List.copyOf(quantities);
  }

  @Override
  public boolean mayMeet(int one, int other) {
    return !causes.get(one).isApartFrom(causes.get(other))
        && !causes.get(other).isApartFrom(causes.get(one));
  }

  @Override
  public Forecaster forecaster(List<Question> questions) {
    return ModelForecasts.of(this, questions);
  }

  /** The row that answers a question. */
  Row<?> row(Question question) {
    for (Row<?> row : rows) {
      if (row.answers(question)) {
        return row;
      }
    }
    throw new IllegalArgumentException(id + " does not forecast " + question.key());
  }

  /**
   * The figures in a state: severities of the faults, and behind them deviates of what is shared.
   */
  State state(double[] severity) {
    double[] values = inOrder.clone();
    for (int j = 0; j < shared.size(); j++) {
      double deviate = severity[causes.size() + j];
      if (deviate != 0) {
        shared.get(j).change.on(values, deviate);
      }
    }
    for (int i = 0; i < causes.size(); i++) {
      if (severity[i] > 0) {
        causes.get(i).change.on(values, severity[i]);
      }
    }
    return new State(layout, values, FigurePlaces.WHOLE);
  }

  /** A state in which nothing is wrong, and one shared quantity is one deviation up, or none. */
  State inOrder(int up) {
    double[] severity = new double[causes.size() + shared.size()];
    if (up >= 0) {
      severity[causes.size() + up] = 1;
    }
    return state(severity);
  }

  /** What is there in a state, for a person. */
  String told(double[] severity) {
    StringBuilder told = new StringBuilder(id);
    for (int i = 0; i < severity.length; i++) {
      if (severity[i] != 0) {
        boolean fault = i < causes.size();
        told.append(", ")
            .append(fault ? causes.get(i).fault.key() : shared.get(i - causes.size()).quantity.id())
            .append(" at ")
            .append(severity[i]);
      }
    }
    return told.toString();
  }
}
