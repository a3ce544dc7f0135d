package kelter.core.book;

import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;
import kelter.core.job.SymptomReport.Answer;
import kelter.core.problem.Required;
import kelter.core.vocabulary.Ids;

/**
 * What jobs are looked for that are like one: the kind must be the same; symptoms, model and age
 * tell how like they are.
 *
 * @param machine the machine
 * @param symptoms by the id of a symptom what was answered
 */
public record Likeness(BookedMachine machine, Map<String, Answer> symptoms) {

  /** What an answer, the maker, the model and the age count against each other; own choice. */
  private static final double AGREED = 1;

  private static final double CONTRADICTED = -1;
  private static final double SAME_MAKER = 0.5;
  private static final double SAME_MODEL = 1.5;
  private static final double SAME_AGE = 1;

  /** Checks that nothing is null. */
  public Likeness {
    Required.value(machine, "machine");
    symptoms = Map.copyOf(Required.map(symptoms, "symptoms"));
    symptoms.keySet().forEach(Ids::require);
  }

  /**
   * What an entry is like.
   *
   * @param entry an entry
   * @return what is looked for
   */
  public static Likeness of(BookEntry entry) {
    return new Likeness(entry.machine(), entry.symptoms());
  }

  /**
   * How like an entry is: a point for each symptom that both have, one off for each that only one
   * has where the other was asked, 1.5 for the model, 0.5 for the maker alone, and up to one for
   * the age (half of it at twice or half the age).
   *
   * @param answers what was answered on another job
   * @param other its machine, of the same kind
   * @return points; the more, the liker
   */
  public double of(Map<String, Answer> answers, BookedMachine other) {
    return scale().of(answers, other);
  }

  /**
   * Holds many entries against what is looked for.
   *
   * @return the same points, quicker where makers and models come again; for one thread
   */
  public Scale scale() {
    return new Scale();
  }

  /** Tells how like entries are, and keeps how makers and models are spelled. */
  public final class Scale {

    private final Map<String, String> plain = new HashMap<>();
    private final String maker = BookedMachine.plain(machine.maker());
    private final String model = BookedMachine.plain(machine.model());

    private Scale() {}

    /**
     * How like an entry is.
     *
     * @param answers what was answered on another job
     * @param other its machine, of the same kind
     * @return points as {@link Likeness#of(Map, BookedMachine)} tells them
     */
    public double of(Map<String, Answer> answers, BookedMachine other) {
      double points = 0;
      for (Map.Entry<String, Answer> each : answers.entrySet()) {
        Answer own = symptoms.get(each.getKey());
        if (own != null) {
          boolean here = own != Answer.NO;
          boolean there = each.getValue() != Answer.NO;
          points += here == there ? (here ? AGREED : 0) : CONTRADICTED;
        }
      }
      return points + (ofAge(machine.age(), other.age()) + ofName(other));
    }

    private double ofName(BookedMachine other) {
      if (!maker.equals(plain(other.maker()))) {
        return 0;
      }
      boolean told = !machine.model().isBlank() && !other.model().isBlank();
      if (told && model.equals(plain(other.model()))) {
        return SAME_MODEL;
      }
      return maker.isEmpty() ? 0 : SAME_MAKER;
    }

    private String plain(String name) {
      return plain.computeIfAbsent(name, BookedMachine::plain);
    }
  }

  private static double ofAge(OptionalDouble own, OptionalDouble other) {
    if (own.isEmpty() || other.isEmpty()) {
      return 0;
    }
    double ratio = Math.abs(Math.log((own.getAsDouble() + 1) / (other.getAsDouble() + 1)));
    return SAME_AGE * Math.pow(2, -ratio / Math.log(2));
  }
}
