package kelter.core.diagnosis;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import kelter.core.job.Component;
import kelter.core.safety.Caution;
import kelter.core.vocabulary.Ids;

/**
 * Work that cures faults.
 *
 * @param id the word in a job file under which the price of its part stands; unique in an appliance
 *     together with the component
 * @param component the id of the component that is worked on
 * @param title what is done, for a person
 * @param minutes how long it takes a practised person, the test afterwards included
 * @param restores what is as new afterwards
 * @param needsPart whether a part is needed, whose price the job should state
 * @param probabilityOfCure the chance that it cures a fault that it is meant for, above 0, at most
 *     1
 * @param cautions what to mind, in front of the work
 */
public record Remedy(
    String id,
    String component,
    String title,
    double minutes,
    Restores restores,
    boolean needsPart,
    double probabilityOfCure,
    List<Caution> cautions) {

  /** What is as new after the work. */
  public enum Restores {
    /** Nothing is renewed: cleaned, freed, tightened, set. */
    FUNCTION,
    /** A part of the component is renewed. */
    PART,
    /** The whole component is renewed. */
    COMPONENT
  }

  /**
   * Checks the figures.
   *
   * @throws IllegalArgumentException if the minutes are not above zero or the chance not above 0
   *     and at most 1
   */
  public Remedy {
    Ids.require(id);
    Ids.require(component);
    Objects.requireNonNull(title);
    Objects.requireNonNull(restores);
    cautions = List.copyOf(cautions);
    if (!(minutes > 0) || !(probabilityOfCure > 0 && probabilityOfCure <= 1)) {
      throw new IllegalArgumentException(id + ": minutes above 0 and a chance of cure up to 1");
    }
  }

  /**
   * The remedy that somebody means. Capitals, articles and punctuation do not count.
   *
   * @param words its key, its title, or the words of its component with a colon and its title
   * @param among the remedies of the machine
   * @return the remedy; empty if none is called so, or several are
   */
  public static Optional<Remedy> called(String words, List<Remedy> among) {
    String told = words.strip();
    String plain = plain(told);
    Map<String, Remedy> meant = new LinkedHashMap<>();
    for (Remedy each : among) {
      String full = Component.words(each.component()) + ": " + each.title();
      if (each.key().equals(told)
          || plain(each.title()).equals(plain)
          || plain(full).equals(plain)) {
        meant.put(each.key(), each);
      }
    }
    return meant.size() == 1 ? meant.values().stream().findFirst() : Optional.empty();
  }

  private static String plain(String words) {
    return words
        .toLowerCase(Locale.ROOT)
        .replaceAll("[^\\p{L}\\p{N}]+", " ")
        .replaceAll("\\b(the|a|an|its) ", "")
        .strip();
  }

  /**
   * The remedies that somebody may mean: the title has all of the words.
   *
   * @param words some words
   * @param among the remedies of the machine
   * @return their keys
   */
  public static List<String> near(String words, List<Remedy> among) {
    List<String> told = List.of(plain(words).split(" "));
    Set<String> keys = new LinkedHashSet<>();
    for (Remedy each : among) {
      String title = plain(Component.words(each.component()) + " " + each.title());
      if (List.of(title.split(" ")).containsAll(told)) {
        keys.add(each.key());
      }
    }
    return List.copyOf(keys);
  }

  /**
   * The same work, of which somebody knows more.
   *
   * @param itsMinutes how long it takes, above 0
   * @param itsCure the chance that it cures, above 0, at most 1
   * @return the remedy
   */
  public Remedy with(double itsMinutes, double itsCure) {
    return new Remedy(id, component, title, itsMinutes, restores, needsPart, itsCure, cautions);
  }

  /**
   * Its name within an appliance.
   *
   * @return component and id, joined by a full stop
   */
  public String key() {
    return component + "." + id;
  }
}
