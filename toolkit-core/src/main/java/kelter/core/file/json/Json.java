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
