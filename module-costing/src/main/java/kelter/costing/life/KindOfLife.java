package kelter.costing.life;

import java.util.List;

/**
 * Which studies speak for a machine.
 *
 * @param life how long such machines last
 * @param studies the studies that say so
 * @param assumption what had to be taken for granted, empty if the kind itself was studied
 */
public record KindOfLife(ApplianceLife life, List<LifeStudy> studies, String assumption) {

  /** Which part of a name speaks for which kind; the first that fits counts. */
  private static final List<Word> WORDS =
      List.of(
          new Word("dish", LifeStudies.DISHWASHER),
          new Word("glass", LifeStudies.DISHWASHER),
          new Word("ware", LifeStudies.DISHWASHER),
          new Word("wash", LifeStudies.WASHING_MACHINE),
          new Word("laundry", LifeStudies.WASHING_MACHINE),
          new Word("spin", LifeStudies.WASHING_MACHINE),
          new Word("dry", LifeStudies.TUMBLE_DRYER),
          new Word("freez", LifeStudies.FREEZER),
          new Word("ice", LifeStudies.FREEZER),
          new Word("refrig", LifeStudies.REFRIGERATOR),
          new Word("fridge", LifeStudies.REFRIGERATOR),
          new Word("cool", LifeStudies.REFRIGERATOR),
          new Word("oven", LifeStudies.OVEN),
          new Word("stove", LifeStudies.OVEN),
          new Word("cook", LifeStudies.OVEN),
          new Word("range", LifeStudies.OVEN),
          new Word("hob", LifeStudies.OVEN));

  private record Word(String part, String kind) {}

  public KindOfLife {
    studies = List.copyOf(studies);
  }

  /**
   * Finds the studies for a kind of appliance: of the kind itself, else of the kind nearest by
   * name, else of all kinds together.
   *
   * @param kind the kind of appliance, as in a job file
   * @return the studies, with what had to be assumed
   */
  public static KindOfLife of(String kind) {
    if (LifeStudies.kinds().contains(kind)) {
      return of(LifeStudies.of(kind), "");
    }
    for (Word word : WORDS) {
      if (kind.contains(word.part())) {
        return of(
            LifeStudies.of(word.kind()),
            ("No study of the life of '%s' is known; household appliances of the kind '%s' were taken."
                    + " In a business it does more cycles and lasts fewer years.")
                .formatted(kind, word.kind()));
      }
    }
    return of(
        LifeStudies.all(),
        ("No study of the life of '%s' or of anything near it is known; all kinds of household"
                + " appliance together were taken.")
            .formatted(kind));
  }

  private static KindOfLife of(List<LifeStudy> studies, String assumption) {
    return new KindOfLife(ApplianceLife.of(studies), studies, assumption);
  }

  /**
   * Whether the kind itself was studied.
   *
   * @return false if another kind or all kinds had to be taken
   */
  public boolean isStudied() {
    return assumption.isEmpty();
  }
}
