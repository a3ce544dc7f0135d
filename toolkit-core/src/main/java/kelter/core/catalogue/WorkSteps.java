package kelter.core.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import kelter.core.source.Source;

/**
 * How machines are opened, mended and closed.
 *
 * @param always what holds for all work
 * @param parts by the kind of component what holds for work on it
 * @param source where that comes from
 */
public record WorkSteps(Steps always, Map<String, Steps> parts, Source source) {

  /** Checks that nothing is null. */
  public WorkSteps {
    Objects.requireNonNull(always);
    parts = Map.copyOf(parts);
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

    private static List<String> joined(List<String> first, List<String> then) {
      List<String> all = new ArrayList<>(first);
      all.addAll(then);
      return all;
    }
  }

  /**
   * The steps for work on a kind of component.
   *
   * @param kind the kind of component
   * @return its steps; none where nothing is known of it
   */
  public Steps of(String kind) {
    return parts.getOrDefault(kind, Steps.NONE);
  }
}
