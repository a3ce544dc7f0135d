package kelter.testkit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Forecaster;
import kelter.core.diagnosis.Question;
import kelter.core.job.Appliance;
import kelter.core.module.CalculationModule;
import kelter.core.vocabulary.Observable;

/** How faults would show. */
public final class ForecastRules {

  private static final double[] SEVERITIES = {0.1, 0.5, 0.9, 1};

  /** Deviates of a shared quantity. */
  private static final double[] DEVIATES = {-2, 2};

  /** By how much a fault must move the probability of a yes. */
  private static final double PROBABILITY_STEP = 0.1;

  /** What rounding may make of the same forecast asked in another list, as a ratio. */
  private static final double ROUNDING = 1e-9;

  private ForecastRules() {}

  /** What a model forecasts in one state. */
  private record Forecast(double[] value, double[] spread) {}

  private static Forecast forecast(FaultModel model, List<Question> questions, double[] severity) {
    return forecast(model.forecaster(questions), questions.size(), severity);
  }

  private static Forecast forecast(Forecaster forecaster, int questions, double[] severity) {
    double[] value = new double[questions];
    double[] spread = new double[questions];
    Arrays.fill(value, Double.NaN);
    Arrays.fill(spread, Double.NaN);
    forecaster.forecast(severity, value, spread);
    return new Forecast(value, spread);
  }

  /**
   * With nothing wrong, with each fault at some severities, with each pair that may meet at its
   * worst, and with each shared quantity off its usual value, figures must be finite and inside the
   * span of their observable, spreads greater than zero, and the probability of a yes strictly
   * between 0 and 1. The severities must be left as they were.
   *
   * @param module the module
   * @param appliances the appliances to try
   * @return the breaches
   */
  public static List<String> figures(CalculationModule module, List<Appliance> appliances) {
    List<String> breaches = new ArrayList<>();
    for (FaultModel model : models(module, appliances)) {
      for (double[] state : states(model)) {
        double[] given = state.clone();
        Forecast forecast = forecast(model, model.questions(), given);
        for (int i = 0; i < model.questions().size(); i++) {
          Observable observable = model.questions().get(i).observable();
          figure(
              name(model, i) + " with " + told(model, state) + ": ",
              observable,
              forecast.value[i],
              forecast.spread[i],
              breaches);
        }
        if (!Arrays.equals(given, state)) {
          breaches.add("model " + model.id() + " changes the severities that it is given");
        }
      }
    }
    return breaches;
  }

  private static void figure(
      String where, Observable observable, double value, double spread, List<String> breaches) {
    if (!Double.isFinite(value)) {
      breaches.add(where + "the forecast is " + value);
      return;
    }
    if (observable.type() == Observable.Type.YES_NO) {
      if (!(value > 0 && value < 1)) {
        breaches.add(where + "the probability of a yes is " + value);
      }
      return;
    }
    if (!(value >= observable.span().low() && value <= observable.span().high())) {
      breaches.add(where + "the forecast " + value + " is outside " + observable.span());
    }
    if (!(spread > 0) || Double.isInfinite(spread)) {
      breaches.add(where + "the spread is " + spread);
    }
  }

  /**
   * Each fault at its worst must move an observable by more than its spread, or the probability of
   * a yes by 0.1. Each shared quantity must move a figure. Two faults must exclude each other both
   * ways or not at all, and no fault itself.
   *
   * @param module the module
   * @param appliances the appliances to try
   * @return the breaches
   */
  public static List<String> effects(CalculationModule module, List<Appliance> appliances) {
    List<String> breaches = new ArrayList<>();
    for (FaultModel model : models(module, appliances)) {
      int faults = model.faults().size();
      Forecast healthy = forecast(model, model.questions(), none(model));
      shared(model, healthy, breaches);
      pairs(model, breaches);
      for (int fault = 0; fault < faults; fault++) {
        double[] worst = none(model);
        worst[fault] = 1;
        if (!shows(model, healthy, forecast(model, model.questions(), worst))) {
          breaches.add(
              "fault "
                  + model.faults().get(fault).key()
                  + " at its worst moves no observable by more than its spread");
        }
      }
    }
    return breaches;
  }

  private static void shared(FaultModel model, Forecast usual, List<String> breaches) {
    for (int j = 0; j < model.shared().size(); j++) {
      double[] state = none(model);
      state[model.faults().size() + j] = 1;
      Forecast moved = forecast(model, model.questions(), state);
      boolean moves = false;
      for (int i = 0; i < model.questions().size(); i++) {
        boolean figure = model.questions().get(i).observable().type() == Observable.Type.QUANTITY;
        moves |= figure && moved.value[i] != usual.value[i];
      }
      if (!moves) {
        breaches.add(
            "model " + model.id() + ": " + model.shared().get(j).id() + " moves no figure");
      }
    }
  }

