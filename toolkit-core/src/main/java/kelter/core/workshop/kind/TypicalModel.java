package kelter.core.workshop.kind;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import kelter.core.diagnosis.ChangedModel;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Forecaster;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.SharedQuantity;
import kelter.core.vocabulary.Observable;

/**
 * A model of which some figures are typical ones. Each is one quantity that its readings share: the
 * model with that figure one standard deviation higher tells how much it moves each of them.
 *
 * @param model the model with every figure at what is usual
 * @param moved the same model with one of the figures one standard deviation higher, for each of
 *     them
 * @param figures the figures
 */
record TypicalModel(FaultModel model, List<FaultModel> moved, List<SharedQuantity> figures)
    implements ChangedModel {

  /** A probability is never taken nearer to 0 or 1. */
  private static final double SURE = 1e-6;

  @Override
  public List<SharedQuantity> shared() {
    List<SharedQuantity> all = new ArrayList<>(model.shared());
    all.addAll(figures);
    return all;
  }

  @Override
  public Forecaster forecaster(List<Question> questions) {
    List<Forecaster> ofMoved = new ArrayList<>();
    for (FaultModel each : moved) {
      ofMoved.add(each.forecaster(questions));
    }
    boolean[] chance = new boolean[questions.size()];
    for (int k = 0; k < chance.length; k++) {
      chance[k] = questions.get(k).observable().type() == Observable.Type.YES_NO;
    }
    int own = model.faults().size() + model.shared().size();
    return new Moving(model.forecaster(questions), ofMoved, own, chance);
  }

  private record Moving(Forecaster usual, List<Forecaster> moved, int own, boolean[] chance)
      implements Forecaster {

    @Override
    public void forecast(double[] severity, double[] value, double[] spread) {
      double[] ofModel = Arrays.copyOf(severity, own);
      usual.forecast(ofModel, value, spread);
      double[] usually = null;
      for (int j = 0; j < moved.size(); j++) {
        double deviate = severity[own + j];
        if (deviate != 0) {
          usually = usually == null ? value.clone() : usually;
          move(moved.get(j), deviate, ofModel, usually, value);
        }
      }
    }

    private void move(
        Forecaster other, double deviate, double[] ofModel, double[] usually, double[] value) {
      double[] there = new double[value.length];
      other.forecast(ofModel, there, new double[value.length]);
      for (int k = 0; k < value.length; k++) {
        value[k] = moved(value[k], usually[k], there[k], deviate);
        if (chance[k]) {
          value[k] = Math.max(SURE, Math.min(1 - SURE, value[k]));
        }
      }
    }

    /** By the same ratio for each deviation where all are above zero, else by the same amount. */
    private static double moved(double value, double usually, double there, double deviate) {
      if (value > 0 && usually > 0 && there > 0) {
        return there == usually ? value : value * Math.pow(there / usually, deviate);
      }
      return value + deviate * (there - usually);
    }
  }
}
