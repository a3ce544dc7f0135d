package kelter.demo;

import kelter.core.check.DecisionRule;
import kelter.core.check.Judgement;
import kelter.core.check.Limits;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.QuantityParser;
import kelter.core.uncertainty.Accuracy;
import kelter.core.uncertainty.InputQuantity;

/**
 * Another shop tool on the core alone: it holds the resistance of delivered heaters against the
 * limits on the order, with the accuracy of the shop's meter, and tells what to send back.
 */
public final class IncomingGoods {

  private final Limits limits;
  private final Accuracy meter;

  /**
   * A test of delivered heaters.
   *
   * @param lowest the lowest resistance on the order, as one would write it
   * @param highest the highest resistance on the order
   * @param accuracy the accuracy of the meter, for instance {@code 0.8 % + 3 counts}
   * @param resolution the size of one count
   * @throws kelter.core.quantity.QuantityFormatException if a text cannot be read
   */
  public IncomingGoods(String lowest, String highest, String accuracy, String resolution) {
    this.limits = new Limits(ohms(lowest), ohms(highest));
    this.meter = Accuracy.parse(accuracy, QuantityKind.RESISTANCE, ohms(resolution));
  }

  private static double ohms(String text) {
    return QuantityParser.parse(text, QuantityKind.RESISTANCE).si();
  }

  /**
   * Judges one heater.
   *
   * @param reading what the meter shows, as one would write it
   * @return the reading held against the limits
   * @throws kelter.core.quantity.QuantityFormatException if the text is not a resistance
   */
  public Judgement judge(String reading) {
    Quantity shown = QuantityParser.parse(reading, QuantityKind.RESISTANCE);
    InputQuantity known = new InputQuantity(shown.si(), meter.terms(shown.si()));
    return Judgement.of(known, limits, DecisionRule.USUAL, false);
  }
}
