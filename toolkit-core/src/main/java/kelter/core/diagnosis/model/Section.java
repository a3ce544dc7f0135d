package kelter.core.diagnosis.model;

import java.util.function.ToDoubleFunction;
import kelter.core.diagnosis.FaultModel;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;

/**
 * Observables of a component that are read from one solution.
 *
 * @param <S> what is solved
 */
public final class Section<S> {

  /** A word on a scale from 0 to 1, as two people would choose it; judgement. */
  private static final Spread<Object> OF_A_GRADE = Spread.constant(0.13);

  /** A chance has none; any number does. */
  private static final Spread<Object> OF_A_CHANCE = Spread.constant(1);

  private final PartModel model;
  private final Circumstances<S> circumstances;
  private final String component;
  private final int number;
  private Conditions usual = Conditions.NONE;

  Section(PartModel model, Circumstances<S> circumstances, String component, int number) {
    this.model = model;
    this.circumstances = circumstances;
    this.component = component;
    this.number = number;
  }

  /**
   * Under which conditions the observables that follow are asked for.
   *
   * @param conditions the conditions under which a technician would measure them
   * @return this
   */
  public Section<S> usually(Conditions conditions) {
    usual = conditions;
    return this;
  }

  /**
   * A figure.
   *
   * @param observable what is observed
   * @param value its value in the coherent SI unit, or its place on the scale of a grade
   * @param spread how far machines in the same state differ
   * @return this
   */
  public Section<S> observe(
      Observable observable, ToDoubleFunction<? super S> value, Spread<? super S> spread) {
    model.add(new Row<>(component, number, observable, usual, circumstances, value, spread));
    return this;
  }

  /**
   * A yes or no, or a grade for which two people would choose words as for any other.
   *
   * @param observable what is observed
   * @param value the probability of a yes, or the place on the scale of the grade
   * @return this
   */
  public Section<S> observe(Observable observable, ToDoubleFunction<? super S> value) {
    boolean graded = observable.type() == Observable.Type.GRADE;
    return observe(observable, value, graded ? OF_A_GRADE : OF_A_CHANCE);
  }

  /**
   * Begins the next section of the component.
   *
   * @param next the physics
   * @param <T> what is solved
   * @return the section, without observables
   */
  public <T> Section<T> under(Circumstances<T> next) {
    return model.under(next);
  }

  /**
   * Goes on with another component, as {@link PartModel#on(Component, ComponentKind, FigureSet)}
   * says.
   *
   * @param next the component
   * @param words its kind
   * @param figures what faults can change of this component by itself
   * @return the model
   */
  public PartModel on(Component next, ComponentKind words, FigureSet figures) {
    return model.on(next, words, figures);
  }

  /**
   * Makes the model.
   *
   * @return the model
   * @throws IllegalArgumentException if it knows no fault
   */
  public FaultModel build() {
    return model.build();
  }
}
