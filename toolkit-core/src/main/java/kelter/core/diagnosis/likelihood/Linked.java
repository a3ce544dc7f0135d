package kelter.core.diagnosis.likelihood;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Readings that share something: the error of one instrument, a quantity of the model that nobody
 * measured, or the deviation of this very machine where one thing was measured twice.
 *
 * <p>Each of these is one latent quantity z, a standard normal deviate that moves the readings by
 * the loads b. Given z the readings are independent, y = f + b z + error, each with its own chance
 * of a blunder. The integral over z is taken in closed form for each choice of readings that are no
 * blunders: with r = (y - f) / s and a = b / s their density is that of independent readings times
 * exp(v' M^-1 v / 2) / sqrt(det M), where M = I + sum a a' and v = sum a r (the matrix determinant
 * lemma and the Woodbury identity). With up to four readings every choice of blunders is summed;
 * with up to ten, up to two blunders, and all; with more the integral is taken at its {@link Top}.
 */
final class Linked {

  /**
   * How much of the variance of an instrument's error is the same for all its readings; from
   * memory, makers do not state it.
   */
  static final double COMMON_TO_AN_INSTRUMENT = 0.5;

  private static final double SQRT_TWO_PI = Math.sqrt(2 * Math.PI);
  private static final int ALL_CHOICES = 4;
  private static final int MOST_BY_CHOICE = 10;

  /** A choice that makes up less than exp(-16), some 1e-7, of the first is passed over. */
  private static final double NEGLIGIBLE = 16;

  private final int[] members;
  private final ValueLikelihood[] likelihood;
  private final int items;
  private final int latents;
  private final int[] modelQuantity;
  private final double[][] fixedLoad;
  private final boolean[][] bySpread;
  private final boolean[] spreadIsShared;
  private final int[] choices;
  private final double[] own;
  private final double[] residual;
  private final double[] logSound;
  private final double[] logBlunder;
  private final double[] logPeak;
  private final double[][] ratio;
  private final double[][] matrix;
  private final double[] vector;
  private final Optional<Top> top;

  private Linked(int[] members, List<Item> all, List<Latent> shared) {
    int n = members.length;
    this.members = members;
    this.likelihood = new ValueLikelihood[n];
    for (int m = 0; m < n; m++) {
      likelihood[m] = (ValueLikelihood) all.get(members[m]).likelihood();
    }
    this.items = all.size();
    this.latents = shared.size();
    this.modelQuantity = new int[latents];
    this.fixedLoad = new double[latents][n];
    this.bySpread = new boolean[latents][n];
    this.spreadIsShared = new boolean[n];
    for (int j = 0; j < latents; j++) {
      Latent latent = shared.get(j);
      modelQuantity[j] = latent.modelQuantity;
      for (int m = 0; m < n; m++) {
        if (latent.touches[members[m]]) {
          fixedLoad[j][m] = latent.instrument ? likelihood[m].sharedError() : 0;
          bySpread[j][m] = latent.repeats;
          spreadIsShared[m] |= latent.repeats;
        }
      }
    }
    this.choices = n > MOST_BY_CHOICE ? new int[0] : choices(n);
    this.top = n > MOST_BY_CHOICE ? Optional.of(new Top(n, latents)) : Optional.empty();
    this.own = new double[n];
    this.residual = new double[n];
    this.logPeak = new double[n];
    this.logSound = new double[n];
    this.logBlunder = new double[n];
    for (int m = 0; m < n; m++) {
      logSound[m] = Math.log((1 - likelihood[m].blunder()) / SQRT_TWO_PI);
      logBlunder[m] = Math.log(likelihood[m].blunderTerm());
    }
    this.ratio = new double[n][latents];
    this.matrix = new double[latents][latents];
    this.vector = new double[latents];
  }

  /** What is shared: a quantity of the model, an instrument, or the deviation of the machine. */
  private record Latent(
      int modelQuantity, boolean instrument, boolean repeats, boolean[] touches) {}

  /**
   * Finds the readings that share something.
   *
   * @param items all readings of a model
   * @param shared how many shared quantities the model has
   * @param moved for each of them, which readings it moves
   * @return the sets of readings to be weighed jointly, with no reading in two of them
   */
  static List<Linked> among(List<Item> items, int shared, boolean[][] moved) {
    List<Latent> latents = new ArrayList<>();
    for (int j = 0; j < shared; j++) {
      latents.add(new Latent(j, false, false, values(items, moved[j])));
    }
    for (int k = 0; k < items.size(); k++) {
      addIfFirst(latents, items, k, true);
      addIfFirst(latents, items, k, false);
    }
    List<Latent> touching = new ArrayList<>();
    for (Latent latent : latents) {
      if (any(latent.touches)) {
        touching.add(latent);
      }
    }
    return touching.isEmpty() ? List.of() : components(items, touching);
  }

  private static boolean[] values(List<Item> items, boolean[] touches) {
    boolean[] only = new boolean[touches.length];
    for (int k = 0; k < only.length; k++) {
      only[k] = touches[k] && items.get(k).likelihood().isValue();
    }
    return only;
  }

  private static void addIfFirst(
      List<Latent> latents, List<Item> items, int first, boolean instrument) {
    boolean[] touches = new boolean[items.size()];
    int count = 0;
    for (int k = 0; k < touches.length; k++) {
      boolean shares =
          items.get(k).likelihood().isValue()
              && (instrument
                  ? sameInstrument(items.get(first), items.get(k))
                  : sameQuestion(items.get(first), items.get(k)));
      if (shares && k < first) {
        return;
      }
      touches[k] = shares;
      count += shares ? 1 : 0;
    }
    if (count > 1) {
      latents.add(new Latent(-1, instrument, !instrument, touches));
    }
  }

  private static boolean sameInstrument(Item one, Item other) {
    return one.instrument().isPresent()
        && other.instrument().isPresent()
        && one.instrument().get().equals(other.instrument().get())
        && one.question().observable().kind() == other.question().observable().kind();
  }

  private static boolean sameQuestion(Item one, Item other) {
    return one == other
        || one.question().observable().id().equals(other.question().observable().id())
            && one.question().component().equals(other.question().component())
            && one.question().conditions().equals(other.question().conditions());
  }

  private static boolean any(boolean[] touches) {
    for (boolean each : touches) {
      if (each) {
        return true;
      }
    }
    return false;
  }

  private static List<Linked> components(List<Item> items, List<Latent> latents) {
    List<Linked> found = new ArrayList<>();
    boolean[] taken = new boolean[items.size()];
    for (int first = 0; first < taken.length; first++) {
      boolean[] reach = new boolean[taken.length];
      reach[first] = true;
      List<Latent> own = new ArrayList<>();
      List<Latent> others = new ArrayList<>(latents);
      while (others.removeIf(latent -> joins(latent, reach, own))) {
        // until none joins any more
      }
      if (!taken[first] && !own.isEmpty()) {
        int[] members = new int[reach.length];
        int count = 0;
        for (int k = 0; k < reach.length; k++) {
          if (reach[k]) {
            members[count++] = k;
            taken[k] = true;
          }
        }
        found.add(new Linked(Arrays.copyOf(members, count), items, own));
      }
    }
    return found;
  }

  /** Whether a latent quantity touches what is reached; what it touches is then reached too. */
  private static boolean joins(Latent latent, boolean[] reach, List<Latent> own) {
    if (!overlaps(latent.touches, reach)) {
      return false;
    }
    own.add(latent);
    for (int k = 0; k < reach.length; k++) {
      reach[k] |= latent.touches[k];
    }
    return true;
  }

  private static boolean overlaps(boolean[] one, boolean[] other) {
    for (int k = 0; k < one.length; k++) {
      if (one[k] && other[k]) {
        return true;
      }
    }
    return false;
  }

  /** Which readings may be no blunders, one bit each, the choice without blunders first. */
  private static int[] choices(int n) {
    List<Integer> choices = new ArrayList<>();
    for (int blunders = 0; blunders <= n; blunders++) {
      for (int out = 0; out < 1 << n; out++) {
        if (Integer.bitCount(out) == blunders
            && (n <= ALL_CHOICES || blunders <= 2 || blunders == n)) {
          choices.add((1 << n) - 1 & ~out);
        }
      }
    }
    int[] all = new int[choices.size()];
    for (int i = 0; i < all.length; i++) {
      all[i] = choices.get(i);
    }
    return all;
  }

  /** The places of the readings among all of the model. */
  int[] members() {
    return members;
  }

  /** The natural logarithm of the likelihood of these readings together. */
  double log(double[] forecast) {
    int n = members.length;
    for (int m = 0; m < n; m++) {
      int k = members[m];
      double spread = forecast[items + k];
      own[m] = likelihood[m].ownError(spreadIsShared[m] ? 0 : spread);
      logPeak[m] = logSound[m] - Math.log(own[m]);
      residual[m] = (likelihood[m].reading() - forecast[k]) / own[m];
      for (int j = 0; j < latents; j++) {
        double load =
            modelQuantity[j] >= 0
                ? forecast[(2 + modelQuantity[j]) * items + k]
                : bySpread[j][m] ? spread : fixedLoad[j][m];
        ratio[m][j] = load / own[m];
      }
    }
    return top.isPresent()
        ? top.get().log(residual, ratio, logPeak, logBlunder)
        : logSumOfChoices();
  }

  private double logSumOfChoices() {
    double most = Double.NEGATIVE_INFINITY;
    double sum = 0;
    for (int in : choices) {
      double logMost = logMost(in);
      if (logMost < most - NEGLIGIBLE) {
        continue;
      }
      double log = log(in, logMost);
      if (log > most) {
        sum = sum * Math.exp(most - log) + 1;
        most = log;
      } else {
        sum += Math.exp(log - most);
      }
    }
    return most + Math.log(sum);
  }

  /** The logarithm of the most that a choice can make up: all its readings at their peaks. */
  private double logMost(int in) {
    double log = 0;
    for (int m = 0; m < members.length; m++) {
      log += (in >> m & 1) == 0 ? logBlunder[m] : logPeak[m];
    }
    return log;
  }

  private double log(int in, double logMost) {
    double squares = 0;
    for (int m = 0; m < members.length; m++) {
      if ((in >> m & 1) != 0) {
        squares += residual[m] * residual[m];
      }
    }
    return logMost - squares / 2 + integral(in);
  }

  /** log of exp(v' M^-1 v / 2) / sqrt(det M), by elimination; M is positive definite. */
  private double integral(int in) {
    for (int i = 0; i < latents; i++) {
      vector[i] = 0;
      Arrays.fill(matrix[i], 0);
      matrix[i][i] = 1;
      for (int m = 0; m < members.length; m++) {
        if ((in >> m & 1) != 0) {
          vector[i] += ratio[m][i] * residual[m];
          for (int j = 0; j < latents; j++) {
            matrix[i][j] += ratio[m][i] * ratio[m][j];
          }
        }
      }
    }
    double half = 0;
    double determinant = 1;
    for (int i = 0; i < latents; i++) {
      double pivot = matrix[i][i];
      determinant *= pivot;
      half += vector[i] * vector[i] / pivot / 2;
      for (int row = i + 1; row < latents; row++) {
        double factor = matrix[row][i] / pivot;
        vector[row] -= factor * vector[i];
        for (int j = i + 1; j < latents; j++) {
          matrix[row][j] -= factor * matrix[i][j];
        }
      }
    }
    return half - Math.log(determinant) / 2;
  }

  /**
   * The logarithm of the greatest likelihood that one of the readings can have given the others.
   *
   * @param item the place of the reading among all of the model
   * @param narrow the least spread of its forecasts
   */
  double logPeak(int item, double narrow) {
    int m = Arrays.binarySearch(members, item);
    double least = likelihood[m].ownError(spreadIsShared[m] ? 0 : narrow);
    return Math.log(
        (1 - likelihood[m].blunder()) / (least * SQRT_TWO_PI) + likelihood[m].blunderTerm());
  }
}
