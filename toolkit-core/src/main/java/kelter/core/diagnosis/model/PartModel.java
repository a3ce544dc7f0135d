package kelter.core.diagnosis.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.ToDoubleFunction;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.SharedQuantity;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.source.Source;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;

/**
 * Puts the fault model of a part, or of a circuit of parts, together: its figures, then for each
 * component its faults and what is observed on it.
 *
 * <p>A forecast takes the figures of parts in order, lets what is shared and then the faults that
 * are there change them, in the order of their rows, solves each section once and reads the
 * observables from it. A forecast beyond the span of its observable, such as the resistance of an
 * open circuit, is told as the end of the span. What is not finite, a spread that is not above zero
 * and a chance outside 0 to 1 are refused ({@link ModelDefect}).
 *
 * <p>It is filled by one thread; the model that it makes does not change.
 */
public final class PartModel {

  /** The figures of a state as they are, for what is seen without any physics. */
  private enum AsTheyAre implements Circumstances<State>, Circumstances.Solver<State> {
    STATE;

    @Override
    public Circumstances.Solver<State> under(Conditions conditions) {
      return this;
    }

    @Override
    public State in(State state) {
      return state;
    }
  }

  private final String id;
  private final Source priors;
  private final FigurePlaces layout;
  private final List<Model.Cause> causes = new ArrayList<>();
  private final List<Model.Shared> shared = new ArrayList<>();
  private final List<Row<?>> rows = new ArrayList<>();
  private final List<Row<?>> ofComponent = new ArrayList<>();
  private Component component;
  private ComponentKind kind;
  private int number;

  private PartModel(String id, Source priors, FigureSet figures) {
    this.id = id;
    this.priors = Objects.requireNonNull(priors);
    this.layout = new FigurePlaces(figures);
  }

  /**
   * Begins a model.
   *
   * @param id its id within the appliance: lower-case letters, digits and hyphens
   * @param priors where the priors of its faults come from
   * @param figures what faults can change of the whole
   * @return a model to be filled
   */
  public static PartModel of(String id, Source priors, FigureSet figures) {
    return new PartModel(id, priors, figures);
  }

  /**
   * Begins the model of one component, which has the id of the component.
   *
   * @param component the component
   * @param kind its kind, in the order of whose observables questions are asked
   * @param priors where the priors of its faults come from
   * @param figures what faults can change of it
   * @return a model to be filled
   */
  public static PartModel of(
      Component component, ComponentKind kind, Source priors, FigureSet figures) {
    return of(component.id(), priors, figures).on(component, kind);
  }

  /**
   * Begins a model of components that have all their figures by themselves.
   *
   * @param id its id within the appliance: lower-case letters, digits and hyphens
   * @param priors where the priors of its faults come from
   * @return a model to be filled
   */
  public static PartModel of(String id, Source priors) {
    return new PartModel(id, priors, new FigureSet(id));
  }

  /**
   * Goes on with a component, whose faults and observables follow.
   *
   * @param next the component
   * @param words its kind, in the order of whose observables questions are asked
   * @param figures what faults can change of this component by itself
   * @return this
   */
  public PartModel on(Component next, ComponentKind words, FigureSet figures) {
    return on(next, words, layout.add(figures));
  }

  /**
   * Goes on with a component of which faults change only what is the whole's.
   *
   * @param next the component
   * @param words its kind, in the order of whose observables questions are asked
   * @return this
   */
  public PartModel on(Component next, ComponentKind words) {
    return on(next, words, FigurePlaces.WHOLE);
  }

  private PartModel on(Component next, ComponentKind words, int place) {
    endComponent();
    component = next;
    kind = words;
    number = place;
    return this;
  }

  /**
   * Faults of the component.
   *
   * @param all in the order in which they change the figures
   * @return this
   * @throws ModelDefect if one has a chance, a time, an id or a figure that cannot be, or no remedy
   */
  public PartModel faults(List<FaultRow> all) {
    for (FaultRow row : all) {
      causes.add(cause(row));
    }
    return this;
  }