  private static void pairs(FaultModel model, List<String> breaches) {
    int faults = model.faults().size();
    for (int i = 0; i < faults; i++) {
      for (int j = 0; j <= i; j++) {
        if (i == j ? !model.mayMeet(i, i) : model.mayMeet(i, j) != model.mayMeet(j, i)) {
          breaches.add(
              "model %s: whether %s and %s may meet depends on their order, or a fault on itself"
                  .formatted(model.id(), model.faults().get(i).key(), model.faults().get(j).key()));
        }
      }
    }
  }

  private static boolean shows(FaultModel model, Forecast healthy, Forecast faulty) {
    for (int i = 0; i < model.questions().size(); i++) {
      Observable observable = model.questions().get(i).observable();
      double step =
          Math.abs(scaled(observable, faulty.value[i]) - scaled(observable, healthy.value[i]));
      boolean yesNo = observable.type() == Observable.Type.YES_NO;
      if (yesNo ? step >= PROBABILITY_STEP : step > healthy.spread[i]) {
        return true;
      }
    }
    return false;
  }

  private static double scaled(Observable observable, double value) {
    return observable.logarithmic() ? Math.log(value) : value;
  }

  /**
   * A forecaster must answer the same again, after other states and from two threads at once; and a
   * question must have the same answer whatever is asked beside it.
   *
   * @param module the module
   * @param appliances the appliances to try
   * @return the breaches
   */
  public static List<String> memory(CalculationModule module, List<Appliance> appliances) {
    List<String> breaches = new ArrayList<>();
    for (FaultModel model : models(module, appliances)) {
      Forecaster forecaster = model.forecaster(model.questions());
      if (!Repeated.isSame(() -> answers(model, forecaster))) {
        breaches.add("model " + model.id() + " answers differently when asked again");
      }
      asked(model, breaches);
    }
    return breaches;
  }

  private static List<String> answers(FaultModel model, Forecaster forecaster) {
    List<String> answers = new ArrayList<>();
    for (double[] state : states(model)) {
      Forecast forecast = forecast(forecaster, model.questions().size(), state);
      answers.add(Arrays.toString(forecast.value) + Arrays.toString(forecast.spread));
    }
    return answers;
  }

  private static void asked(FaultModel model, List<String> breaches) {
    List<Question> questions = model.questions();
    List<Question> reversed = new ArrayList<>(questions);
    Collections.reverse(reversed);
    int last = questions.size() - 1;
    for (double[] state : states(model)) {
      Forecast together = forecast(model, questions, state);
      Forecast backwards = forecast(model, reversed, state);
      for (int i = 0; i <= last; i++) {
        double alone = forecast(model, List.of(questions.get(i)), state).value[0];
        double expected = together.value[i];
        if (differ(expected, alone) || differ(expected, backwards.value[last - i])) {
          breaches.add(
              "%s with %s: %s among all questions, %s alone, %s in reverse order"
                  .formatted(
                      name(model, i),
                      told(model, state),
                      expected,
                      alone,
                      backwards.value[last - i]));
        }
      }
    }
  }

  private static boolean differ(double expected, double other) {
    return !(Math.abs(expected - other) <= ROUNDING * Math.abs(expected));
  }

  private static List<FaultModel> models(CalculationModule module, List<Appliance> appliances) {
    return appliances.stream().flatMap(a -> module.parts().faultModels(a).stream()).toList();
  }

  private static double[] none(FaultModel model) {
    return new double[model.faults().size() + model.shared().size()];
  }

  /**
   * Nothing wrong, each fault at some severities, each pair of faults that may meet at its worst,
   * and each shared quantity off its usual value.
   */
  private static List<double[]> states(FaultModel model) {
    int faults = model.faults().size();
    List<double[]> states = new ArrayList<>();
    states.add(none(model));
    for (int j = 0; j < model.shared().size(); j++) {
      for (double deviate : DEVIATES) {
        double[] state = none(model);
        state[faults + j] = deviate;
        states.add(state);
      }
    }
    for (int i = 0; i < faults; i++) {
      for (double severity : SEVERITIES) {
        double[] state = none(model);
        state[i] = severity;
        states.add(state);
      }
      for (int j = i + 1; j < faults; j++) {
        if (model.mayMeet(i, j)) {
          double[] state = none(model);
          state[i] = 1;
          state[j] = 1;
          states.add(state);
        }
      }
    }
    return states;
  }

  private static String name(FaultModel model, int question) {
    Question asked = model.questions().get(question);
    return "model " + model.id() + ", " + asked.component() + "." + asked.observable().id();
  }

  private static String told(FaultModel model, double[] state) {
    List<String> present = new ArrayList<>();
    int faults = model.faults().size();
    for (int i = 0; i < state.length; i++) {
      if (state[i] != 0) {
        String name =
            i < faults ? model.faults().get(i).key() : model.shared().get(i - faults).id();
        present.add(name + " at " + state[i]);
      }
    }
    return present.isEmpty() ? "nothing wrong" : String.join(" and ", present);
  }
}
