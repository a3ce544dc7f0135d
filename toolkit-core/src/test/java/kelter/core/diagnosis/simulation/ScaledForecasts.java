package kelter.core.diagnosis.simulation;

import java.util.List;
import java.util.Objects;
import kelter.core.diagnosis.ChangedModel;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Forecaster;
import kelter.core.diagnosis.Question;
import kelter.core.quantity.Scale;
import kelter.core.vocabulary.Observable;

/**
 * A fault model whose figures all come out by a factor higher, in every state, for trying how far a
 * wrong model misleads. Temperatures, grades and the chances of a yes are left as they are, and a
 * figure stays within the span of its observable.
 *
 * @param model the model
 * @param factor a ratio above 0
 */
record ScaledForecasts(FaultModel model, double factor) implements ChangedModel {

  /**
   * Checks the factor.
   *
   * @throws IllegalArgumentException if it is not finite and above 0
   */
  public ScaledForecasts {
    Objects.requireNonNull(model);
    if (!(factor > 0) || Double.isInfinite(factor)) {
      throw new IllegalArgumentException(
          "forecasts times " + factor + "; a finite factor above 0 is allowed");
    }
  }

  @Override
  public Forecaster forecaster(List<Question> questions) {
    Forecaster own = model.forecaster(questions);
    return (severity, value, spread) -> {
      own.forecast(severity, value, spread);
      for (int k = 0; k < value.length; k++) {
        Observable observable = questions.get(k).observable();
        if (isScaled(observable)) {
          double high = observable.span().high();
          value[k] = Math.max(observable.span().low(), Math.min(high, factor * value[k]));
        }
      }
    };
  }

  private static boolean isScaled(Observable observable) {
    return observable.type() == Observable.Type.QUANTITY
        && observable.kind().scale() != Scale.TEMPERATURE;
  }
}
