package kelter.core.diagnosis.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * What faults can change of a part: figures of one sort, in their order. A class of the part holds
 * it as its first constant, and behind it each figure:
 *
 * <pre>
 *   static final FigureSet ALL = new FigureSet("door-lock");
 *   static final Figure CONTACT = ALL.figure("resistance of the contact, Ohm", 0.1);
 * </pre>
 *
 * <p>It is filled while that class is initialised. Once a model has been made with it, it takes no
 * more figures.
 */
public final class FigureSet {

  private final String id;
  private final List<Figure> figures = new ArrayList<>();
  private boolean inUse;

  /**
   * A set without figures.
   *
   * @param id what they are figures of: lower-case letters, digits and hyphens
   */
  public FigureSet(String id) {
    this.id = Objects.requireNonNull(id);
  }

  /**
   * Adds a figure behind those that are there.
   *
   * @param title what it is, with its unit or its range
   * @param inOrder its value in a part in order, in that unit
   * @return the figure
   * @throws IllegalStateException if a model has been made with the set
   */
  public Figure figure(String title, double inOrder) {
    if (inUse) {
      throw new IllegalStateException(id + ": a model was made without " + title);
    }
    Figure figure = new Figure(this, figures.size(), title, inOrder);
    figures.add(figure);
    return figure;
  }

  /** How many there are, from now on. */
  int size() {
    inUse = true;
    return figures.size();
  }

  /** Puts the values of a part in order into their places. */
  void inOrder(double[] values, int start) {
    for (Figure figure : figures) {
      values[start + figure.place()] = figure.inOrder();
    }
  }

  @Override
  public String toString() {
    return id;
  }
}
