package kelter.electrical.copper;

import kelter.core.quantity.QuantityKind;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Span;
import kelter.electrical.component.Electrical;
import kelter.electrical.contact.ContactWords;

/** What is read on a coil, in the words of the part that has it. */
public final class CoilWords {

  /** Its figure. */
  public static final Characteristic COLD =
      new Characteristic(
              "coil-resistance", "resistance of the coil at 20 °C", QuantityKind.RESISTANCE)
          .within(new Span(0.1, 1e6));

  private CoilWords() {}

  /**
   * Its resistance.
   *
   * @param title the words for a person
   * @param how what to do
   * @param minutes how long it takes, above 0
   * @return the observable {@code coil-resistance}
   */
  public static Observable resistance(String title, String how, double minutes) {
    return Observable.named("coil-resistance", title)
        .logarithmic(QuantityKind.RESISTANCE, Electrical.RESISTANCE)
        .provingFrom(ContactWords.OPEN)
        .at(Electrical.TEMPERATURE)
        .how(how)
        .by(Electrical.dead(minutes, Electrical.OHMMETER));
  }
}
