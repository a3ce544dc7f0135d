package kelter.cli.trial;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.DoubleUnaryOperator;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Forecaster;
import kelter.core.diagnosis.Question;
import kelter.core.safety.Hazard;
import kelter.core.uncertainty.Normal;
import kelter.core.vocabulary.Observable;

/**
 * Causes of one kind of machine that no single reading tells apart without live work. They are
 * found from the models alone, before any call: for each reading the distribution of what would be
 * read under either cause, over all severities and over what machines differ in, and the distance
 * in total variation of the two, which is what a reading can add to guessing.
 */
final class Alike {

  /** From this distance in total variation on a reading tells two causes apart. */
  private static final double APART = 0.5;

  private static final double[] SEVERITIES = {0.1, 0.3, 0.5, 0.7, 0.9};
  private static final int CELLS = 100;

  /** By how many standard deviations the cells reach beyond the outermost mean. */
  private static final double REACH = 4;

  private static final Map<String, Alike> OF_KINDS = new ConcurrentHashMap<>();

  private final Map<String, Set<String>> classes = new HashMap<>();

  private Alike() {}

  /** The classes of a kind at its usual age, as the tool is shipped. */
  static Alike of(String kind) {
    return OF_KINDS.computeIfAbsent(kind, id -> of(models(id)));
  }

  /** What the modules say of a usual machine of a kind. */
  static List<FaultModel> models(String kind) {
    double age = Calls.TOOL.kinds().kind(kind).orElseThrow().typicalAge();
    return new TrueKind(Calls.TOOL, kind, (int) Math.round(age)).usualModels();
  }

  /** The classes of what the models of a machine speak of. */
  static Alike of(List<FaultModel> models) {
    Alike alike = new Alike();
    List<String> unseen = new ArrayList<>();
    for (FaultModel model : models) {
      alike.compare(model, unseen);
    }
    for (String one : unseen) {
      unseen.forEach(other -> alike.put(one, other));
    }
    return alike;
  }

  /** What no reading tells from a cause; none for what is no cause. */
  Set<String> to(String cause) {
    return classes.getOrDefault(cause, Set.of());
  }

  /** By each cause that is alike to others those others. */
  Map<String, Set<String>> classes() {
    return Collections.unmodifiableMap(classes);
  }

  private void put(String one, String other) {
    if (!one.equals(other)) {
      classes.computeIfAbsent(one, key -> new HashSet<>()).add(other);
      classes.computeIfAbsent(other, key -> new HashSet<>()).add(one);
    }
  }

  private void compare(FaultModel model, List<String> unseen) {
    List<Question> questions =
        model.questions().stream()
            .filter(each -> each.observable().procedure().hazard() != Hazard.LIVE)
            .toList();
    List<List<Mixture>> read = new ArrayList<>();
    for (int fault = 0; fault < model.faults().size(); fault++) {
      read.add(Mixture.all(model, questions, fault, SEVERITIES));
    }
    List<Mixture> inOrder = Mixture.all(model, questions, 0, new double[] {0});
    for (int one = 0; one < read.size(); one++) {
      String key = model.faults().get(one).key();
      if (distance(read.get(one), inOrder) < APART) {
        unseen.add(key);
      }
      for (int other = 0; other < one; other++) {
        if (distance(read.get(one), read.get(other)) < APART) {
          put(key, model.faults().get(other).key());
        }
      }
    }
  }

  /** The greatest distance, or the first that is enough. */
  private static double distance(List<Mixture> one, List<Mixture> other) {
    double most = 0;
    for (int k = 0; k < one.size() && most < APART; k++) {
      most = Math.max(most, one.get(k).distance(other.get(k)));
    }
    return most;
  }

  /** What is read of one thing over some severities: equal parts of normal distributions. */
  private record Mixture(Observable observable, double[] mean, double[] deviation) {

    static List<Mixture> all(
        FaultModel model, List<Question> questions, int fault, double[] severities) {
      Forecaster forecaster = model.forecaster(questions);
      int shared = model.shared().size();
      double[][] mean = new double[questions.size()][severities.length];
      double[][] variance = new double[questions.size()][severities.length];
      for (int s = 0; s < severities.length; s++) {
        double[] state = new double[model.faults().size() + shared];
        state[fault] = severities[s];
        double[] value = new double[questions.size()];
        double[] spread = new double[questions.size()];
        forecaster.forecast(state, value, spread);
        for (int k = 0; k < value.length; k++) {
          Observable observable = questions.get(k).observable();
          mean[k][s] = onScale(observable).applyAsDouble(value[k]);
          variance[k][s] = square(spread[k]) + square(ofInstrument(observable, value[k]));
        }
        for (int j = 0; j < shared; j++) {
          state[model.faults().size() + j] = 1;
          forecaster.forecast(state, value, spread);
          state[model.faults().size() + j] = 0;
          for (int k = 0; k < value.length; k++) {
            double moved = onScale(questions.get(k).observable()).applyAsDouble(value[k]);
            variance[k][s] += square(moved - mean[k][s]);
          }
        }
      }
      List<Mixture> all = new ArrayList<>();
      for (int k = 0; k < mean.length; k++) {
        double[] deviation = new double[severities.length];
        for (int s = 0; s < deviation.length; s++) {
          deviation[s] = Math.sqrt(variance[k][s]);
        }
        all.add(new Mixture(questions.get(k).observable(), mean[k], deviation));
      }
      return all;
    }

    private static double square(double figure) {
      return figure * figure;
    }

    private static DoubleUnaryOperator onScale(Observable observable) {
      return observable.logarithmic() ? Math::log : figure -> figure;
    }

    private static double ofInstrument(Observable observable, double value) {
      if (observable.type() != Observable.Type.QUANTITY) {
        return 0;
      }
      double own = observable.procedure().typical().standardUncertainty(value);
      return observable.logarithmic() ? own / Math.abs(value) : own;
    }

    /** Total variation, 0 (the same) to 1 (never the same reading). */
    double distance(Mixture other) {
      if (observable.type() == Observable.Type.YES_NO) {
        return Math.abs(average(mean) - average(other.mean));
      }
      double low = Math.min(end(-1), other.end(-1));
      double high = Math.max(end(1), other.end(1));
      boolean graded = observable.type() == Observable.Type.GRADE;
      int cells = graded ? observable.grades().size() : CELLS;
      double sum = 0;
      for (int cell = 0; cell < cells; cell++) {
        double from = graded ? (double) cell / cells : low + (high - low) * cell / cells;
        double to = graded ? (cell + 1.0) / cells : low + (high - low) * (cell + 1) / cells;
        double left = graded && cell == 0 ? low : from;
        double right = graded && cell == cells - 1 ? high : to;
        sum += Math.abs(share(left, right) - other.share(left, right));
      }
      return sum / 2;
    }

    private static double average(double[] figures) {
      double sum = 0;
      for (double figure : figures) {
        sum += figure;
      }
      return sum / figures.length;
    }

    private double end(int side) {
      double end = side * Double.NEGATIVE_INFINITY;
      for (int s = 0; s < mean.length; s++) {
        double reach = mean[s] + side * REACH * deviation[s];
        end = side > 0 ? Math.max(end, reach) : Math.min(end, reach);
      }
      return end;
    }

    private double share(double from, double to) {
      double share = 0;
      for (int s = 0; s < mean.length; s++) {
        double width = Math.max(deviation[s], Double.MIN_NORMAL);
        double part = Normal.cdf((to - mean[s]) / width) - Normal.cdf((from - mean[s]) / width);
        share += Math.max(0, part) / mean.length;
      }
      return share;
    }
  }
}
