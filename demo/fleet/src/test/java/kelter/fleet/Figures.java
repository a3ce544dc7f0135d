package kelter.fleet;

import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/** Each figure of a record, however deep, by where it stands. */
final class Figures {

  private final Map<String, Double> found = new TreeMap<>();

  private Figures() {}

  static Map<String, Double> of(Record all) {
    Figures figures = new Figures();
    figures.take("", all);
    return figures.found;
  }

  private void take(String place, Object value) {
    if (value instanceof Number number) {
      found.put(place, number.doubleValue());
    } else if (value instanceof OptionalDouble some) {
      some.ifPresent(each -> found.put(place, each));
    } else if (value instanceof Optional<?> some) {
      some.ifPresent(each -> take(place, each));
    } else if (value instanceof Map<?, ?> map) {
      map.forEach((key, each) -> take(place + "/" + key, each));
    } else if (value instanceof List<?> list) {
      for (int i = 0; i < list.size(); i++) {
        take(place + "/" + i, list.get(i));
      }
    } else if (value instanceof Record record) {
      components(place, record);
    } else {
      found.put(place + "=" + value, 0.0);
    }
  }

  private void components(String place, Record record) {
    for (RecordComponent each : record.getClass().getRecordComponents()) {
      try {
        take(place + "/" + each.getName(), each.getAccessor().invoke(record));
      } catch (ReflectiveOperationException hidden) {
        throw new AssertionError(place + "/" + each.getName(), hidden);
      }
    }
  }
}
