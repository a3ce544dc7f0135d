package kelter.core.file.json;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A JSON value that remembers how numbers were spelt and in which order members stood. */
public sealed interface Json {

  /**
   * What kind of value it is, for a message.
   *
   * @return for instance {@code an object}
   */
  String kind();

  /**
   * An object.
   *
   * @param members its members in the order of the file
   */
  record Obj(Map<String, Json> members) implements Json {

    /** Copies the members, order kept. */
    public Obj {
      members = Collections.unmodifiableMap(new LinkedHashMap<>(members));
    }

    @Override
    public String kind() {
      return "an object";
    }

    /**
     * Whether something stands at a place, or is not asked for by a place.
     *
     * @param pointer a JSON pointer, or other words for a place
     * @return false only for a pointer at which nothing stands
     */
    public boolean holds(String pointer) {
      if (!pointer.startsWith("/")) {
        return true;
      }
      Json at = this;
      for (String step : pointer.substring(1).split("/", -1)) {
        at = below(at, step.replace("~1", "/").replace("~0", "~"));
      }
      return at != null;
    }

    private static Json below(Json at, String step) {
      if (at instanceof Obj object) {
        return object.members().get(step);
      }
      boolean item = at instanceof Arr && step.matches("[0-9]{1,8}");
      List<Json> items = item ? ((Arr) at).items() : List.of();
      return item && Integer.parseInt(step) < items.size()
          ? items.get(Integer.parseInt(step))
          : null;
    }

    /**
     * The same object with one member set: in its place if it is there, else at the end.
     *
     * @param name the name of the member
     * @param value its value
     * @return a new object
     */
    public Obj with(String name, Json value) {
      Map<String, Json> copy = new LinkedHashMap<>(members);
      copy.put(name, value);
      return new Obj(copy);
    }
  }

  /**
   * An array.
   *
   * @param items its items in order
   */
  record Arr(List<Json> items) implements Json {

    /** Copies the items. */
    public Arr {
      items = List.copyOf(items);
    }

    @Override
    public String kind() {
      return "an array";
    }

    /**
     * The same array with one more item.
     *
     * @param item the item
     * @return a new array
     */
    public Arr plus(Json item) {
      List<Json> copy = new ArrayList<>(items);
      copy.add(item);
      return new Arr(copy);
    }
  }

  /**
   * A string.
   *
   * @param text its text
   */
  record Str(String text) implements Json {
    @Override
    public String kind() {
      return "a string";
    }
  }

  /**
   * A number.
   *
   * @param spelling how it was spelt
   */
  record Num(String spelling) implements Json {
    @Override
    public String kind() {
      return "a number";
    }
  }

  /**
   * True or false.
   *
   * @param value the value
   */
  record Bool(boolean value) implements Json {
    @Override
    public String kind() {
      return value ? "true" : "false";
    }
  }

  /** Null. */
  record Null() implements Json {
    @Override
    public String kind() {
      return "null";
    }
  }
}
