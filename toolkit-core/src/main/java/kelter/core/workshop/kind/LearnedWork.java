package kelter.core.workshop.kind;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import kelter.core.book.learned.Learned;
import kelter.core.book.learned.LearnedRate;
import kelter.core.book.learned.LearnedTime;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Knowledge;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.Remedy;
import kelter.core.job.Appliance;
import kelter.core.job.Component;

/**
 * What a shop's book taught of work and readings, in the place of what the modules tell. Times are
 * joined by their logarithms and chances as they are, each by the weight that the book has. A cure
 * is one that lasts: of those that the book counts, complaints that come back are taken off by the
 * rate of the kind of machine.
 */
public final class LearnedWork {

  /** No chance is taken nearer to 0. */
  private static final double LEAST_CHANCE = 0.01;

  private final Learned learned;
  private final Appliance machine;
  private final double lasting;
  private final Map<String, Moved> moved = new TreeMap<>();

  /**
   * What changed of one remedy or reading.
   *
   * @param what its key, component and id
   * @param minutesBefore what the module tells
   * @param minutes what counts
   * @param times from how many times of the book
   * @param cureBefore the chance of a cure that the module tells; 1 of a reading
   * @param cure what counts
   * @param cases from how many cases of the book
   */
  public record Moved(
      String what,
      double minutesBefore,
      double minutes,
      double times,
      double cureBefore,
      double cure,
      double cases) {

    /**
     * How far it moved, for the order in which changes are told.
     *
     * @return 0 or more
     */
    public double size() {
      return Math.abs(Math.log(minutes / minutesBefore)) + Math.abs(Math.log(cure / cureBefore));
    }
  }

  /**
   * What was learned for one machine.
   *
   * @param learned what the book taught
   * @param machine the machine, with all its parts
   */
  public LearnedWork(Learned learned, Appliance machine) {
    this.learned = learned;
    this.machine = machine;
    LearnedRate back = learned.callBacks().get(machine.kind());
    this.lasting = back == null ? 1 : 1 - back.rate();
  }

  /**
   * Knowledge of the machine with it.
   *
   * @param known the models as the modules make them, with the shares of the kind
   * @return the same with times and chances of cure that the book moved
   */
  public Knowledge in(Knowledge known) {
    List<FaultModel> models = new ArrayList<>();
    for (FaultModel model : known.models()) {
      List<Fault> faults = new ArrayList<>();
      for (Fault fault : model.faults()) {
        faults.add(fault.with(fault.remedies().stream().map(this::in).toList()));
      }
      List<Question> questions = model.questions().stream().map(this::in).toList();
      models.add(new GivenFaults(new TimedQuestions(model, questions), faults));
    }
    return new Knowledge(models, known.symptoms(), known.brings(), known.causes());
  }

  /**
   * What the last knowledge was moved by.
   *
   * @return each remedy and reading once, by its key
   */
  public List<Moved> moved() {
    return List.copyOf(moved.values());
  }

  private Remedy in(Remedy remedy) {
    String key = kind(remedy.component()) + "." + remedy.id();
    Optional<LearnedTime> time = Optional.ofNullable(learned.work().get(key));
    Optional<LearnedRate> rate = Optional.ofNullable(learned.cures().get(key));
    if (time.isEmpty() && rate.isEmpty()) {
      return remedy;
    }
    double minutes =
        time.map(each -> wholeMinutes(joined(remedy.minutes(), each))).orElse(remedy.minutes());
    double cure =
        rate.map(each -> joined(remedy.probabilityOfCure(), each))
            .orElse(remedy.probabilityOfCure());
    moved.put(
        remedy.key(),
        new Moved(
            remedy.key(),
            remedy.minutes(),
            minutes,
            time.map(LearnedTime::times).orElse(0.0),
            remedy.probabilityOfCure(),
            cure,
            rate.map(LearnedRate::cases).orElse(0.0)));
    return remedy.with(minutes, cure);
  }

  private Question in(Question question) {
    String key = kind(question.component()) + "." + question.observable().id();
    LearnedTime time = learned.readings().get(key);
    if (time == null) {
      return question;
    }
    double before = question.observable().procedure().minutes();
    double minutes = joined(before, time);
    moved.put(question.key(), new Moved(question.key(), before, minutes, time.times(), 1, 1, 0));
    return new Question(
        question.component(), question.observable().taking(minutes), question.conditions());
  }

  /** Work is priced by its minutes: whole ones, since nobody knows it closer. */
  private static double wholeMinutes(double minutes) {
    return Math.max(1, Math.rint(minutes));
  }

  private static double joined(double table, LearnedTime time) {
    return Math.pow(table, 1 - time.weight()) * Math.pow(time.mean(), time.weight());
  }

  private double joined(double table, LearnedRate rate) {
    double joined = (1 - rate.weight()) * table + rate.weight() * rate.rate() * lasting;
    return Math.max(LEAST_CHANCE, Math.min(1, joined));
  }

  private String kind(String component) {
    return machine.component(component).map(Component::kind).orElse(component);
  }
}
