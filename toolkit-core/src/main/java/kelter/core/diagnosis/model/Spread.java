package kelter.core.diagnosis.model;

/**
 * How far machines in one and the same state differ in an observable, the instrument left out.
 *
 * @param <S> what was solved for the state
 */
@FunctionalInterface
public interface Spread<S> {

  /**
   * The standard deviation.
   *
   * @param value the forecast, in the coherent SI unit, or on the scale of a grade from 0 to 1
   * @param order the same of a machine in order
   * @param solved what was solved for the state
   * @return the standard deviation in the same unit, above 0; of the natural logarithm for a
   *     logarithmic observable
   */
  double of(double value, InOrder order, S solved);

  /**
   * A machine in order.
   *
   * @param value the forecast for it, in the coherent SI unit
   * @param shared how far one standard deviation of all that is shared moves it, as a ratio of it
   */
  record InOrder(double value, double shared) {}

  /**
   * The same in every state.
   *
   * @param deviation the standard deviation, in the unit of the forecast, above 0
   * @return the rule
   */
  static Spread<Object> constant(double deviation) {
    return new Constant(deviation);
  }

  /**
   * In proportion to the forecast.
   *
   * @param share the standard deviation as a ratio of the forecast, 0 or more
   * @return the rule, to which a floor belongs where the forecast may be nothing
   */
  static Relative relative(double share) {
    return new Relative(share, 0, 0, false);
  }

  /**
   * In proportion to the forecast, with what adds to that as squares.
   *
   * @param share the standard deviation as a ratio of the forecast, 0 or more
   * @param floor what there is at least, in the unit of the forecast
   * @param ofEffect what the way of being faulty adds, as a ratio of the difference to a machine in
   *     order
   * @param own whether the share includes what moves with a shared quantity, which is then taken
   *     off
   */
  record Relative(double share, double floor, double ofEffect, boolean own)
      implements Spread<Object> {

    /** What is left at least of the variance of a figure that moves with what is shared. */
    private static final double LEAST_LEFT = 0.2; // judgement: common practice, no source

    /**
     * The same with a floor.
     *
     * @param least what there is at least, in the unit of the forecast
     * @return the rule
     */
    public Relative atLeast(double least) {
      return new Relative(share, least, ofEffect, own);
    }

    /**
     * The same where machines differ in how a fault shows.
     *
     * @param ratio what that adds, as a ratio of the difference to a machine in order
     * @return the rule
     */
    public Relative andOfEffect(double ratio) {
      return new Relative(share, floor, ratio, own);
    }

    /**
     * The same where the share is that of whole machines, so that what moves with a shared quantity
     * is taken off.
     *
     * @return the rule
     */
    public Relative lessShared() {
      return new Relative(share, floor, ofEffect, true);
    }

    @Override
    public double of(double value, InOrder order, Object solved) {
      double spread = (own ? left(order.shared) : share) * Math.abs(value);
      double effect = ofEffect * Math.abs(value - order.value);
      return Math.sqrt(spread * spread + effect * effect + floor * floor);
    }

    private double left(double shared) {
      double whole = share * share;
      return Math.sqrt(Math.max(LEAST_LEFT * whole, whole - shared * shared));
    }
  }
}

/** The same in every state. */
record Constant(double deviation) implements Spread<Object> {
  @Override
  public double of(double value, InOrder order, Object solved) {
    return deviation;
  }
}
