package kelter.electrical.contact;

import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.vocabulary.Observable;
import kelter.electrical.component.Electrical;

/** What is read on any contact, in the words of the part that has it. */
public final class ContactWords {

  /** From here on a path that should conduct is in disorder for sure, Ohm; from memory. */
  public static final double PROVES = 3;

  /** The same of windings, heaters and coils, some of which have kiloohms; from memory. */
  public static final double OPEN = 1e6;

  private ContactWords() {}

  /**
   * What it reads while it should conduct.
   *
   * @param title the words for a person
   * @param how what to do
   * @param minutes how long it takes, above 0
   * @param more what to mind beside what all dead work asks
   * @return the observable {@code closed-resistance}
   */
  public static Observable closed(String title, String how, double minutes, Caution... more) {
    return resistance("closed-resistance", title)
        .provingFrom(PROVES)
        .how(how)
        .by(Electrical.dead(minutes, Electrical.OHMMETER, more));
  }

  /**
   * What it reads while it should not conduct.
   *
   * @param title the words for a person
   * @param how what to do
   * @param minutes how long it takes, above 0
   * @return the observable {@code open-resistance}
   */
  public static Observable opened(String title, String how, double minutes) {
    return resistance("open-resistance", title)
        .how(how)
        .by(Electrical.dead(minutes, Electrical.OHMMETER));
  }

  /**
   * How burnt it looks.
   *
   * @param title the words for a person
   * @param how what to do
   * @param minutes how long it takes, above 0
   * @param more what to mind beside what all dead work asks
   * @return the observable {@code burns}
   */
  public static Observable burns(String title, String how, double minutes, Caution... more) {
    return Observable.named("burns", title)
        .graded("none", "dark", "brown", "charred")
        .how(how)
        .by(Electrical.inside(minutes, more));
  }

  private static Observable.Draft resistance(String id, String title) {
    return Observable.named(id, title).logarithmic(QuantityKind.RESISTANCE, Electrical.RESISTANCE);
  }
}
