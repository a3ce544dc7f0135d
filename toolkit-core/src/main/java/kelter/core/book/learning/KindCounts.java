package kelter.core.book.learning;

import java.io.Serializable;
import java.util.HashMap;
import java.util.Map;

/**
 * What was counted of one kind of machine. While it is counted the maps have no order; what {@link
 * #plus} makes has that of the keys.
 *
 * @param all the shares of all machines of the kind
 * @param models the shares by model
 * @param ages the shares by band of age
 * @param symptoms what was answered
 * @param unnamed by a cause that the kind does not name, how often it was confirmed
 */
record KindCounts(
    ShareTally all,
    Map<String, ShareTally> models,
    Map<Integer, ShareTally> ages,
    SymptomTally symptoms,
    Map<String, Integer> unnamed)
    implements Serializable {

  static KindCounts none() {
    return new KindCounts(
        new ShareTally(), new HashMap<>(), new HashMap<>(), new SymptomTally(), new HashMap<>());
  }

  KindCounts plus(KindCounts other) {
    ShareTally none = new ShareTally();
    return new KindCounts(
        all.plus(other.all),
        MergedMaps.of(models, other.models, none, ShareTally::plus),
        MergedMaps.of(ages, other.ages, none, ShareTally::plus),
        symptoms.plus(other.symptoms),
        MergedMaps.of(unnamed, other.unnamed, 0, Integer::sum));
  }
}
