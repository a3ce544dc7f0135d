package kelter.core.diagnosis.likelihood;

import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Proof;

/**
 * What is read where nothing is known of the machine: any word as likely as another, any value as
 * likely as another on the scale of the observable. What proves a fault ({@link Proof}) is read as
 * seldom as that says.
 */
public final class Anything {

  private Anything() {}

  /**
   * The chance of a yes.
   *
   * @param observable a yes or no
   * @return above 0 and below 1
   */
  public static double yes(Observable observable) {
    return observable.proof().isPresent() ? observable.proof().get().otherwise() : 0.5;
  }

  /**
   * A value that is found where nothing is known.
   *
   * @param observable a figure
   * @param place where among all of them, from 0 to 1, which are alike
   * @return the value in the coherent SI unit
   */
  public static double value(Observable observable, double place) {
    double proves = observable.proof().isPresent() ? observable.proof().get().otherwise() : 0;
    double middle = cut(observable);
    double scaled =
        proves == 0 || place < 1 - proves
            ? bottom(observable) + place / (1 - proves) * (middle - bottom(observable))
            : middle + (place - 1 + proves) / proves * (top(observable) - middle);
    return observable.logarithmic() ? Math.exp(scaled) : scaled;
  }

  /** The density of a value on the scale of the observable. */
  static double density(Observable observable, double scaled) {
    double middle = cut(observable);
    double proves = observable.proof().isPresent() ? observable.proof().get().otherwise() : 0;
    return proves > 0 && scaled >= middle
        ? proves / (top(observable) - middle)
        : (1 - proves) / (middle - bottom(observable));
  }

  /** The chance of a value between two limits on the scale of the observable. */
  static double share(Observable observable, double low, double high) {
    return below(observable, high) - below(observable, low);
  }

  private static double below(Observable observable, double limit) {
    double scaled = Math.max(bottom(observable), Math.min(top(observable), limit));
    double middle = cut(observable);
    return density(observable, bottom(observable)) * (Math.min(scaled, middle) - bottom(observable))
        + density(observable, middle) * Math.max(0, scaled - middle);
  }

  /** From where on a value proves something; the end of the span where none does. */
  private static double cut(Observable observable) {
    return observable.proof().isPresent()
        ? scaled(observable, observable.proof().get().from())
        : top(observable);
  }

  private static double bottom(Observable observable) {
    return scaled(observable, observable.span().low());
  }

  private static double top(Observable observable) {
    return scaled(observable, observable.span().high());
  }

  private static double scaled(Observable observable, double si) {
    return observable.logarithmic() ? Math.log(si) : si;
  }
}
