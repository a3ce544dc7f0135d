package kelter.core.diagnosis.model;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/** Where the figures of a model stand: those of the whole first, then those of each component. */
final class FigurePlaces {

  /** The number of the whole. */
  static final int WHOLE = 0;

  private static final int[] NONE = {};

  private final Map<FigureSet, int[]> having = new HashMap<>();
  private FigureSet[] sets;
  private int[] starts = {0};
  private int size;

  FigurePlaces(FigureSet whole) {
    sets = new FigureSet[] {whole};
    size = whole.size();
  }

  /**
   * Adds a component.
   *
   * @return its number
   */
  int add(FigureSet own) {
    int number = sets.length;
    sets = Arrays.copyOf(sets, number + 1);
    sets[number] = own;
    starts = Arrays.copyOf(starts, number + 1);
    starts[number] = size;
    size += own.size();
    int[] alike = having(own);
    int[] more = Arrays.copyOf(alike, alike.length + 1);
    more[alike.length] = number;
    having.put(own, more);
    return number;
  }

  double[] inOrder() {
    double[] values = new double[size];
    for (int c = 0; c < sets.length; c++) {
      sets[c].inOrder(values, starts[c]);
    }
    return values;
  }

  /** The place of a figure as a component has it. */
  int place(Figure figure, int component) {
    FigureSet set = figure.set();
    if (sets[component] == set) {
      return starts[component] + figure.place();
    }
    if (sets[WHOLE] == set) {
      return figure.place();
    }
    throw new IllegalArgumentException("no figure of this part: " + figure);
  }

  /** The components that have figures of a set. */
  int[] having(FigureSet set) {
    return having.getOrDefault(set, NONE);
  }
}
