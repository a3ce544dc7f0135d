package kelter.core.catalogue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import kelter.core.source.Source;

/**
 * How machines are opened, mended and closed.
 *
 * @param always what holds for all work
 * @param parts by the kind of component what holds for work on it
 * @param machines by the kind of machine what holds for all work on it
 * @param places by the kind of machine and the id of its part what holds for work on that part, in
 *     place of what holds for its kind of component
 * @param source where that comes from
 */
public record WorkSteps(
    Steps always,
    Map<String, Steps> parts,
    Map<String, Steps> machines,
    Map<String, Map<String, Steps>> places,
    Source source) {

  /** In a text for the owner: how to take the power off. */
  private static final String OFF = "{off}";

  /** Begins a text for the owner that holds only where there is a plug. */
  private static final String PLUG = "{plug} ";

  /** Checks that nothing is null. */
  public WorkSteps {
    Objects.requireNonNull(always);
    parts = Map.copyOf(parts);
    machines = Map.copyOf(machines);
    places = Map.copyOf(places);
    Objects.requireNonNull(source);
  }

  /**
   * Steps around one piece of work, each a sentence.
   *
   * @param bring what to bring
   * @param open what to mind while it is opened
   * @param look what to look at while it is open
   * @param traps what goes wrong easily
   * @param close what to mind while it is closed
   * @param run what to do once it has power again
   * @param owner what the owner has to do or to watch afterwards
   */
  public record Steps(
      List<String> bring,
      List<String> open,
      List<String> look,
      List<String> traps,
      List<String> close,
      List<String> run,
      List<String> owner) {

    /** No step. */
    public static final Steps NONE =
        new Steps(List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of());

    /** Copies the steps. */
    public Steps {
      bring = List.copyOf(bring);
      open = List.copyOf(open);
      look = List.copyOf(look);
      traps = List.copyOf(traps);
      close = List.copyOf(close);
      run = List.copyOf(run);
      owner = List.copyOf(owner);
    }

    /**
     * These steps and then others.
     *
     * @param more the others
     * @return all steps, in this order
     */
    public Steps and(Steps more) {
      return new Steps(
          joined(bring, more.bring),
          joined(open, more.open),
          joined(look, more.look),
          joined(traps, more.traps),
          joined(close, more.close),
          joined(run, more.run),
          joined(owner, more.owner));
    }

    private Steps told(boolean plug) {
      List<String> words = new ArrayList<>();
      for (String text : owner) {
        if (plug || !text.startsWith(PLUG)) {
          String whole = text.startsWith(PLUG) ? text.substring(PLUG.length()) : text;
          words.add(
              whole.replace(OFF, plug ? "pull the plug" : "switch its circuit off at the board"));
        }
      }
      return new Steps(bring, open, look, traps, close, run, words);
    }

    private static List<String> joined(List<String> first, List<String> then) {
      List<String> all = new ArrayList<>(first);
      all.addAll(then);
      return all;
    }
  }

  /**
   * The steps as they stand on a machine: what holds for its kind among what always holds, and
   * texts for the owner that speak of a plug only where there is one.
   *
   * @param kind the kind of machine, if it is known; else it has a plug
   * @return the steps
   */
  public WorkSteps on(Optional<Kind> kind) {
    boolean plug = kind.filter(Kind::fixed).isEmpty();
    Steps ofKind =
        kind.map(each -> machines.getOrDefault(each.id(), Steps.NONE)).orElse(Steps.NONE);
    Map<String, Steps> own =
        kind.map(each -> places.getOrDefault(each.id(), Map.of())).orElse(Map.of());
    return new WorkSteps(
        always.and(ofKind).told(plug),
        told(parts, plug),
        Map.of(),
        kind.map(each -> Map.of(each.id(), told(own, plug))).orElse(Map.of()),
        source);
  }

  private static Map<String, Steps> told(Map<String, Steps> steps, boolean plug) {
    Map<String, Steps> told = new HashMap<>();
    steps.forEach((part, each) -> told.put(part, each.told(plug)));
    return told;
  }

  /**
   * The steps for work on a part.
   *
   * @param machine the kind of machine
   * @param part the id of the part
   * @param kind the kind of component
   * @return those of the part in such machines, else those of the kind of component; none where
   *     nothing is known of it
   */
  public Steps of(String machine, String part, String kind) {
    Steps own = places.getOrDefault(machine, Map.of()).get(part);
    return own != null ? own : parts.getOrDefault(kind, Steps.NONE);
  }
}
