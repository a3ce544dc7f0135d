package kelter.core.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Makes one measurement of many that are of the same thing, under the same conditions, with the
 * same instrument. They differ by scatter alone, and their mean with the scatter of the mean is all
 * that they say (JCGM 100:2008, 4.2). Up to ten are left as they are: among so few each may be the
 * blunder.
 */
final class RepeatedMeasurements {

  private static final int LEFT_ALONE = 10;

  private RepeatedMeasurements() {}

  /** What must agree for readings to be of one thing. */
  private record Alike(
      String component,
      String observable,
      Conditions conditions,
      Optional<String> instrument,
      Class<? extends Reading> reading,
      double statedUncertainty,
      Measurement.Stage stage) {

    static Alike of(Measurement measurement) {
      Reading first = measurement.readings().get(0);
      return new Alike(
          measurement.component(),
          measurement.observable(),
          measurement.conditions(),
          measurement.instrument(),
          first.getClass(),
          first instanceof Reading.Value value ? value.quantity().standardUncertaintySi() : 0,
          measurement.stage());
    }
  }

  static List<Measurement> pooled(List<Measurement> measurements) {
    if (measurements.size() <= LEFT_ALONE) {
      return measurements;
    }
    Map<Alike, List<Measurement>> alike = new LinkedHashMap<>();
    for (Measurement each : measurements) {
      alike.computeIfAbsent(Alike.of(each), key -> new ArrayList<>()).add(each);
    }
    List<Measurement> pooled = new ArrayList<>();
    for (List<Measurement> same : alike.values()) {
      if (same.size() <= LEFT_ALONE) {
        pooled.addAll(same);
      } else {
        pooled.add(one(same));
      }
    }
    return pooled;
  }

  private static Measurement one(List<Measurement> same) {
    Measurement first = same.get(0);
    List<Reading> readings = new ArrayList<>();
    for (Measurement each : same) {
      readings.addAll(each.readings());
    }
    return new Measurement(
        first.component(),
        first.observable(),
        readings,
        first.conditions(),
        first.instrument(),
        first.note(),
        first.stage());
  }
}
