package kelter.core.vocabulary;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import kelter.core.safety.Caution;
import kelter.core.safety.Hazard;
import kelter.core.uncertainty.Accuracy;

/**
 * How something is observed.
 *
 * @param before what all work of its kind begins with, such as locking off, ending in a space; may
 *     be empty
 * @param text what to do after that, one or two sentences; empty where {@link Observable.Draft#how}
 *     tells it
 * @param minutes how long it takes a practised person, greater than zero
 * @param hazard how dangerous the way of measuring is
 * @param typical the accuracy of an ordinary instrument, used and told where a job names none
 * @param cautions what to mind, in front of the step
 */
public record Procedure(
    String before,
    String text,
    double minutes,
    Hazard hazard,
    Accuracy typical,
    List<Caution> cautions) {

  /** No instrument: what is seen, heard, smelt or asked. */
  public static final Accuracy BY_EYE = new Accuracy(0, 0);

  /**
   * Checks the time.
   *
   * @throws IllegalArgumentException if the minutes are not above zero
   */
  public Procedure {
    Objects.requireNonNull(before);
    Objects.requireNonNull(text);
    Objects.requireNonNull(hazard);
    Objects.requireNonNull(typical);
    cautions = List.copyOf(cautions);
    if (!(minutes > 0)) {
      throw new IllegalArgumentException("a procedure takes more than 0 minutes");
    }
  }

  /**
   * A way that begins as no other does.
   *
   * @param text what to do, one or two sentences; may be empty
   * @param minutes how long it takes a practised person, greater than zero
   * @param hazard how dangerous the way of measuring is
   * @param typical the accuracy of an ordinary instrument
   * @param cautions what to mind, in front of the step
   * @throws IllegalArgumentException if the minutes are not above zero
   */
  public Procedure(
      String text, double minutes, Hazard hazard, Accuracy typical, List<Caution> cautions) {
    this("", text, minutes, hazard, typical, cautions);
  }

  /**
   * Asked, or looked at with nothing opened.
   *
   * @param minutes how long it takes, greater than zero
   * @return the procedure, without a hazard
   */
  public static Procedure look(double minutes) {
    return new Procedure("", minutes, Hazard.NONE, BY_EYE, List.of());
  }

  /**
   * Looked at with the plug out.
   *
   * @param minutes how long it takes, greater than zero
   * @param more what to mind beyond the plug
   * @return the procedure
   */
  public static Procedure inside(double minutes, Caution... more) {
    return dead(minutes, BY_EYE, more);
  }

  /**
   * Measured with the plug out.
   *
   * @param minutes how long it takes, greater than zero
   * @param typical the accuracy of an ordinary instrument
   * @param more what to mind beyond the plug
   * @return the procedure
   */
  public static Procedure dead(double minutes, Accuracy typical, Caution... more) {
    List<Caution> cautions = new ArrayList<>();
    cautions.add(Caution.UNPLUG);
    cautions.addAll(List.of(more));
    return new Procedure("", minutes, Hazard.DEAD, typical, cautions);
  }

  /**
   * Measured on the closed machine while it runs.
   *
   * @param minutes how long it takes, greater than zero
   * @param typical the accuracy of an ordinary instrument
   * @param cautions what to mind
   * @return the procedure
   */
  public static Procedure running(double minutes, Accuracy typical, Caution... cautions) {
    return new Procedure("", minutes, Hazard.RUNNING, typical, List.of(cautions));
  }

  /**
   * The same with more to do behind what it says already.
   *
   * @param more one or two sentences
   * @return the procedure
   */
  public Procedure then(String more) {
    return new Procedure(before, text + more, minutes, hazard, typical, cautions);
  }

  /**
   * The same where it takes another time.
   *
   * @param others minutes, greater than zero
   * @return the procedure
   */
  public Procedure taking(double others) {
    return new Procedure(before, text, others, hazard, typical, cautions);
  }

  /**
   * All that is to be done.
   *
   * @return what all such work begins with, and what is to be done after it
   */
  public String whole() {
    return before + text;
  }
}
