package kelter.core.diagnosis.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import kelter.core.diagnosis.Forecaster;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.model.Circumstances.Solver;
import kelter.core.job.Conditions;
import kelter.core.problem.InputException;
import kelter.core.quantity.Quantity;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Span;

/** Answers a list of questions: those of one section under the same conditions together. */
final class ModelForecasts implements Forecaster {

  /**
   * How far readings differ of what lies at the upper end of a logarithmic span or beyond, as a
   * natural logarithm: one meter shows that it is over range, another some figure, for hands and
   * leads conduct; from memory.
   */
  private static final double BEYOND = 2;

  private final Model model;
  private final List<Together<?>> groups = new ArrayList<>();

  private ModelForecasts(Model model) {
    this.model = model;
  }

  static ModelForecasts of(Model model, List<Question> questions) {
    ModelForecasts forecasts = new ModelForecasts(model);
    for (int i = 0; i < questions.size(); i++) {
      forecasts.add(model.row(questions.get(i)), questions.get(i).conditions(), i);
    }
    return forecasts;
  }

  private <S> void add(Row<S> row, Conditions conditions, int place) {
    for (Together<?> group : groups) {
      if (group.circumstances == row.circumstances()
          && group.number == row.number()
          && areSame(group.conditions, conditions)) {
        group.add(row, place);
        return;
      }
    }
    Together<S> group = new Together<>(model, row, conditions);
    groups.add(group);
    group.add(row, place);
  }

  /** By their figures, since equality of records is dear at a start. */
  private static boolean areSame(Conditions one, Conditions other) {
    if (one == other) {
      return true;
    }
    for (Map.Entry<String, Quantity> figure : one.figures().entrySet()) {
      if (other.si(figure.getKey(), Double.NaN) != figure.getValue().si()) {
        return false;
      }
    }
    return one.figures().size() == other.figures().size();
  }

  @Override
  public void forecast(double[] severity, double[] value, double[] spread) {
    State state = model.state(severity);
    for (Together<?> group : groups) {
      group.forecast(state, severity, value, spread);
    }
  }

  /** An observable of a group. */
  private record Item<S>(Row<S> row, int place, Spread.InOrder order) {}

  /** Observables of one section under the same conditions. */
  private static final class Together<S> {

    private final Model model;
    private final Circumstances<S> circumstances;
    private final int number;
    private final Conditions conditions;
    private final Solver<S> solver;
    private final S inOrder;
    private final List<S> moved = new ArrayList<>();
    private final List<Item<S>> items = new ArrayList<>();

    Together(Model model, Row<S> first, Conditions conditions) {
      this.model = model;
      this.circumstances = first.circumstances();
      this.number = first.number();
      this.conditions = conditions;
      try {
        this.solver = circumstances.under(conditions);
        this.inOrder = solver.in(model.inOrder(-1).as(number));
        for (int j = 0; j < model.shared().size(); j++) {
          moved.add(solver.in(model.inOrder(j).as(number)));
        }
      } catch (IllegalArgumentException impossible) {
        throw new InputException(
            first.component(), impossible.getMessage(), "correct the conditions of the reading");
      }
    }

    /** A row of this very section, as its circumstances tell. */
    @SuppressWarnings("unchecked")
    void add(Row<?> row, int place) {
      Row<S> own = (Row<S>) row;
      double usual = own.value().applyAsDouble(inOrder);
      double shared = 0;
      for (int j = 0; usual != 0 && j < moved.size(); j++) {
        shared = Math.hypot(shared, own.value().applyAsDouble(moved.get(j)) / usual - 1);
      }
      items.add(new Item<>(own, place, new Spread.InOrder(usual, shared)));
    }

    void forecast(State state, double[] severity, double[] value, double[] spread) {
      S solved = solver.in(state.as(number));
      for (int i = 0; i < items.size(); i++) {
        Item<S> item = items.get(i);
        double raw = item.row.value().applyAsDouble(solved);
        Observable observable = item.row.observable();
        Span span = observable.span();
        double deviation = item.row.spread().of(raw, item.order, solved);
        if (!isSound(observable, raw, deviation)) {
          throw new ModelDefect(
              model.id(),
              "%s: the forecast of %s.%s is %s with a spread of %s"
                  .formatted(
                      model.told(severity), item.row.component(), observable.id(), raw, deviation));
        }
        value[item.place] = Math.min(span.high(), Math.max(span.low(), raw));
        spread[item.place] = isOverRange(observable, raw) ? Math.max(BEYOND, deviation) : deviation;
      }
    }

    /** Whether no meter tells how far it is. */
    private static boolean isOverRange(Observable observable, double value) {
      return observable.logarithmic() && value >= observable.span().high();
    }

    private static boolean isSound(Observable observable, double value, double spread) {
      boolean chance = observable.type() == Observable.Type.YES_NO;
      return Double.isFinite(value)
          && spread > 0
          && Double.isFinite(spread)
          && (!chance || value >= 0 && value <= 1);
    }
  }
}
