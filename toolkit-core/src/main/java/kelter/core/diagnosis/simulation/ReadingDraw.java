package kelter.core.diagnosis.simulation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Forecaster;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.likelihood.Anything;
import kelter.core.job.Measurement;
import kelter.core.job.Reading;
import kelter.core.quantity.Quantity;
import kelter.core.vocabulary.Observable;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.core.source64.SplitMix64;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/**
 * Draws what a technician would read off a group of components: the forecast, moved by the spread
 * between machines (normal) and by the error of an ordinary instrument (rectangular within its
 * limits, JCGM 100:2008, 4.3.7), and now and then a blunder. What lies beyond its span is read as
 * its end; a resistance and the like, which spans decades, as over range above half its upper end.
 */
public final class ReadingDraw {

  private final List<Question> questions;
  private final Forecaster forecaster;
  private final double blunder;

  /**
   * Prepares a group.
   *
   * @param questions what is read
   * @param forecaster forecasts them as the machine truly is
   * @param blunder the chance that a reading is wrong altogether
   */
  ReadingDraw(List<Question> questions, Forecaster forecaster, double blunder) {
    this.questions = questions;
    this.forecaster = forecaster;
    this.blunder = blunder;
  }

  /**
   * Reads one thing once.
   *
   * @param question what is read
   * @param truth the model as the machine truly is
   * @param state the severity of each of its faults and the deviate of each of its shared
   *     quantities, as {@link Forecaster#forecast} takes them
   * @param unexplained whether the group does what no known fault explains
   * @param blunder the chance, 0 to 1, that the reading is wrong altogether
   * @param seed the same seed gives the same reading
   * @return what was read
   */
  public static Measurement of(
      Question question,
      FaultModel truth,
      double[] state,
      boolean unexplained,
      double blunder,
      long seed) {
    List<Question> one = List.of(question);
    List<Measurement> read = new ArrayList<>();
    SplitMix64 random = new SplitMix64(seed);
    new ReadingDraw(one, truth.forecaster(one), blunder).draw(state, unexplained, random, read);
    return read.get(0);
  }

  /** Reads everything once and adds it to the list. */
  void draw(
      double[] state,
      boolean unexplained,
      UniformRandomProvider random,
      List<Measurement> readings) {
    double[] value = new double[questions.size()];
    double[] spread = new double[questions.size()];
    forecaster.forecast(state, value, spread);
    for (int k = 0; k < value.length; k++) {
      Question question = questions.get(k);
      boolean anything = random.nextDouble() < blunder || unexplained;
      Reading reading =
          anything
              ? anything(question.observable(), random)
              : reading(question.observable(), value[k], spread[k], random);
      readings.add(
          new Measurement(
              question.component(),
              question.observable().id(),
              List.of(reading),
              question.conditions(),
              Optional.empty(),
              ""));
    }
  }

  private static Reading reading(
      Observable observable, double value, double spread, UniformRandomProvider random) {
    return switch (observable.type()) {
      case YES_NO -> new Reading.YesNo(random.nextDouble() < value);
      case GRADE -> {
        int words = observable.grades().size();
        double place = value + spread * normal(random);
        yield grade(observable, (int) Math.floor(place * words));
      }
      case QUANTITY -> {
        double own = spread * normal(random);
        double machine = observable.logarithmic() ? value * Math.exp(own) : value + own;
        double limit = Math.sqrt(3) * observable.procedure().typical().standardUncertainty(machine);
        yield figure(observable, machine + limit * (2 * random.nextDouble() - 1));
      }
    };
  }

  private static double normal(UniformRandomProvider random) {
    return ZigguratSampler.NormalizedGaussian.of(random).sample();
  }

  /** A reading that says nothing. */
  private static Reading anything(Observable observable, UniformRandomProvider random) {
    double place = random.nextDouble();
    return switch (observable.type()) {
      case YES_NO -> new Reading.YesNo(place < Anything.yes(observable));
      case GRADE -> grade(observable, (int) (place * observable.grades().size()));
      case QUANTITY -> figure(observable, Anything.value(observable, place));
    };
  }

  private static Reading grade(Observable observable, int rank) {
    int inScale = Math.max(0, Math.min(observable.grades().size() - 1, rank));
    return new Reading.Grade(observable.grades().get(inScale), inScale);
  }

  private static Reading figure(Observable observable, double shown) {
    double high = observable.span().high();
    if (observable.logarithmic() && shown > high / 2) {
      return new Reading.OverRange();
    }
    double inSpan = Math.max(observable.span().low(), Math.min(high, shown));
    return new Reading.Value(Quantity.ofSi(inSpan, 0, observable.kind()), 0);
  }
}
