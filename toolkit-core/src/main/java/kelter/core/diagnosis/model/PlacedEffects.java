package kelter.core.diagnosis.model;

import java.util.List;

/**
 * Effects with the places of their figures.
 *
 * @param effects in their order
 * @param places where the figure of each stands
 */
record PlacedEffects(Effect[] effects, int[] places) {

  static PlacedEffects of(List<Effect> effects, FigurePlaces layout, int component) {
    int[] places = new int[effects.size()];
    for (int i = 0; i < places.length; i++) {
      places[i] = layout.place(effects.get(i).figure(), component);
    }
    return new PlacedEffects(effects.toArray(new Effect[0]), places);
  }

  void on(double[] values, double severity) {
    for (int i = 0; i < places.length; i++) {
      values[places[i]] = effects[i].on(values[places[i]], severity);
    }
  }
}
