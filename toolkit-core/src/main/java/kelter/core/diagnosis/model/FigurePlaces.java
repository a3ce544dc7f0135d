package kelter.core.diagnosis.model;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Where the figures of a model stand: those of the whole first, then those of each component. */
final class FigurePlaces {

  /** The number of the whole. */
  static final int WHOLE = 0;

  private static final int[] NONE = {};

  private final List<Figure[]> figures = new ArrayList<>();
  private final Map<Class<?>, int[]> having = new HashMap<>();
  private Class<?>[] sorts = {};
  private int[] starts = {};
  private int size;

  /**
   * Adds the whole, which is the first, or a component.
   *
   * @return its number
   */
  int add(Figure[] own) {
    int number = figures.size();
    figures.add(own);
    sorts = Arrays.copyOf(sorts, number + 1);
    if (own.length > 0) {
      sorts[number] = own[0].getClass();
    }
    if (number != WHOLE) {
      int[] alike = having(sorts[number]);
      int[] more = Arrays.copyOf(alike, alike.length + 1);
      more[alike.length] = number;
      having.put(sorts[number], more);
    }
    starts = Arrays.copyOf(starts, number + 1);
    starts[number] = size;
    size += own.length;
    return number;
  }

  double[] inOrder() {
    double[] values = new double[size];
    for (int c = 0; c < starts.length; c++) {
      for (Figure figure : figures.get(c)) {
        values[starts[c] + figure.ordinal()] = figure.inOrder();
      }
    }
    return values;
  }

  /** The place of a figure as a component has it. */
  int place(Figure figure, int component) {
    Class<?> sort = figure.getClass();
    if (sorts[component] == sort) {
      return starts[component] + figure.ordinal();
    }
    if (sorts[WHOLE] == sort) {
      return figure.ordinal();
    }
    throw new IllegalArgumentException(figure + " is no figure of this part");
  }

  /** The components that have figures of a sort. */
  int[] having(Class<?> sort) {
    return having.getOrDefault(sort, NONE);
  }
}
