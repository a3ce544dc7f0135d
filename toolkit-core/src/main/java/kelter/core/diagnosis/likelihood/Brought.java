package kelter.core.diagnosis.likelihood;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kelter.core.diagnosis.Brings;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;

/**
 * A cause that brings an effect of the same group.
 *
 * @param cause the place of the cause among the faults of the model
 * @param effect the place of the effect
 * @param chance the chance, above 0 and below 1, that the effect is there beside the cause
 */
public record Brought(int cause, int effect, double chance) {

  /**
   * Those of some relations of which a model knows both faults.
   *
   * @param model the model
   * @param all relations between any faults
   * @throws IllegalArgumentException if two of these faults cannot be there together, or the
   *     chances of what one of them brings sum to 1 or more; with all that are wrong
   */
  public static List<Brought> within(FaultModel model, List<Brings> all) {
    Map<String, Integer> places = new LinkedHashMap<>();
    for (Fault fault : model.faults()) {
      places.put(fault.key(), places.size());
    }
    List<Brought> within = new ArrayList<>();
    List<String> wrong = new ArrayList<>();
    Map<String, Double> sums = new LinkedHashMap<>();
    for (Brings each : all) {
      Integer cause = places.get(each.cause());
      Integer effect = places.get(each.effect());
      if (cause != null && effect != null) {
        within.add(new Brought(cause, effect, each.chance()));
        sums.merge(each.cause(), each.chance(), Double::sum);
        if (!model.mayMeet(cause, effect)) {
          wrong.add(
              each.cause()
                  + " brings "
                  + each.effect()
                  + ", but they cannot be there together: leave one of them out");
        }
      }
    }
    if (!wrong.isEmpty()) {
      throw new IllegalArgumentException(String.join("; ", wrong));
    }
    requireBelowOne(sums);
    return List.copyOf(within);
  }

  /**
   * Checks what causes bring.
   *
   * @param sums the sum of the chances of what a cause brings, by the cause
   * @throws IllegalArgumentException with all causes whose chances sum to 1 or more
   */
  public static void requireBelowOne(Map<String, Double> sums) {
    List<String> wrong = new ArrayList<>();
    sums.forEach(
        (cause, sum) -> {
          if (!(sum < 1)) {
            wrong.add(
                cause + " brings effects with chances of " + sum + " in all; below 1 is allowed");
          }
        });
    if (!wrong.isEmpty()) {
      throw new IllegalArgumentException(String.join("; ", wrong));
    }
  }
}
