package kelter.core.diagnosis.model;

import java.util.List;
import kelter.core.diagnosis.Remedy;
import kelter.core.diagnosis.Remedy.Restores;
import kelter.core.safety.Caution;

/**
 * Work that cures faults of any part of a kind: a remedy before it is known on which component.
 *
 * @param id the word in a job file under which the price of its part stands
 * @param title what is done, for a person
 * @param minutes how long it takes a practised person, the test afterwards included, above 0
 * @param restores what is as new afterwards
 * @param needsPart whether a part is needed, whose price the job should state
 * @param probabilityOfCure the chance that it cures a fault that it is meant for, above 0, at most
 *     1
 * @param cautions what to mind, in front of the work
 */
public record Work(
    String id,
    String title,
    double minutes,
    Restores restores,
    boolean needsPart,
    double probabilityOfCure,
    List<Caution> cautions) {

  public Work {
    cautions = List.copyOf(cautions);
  }

  /**
   * Work that renews nothing: cleaning, freeing, tightening, setting.
   *
   * @param id the word for it
   * @param title what is done, for a person
   * @param minutes how long it takes, above 0
   * @param probabilityOfCure the chance of a cure, above 0, at most 1
   * @param cautions what to mind
   * @return the work
   */
  public static Work byHand(
      String id, String title, double minutes, double probabilityOfCure, Caution... cautions) {
    return new Work(
        id, title, minutes, Restores.FUNCTION, false, probabilityOfCure, List.of(cautions));
  }

  /**
   * Work that renews a part of the component.
   *
   * @param id the word for it
   * @param title what is done, for a person
   * @param minutes how long it takes, above 0
   * @param probabilityOfCure the chance of a cure, above 0, at most 1
   * @param cautions what to mind
   * @return the work
   */
  public static Work withPart(
      String id, String title, double minutes, double probabilityOfCure, Caution... cautions) {
    return new Work(id, title, minutes, Restores.PART, true, probabilityOfCure, List.of(cautions));
  }

  /**
   * Work that renews the whole component.
   *
   * @param id the word for it
   * @param title what is done, for a person
   * @param minutes how long it takes, above 0
   * @param probabilityOfCure the chance of a cure, above 0, at most 1
   * @param cautions what to mind
   * @return the work
   */
  public static Work renewing(
      String id, String title, double minutes, double probabilityOfCure, Caution... cautions) {
    return new Work(
        id, title, minutes, Restores.COMPONENT, true, probabilityOfCure, List.of(cautions));
  }

  /** The remedy on a component. */
  Remedy on(String component) {
    return new Remedy(
        id, component, title, minutes, restores, needsPart, probabilityOfCure, cautions);
  }
}
