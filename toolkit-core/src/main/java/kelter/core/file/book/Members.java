package kelter.core.file.book;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import kelter.core.file.json.Json;

/** Members of a JSON object under construction; what is empty is left out. */
final class Members {

  private static final MathContext DIGITS = new MathContext(5);

  private final Map<String, Json> members = new LinkedHashMap<>();

  Members text(String name, String text) {
    if (!text.isEmpty()) {
      members.put(name, new Json.Str(text));
    }
    return this;
  }

  Members text(String name, Optional<String> text) {
    return text(name, text.orElse(""));
  }

  Members number(String name, double value) {
    boolean whole = value == Math.rint(value) && Math.abs(value) < 1e15;
    members.put(name, new Json.Num(whole ? Long.toString((long) value) : Double.toString(value)));
    return this;
  }

  /** A figure to five digits, which is more than any was learned to. */
  Members figure(String name, double value) {
    return number(name, rounded(value));
  }

  static double rounded(double value) {
    return value == 0 || !Double.isFinite(value)
        ? value
        : new BigDecimal(value).round(DIGITS).doubleValue();
  }

  Members number(String name, OptionalDouble value) {
    value.ifPresent(each -> number(name, each));
    return this;
  }

  Members yesNo(String name, boolean value) {
    members.put(name, new Json.Bool(value));
    return this;
  }

  <T> Members each(String name, List<T> items, Function<T, Json> json) {
    if (!items.isEmpty()) {
      members.put(name, new Json.Arr(items.stream().map(json).toList()));
    }
    return this;
  }

  <T> Members each(String name, Map<?, T> items, Function<T, Json> json) {
    if (!items.isEmpty()) {
      Map<String, Json> all = new LinkedHashMap<>();
      items.forEach((key, item) -> all.put(key.toString(), json.apply(item)));
      members.put(name, new Json.Obj(all));
    }
    return this;
  }

  Members object(String name, Json.Obj object) {
    if (!object.members().isEmpty()) {
      members.put(name, object);
    }
    return this;
  }

  Json.Obj object() {
    return new Json.Obj(members);
  }
}
