package kelter.hydraulics.onefault;

import java.util.Optional;
import java.util.function.ToDoubleFunction;
import kelter.core.diagnosis.model.Course;
import kelter.core.diagnosis.model.Figure;
import kelter.core.diagnosis.model.FigureSet;
import kelter.core.diagnosis.model.PartModel;
import kelter.core.diagnosis.model.Spread;
import kelter.core.diagnosis.model.State;
import kelter.core.job.Component;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.Observable;

/**
 * How something that is read or seen runs over how bad the one fault of a part is.
 *
 * @param observable what is read or seen
 * @param figure the figure of the part that stands for its value in order, if it has one
 * @param usual the value in order where that figure is not known, in the coherent SI unit; 1 for a
 *     word
 * @param course the ratio to it over the severity; of a word its place on the scale, or the chance
 *     of a yes
 * @param spread how far parts in the same state differ; empty for a word
 */
public record Sign(
    Observable observable,
    Optional<Characteristic> figure,
    double usual,
    Course course,
    Optional<Spread<Object>> spread) {

  /** How bad the one fault is. */
  public static final class Bad {
    public static final FigureSet ALL = new FigureSet("one-fault");
    public static final Figure SEVERITY = ALL.figure("the severity, 0 to 1", 0);

    private Bad() {}
  }

  /**
   * A word: a grade, or a yes or no.
   *
   * @param observable the observable
   * @param course its place on the scale, or the chance of a yes, over the severity
   * @return the sign
   */
  public static Sign word(Observable observable, Course course) {
    return new Sign(observable, Optional.empty(), 1, course, Optional.empty());
  }

  /**
   * A value that needs no figure of the part.
   *
   * @param observable the observable
   * @param course the value in the coherent SI unit over the severity
   * @param spread how far parts in the same state differ
   * @return the sign
   */
  public static Sign value(Observable observable, Course course, Spread<Object> spread) {
    return new Sign(observable, Optional.empty(), 1, course, Optional.of(spread));
  }

  /**
   * A value in proportion to a figure of the part.
   *
   * @param observable the observable
   * @param figure the figure
   * @param usual what is taken for it where it is not known, in the coherent SI unit
   * @param course the ratio to it over the severity
   * @param spread how far parts in the same state differ
   * @return the sign
   */
  public static Sign of(
      Observable observable,
      Characteristic figure,
      double usual,
      Course course,
      Spread<Object> spread) {
    return new Sign(observable, Optional.of(figure), usual, course, Optional.of(spread));
  }

  /** Adds it to the model of a component. */
  void to(PartModel model, Component component) {
    double inOrder = figure.isPresent() ? component.si(figure.get(), usual) : usual;
    Over over = new Over(inOrder, course);
    if (spread.isPresent()) {
      model.looks(observable, over, spread.get());
    } else {
      model.looks(observable, over);
    }
  }

  /** A value over the severity. */
  private record Over(double inOrder, Course course) implements ToDoubleFunction<State> {
    @Override
    public double applyAsDouble(State state) {
      return inOrder * course.at(state.of(Bad.SEVERITY));
    }
  }
}
