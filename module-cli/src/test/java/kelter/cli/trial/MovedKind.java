package kelter.cli.trial;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.random.RandomGenerator;
import kelter.core.catalogue.Kind;
import kelter.core.catalogue.KindCause;

/**
 * A kind of machine whose shares and chances are not those of its file: each share is multiplied,
 * and each chance has its odds multiplied, by a factor of its own, log-normal about 1.
 */
final class MovedKind {

  /** The standard deviation of the natural logarithm of a factor. */
  static final double SD = Math.log(2);

  /** A chance is never moved above this. */
  private static final double MOST = 0.99;

  private final RandomGenerator random;

  private MovedKind(RandomGenerator random) {
    this.random = random;
  }

  /** The kind with its shares and chances moved, in the order of its file. */
  static Kind of(Kind kind, RandomGenerator random) {
    return new MovedKind(random).moved(kind);
  }

  private Kind moved(Kind kind) {
    double nothing = kind.nothingWrong().share() * factor();
    double other = kind.somethingElse() * factor();
    List<Double> shares = new ArrayList<>();
    double sum = nothing + other;
    for (KindCause cause : kind.causes()) {
      double share = cause.share() * factor();
      shares.add(share);
      sum += share;
    }
    List<KindCause> causes = new ArrayList<>();
    for (int i = 0; i < shares.size(); i++) {
      causes.add(moved(kind.causes().get(i), shares.get(i) / sum));
    }
    return new Kind(
        kind.id(),
        kind.title(),
        kind.words(),
        kind.builds(),
        kind.life(),
        kind.typicalAge(),
        kind.supply(),
        kind.parts(),
        kind.covers(),
        new Kind.NothingWrong(nothing / sum, moved(kind.nothingWrong().symptoms())),
        other / sum,
        causes,
        kind.brings(),
        kind.asked(),
        kind.lockOut(),
        kind.cautions(),
        kind.source(),
        kind.sharesFrom());
  }

  private KindCause moved(KindCause cause, double share) {
    return new KindCause(
        cause.part(),
        cause.fault(),
        cause.title(),
        share,
        cause.split(),
        cause.mend(),
        cause.several(),
        cause.wear(),
        moved(cause.symptoms()));
  }

  private Map<String, Double> moved(Map<String, Double> chances) {
    Map<String, Double> moved = new HashMap<>();
    for (Map.Entry<String, Double> each : new TreeMap<>(chances).entrySet()) {
      moved.put(each.getKey(), moved(each.getValue()));
    }
    return moved;
  }

  private double moved(double chance) {
    double odds = Math.min(chance, MOST) / (1 - Math.min(chance, MOST)) * factor();
    return Math.min(MOST, odds / (1 + odds));
  }

  private double factor() {
    return Math.exp(SD * random.nextGaussian());
  }
}
