package kelter.cli.trial;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.random.RandomGenerator;
import kelter.core.catalogue.Kind;
import kelter.core.catalogue.KindCause;

/**
 * A kind of machine whose shares are not those of its file: each is multiplied by a factor of its
 * own from a quarter to four, and one of the rarest tenth of its causes is made common.
 */
final class MovedShares {

  /** The greatest factor on a share. */
  private static final double MOST = 4;

  /** The share of the rare cause that is common here. */
  private static final double COMMON = 0.12;

  private MovedShares() {}

  /** The kind with its shares moved, in the order of its file; its chances stay. */
  static Kind of(Kind kind, RandomGenerator random) {
    List<KindCause> rarest = new ArrayList<>(kind.causes());
    rarest.sort(Comparator.comparingDouble(KindCause::share));
    KindCause common = rarest.get(random.nextInt(Math.max(1, rarest.size() / 10)));
    double[] shares = new double[kind.causes().size()];
    double sum = 0;
    for (int i = 0; i < shares.length; i++) {
      KindCause cause = kind.causes().get(i);
      shares[i] = cause.equals(common) ? 0 : cause.share() * factor(random);
      sum += shares[i];
    }
    double causes = 1 - kind.nothingWrong().share() - kind.somethingElse();
    List<KindCause> moved = new ArrayList<>();
    for (int i = 0; i < shares.length; i++) {
      KindCause cause = kind.causes().get(i);
      double share =
          cause.equals(common) ? COMMON * causes : shares[i] / sum * (1 - COMMON) * causes;
      moved.add(cause.with(share, cause.symptoms()));
    }
    return kind.with(kind.nothingWrong(), kind.somethingElse(), moved, kind.source());
  }

  private static double factor(RandomGenerator random) {
    return Math.pow(MOST, 2 * random.nextDouble() - 1);
  }
}
