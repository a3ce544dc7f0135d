package kelter.core.problem;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Refuses null in what a program puts into a record, and says where it was. */
public final class Required {

  private static final String NULL = " is null";

  private Required() {}

  /**
   * A value that must be there.
   *
   * @param value the value
   * @param name what it is, for the message
   * @param <T> its type
   * @return the value
   * @throws NullPointerException if it is null
   */
  public static <T> T value(T value, String name) {
    if (value == null) {
      throw new NullPointerException(name + NULL);
    }
    return value;
  }

  /**
   * A value that may be missing, but not null.
   *
   * @param value the value
   * @param name what it is, for the message
   * @param <T> its type
   * @return the value
   * @throws NullPointerException if it is null
   */
  public static <T> Optional<T> optional(Optional<T> value, String name) {
    if (value == null) {
      throw new NullPointerException(name + NULL + "; where there is none, give Optional.empty()");
    }
    return value;
  }

  /**
   * A copy of a list.
   *
   * @param items the items
   * @param name what the list is, for the message
   * @param <T> the type of an item
   * @return a list that cannot be changed
   * @throws NullPointerException if it or one of its items is null
   */
  public static <T> List<T> list(List<T> items, String name) {
    int number = 0;
    for (T item : value(items, name)) {
      number++;
      if (item == null) {
        throw new NullPointerException(name + ": number " + number + NULL);
      }
    }
    return List.copyOf(items);
  }

  /**
   * A copy of a map, order kept.
   *
   * @param entries values by name
   * @param name what the map is, for the message
   * @param <T> the type of a value
   * @return a map that cannot be changed
   * @throws NullPointerException if it, a name or a value is null
   */
  public static <T> Map<String, T> map(Map<String, T> entries, String name) {
    for (Map.Entry<String, T> entry : value(entries, name).entrySet()) {
      if (entry.getKey() == null || entry.getValue() == null) {
        throw new NullPointerException(name + ": '" + entry.getKey() + "'" + NULL);
      }
    }
    return Collections.unmodifiableMap(new LinkedHashMap<>(entries));
  }
}
