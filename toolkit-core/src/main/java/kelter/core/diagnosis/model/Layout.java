package kelter.core.diagnosis.model;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Where the figures of a model stand: those of the whole first, then those of each component. */
final class Layout {

  /** The number of the whole. */
  static final int WHOLE = 0;

  private static final int[] NONE = {};

  private final List<Figure[]> figures = new ArrayList<>();
  private final List<Integer> starts = new ArrayList<>();
  private int size;

  /**
   * Adds the whole, which is the first, or a component.
   *
   * @return its number
   */
  int add(Figure[] own) {
    figures.add(own);
    starts.add(size);
    size += own.length;
    return figures.size() - 1;
  }

  double[] inOrder() {
    double[] values = new double[size];
    for (int c = 0; c < figures.size(); c++) {
      for (Figure figure : figures.get(c)) {
        values[starts.get(c) + figure.ordinal()] = figure.inOrder();
      }
    }
    return values;
  }

  /** The place of a figure as a component has it. */
  int place(Figure figure, int component) {
    int owner = has(component, figure.getClass()) ? component : WHOLE;
    if (owner == WHOLE && !has(WHOLE, figure.getClass())) {
      throw new IllegalArgumentException(figure + " is no figure of this part");
    }
    return starts.get(owner) + figure.ordinal();
  }

  int[] having(Class<?> sort) {
    int[] found = NONE;
    for (int c = 1; c < figures.size(); c++) {
      if (has(c, sort)) {
        found = Arrays.copyOf(found, found.length + 1);
        found[found.length - 1] = c;
      }
    }
    return found;
  }

  private boolean has(int component, Class<?> sort) {
    Figure[] own = figures.get(component);
    return own.length > 0 && own[0].getClass() == sort;
  }
}
