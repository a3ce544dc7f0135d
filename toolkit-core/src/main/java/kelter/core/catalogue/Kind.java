package kelter.core.catalogue;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import kelter.core.diagnosis.Brings;
import kelter.core.source.Source;
import kelter.core.vocabulary.Ids;

/**
 * What is known of a kind of machine: its parts, what they usually have, what is behind calls to
 * it, and what to mind.
 *
 * @param id the word for it in files
 * @param title the kind, for a person
 * @param words other words by which it is called
 * @param builds its builds that have names of their own
 * @param life the kind of appliance whose life was studied, or empty
 * @param typicalAge the age at which the shares hold, years, above 0
 * @param supply how it is connected to the mains
 * @param parts its parts, each id once
 * @param covers what has to come off before parts can be reached
 * @param nothingWrong how often a call has no cause, and what is then told
 * @param somethingElse the share of causes that nobody names, above 0 and below 1
 * @param causes what is behind calls, each once
 * @param brings which causes bring others
 * @param asked the symptoms to ask for first
 * @param lockOut the rows of the lock-out table that such a machine always needs
 * @param cautions what to mind with such a machine, for a person
 * @param source where its parts and figures come from
 * @param sharesFrom where the shares and chances of its causes come from
 */
public record Kind(
    String id,
    String title,
    List<String> words,
    List<KindBuild> builds,
    String life,
    double typicalAge,
    MainsConnection supply,
    List<KindPart> parts,
    List<Cover> covers,
    NothingWrong nothingWrong,
    double somethingElse,
    List<KindCause> causes,
    List<Brings> brings,
    List<String> asked,
    List<String> lockOut,
    List<String> cautions,
    Source source,
    Source sharesFrom) {

  /**
   * Calls for which no cause is found.
   *
   * @param share how often, above 0 and below 1
   * @param symptoms by the id of a symptom the chance, 0 to 1, that it is then named; empty if the
   *     kind does not tell
   */
  public record NothingWrong(double share, Map<String, Double> symptoms) {

    /**
     * Checks the chances.
     *
     * @throws IllegalArgumentException if one is not a chance
     */
    public NothingWrong {
      symptoms = Map.copyOf(symptoms);
      if (!(share > 0 && share < 1)) {
        throw new IllegalArgumentException(
            "nothing wrong has a share above 0 and below 1, not " + share);
      }
      for (Map.Entry<String, Double> each : symptoms.entrySet()) {
        if (!(each.getValue() >= 0 && each.getValue() <= 1)) {
          throw new IllegalArgumentException(
              each.getKey() + " is named with a chance of 0 to 1, not " + each.getValue());
        }
      }
    }
  }

  /**
   * Checks the figures.
   *
   * @throws IllegalArgumentException if the age or the share of something else is impossible
   */
  public Kind {
    Ids.require(id);
    Objects.requireNonNull(title);
    words = List.copyOf(words);
    builds = List.copyOf(builds);
    Objects.requireNonNull(life);
    Objects.requireNonNull(supply);
    parts = List.copyOf(parts);
    covers = List.copyOf(covers);
    Objects.requireNonNull(nothingWrong);
    causes = List.copyOf(causes);
    brings = List.copyOf(brings);
    asked = List.copyOf(asked);
    lockOut = List.copyOf(lockOut);
    cautions = List.copyOf(cautions);
    Objects.requireNonNull(source);
    Objects.requireNonNull(sharesFrom);
    if (!(typicalAge > 0 && typicalAge <= 100)) {
      throw new IllegalArgumentException("a typical age is above 0 and up to 100 years");
    }
    if (!(somethingElse > 0 && somethingElse < 1)) {
      throw new IllegalArgumentException(
          "something else has a share above 0 and below 1, not " + somethingElse);
    }
  }

  /**
   * The same kind with other shares and chances.
   *
   * @param nothing how often a call has no cause
   * @param other the share of causes that nobody names
   * @param others what is behind calls
   * @param from where these come from
   * @return the kind
   */
  public Kind with(NothingWrong nothing, double other, List<KindCause> others, Source from) {
    return new Kind(
        id,
        title,
        words,
        builds,
        life,
        typicalAge,
        supply,
        parts,
        covers,
        nothing,
        other,
        others,
        brings,
        asked,
        lockOut,
        cautions,
        source,
        from);
  }

  /**
   * A part by its id.
   *
   * @param part the id
   * @return the part, or empty if there is none
   */
  public Optional<KindPart> part(String part) {
    for (KindPart each : parts) {
      if (each.id().equals(part)) {
        return Optional.of(each);
      }
    }
    return Optional.empty();
  }

  /**
   * All words by which it is found.
   *
   * @return id, title and other words, those of its builds last
   */
  public List<String> names() {
    List<String> names = ownNames();
    builds.forEach(build -> names.addAll(build.words()));
    return names;
  }

  private List<String> ownNames() {
    List<String> names = new ArrayList<>(List.of(id, title));
    names.addAll(words);
    return names;
  }

  /**
   * The build that somebody means.
   *
   * @param told what somebody calls the machine
   * @return the one of whose names one has all the words, each in full or from its start; empty if
   *     a name of the kind has them too, or several builds have
   */
  public Optional<KindBuild> build(String told) {
    if (PlainWords.anyHasAll(ownNames(), told)) {
      return Optional.empty();
    }
    List<KindBuild> meant =
        builds.stream().filter(build -> PlainWords.anyHasAll(build.words(), told)).toList();
    return meant.size() == 1 ? Optional.of(meant.get(0)) : Optional.empty();
  }

  /**
   * The builds that somebody may speak of; to be asked for, not taken.
   *
   * @param said what the owner says
   * @return those whose name, without the words that the kind has too, is in it
   */
  public List<KindBuild> buildsIn(String said) {
    String text = " " + PlainWords.of(said) + " ";
    Set<String> common = new LinkedHashSet<>();
    for (String name : ownNames()) {
      common.addAll(List.of(PlainWords.of(name).split(" ")));
    }
    List<KindBuild> spoken = new ArrayList<>();
    for (KindBuild build : builds) {
      List<String> own = new ArrayList<>(List.of(PlainWords.of(build.title()).split(" ")));
      own.removeAll(common);
      if (!own.isEmpty() && text.contains(" " + String.join(" ", own) + " ")) {
        spoken.add(build);
      }
    }
    return spoken;
  }

  /**
   * Whether it is taken as wired in until somebody tells.
   *
   * @return false if it has a plug
   */
  public boolean fixed() {
    return supply != MainsConnection.PLUG;
  }

  /**
   * The symptoms that such machines have.
   *
   * @return the ids of those that it asks for or that a cause makes
   */
  public Set<String> symptoms() {
    Set<String> symptoms = new LinkedHashSet<>(asked);
    for (KindCause cause : causes) {
      symptoms.addAll(cause.symptoms().keySet());
    }
    return symptoms;
  }
}
