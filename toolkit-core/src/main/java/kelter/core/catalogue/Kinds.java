package kelter.core.catalogue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import kelter.core.quantity.Nearest;

/**
 * The kinds of machines that are known: those of the shop, and those that come with Kelter where
 * the shop has none of the same id. One is read when it is first asked for. It is safe for several
 * threads.
 */
public final class Kinds {

  private static final String ELECTRIC = "electric ";

  private final Map<String, Kind> read = new ConcurrentHashMap<>();
  private final List<String> ids;
  private final Function<String, Optional<Kind>> shipped;

  /**
   * Kinds of machines.
   *
   * @param own those of the shop
   * @param shippedIds the ids of the others
   * @param shipped reads one of the others
   */
  public Kinds(List<Kind> own, List<String> shippedIds, Function<String, Optional<Kind>> shipped) {
    this.shipped = shipped;
    List<String> all = new ArrayList<>(shippedIds);
    for (Kind kind : own) {
      read.put(kind.id(), kind);
      if (!all.contains(kind.id())) {
        all.add(kind.id());
      }
    }
    Collections.sort(all);
    this.ids = List.copyOf(all);
  }

  /**
   * The words for the kinds.
   *
   * @return ids, in alphabetical order
   */
  public List<String> ids() {
    return ids;
  }

  /**
   * A kind.
   *
   * @param id its id
   * @return the kind, or empty if it is not known
   */
  public Optional<Kind> kind(String id) {
    Kind known = read.get(id);
    if (known != null || !ids.contains(id)) {
      return Optional.ofNullable(known);
    }
    return shipped.apply(id).map(kind -> firstRead(id, kind));
  }

  /** The same kind for whoever asks: of two that were read side by side the one that came first. */
  private Kind firstRead(String id, Kind kind) {
    Kind earlier = read.putIfAbsent(id, kind);
    return earlier == null ? kind : earlier;
  }

  /**
   * The kinds that somebody may mean.
   *
   * @param words what somebody calls the machine, in any case, with blanks or hyphens
   * @return the one of that id or name; else those one of whose names has all the words, each in
   *     full or from its start; that it is electric tells nothing; empty if there is none
   */
  public List<Kind> meant(String words) {
    String told = PlainWords.of(words);
    List<Kind> found = withAll(told);
    return found.isEmpty() && told.startsWith(ELECTRIC)
        ? withAll(told.substring(ELECTRIC.length()))
        : found;
  }

  /**
   * The kind that somebody may mean by words that no kind has all of.
   *
   * @param words what somebody calls the machine
   * @return the id of the kind with the longest name that the words end with, as a pizza oven is an
   *     oven; else of the one with the nearest name; empty if none is near. It is to be asked for,
   *     not taken
   */
  public Optional<String> likely(String words) {
    Map<String, String> names = names();
    String rest = PlainWords.of(words);
    while (!rest.isEmpty()) {
      if (names.containsKey(rest)) {
        return Optional.of(names.get(rest));
      }
      rest = rest.contains(" ") ? rest.substring(rest.indexOf(' ') + 1) : "";
    }
    return Nearest.of(words, names.keySet()).map(names::get);
  }

  private List<Kind> withAll(String told) {
    Optional<Kind> exact = kind(told.replace(' ', '-'));
    if (exact.isPresent()) {
      return List.of(exact.get());
    }
    Map<String, Kind> found = new TreeMap<>();
    for (String id : ids) {
      Kind kind = kind(id).orElseThrow();
      for (String name : kind.names()) {
        if (PlainWords.of(name).equals(told)) {
          return List.of(kind);
        }
        if (!told.isEmpty() && PlainWords.hasAll(name, told)) {
          found.put(id, kind);
        }
      }
    }
    return List.copyOf(found.values());
  }

  /**
   * Every name of every kind.
   *
   * @return by the name, in plain lower case, the id of its kind
   */
  public Map<String, String> names() {
    Map<String, String> names = new LinkedHashMap<>();
    for (String id : ids) {
      for (String name : kind(id).orElseThrow().names()) {
        names.putIfAbsent(PlainWords.of(name), id);
      }
    }
    return names;
  }
}