  private Model.Cause cause(FaultRow row) {
    try {
      return new Model.Cause(
          row.on(component.id(), priors),
          row.apart(),
          PlacedEffects.of(row.effects(), layout, number));
    } catch (IllegalArgumentException impossible) {
      throw defect(", fault " + row.id() + ": " + impossible.getMessage());
    }
  }

  /** What no job can mend, and must not be told as a mistake of one. */
  private ModelDefect defect(String what) {
    return new ModelDefect(id, id + what);
  }

  /**
   * Faults of the component.
   *
   * @param all in the order in which they change the figures
   * @return this
   */
  public PartModel faults(FaultRow... all) {
    return faults(List.of(all));
  }

  /**
   * What nobody has measured and moves several forecasts together.
   *
   * @param quantity what
   * @param effects what it changes of the whole, by its deviate in place of a severity; nothing at
   *     a deviate of 0
   * @return this
   */
  public PartModel moves(SharedQuantity quantity, Effect... effects) {
    shared.add(
        new Model.Shared(quantity, PlacedEffects.of(List.of(effects), layout, FigurePlaces.WHOLE)));
    return this;
  }

  /**
   * Something that is seen, heard or smelt of the component.
   *
   * @param observable a grade, or a yes or no
   * @param look its place on the scale of the grade, or the probability of a yes
   * @return this
   */
  public PartModel looks(Observable observable, ToDoubleFunction<? super State> look) {
    under(AsTheyAre.STATE).observe(observable, look);
    return this;
  }

  /**
   * Something that is seen, heard or smelt of the component and follows one figure as it is.
   *
   * @param observable a grade, or a yes or no
   * @param figure the place on the scale of the grade, or the probability of a yes
   * @return this
   */
  public PartModel looks(Observable observable, Figure figure) {
    return looks(observable, new Look.Shown(figure));
  }

  /**
   * Something that is read of the component and is one figure as it is.
   *
   * @param observable what is observed
   * @param figure its value in the coherent SI unit, or its place on the scale of a grade
   * @param spread how far machines in the same state differ
   * @return this
   */
  public PartModel looks(Observable observable, Figure figure, Spread<? super State> spread) {
    return looks(observable, figure.of(1), spread);
  }

  /**
   * A figure of the component that needs no physics.
   *
   * @param observable what is observed
   * @param look its value in the coherent SI unit, or its place on the scale of a grade
   * @param spread how far machines in the same state differ
   * @return this
   */
  public PartModel looks(
      Observable observable, ToDoubleFunction<? super State> look, Spread<? super State> spread) {
    under(AsTheyAre.STATE).observe(observable, look, spread);
    return this;
  }

  /**
   * Begins a section: observables of the component that are read from one solution.
   *
   * @param circumstances the physics
   * @param <S> what is solved
   * @return the section, without observables
   */
  public <S> Section<S> under(Circumstances<S> circumstances) {
    return new Section<>(this, circumstances, component.id(), number);
  }

  /**
   * Makes the model.
   *
   * @return the model
   * @throws ModelDefect if it knows no fault, observes nothing, or observes what its kind does not
   *     list
   */
  public FaultModel build() {
    endComponent();
    if (causes.isEmpty() || rows.isEmpty()) {
      throw defect(": a model knows a fault and observes something");
    }
    return new Model(id, layout, List.copyOf(causes), List.copyOf(shared), List.copyOf(rows));
  }

  void add(Row<?> row) {
    ofComponent.add(row);
  }

  /** Brings the rows of a component into the order of its kind. */
  private void endComponent() {
    for (int i = 0; kind != null && i < kind.observables().size(); i++) {
      Row<?> row = take(kind.observables().get(i));
      if (row != null) {
        rows.add(row);
      }
    }
    if (!ofComponent.isEmpty()) {
      throw defect(
          ": %s is no observable of a %s, or stands in two rows"
              .formatted(ofComponent.get(0).observable().id(), kind.id()));
    }
  }

  private Row<?> take(Observable observable) {
    for (int i = 0; i < ofComponent.size(); i++) {
      if (ofComponent.get(i).observable() == observable) {
        return ofComponent.remove(i);
      }
    }
    return null;
  }
}
