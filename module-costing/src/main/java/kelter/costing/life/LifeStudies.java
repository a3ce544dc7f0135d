package kelter.costing.life;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Studies of how long household appliances are kept.
 *
 * <p>All rows are published, but known here only through a table that cites the studies. The spread
 * between studies, up to a factor of two, is the honest uncertainty of any one figure. A life ends
 * when the owner parts with the machine, repairs on the way included.
 */
public final class LifeStudies {

  /** Washes dishes. */
  public static final String DISHWASHER = "dishwasher";

  /** Freezes food. */
  public static final String FREEZER = "freezer";

  /** Cools food. */
  public static final String REFRIGERATOR = "refrigerator";

  /** Bakes. */
  public static final String OVEN = "oven";

  /** Dries laundry. */
  public static final String TUMBLE_DRYER = "tumble-dryer";

  /** Washes laundry. */
  public static final String WASHING_MACHINE = "washing-machine";

  private static final double NONE = Double.NaN;

  private static final String THREE_COUNTRIES = "Netherlands, France, Belgium";

  private static final List<LifeStudy> ALL =
      List.of(
          row(DISHWASHER, 12.7, 1.64, 2005, THREE_COUNTRIES, "Forti et al. (2018)"),
          row(DISHWASHER, 13.06, 1.37, 2012, "Italy", "Forti et al. (2018)"),
          row(DISHWASHER, 12.1, NONE, 2004, "Germany", "Prakash et al. (2016)"),
          row(DISHWASHER, 12.4, NONE, 2012, "Germany", "Prakash et al. (2016)"),
          row(DISHWASHER, 12.8, NONE, 2008, "Germany", "Prakash et al. (2016)"),
          row(FREEZER, 17.19, 1.28, 2012, "Italy", "Forti et al. (2018)"),
          row(FREEZER, 21.53, 2.74, 2005, THREE_COUNTRIES, "Forti et al. (2018)"),
          row(FREEZER, 15.5, NONE, 2012, "Germany", "Prakash et al. (2016)"),
          row(FREEZER, 18.2, NONE, 2004, "Germany", "Prakash et al. (2016)"),
          row(FREEZER, 19.4, NONE, 2008, "Germany", "Prakash et al. (2016)"),
          row(REFRIGERATOR, 14.55, 2.2, 2005, THREE_COUNTRIES, "Forti et al. (2018)"),
          row(REFRIGERATOR, 16.4, 2.36, 2012, "Italy", "Forti et al. (2018)"),
          row(REFRIGERATOR, 15.1, NONE, 2007, "US", "Müller et al. (2007)"),
          row(REFRIGERATOR, 11.8, NONE, 2006, "Japan", "Oguchi et al. (2008)"),
          row(REFRIGERATOR, 14.1, NONE, 2004, "Germany", "Prakash et al. (2016)"),
          row(OVEN, 18.8, NONE, 1977, "Norway", "Dahl (1980)"),
          row(OVEN, 20.2, NONE, 1972, "Norway", "Dahl (1980)"),
          row(OVEN, 20.5, NONE, 1967, "Norway", "Dahl (1980)"),
          row(OVEN, 16, 2.47, 2005, THREE_COUNTRIES, "Forti et al. (2018)"),
          row(OVEN, 17.84, 1.31, 2012, "Italy", "Forti et al. (2018)"),
          row(OVEN, 13.8, NONE, 2012, "Germany", "Prakash et al. (2016)"),
          row(OVEN, 15.2, NONE, 2004, "Germany", "Prakash et al. (2016)"),
          row(OVEN, 16.2, NONE, 2008, "Germany", "Prakash et al. (2016)"),
          row(OVEN, 26.2, NONE, 1996, "Norway", "Tufte (1999)"),
          row(OVEN, 10.8, NONE, 2015, "Austria", "Wieser et al. (2015)"),
          row(TUMBLE_DRYER, 13.97, 2.58, 2005, THREE_COUNTRIES, "Forti et al. (2018)"),
          row(TUMBLE_DRYER, 13.97, 2.58, 2012, "Italy", "Forti et al. (2018)"),
          row(TUMBLE_DRYER, 10.5, NONE, 2006, "Japan", "Oguchi et al. (2008)"),
          row(TUMBLE_DRYER, 11.9, NONE, 2012, "Germany", "Prakash et al. (2016)"),
          row(TUMBLE_DRYER, 13.4, NONE, 2008, "Germany", "Prakash et al. (2016)"),
          row(TUMBLE_DRYER, 13.6, NONE, 2004, "Germany", "Prakash et al. (2016)"),
          row(WASHING_MACHINE, 14.2, NONE, 1977, "Norway", "Dahl (1980)"),
          row(WASHING_MACHINE, 14.9, NONE, 1972, "Norway", "Dahl (1980)"),
          row(WASHING_MACHINE, 16.4, NONE, 1967, "Norway", "Dahl (1980)"),
          row(WASHING_MACHINE, 12.09, 2.2, 2012, "Italy", "Forti et al. (2018)"),
          row(WASHING_MACHINE, 13.43, 2.2, 2005, THREE_COUNTRIES, "Forti et al. (2018)"),
          row(WASHING_MACHINE, 10.1, NONE, 2006, "Japan", "Oguchi et al. (2008)"),
          row(WASHING_MACHINE, 11.9, NONE, 2012, "Germany", "Prakash et al. (2016)"),
          row(WASHING_MACHINE, 12.4, NONE, 2008, "Germany", "Prakash et al. (2016)"),
          row(WASHING_MACHINE, 12.7, NONE, 2004, "Germany", "Prakash et al. (2016)"),
          row(WASHING_MACHINE, 8.3, NONE, 2015, "Austria", "Wieser et al. (2015)"));

  private LifeStudies() {}

  private static LifeStudy row(
      String kind, double mean, double shape, int year, String place, String study) {
    OptionalDouble given = shape > 0 ? OptionalDouble.of(shape) : OptionalDouble.empty();
    return new LifeStudy(kind, mean, given, year, place, study);
  }

  /**
   * Every study of every kind.
   *
   * @return the studies, by kind
   */
  public static List<LifeStudy> all() {
    return ALL;
  }

  /**
   * The kinds of appliance that were studied.
   *
   * @return each kind once, in alphabetical order
   */
  public static List<String> kinds() {
    return List.of(DISHWASHER, FREEZER, OVEN, REFRIGERATOR, TUMBLE_DRYER, WASHING_MACHINE);
  }

  /**
   * The studies of a kind.
   *
   * @param kind the kind
   * @return the studies, may be empty
   */
  public static List<LifeStudy> of(String kind) {
    return ALL.stream().filter(study -> study.kind().equals(kind)).toList();
  }
}
