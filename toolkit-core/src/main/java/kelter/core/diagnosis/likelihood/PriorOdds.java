package kelter.core.diagnosis.likelihood;

import java.util.List;
import kelter.core.diagnosis.FaultModel;

/**
 * The odds of the states of a group against nothing wrong, before anything is measured: of each
 * fault its own, of a pair that comes by coincidence their product.
 *
 * <p>Causes that bring effects change that. Let q be the chance of an effect beside its cause by
 * coincidence, c the one that is given, and {@code N = (1 - sum of q) / (1 - sum of c)} over all
 * that the cause brings in the group. The pair of cause and effect is multiplied by c / q, which is
 * (1 + r) / N with r = (c N - q) / q, and every other state with the cause is divided by N. The
 * cause is then as frequent as before, and each effect is there beside it with its chance, be that
 * more or less than by coincidence. Derived here.
 *
 * <p>A state holds two faults at most. So q and c of an effect that brings a third fault are taken
 * where nothing has brought it, and the state in which it was is left alone. Where two causes are
 * there together by coincidence and neither brings the other, both N divide; that lowers their
 * chances by no more than the chance of this coincidence.
 */
final class PriorOdds {

  private final double[] own;
  private final double[] norm;
  private final double[][] pair;

  /**
   * Works out the odds.
   *
   * @param model the model
   * @param prior the chance of each of its faults, above 0 and below 1
   * @param withPairs whether there are states with two faults; if not, nothing is brought
   * @param brought which faults bring others
   */
  PriorOdds(FaultModel model, double[] prior, boolean withPairs, List<Brought> brought) {
    this.own = new double[prior.length];
    this.norm = new double[prior.length];
    this.pair = new double[prior.length][prior.length];
    for (int i = 0; i < prior.length; i++) {
      own[i] = prior[i] / (1 - prior[i]);
      norm[i] = 1;
      for (int j = 0; withPairs && j < i; j++) {
        pair[i][j] = model.mayMeet(i, j) ? own[i] * own[j] : 0;
        pair[j][i] = pair[i][j];
      }
    }
    if (withPairs) {
      bring(brought);
    }
  }

  private void bring(List<Brought> brought) {
    double[] open = new double[own.length];
    for (int fault = 0; fault < open.length; fault++) {
      open[fault] = open(fault, brought);
      norm[fault] = norm(fault, open[fault], brought);
    }
    for (int i = 0; i < own.length; i++) {
      for (int j = 0; j < own.length; j++) {
        pair[i][j] /= norm[i] * norm[j];
      }
    }
    for (Brought each : brought) {
      pair[each.cause()][each.effect()] = each.chance() * open[each.cause()];
      pair[each.effect()][each.cause()] = pair[each.cause()][each.effect()];
    }
  }

  /** The odds by coincidence of all states with a fault in which nothing has brought it. */
  private double open(int fault, List<Brought> brought) {
    double open = with(fault);
    for (Brought each : brought) {
      open -= each.effect() == fault ? pair[each.cause()][fault] : 0;
    }
    return open;
  }

  private double norm(int cause, double open, List<Brought> brought) {
    double coincidence = 0;
    double chance = 0;
    for (Brought each : brought) {
      if (each.cause() == cause) {
        coincidence += pair[cause][each.effect()] / open;
        chance += each.chance();
      }
    }
    return (1 - coincidence) / (1 - chance);
  }

  /** The odds of a fault by itself. */
  double of(int fault) {
    return own[fault] / norm[fault];
  }

  /** The odds of two faults together; 0 where that cannot be. */
  double of(int one, int other) {
    return pair[one][other];
  }

  /** The odds of all states with a fault. */
  double with(int fault) {
    double sum = of(fault);
    for (double together : pair[fault]) {
      sum += together;
    }
    return sum;
  }

  /** The odds of all states, nothing wrong among them. */
  double sum() {
    double sum = 1;
    for (int i = 0; i < own.length; i++) {
      sum += of(i);
      for (int j = 0; j < i; j++) {
        sum += pair[i][j];
      }
    }
    return sum;
  }
}
